package foretress.consent;

import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Reads the screen's symbols, so that paper and screen show one drawing. Knows the path commands M L H V C A Z, both cases. */
final class SvgSymbols {
    private static final Pattern SYMBOL =
        Pattern.compile("<symbol id=\"([^\"]+)\"[^>]*>\\s*<path([^>]*)/>\\s*</symbol>");
    private static final Pattern DATA = Pattern.compile("\\bd=\"([^\"]*)\"");
    private static final Pattern TOKEN = Pattern.compile("[A-Za-z]|-?(?:\\d+\\.?\\d*|\\.\\d+)");

    private final Path2D path;
    private final Iterator<String> tokens;
    private String ahead = "";
    private double x;
    private double y;

    private SvgSymbols(String data, int rule) {
        path = new Path2D.Double(rule);
        tokens = TOKEN.matcher(data).results().map(MatchResult::group).iterator();
    }

    /** Every symbol of the file by its id. */
    static Map<String, Path2D> read(String resource) {
        try (InputStream in = SvgSymbols.class.getResourceAsStream(resource)) {
            var symbols = new LinkedHashMap<String, Path2D>();
            SYMBOL.matcher(new String(in.readAllBytes(), StandardCharsets.UTF_8)).results().forEach(match -> {
                String attributes = match.group(2);
                String data = DATA.matcher(attributes).results().findFirst().orElseThrow().group(1);
                symbols.put(match.group(1), new SvgSymbols(data,
                    attributes.contains("evenodd") ? Path2D.WIND_EVEN_ODD : Path2D.WIND_NON_ZERO).draw());
            });
            return symbols;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Path2D draw() {
        String command = "";
        for (String token = next(); !token.isEmpty(); token = next()) {
            if (Character.isLetter(token.charAt(0))) {
                command = token;
            } else {
                ahead = token;
                command = command.equals("M") ? "L" : command.equals("m") ? "l" : command;
            }
            step(command.charAt(0));
        }
        return path;
    }

    private void step(char command) {
        boolean relative = Character.isLowerCase(command);
        double fromX = relative ? x : 0;
        double fromY = relative ? y : 0;
        switch (Character.toUpperCase(command)) {
            case 'M' -> path.moveTo(x = fromX + number(), y = fromY + number());
            case 'L' -> path.lineTo(x = fromX + number(), y = fromY + number());
            case 'H' -> path.lineTo(x = fromX + number(), y);
            case 'V' -> path.lineTo(x, y = fromY + number());
            case 'C' -> path.curveTo(fromX + number(), fromY + number(), fromX + number(), fromY + number(),
                x = fromX + number(), y = fromY + number());
            case 'A' ->
                arc(number(), number(), number(), number() != 0, number() != 0, fromX + number(), fromY + number());
            case 'Z' -> close();
            default -> throw new IllegalStateException(
                "a symbol uses the path command " + command + ", which the paper cannot draw");
        }
    }

    private void close() {
        path.closePath();
        Point2D start = path.getCurrentPoint();
        x = start.getX();
        y = start.getY();
    }

    /** From the ends of an arc to its middle (SVG 2, implementation notes, B.2.4), for arcs of circles. */
    private void arc(double rx, double ry, double turn, boolean large, boolean sweep, double toX, double toY) {
        double halfX = (x - toX) / 2;
        double halfY = (y - toY) / 2;
        double half = Math.hypot(halfX, halfY);
        double radius = Math.max(rx, half);
        double away = Math.sqrt(Math.max(0, radius * radius - half * half)) / half * (large == sweep ? -1 : 1);
        double middleX = (x + toX) / 2 + away * halfY;
        double middleY = (y + toY) / 2 - away * halfX;
        double from = Math.atan2(y - middleY, x - middleX);
        double sweepAngle = Math.atan2(toY - middleY, toX - middleX) - from;
        sweepAngle += sweep && sweepAngle < 0 ? 2 * Math.PI : !sweep && sweepAngle > 0 ? -2 * Math.PI : 0;
        var arc = new Arc2D.Double(middleX - radius, middleY - radius, 2 * radius, 2 * radius,
            -Math.toDegrees(from), -Math.toDegrees(sweepAngle), Arc2D.OPEN);
        path.append(arc.getPathIterator(new AffineTransform()), true);
        x = toX;
        y = toY;
    }

    private String next() {
        String token = ahead;
        ahead = "";
        return !token.isEmpty() ? token : tokens.hasNext() ? tokens.next() : "";
    }

    private double number() {
        return Double.parseDouble(next());
    }
}
