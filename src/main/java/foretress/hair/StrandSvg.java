package foretress.hair;

import foretress.hair.Residue.Pattern;
import foretress.hair.StrandDrawing.Anchor;
import foretress.hair.StrandDrawing.Area;
import foretress.hair.StrandDrawing.Band;
import foretress.hair.StrandDrawing.Ink;
import foretress.hair.StrandDrawing.Line;
import foretress.hair.StrandDrawing.Point;
import foretress.hair.StrandDrawing.Shape;
import foretress.hair.StrandDrawing.Text;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * The map as SVG text to be put into a page as it is: no style attribute, no style element. Colours come from
 * {@code css/strand.css} by class; presentation attributes hold the light ones for where it is missing.
 */
public final class StrandSvg {
    private final StringBuilder out = new StringBuilder();
    private final String id;

    private StrandSvg(String id) {
        if (!id.matches("[a-zA-Z][a-zA-Z0-9-]*")) {
            throw new IllegalArgumentException("not an id: '%s'".formatted(id));
        }
        this.id = id;
    }

    /** One drawing; {@code id} is the start of the ids it uses and must be its own on the page. */
    public static String draw(StrandMap map, StrandWords words, StrandLayout layout, String id) {
        return new StrandSvg(id).svg(StrandDrawing.of(map, words, layout), words.say("strand-title"),
            String.join(" \u2022 ", words.list(map)));
    }

    /** The map for every width of window, of which css/strand.css shows one, and the same in words, folded. */
    public static String figure(StrandMap map, StrandWords words, String id) {
        return "<div class=\"strand-map\">"
            + "<div class=\"strand-wide\">" + draw(map, words, StrandLayout.WIDE, id + "-w") + "</div>"
            + "<div class=\"strand-tablet\">" + draw(map, words, StrandLayout.TABLET, id + "-t") + "</div>"
            + "<div class=\"strand-phone\">" + draw(map, words, StrandLayout.PHONE, id + "-p") + "</div>"
            + list(map, words) + "</div>";
    }

    private static String list(StrandMap map, StrandWords words) {
        StringBuilder list = new StringBuilder("<details class=\"strand-list\"><summary>")
            .append(escaped(words.say("strand-list"))).append("</summary><ul>");
        words.list(map).forEach(line -> list.append("<li>").append(escaped(line)).append("</li>"));
        return list.append("</ul></details>").toString();
    }

    private String svg(StrandDrawing drawing, String title, String description) {
        put("<svg class=\"strand-svg\" xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"%s-title %s-desc\" viewBox=\"0 0 %s %s\" width=\"%s\" height=\"%s\"%s>",
            id, id, number(drawing.width()), number(drawing.height()), number(drawing.width()),
            number(drawing.height()),
            drawing.rightToLeft() ? " direction=\"rtl\"" : " direction=\"ltr\"");
        put("<title id=\"%s-title\">%s</title><desc id=\"%s-desc\">%s</desc>", id, escaped(title), id,
            escaped(description));
        patterns(drawing);
        drawing.shapes().forEach(this::shape);
        return out.append("</svg>").toString();
    }

    private void patterns(StrandDrawing drawing) {
        Set<Residue> used = EnumSet.noneOf(Residue.class);
        drawing.shapes().forEach(s -> {
            if (s instanceof Band band) {
                used.add(band.residue());
            }
        });
        Set<Pattern> drawn = EnumSet.noneOf(Pattern.class);
        out.append("<defs>");
        used.stream().filter(r -> drawn.add(r.pattern())).forEach(this::pattern);
        out.append("</defs>");
    }

