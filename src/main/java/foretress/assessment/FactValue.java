package foretress.assessment;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is known of a fact: it lies somewhere from its best to its worst class, both included.
 *
 * @param classes names from better to worse, kept so that a stored fact explains itself
 * @param best the best class it may have, counted from 0
 * @param worst the worst class it may have
 * @param worstAsked the worst class it may have if every question not put because of the booked service were answered well
 * @param causes questions whose answers made it so
 * @param notAsked questions not put because of the booked service
 * @param unanswered required questions put and not answered
 * @param read the typed or copied words that made it so; none in a fact kept before they were noted
 * @param fault what went wrong while finding it; a rule that reads such a fact cannot be assessed
 */
public record FactValue(String fact, List<String> classes, int best, int worst, int worstAsked, List<String> causes,
    List<NotAsked> notAsked, List<String> unanswered, List<ReadAs> read, Optional<String> fault) {
    public FactValue {
        classes = List.copyOf(classes);
        causes = List.copyOf(causes);
        notAsked = List.copyOf(notAsked);
        unanswered = List.copyOf(unanswered);
        read = read == null ? List.of() : List.copyOf(read);
        if (best < 0 || best > worstAsked || worstAsked > worst || worst >= classes.size()) {
            throw new IllegalArgumentException(
                "%s: not a range of classes: %d to %d (%d)".formatted(fact, best, worst, worstAsked));
        }
    }

    public static FactValue known(FactDef def, int ordinal, List<String> causes) {
        return between(def, ordinal, ordinal, causes);
    }

    public static FactValue known(FactDef def, String className, List<String> causes) {
        return known(def, def.ordinal(className), causes);
    }

    public static FactValue between(FactDef def, int best, int worst, List<String> causes) {
        return new FactValue(def.id(), def.classes(), best, worst, worst, causes, List.of(), List.of(), List.of(),
            Optional.empty());
    }

    public static FactValue unknown(FactDef def, List<String> causes) {
        return between(def, 0, def.worst(), causes);
    }

    static FactValue faulty(FactDef def, String fault) {
        return new FactValue(def.id(), def.classes(), 0, def.worst(), def.worst(), List.of(), List.of(), List.of(),
            List.of(), Optional.of(fault));
    }

    /** Both together: the heavier stands, and what decided it is kept. */
    FactValue heavier(FactValue other) {
        List<String> decided =
            worst > other.worst ? causes : worst < other.worst ? other.causes : joined(causes, other.causes);
        List<ReadAs> words = worst > other.worst ? read : worst < other.worst ? other.read : joined(read, other.read);
        return new FactValue(fact, classes, Math.max(best, other.best), Math.max(worst, other.worst),
            Math.max(worstAsked, other.worstAsked),
            decided, joined(notAsked, other.notAsked), joined(unanswered, other.unanswered), words,
            fault.or(() -> other.fault));
    }

    /** The same with one class read as a worse one wherever it may be meant. */
    FactValue raised(int from, int to) {
        return new FactValue(fact, classes, best == from ? to : best, worst == from ? to : worst,
            worstAsked == from ? to : worstAsked, causes,
            notAsked, unanswered, read, fault);
    }

    /** From here to the worst of another, which more questions decided. */
    FactValue atWorst(FactValue other, List<String> causes) {
        return new FactValue(fact, classes, best, other.worst, other.worstAsked, joined(other.causes, causes),
            other.notAsked, other.unanswered, other.read, fault);
    }

    /** The same, made so by these words. */
    FactValue reading(List<ReadAs> words) {
        return words.isEmpty() ? this
            : new FactValue(fact, classes, best, worst, worstAsked, causes, notAsked, unanswered, words, fault);
    }

    /** The same, with required questions that nobody answered. */
    FactValue leavingOpen(List<String> questions) {
        return questions.isEmpty() ? this
            : new FactValue(fact, classes, best, worst, worstAsked, causes, notAsked, joined(unanswered, questions),
                read, fault);
    }

    private static <T> List<T> joined(List<T> some, List<T> more) {
        if (more.isEmpty() && some.size() < 2) {
            return some;
        }
        Set<T> all = new LinkedHashSet<>(some);
        all.addAll(more);
        return List.copyOf(all);
    }

    public boolean isKnown() {
        return best == worst && fault.isEmpty();
    }

    /** Whether it has its worst class, or may for all we know. */
    boolean mayBeWorst() {
        return worst == classes.size() - 1;
    }

    public String bestClass() {
        return classes.get(best);
    }

    public String worstClass() {
        return classes.get(worst);
    }

    /** As it would be if the questions not put because of the booked service were answered well. */
    FactValue asAsked() {
        return new FactValue(fact, classes, best, worstAsked, worstAsked, causes, List.of(), unanswered, read, fault);
    }

    @Override
    public String toString() {
        return fact + " = "
            + fault.map("fault: "::concat).orElse(isKnown() ? bestClass() : bestClass() + ".." + worstClass());
    }
}
