package foretress.intake;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import foretress.consent.SignatureMark.Point;
import foretress.consent.SignatureMark.Stroke;
import java.util.ArrayList;
import java.util.List;

/** Reads the drawn mark as the page posts it: a list of strokes, each a list of points [x, y] from 0 to 1. */
public final class Strokes {
    private static final ObjectMapper JSON = new ObjectMapper();

    private Strokes() {}

    /** @throws IllegalArgumentException when it is not such a list, or a point lies outside the box */
    public static List<Stroke> read(String posted) {
        try {
            JsonNode root = JSON.readTree(posted);
            if (!root.isArray()) {
                throw new IllegalArgumentException("not a list of strokes");
            }
            List<Stroke> strokes = new ArrayList<>();
            root.forEach(stroke -> strokes.add(stroke(stroke)));
            return strokes;
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("not a drawing", e);
        }
    }

    private static Stroke stroke(JsonNode node) {
        List<Point> points = new ArrayList<>();
        for (JsonNode point : node) {
            if (point.size() != 2 || !point.get(0).isNumber() || !point.get(1).isNumber()) {
                throw new IllegalArgumentException("not a point");
            }
            points.add(new Point(point.get(0).asDouble(), point.get(1).asDouble()));
        }
        return new Stroke(points);
    }
}