    private void pattern(Residue residue) {
        Tile tile = Tile.of(residue.pattern());
        if (tile.filled()) {
            return;
        }
        put("<pattern id=\"%s\" patternUnits=\"userSpaceOnUse\" y=\"%s\" width=\"%s\" height=\"%s\">",
            patternId(residue),
            number(tile.height() == Tile.BAND ? -Tile.BAND / 2 : 0), number(tile.width()), number(tile.height()));
        put("<rect width=\"%s\" height=\"%s\" class=\"%s-ground\" fill=\"%s\"/>", number(tile.width()),
            number(tile.height()),
            residueClass(residue), Inks.ground(residue));
        tile.marks().forEach(mark -> put(mark.width() > 0
            ? "<path d=\"%s\" class=\"%s-mark\" fill=\"none\" stroke=\"%s\" stroke-width=\"" + number(mark.width())
                + "\"/>"
            : "<path d=\"%sZ\" class=\"%s-spot\" fill=\"%s\"/>", path(mark.points()), residueClass(residue),
            Inks.of(residue)));
        out.append("</pattern>");
    }

    private String patternId(Residue residue) {
        return id + "-" + residue.pattern().name().toLowerCase(Locale.ROOT);
    }

    private static String residueClass(Residue residue) {
        return "strand-" + residue.pattern().name().toLowerCase(Locale.ROOT);
    }

    private void shape(Shape shape) {
        if (shape instanceof Line line) {
            line(line);
        } else if (shape instanceof Area area) {
            put("<path d=\"%sZ\" class=\"strand-fill-%s\" fill=\"%s\"/>", path(area.points()), name(area.ink()),
                Inks.of(area.ink()));
        } else if (shape instanceof Band band) {
            band(band);
        } else {
            text((Text) shape);
        }
    }

    private void line(Line line) {
        put("<path d=\"%s\" class=\"strand-line-%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"%s\"%s/>",
            path(line.points()),
            name(line.ink()), Inks.of(line.ink()), number(line.width()),
            line.dashed() ? " stroke-dasharray=\"7 5\"" : "");
    }

    private void band(Band band) {
        Tile tile = Tile.of(band.residue().pattern());
        List<Point> local = band.points().stream()
            .map(p -> new Point(p.x() - band.origin().x(), p.y() - band.origin().y())).toList();
        put("<path transform=\"translate(%s %s)\" d=\"%sZ\" class=\"%s-band\" fill=\"%s\" stroke=\"%s\" stroke-width=\"%s\" stroke-linejoin=\"round\"%s/>",
            number(band.origin().x()), number(band.origin().y()), path(local), residueClass(band.residue()),
            tile.filled() ? Inks.of(band.residue()) : "url(#" + patternId(band.residue()) + ")",
            Inks.of(band.residue()),
            number(band.residue() == Residue.LIGHTENED ? Band.LIGHTENED_OUTLINE : Band.OUTLINE),
            tile.dashedOutline() ? " stroke-dasharray=\"3.5 2.5\"" : "");
    }

    private void text(Text text) {
        put("<text x=\"%s\" y=\"%s\" font-size=\"%s\" class=\"strand-text-%s\" fill=\"%s\"%s%s>%s</text>",
            number(text.at().x()),
            number(text.at().y()), number(text.size()), name(text.ink()), Inks.of(text.ink()),
            text.bold() ? " font-weight=\"600\"" : "", anchor(text.anchor()), escaped(text.text()));
    }

    private static String anchor(Anchor anchor) {
        return switch (anchor) {
            case START -> "";
            case MIDDLE -> " text-anchor=\"middle\"";
            case END -> " text-anchor=\"end\"";
        };
    }

    private static String name(Ink ink) {
        return ink.name().toLowerCase(Locale.ROOT);
    }

    private static String path(List<Point> points) {
        var path = new StringBuilder();
        for (Point p : points) {
            path.append(path.length() == 0 ? 'M' : 'L').append(number(p.x())).append(' ').append(number(p.y()));
        }
        return path.toString();
    }

    /** At most two decimals, no trailing zero, whatever the machine's language. */
    private static String number(double value) {
        long hundredths = Math.round(value * 100);
        if (hundredths % 100 == 0) {
            return Long.toString(hundredths / 100);
        }
        String sign = hundredths < 0 ? "-" : "";
        String rest = Long.toString(100 + Math.abs(hundredths) % 100).substring(1);
        return sign + Math.abs(hundredths) / 100 + "." + (rest.endsWith("0") ? rest.substring(0, 1) : rest);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }

    private void put(String format, Object... parts) {
        out.append(String.format(Locale.ROOT, format, parts));
    }
}
