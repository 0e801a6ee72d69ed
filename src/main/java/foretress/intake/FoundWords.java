package foretress.intake;

import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Weight;
import foretress.consent.ConsentInput.Found;
import foretress.consent.ConsentWords;
import foretress.knowledge.Knowledge;
import foretress.knowledge.ReadWords;
import foretress.questionnaire.Topic;
import jakarta.enterprise.context.RequestScoped;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What was found, as the client reads it. What is known stands one by one. What stands only because an answer is not known is
 * gathered by the topic it was asked in, under its heaviest weight: five things that may be so are one thing not known.
 */
@RequestScoped
class FoundWords {
    private final Knowledge knowledge;
    private final Speech speech;

    FoundWords(Knowledge knowledge, Speech speech) {
        this.knowledge = knowledge;
        this.speech = speech;
    }

    /**
     * @param findings the heaviest first
     * @param booked what was booked: a finding that is silent on all of it, since a heavier one speaks for it, is not read
     */
    List<Found> of(List<Finding> findings, List<Service> booked, Function<Finding, Weight> weight) {
        Map<String, List<Finding>> gathered = findings.stream().filter(f -> f.speaksOn(booked))
            .collect(Collectors.groupingBy(f -> gatheredUnder(f, weight.apply(f)), LinkedHashMap::new, Collectors.toList()));
        return gathered.values().stream().map(some -> new Found(weight.apply(some.get(0)), some.size() == 1 ? words(some.get(0), booked) : unsure(some)))
            .distinct().toList();
    }

    /** Nobody is left to guess why a service cannot go ahead: what prevents is never gathered. */
    private String gatheredUnder(Finding finding, Weight weight) {
        Optional<Topic> topic = finding.onlyIfUnknown() && weight != Weight.PREVENTS ? topic(finding) : Optional.empty();
        return topic.map(t -> "topic " + t.id()).orElse("rule " + finding.ruleId());
    }

    private Optional<Topic> topic(Finding finding) {
        return knowledge.questionnaire().topics().stream()
            .filter(t -> t.questions().stream().anyMatch(q -> finding.causes().contains(q.id()))).findFirst();
    }

    private String words(Finding finding, List<Service> booked) {
        return ReadWords.after(speech.words().finding(finding, booked).client(), finding.read(), speech.words());
    }

    private String unsure(List<Finding> some) {
        String topic = topic(some.get(0)).map(t -> speech.words().topic(t.id())).orElseThrow();
        String unsure = ConsentWords.in(speech.words().language()).say("found.unsure", Map.of("topic", topic));
        return ReadWords.after(unsure, some.stream().flatMap(finding -> finding.read().stream()).distinct().toList(), speech.words());
    }
}
