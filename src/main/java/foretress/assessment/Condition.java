package foretress.assessment;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What must be so for a rule to fire, walked over ranges of classes in Kleene's logic. Its text is the text in the rule file:
 *
 * <pre>
 * or      = and { "||" and }
 * and     = not { "&amp;&amp;" not }
 * not     = "!" not | compare | "(" or ")"
 * whole   = "true" | or        (true: whatever the facts are)
 * compare = fact op class          op: == != &lt; &lt;= &gt; &gt;=   (a class further to the worse end is greater)
 * </pre>
 */
public sealed interface Condition {

    Truth of(Facts facts);

    /** Facts that made the condition come out as it did, or that leave it open. */
    Set<String> deciding(Facts facts);

    /** Every fact it reads. */
    Set<String> reads();

    /** Every comparison in it, in its order. */
    List<Compare> compares();

    enum Op {
        EQUAL("=="), NOT_EQUAL("!="), LESS("<"), LESS_OR_EQUAL("<="), GREATER(">"), GREATER_OR_EQUAL(">=");

        private final String sign;

        Op(String sign) {
            this.sign = sign;
        }

        public String sign() {
            return sign;
        }

        boolean holds(int left, int right) {
            return switch (this) {
                case EQUAL -> left == right;
                case NOT_EQUAL -> left != right;
                case LESS -> left < right;
                case LESS_OR_EQUAL -> left <= right;
                case GREATER -> left > right;
                case GREATER_OR_EQUAL -> left >= right;
            };
        }
    }

    /** A fact held against one of its own classes. */
    record Compare(String fact, Op op, String className, int ordinal) implements Condition {
        @Override
        public Truth of(Facts facts) {
            FactValue value = facts.get(fact);
            if (value.best() == value.worst()) {
                return op.holds(value.best(), ordinal) ? Truth.TRUE : Truth.FALSE;
            }
            boolean some = false;
            boolean all = true;
            for (int reading = value.best(); reading <= value.worst(); reading++) {
                boolean holds = op.holds(reading, ordinal);
                some |= holds;
                all &= holds;
            }
            return all ? Truth.TRUE : some ? Truth.UNKNOWN : Truth.FALSE;
        }

        @Override
        public Set<String> deciding(Facts facts) {
            return Set.of(fact);
        }

        @Override
        public Set<String> reads() {
            return Set.of(fact);
        }

        @Override
        public List<Compare> compares() {
            return List.of(this);
        }

        @Override
        public String toString() {
            return name(fact) + " " + op.sign() + " " + name(className);
        }

        private static String name(String id) {
            return id.replace('-', '_');
        }
    }

    /** Holds whatever the facts are: what speaks is the service itself. */
    record Always() implements Condition {
        @Override
        public Truth of(Facts facts) {
            return Truth.TRUE;
        }

        @Override
        public Set<String> deciding(Facts facts) {
            return Set.of();
        }

        @Override
        public Set<String> reads() {
            return Set.of();
        }

        @Override
        public List<Compare> compares() {
            return List.of();
        }

        @Override
        public String toString() {
            return "true";
        }
    }

    record Not(Condition part) implements Condition {
        @Override
        public Truth of(Facts facts) {
            return part.of(facts).not();
        }

        @Override
        public Set<String> deciding(Facts facts) {
            return part.deciding(facts);
        }

        @Override
        public Set<String> reads() {
            return part.reads();
        }

        @Override
        public List<Compare> compares() {
            return part.compares();
        }

        @Override
        public String toString() {
            return "!(" + part + ")";
        }
    }

    record And(List<Condition> parts) implements Condition {
        public And {
            parts = List.copyOf(parts);
        }

        @Override
        public Truth of(Facts facts) {
            Truth truth = Truth.TRUE;
            for (Condition part : parts) {
                truth = truth.and(part.of(facts)); // no short cut: a fact that could not be found must be noticed
            }
            return truth;
        }

        /** A false "and" is decided by its false parts, a true or open one by all the others. */
        @Override
        public Set<String> deciding(Facts facts) {
            boolean isFalse = of(facts) == Truth.FALSE;
            return gather(parts.stream().filter(p -> (p.of(facts) == Truth.FALSE) == isFalse).toList(), facts);
        }

        @Override
        public Set<String> reads() {
            return all(parts);
        }

        @Override
        public List<Compare> compares() {
            return parts.stream().flatMap(p -> p.compares().stream()).toList();
        }

        @Override
        public String toString() {
            return join(" && ", parts.stream().map(p -> p instanceof Or ? "(" + p + ")" : p.toString()).toList());
        }
    }

    record Or(List<Condition> parts) implements Condition {
        public Or {
            parts = List.copyOf(parts);
        }

        @Override
        public Truth of(Facts facts) {
            Truth truth = Truth.FALSE;
            for (Condition part : parts) {
                truth = truth.or(part.of(facts));
            }
            return truth;
        }

        /** An "or" is decided by the parts that come out as it does. */
        @Override
        public Set<String> deciding(Facts facts) {
            Truth whole = of(facts);
            return gather(parts.stream().filter(p -> p.of(facts) == whole).toList(), facts);
        }

        @Override
        public Set<String> reads() {
            return all(parts);
        }

        @Override
        public List<Compare> compares() {
            return parts.stream().flatMap(p -> p.compares().stream()).toList();
        }

        @Override
        public String toString() {
            return join(" || ", parts.stream().map(Condition::toString).toList());
        }
    }

    private static Set<String> gather(List<Condition> parts, Facts facts) {
        Set<String> deciding = new LinkedHashSet<>();
        parts.forEach(p -> deciding.addAll(p.deciding(facts)));
        return deciding;
    }

    private static Set<String> all(List<Condition> parts) {
        Set<String> read = new LinkedHashSet<>();
        parts.forEach(p -> read.addAll(p.reads()));
        return read;
    }

    private static String join(String between, List<String> parts) {
        return String.join(between, parts);
    }
}
