package foretress.consent;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the client puts under the text: a drawing or a name. Both weigh the same. */
public sealed interface SignatureMark {

    Kind kind();

    enum Kind {
        DRAWN, TYPED;

        /** As posted, stored and named on the paper. */
        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<Kind> of(String code) {
            return Arrays.stream(values()).filter(kind -> kind.code().equals(code)).findFirst();
        }
    }

    /**
     * A drawing: strokes without any times, so that it tells how it looks and not how fast a hand moves.
     *
     * @param strokes at least one point, at most {@value #MOST_POINTS} in all
     * @param aspect width of the box by its height, 0.5 to 10, so that the drawing is printed in its own proportions
     */
    record Drawn(List<Stroke> strokes, double aspect) implements SignatureMark {
        public static final int MOST_POINTS = 5_000;
        public static final double USUAL_ASPECT = 3;

        public Drawn(List<Stroke> strokes) {
            this(strokes, USUAL_ASPECT);
        }

        public Drawn {
            if (!(aspect >= 0.5 && aspect <= 10)) {
                throw new IllegalArgumentException("not the shape of a box to sign in: " + aspect);
            }
            strokes = List.copyOf(strokes);
            int points = strokes.stream().mapToInt(stroke -> stroke.points().size()).sum();
            if (points == 0) {
                throw new IllegalArgumentException("the box is empty: draw your name in it, or type it");
            }
            if (points > MOST_POINTS) {
                throw new IllegalArgumentException(
                    "the drawing has %d points, more than the %d we keep: clear it and draw once more"
                        .formatted(points, MOST_POINTS));
            }
        }

        @Override
        public Kind kind() {
            return Kind.DRAWN;
        }
    }

    /** A line drawn without lifting; a dot is a stroke of one point. */
    record Stroke(List<Point> points) {
        public Stroke {
            points = List.copyOf(points);
        }
    }

    /** A point in the box: 0,0 is its top left corner and 1,1 its bottom right. */
    record Point(double x, double y) {
        public Point {
            if (!(x >= 0 && x <= 1 && y >= 0 && y <= 1)) {
                throw new IllegalArgumentException("a point outside the box: %s, %s".formatted(x, y));
            }
        }
    }

    /** A name typed as a mark, 1 to {@value #LONGEST} characters. */
    record Typed(String name) implements SignatureMark {
        public static final int LONGEST = 300;

        public Typed {
            name = Canonical.line(name);
            if (name.isEmpty()) {
                throw new IllegalArgumentException("no name is typed: type your name, or draw it");
            }
            if (name.codePointCount(0, name.length()) > LONGEST) {
                throw new IllegalArgumentException("the name is longer than %d letters".formatted(LONGEST));
            }
        }

        @Override
        public Kind kind() {
            return Kind.TYPED;
        }
    }
}
