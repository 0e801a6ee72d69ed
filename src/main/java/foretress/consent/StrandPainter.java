package foretress.consent;

import com.lowagie.text.Element;
import com.lowagie.text.pdf.ColumnText;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfWriter;
import foretress.hair.Residue;
import foretress.hair.StrandDrawing;
import foretress.hair.StrandDrawing.Anchor;
import foretress.hair.StrandDrawing.Band;
import foretress.hair.StrandDrawing.Ink;
import foretress.hair.StrandDrawing.Line;
import foretress.hair.StrandDrawing.Point;
import foretress.hair.StrandDrawing.Text;
import foretress.hair.Tile;
import java.util.List;

/** The strand map in black ink: the same shapes as on the screen, their patterns kept, their colours left out. */
final class StrandPainter {
    private static final float TINT = 0.87f;
    private static final float SOLID = 0.35f;
    private static final float HEADING = 60;

    private final PaperFlow sheet;
    private final PdfContentByte ink;
    private final float scale;
    private final float x;
    private final float y;

    private StrandPainter(PaperFlow sheet, StrandDrawing drawing) {
        this.sheet = sheet;
        this.ink = sheet.ink;
        this.scale = scale(sheet, drawing);
        this.x = sheet.left(0, sheet.width);
        this.y = sheet.cursor();
    }

    static float height(PaperFlow sheet, StrandDrawing drawing) {
        return (float) drawing.height() * scale(sheet, drawing);
    }

    /** As wide as the type area; smaller only where very many lanes would run off the page. */
    private static float scale(PaperFlow sheet, StrandDrawing drawing) {
        return Math.min(sheet.width / (float) drawing.width(), (sheet.tallest() - HEADING) / (float) drawing.height());
    }

    /** Draws the map across the type area, the cursor going under it. */
    static void draw(PaperFlow sheet, StrandDrawing drawing) {
        var painter = new StrandPainter(sheet, drawing);
        drawing.shapes().forEach(painter::shape);
        sheet.down(height(sheet, drawing));
    }

    private void shape(StrandDrawing.Shape shape) {
        ink.saveState();
        if (shape instanceof Line line) {
            stroke(line);
        } else if (shape instanceof StrandDrawing.Area area) {
            ink.setGrayFill(grey(area.ink()));
            path(area.points(), 0, 0);
            ink.closePath();
            ink.fill();
        } else if (shape instanceof Band band) {
            band(band);
        }
        ink.restoreState();
        if (shape instanceof Text text) {
            text(text);
        }
    }

    private void stroke(Line line) {
        ink.setGrayStroke(grey(line.ink()));
        ink.setLineWidth((float) line.width() * scale);
        if (line.dashed()) {
            ink.setLineDash(7 * scale, 5 * scale, 0);
        }
        path(line.points(), 0, 0);
        ink.stroke();
    }

    private void band(Band band) {
        Tile tile = Tile.of(band.residue().pattern());
        ink.saveState();
        outline(band);
        ink.clip();
        ink.newPath();
        ink.setGrayFill(tile.filled() ? SOLID : tile.tinted() ? TINT : 1);
        outline(band);
        ink.fill();
        tiles(band, tile);
        ink.restoreState();
        ink.setGrayStroke(tile.filled() ? SOLID : 0);
        ink.setLineJoin(PdfContentByte.LINE_JOIN_ROUND);
        ink.setLineWidth((float) (band.residue() == Residue.LIGHTENED ? Band.LIGHTENED_OUTLINE : Band.OUTLINE) * scale);
        if (tile.dashedOutline()) {
            ink.setLineDash(3.5f * scale, 2.5f * scale, 0);
        }
        outline(band);
        ink.stroke();
    }

    private void outline(Band band) {
        path(band.points(), 0, 0);
        ink.closePath();
    }

    /** Repeats of the pattern over the whole band; the clip keeps what lies inside. */
    private void tiles(Band band, Tile tile) {
        if (tile.marks().isEmpty()) {
            return;
        }
        double left = band.points().stream().mapToDouble(Point::x).min().orElse(0);
        double right = band.points().stream().mapToDouble(Point::x).max().orElse(0);
        double top = band.points().stream().mapToDouble(Point::y).min().orElse(0);
        double bottom = band.points().stream().mapToDouble(Point::y).max().orElse(0);
        double startY = band.origin().y() - (tile.height() == Tile.BAND ? Tile.BAND / 2 : 0);
        for (double atX = first(band.origin().x(), tile.width(), left); atX < right; atX += tile.width()) {
            for (double atY = first(startY, tile.height(), top); atY < bottom; atY += tile.height()) {
                for (Tile.Mark mark : tile.marks()) {
                    mark(mark, atX, atY);
                }
            }
        }
    }

    private static double first(double origin, double step, double edge) {
        return origin + Math.floor((edge - origin) / step) * step;
    }

    private void mark(Tile.Mark mark, double atX, double atY) {
        path(mark.points(), atX, atY);
        if (mark.width() > 0) {
            ink.setGrayStroke(0);
            ink.setLineWidth((float) mark.width() * scale);
            ink.stroke();
        } else {
            ink.setGrayFill(0);
            ink.closePath();
            ink.fill();
        }
    }

    private void text(Text text) {
        FontFace face = text.bold() ? FontFace.STRONG : FontFace.TEXT;
        Direction direction = Direction.of(text.text());
        boolean mirrored = sheet.direction == Direction.RIGHT_TO_LEFT;
        int align = text.anchor() == Anchor.MIDDLE ? Element.ALIGN_CENTER
            : (text.anchor() == Anchor.START) != mirrored ? Element.ALIGN_LEFT : Element.ALIGN_RIGHT;
        ColumnText.showTextAligned(ink, align, face.set(text.text(), (float) text.size() * scale),
            atX(text.at().x()), atY(text.at().y()), 0,
            direction == Direction.RIGHT_TO_LEFT ? PdfWriter.RUN_DIRECTION_RTL : PdfWriter.RUN_DIRECTION_LTR, 0);
    }

    private void path(List<Point> points, double offsetX, double offsetY) {
        Point first = points.get(0);
        ink.moveTo(atX(first.x() + offsetX), atY(first.y() + offsetY));
        points.stream().skip(1).forEach(point -> ink.lineTo(atX(point.x() + offsetX), atY(point.y() + offsetY)));
    }

    private float atX(double px) {
        return x + (float) px * scale;
    }

    private float atY(double px) {
        return y - (float) px * scale;
    }

    private static float grey(Ink ink) {
        return switch (ink) {
            case TEXT, CUT -> 0;
            case QUIET -> 0.2f;
            case HAIRLINE -> 0.6f;
            case FAINT -> 0.82f;
        };
    }
}
