package foretress.assessment;

import java.util.Collections;
import java.util.LinkedHashMap;
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
     * @param policy it holds only where the policy sets each of these figures at least so high
     */
    public record Row(int ordinal, Map<String, List<String>> when, Map<String, Integer> policy) {
        public Row {
            when = Collections.unmodifiableMap(new LinkedHashMap<>(when)); // in its order, so that causes always read the same
            policy = Map.copyOf(policy);
        }

        public Row(int ordinal, Map<String, List<String>> when) {
            this(ordinal, when, Map.of());
        }

        boolean under(Policy set) {
            return policy.isEmpty()
                || policy.entrySet().stream().allMatch(figure -> set.figure(figure.getKey()) >= figure.getValue());
        }
    }

    /**
     * A fact found by a computation of ours.
     *
     * @param of what it looks for: treatment codes, medicine classes, tests; empty where it needs none
     * @param recentWeeks a treatment so few weeks before the service is recent
     * @param oldYears a treatment so many years before the service, or more, is old
     * @param pastMonths a medicine ended longer ago no longer counts
     * @param overtakenBy what may have happened since a test and voids it
     * @param outcomes of a test at the chair
     * @param from of a sum of other facts: from which class of each on it counts
     */
    public record Computation(ComputedAs as, List<String> of, Optional<Figure> recentWeeks, Optional<Figure> oldYears,
        Optional<Figure> pastMonths, List<Event> overtakenBy, Medicines medicines, Optional<Outcomes> outcomes,
        Map<String, String> from) {
        public Computation {
            of = List.copyOf(of);
            overtakenBy = List.copyOf(overtakenBy);
            from = Collections.unmodifiableMap(new LinkedHashMap<>(from));
        }

        /** Nothing overtakes it. */
        public Computation(ComputedAs as, List<String> of, Optional<Figure> recentWeeks, Optional<Figure> pastMonths) {
            this(as, of, recentWeeks, Optional.empty(), pastMonths, List.of(), Medicines.BY_CLASS, Optional.empty(),
                Map.of());
        }

        /** Of tests at the chair. */
        public static Computation ofChairTests(List<String> tests, Outcomes outcomes) {
            return new Computation(ComputedAs.CHAIR_TEST, tests, Optional.empty(), Optional.empty(), Optional.empty(),
                List.of(), Medicines.BY_CLASS, Optional.of(outcomes), Map.of());
        }

        /** Of other facts: it has its worse class as soon as one of them has the class named for it, or a worse one. */
        public static Computation anyOf(Map<String, String> from) {
            return new Computation(ComputedAs.ANY_OF, List.copyOf(from.keySet()), Optional.empty(), Optional.empty(),
                Optional.empty(), List.of(), Medicines.BY_CLASS, Optional.empty(), from);
        }

        int notDone() {
            return outcomes.map(Outcomes::notDone).orElse(as.notDone());
        }
    }

    /**
     * What is looked for among medicines beside the classes.
     *
     * @param names medicines that count whatever their class
     * @param lighter names among what is looked for that count as less, or only perhaps
     * @param alsoOnSkin classes that count where they are put on the skin
     * @param notOnSkin classes that do not count where they are put on the skin
     */
    public record Medicines(List<String> names, List<String> lighter, List<String> alsoOnSkin,
        List<String> notOnSkin) {
        public static final Medicines BY_CLASS = new Medicines(List.of(), List.of(), List.of(), List.of());

        public Medicines {
            names = List.copyOf(names);
            lighter = List.copyOf(lighter);
            alsoOnSkin = List.copyOf(alsoOnSkin);
            notOnSkin = List.copyOf(notOnSkin);
        }
    }

    /**
     * What the outcomes of a test at the chair come to.
     *
     * @param ordinals by outcome: the class, counted from the best
     * @param notDone the class that means nobody tested
     */
    public record Outcomes(Map<String, Integer> ordinals, int notDone) {
        public Outcomes {
            ordinals = Map.copyOf(ordinals);
        }
    }

    /**
     * Something that voids an earlier test.
     *
     * @param when answers that tell of it, or may
     * @param dated the question that tells when it happened; without one it counts when it was not told at the time of the test
     */
    public record Event(Map<String, List<String>> when, Optional<String> dated) {
        public Event {
            when = Collections.unmodifiableMap(new LinkedHashMap<>(when));
        }
    }

    public boolean isComputedAs(ComputedAs as) {
        return computation.filter(how -> how.as() == as).isPresent();
    }

    public boolean isAlwaysKnown() {
        return computation.filter(how -> how.as().isAlwaysKnown()).isPresent();
    }

    /** The class that means nobody tested or wrote it down, counted from the best; the best for what is no such thing. */
    public int notDone() {
        return computation.map(Computation::notDone).orElse(0);
    }

    /** The facts whose classes decide this one, each from which class on; empty for one that is no sum of others. */
    public Map<String, String> sumOf() {
        return computation.map(Computation::from).orElse(Map.of());
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
