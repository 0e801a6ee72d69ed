package foretress.intake;

import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.TestFact;
import foretress.assessment.Weight;
import foretress.consent.ConsentInput.Found;
import foretress.consent.ConsentWords;
import foretress.knowledge.Knowledge;
import foretress.knowledge.ReadWords;
import foretress.questionnaire.Topic;
import jakarta.enterprise.context.RequestScoped;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What was found, as the client reads it. What is known stands one by one. What stands only because an answer is not known is said
 * once, under the heaviest of its weights and with the topics it was asked in: fifty things that may be so are a few topics to be asked
 * about again.
 */
@RequestScoped
class FoundWords {
    private final Knowledge knowledge;
    private final ClientLanguage speech;

    FoundWords(Knowledge knowledge, ClientLanguage speech) {
        this.knowledge = knowledge;
        this.speech = speech;
    }

    /**
     * @param findings the heaviest first
     * @param booked what was booked: a finding that is silent on all of it, since a heavier one speaks for it, is not read
     * @param agreed the tests the client agrees to here: no other is promised
     */
    List<Found> of(List<Finding> findings, List<Service> booked, Function<Finding, Weight> weight,
        List<String> agreed) {
        Map<String, List<Finding>> gathered = findings.stream().filter(f -> f.speaksOn(booked))
            .collect(
                Collectors.groupingBy(f -> gatheredUnder(f, weight.apply(f)), LinkedHashMap::new, Collectors.toList()));
        Stream<Found> known = gathered.values().stream().filter(some -> some.size() == 1)
            .map(some -> new Found(weight.apply(some.get(0)),
                promises(some.get(0), weight, agreed) ? words(some.get(0), booked) : waits(some.get(0))));
        List<List<Finding>> unsure = gathered.values().stream().filter(some -> some.size() > 1).toList();
        Stream<Found> again =
            unsure.stream().limit(1).map(heaviest -> new Found(weight.apply(heaviest.get(0)), unsure(unsure)));
        return Stream.concat(known, again).distinct().sorted(Comparator.comparing(Found::weight).reversed()).toList();
    }

    /** Nobody is left to guess why a service cannot go ahead: what prevents is never gathered. */
    private String gatheredUnder(Finding finding, Weight weight) {
        Optional<Topic> topic =
            finding.onlyIfUnknown() && weight != Weight.PREVENTS ? topic(finding) : Optional.empty();
        return topic.map(t -> "topic " + t.id()).orElse("rule " + finding.ruleId());
    }

    private Optional<Topic> topic(Finding finding) {
        return knowledge.questionnaire().topicOf(finding.causes());
    }

    /** Nothing but the test is said of a service that waits for it; where the plan does not owe that test now, it is not promised. */
    private static boolean promises(Finding finding, Function<Finding, Weight> weight, List<String> agreed) {
        return weight.apply(finding) != Weight.TEST_FIRST || finding.demands().isEmpty()
            || finding.demands().stream().anyMatch(test -> agreed.contains(test) || test.equals(TestFact.ADVICE));
    }

    private String waits(Finding finding) {
        return ReadWords.after(ConsentWords.in(speech.words().language()).say("found.waits", Map.of()), finding.read(),
            speech.words());
    }

    private String words(Finding finding, List<Service> booked) {
        return ReadWords.after(speech.words().finding(finding, booked).client(), finding.read(), speech.words());
    }

    /** @param topics the findings of one topic each */
    private String unsure(List<List<Finding>> topics) {
        String names = topics.stream().flatMap(some -> topic(some.get(0)).stream())
            .map(t -> speech.words().topic(t.id())).collect(Collectors.joining(", "));
        String unsure = ConsentWords.in(speech.words().language()).say("found.unsure", Map.of("topic", names));
        return ReadWords.after(unsure,
            topics.stream().flatMap(List::stream).flatMap(finding -> finding.read().stream()).distinct().toList(),
            speech.words());
    }
}
