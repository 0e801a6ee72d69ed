package foretress.web;

import io.quarkus.qute.TemplateExtension;
import java.util.Locale;

/** The name of a weight's shape in {@code /img/weights.svg}. */
@TemplateExtension(namespace = "weight")
public final class WeightShape {
    private WeightShape() {}

    /** A weight, or its code, as the shape is called: {@code test first} and {@code TEST_FIRST} are {@code test-first}. */
    public static String shape(Object weight) {
        return weight.toString().toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
    }
}
