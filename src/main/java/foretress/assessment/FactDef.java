package foretress.assessment;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A fact as knowledge declares it: its classes from better to worse, and how it is found, from rows, by a computation, or both;
 * then the heavier of the two stands.
 *
 * @param classes at least two, the best first
 */
public record FactDef(String id, List<String> classes, List<Row> rows, Optional<Computation> computation) {
    public FactDef {
        classes = List.copyOf(classes);
        rows = List.copyOf(rows);
        if (classes.size() < 2) {
            throw new IllegalArgumentException("a fact has at least two classes: " + id);
        }
    }

    /**
     * Holds when every named question was answered with one of the codes.
     *
     * @param ordinal the class it gives, counted from the best
     */
    public record Row(int ordinal, Map<String, List<String>> when) {
        public Row {
            when = Map.copyOf(when);
        }
    }

    /**
     * A fact found by a computation of ours.
     *
     * @param name of the computation
     * @param of what it looks for: treatment codes, medicine classes, label risks; empty where it needs none
     * @param recentWeeks a treatment so few weeks before the service is recent
     * @param pastMonths a medicine ended longer ago no longer counts
     */
    public record Computation(String name, List<String> of, Optional<Figure> recentWeeks, Optional<Figure> pastMonths) {
        public Computation {
            of = List.copyOf(of);
        }
    }

    public int worst() {
        return classes.size() - 1;
    }

    /** The place of a class, counted from the best. */
    public int ordinal(String className) {
        int ordinal = classes.indexOf(className);
        if (ordinal < 0) {
            throw new IllegalArgumentException("%s has no class '%s'".formatted(id, className));
        }
        return ordinal;
    }
}
