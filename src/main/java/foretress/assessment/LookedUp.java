package foretress.assessment;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a member of staff found out about a medicine's name that the lexicon does not know. It holds for every client who types the
 * name, says no more than the one who looked said, and never speaks about a name that the lexicon knows.
 *
 * @param name as it was looked up
 * @param means one of {@link #OWN}, or the fact it counts towards, such as {@code blood-thinner}
 * @param classes what it counts as; none where it makes no difference
 * @param by who looked it up
 * @param source where, in their words
 */
public record LookedUp(String name, String means, Set<String> classes, String by, LocalDate on, String source) {
    public static final String NO_MEDICINE = "no-medicine";
    public static final String NO_DIFFERENCE = "no-difference";
    public static final String ASK_A_DOCTOR = "ask-a-doctor";
    /** What it can mean without counting towards a fact. */
    public static final List<String> OWN = List.of(NO_MEDICINE, NO_DIFFERENCE, ASK_A_DOCTOR);

    public LookedUp {
        classes = Set.copyOf(classes);
        if (name.isBlank() || means.isBlank() || by.isBlank() || source.isBlank()) {
            throw new IllegalArgumentException("a look-up has a name, a meaning, a person and a source");
        }
    }

    /** Facts that a name can count towards, in their order, each with the class of medicine that makes it count. */
    public static Map<String, String> towards(RuleSet rules) {
        Map<String, String> towards = new LinkedHashMap<>();
        rules.facts().forEach(def -> MedicineFacts.classOf(def).filter(one -> !one.equals(ASK_A_DOCTOR))
            .ifPresent(one -> towards.put(def.id(), one)));
        return towards;
    }

    /**
     * The classes that a meaning stands for. One of a fact that is no more counts as not known: a doctor is asked.
     */
    public static Set<String> classes(String means, RuleSet rules) {
        return means.equals(NO_MEDICINE) || means.equals(NO_DIFFERENCE) ? Set.of()
            : Set.of(towards(rules).getOrDefault(means, ASK_A_DOCTOR));
    }
}
