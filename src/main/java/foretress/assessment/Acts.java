package foretress.assessment;

import foretress.questionnaire.Questionnaire;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * What to do about answers that are not known, each act once: five findings that wait for one test are one test to make, and fifteen
 * things a medicine may mean are one question to put again. Every finding is in here exactly once.
 *
 * @param acts each with two findings or more, in the order in which their first finding came
 * @param alone what is known, what prevents, and what is the only finding of its act, in the order given
 */
public record Acts(List<Act> acts, List<Finding> alone) {
    public Acts {
        acts = List.copyOf(acts);
        alone = List.copyOf(alone);
    }

    /** A test to make, or the questions of a topic to put once more. */
    public enum Kind { TEST, ASK }

    /**
     * One act.
     *
     * @param id of the test or of the topic
     * @param weight the heaviest of its findings
     * @param findings those it would settle
     */
    public record Act(Kind kind, String id, Weight weight, List<Finding> findings) {
        public Act {
            findings = List.copyOf(findings);
        }
    }

    private record Key(Kind kind, String id) {}

    /** @param weight what a finding weighs on the services looked at */
    public static Acts of(List<Finding> findings, Function<Finding, Weight> weight, Questionnaire questionnaire) {
        Map<Key, List<Finding>> gathered = new LinkedHashMap<>();
        for (Finding finding : findings) {
            key(finding, weight.apply(finding), questionnaire)
                .ifPresent(key -> gathered.computeIfAbsent(key, k -> new ArrayList<>()).add(finding));
        }
        gathered.values().removeIf(some -> some.size() < 2);
        List<Finding> taken = gathered.values().stream().flatMap(List::stream).toList();
        return new Acts(gathered.entrySet().stream().map(e -> act(e.getKey(), e.getValue(), weight)).toList(),
            findings.stream().filter(f -> !taken.contains(f)).toList());
    }

    private static Act act(Key key, List<Finding> some, Function<Finding, Weight> weight) {
        return new Act(key.kind(), key.id(), Weight.heaviest(some.stream().map(weight).toList()), some);
    }

    /** The first test it asks for; else the topic in which its first answer is asked. What prevents is read by itself, whatever is known. */
    private static Optional<Key> key(Finding finding, Weight weight, Questionnaire questionnaire) {
        if (!finding.onlyIfUnknown() || weight == Weight.PREVENTS) {
            return Optional.empty();
        }
        Optional<Key> test = finding.demands().stream().findFirst().map(id -> new Key(Kind.TEST, id));
        return test.or(() -> questionnaire.topicOf(finding.causes()).map(topic -> new Key(Kind.ASK, topic.id())));
    }
}
