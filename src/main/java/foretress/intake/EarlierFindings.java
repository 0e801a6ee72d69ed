package foretress.intake;

import foretress.assessment.Assessment;
import foretress.assessment.FactDef;
import foretress.assessment.FactValue;
import foretress.assessment.Facts;
import foretress.assessment.Finding;
import foretress.assessment.Truth;
import foretress.assessment.Weight;
import foretress.knowledge.Knowledge;
import foretress.questionnaire.Question;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.Visits;
import io.quarkus.arc.All;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * What was found at another visit from an answer that stays good for good, and is not found now: a reaction somebody had does
 * not go away because a later form says no, or because two records became one. The same holds for what staff saw go wrong at a
 * service. The heavier finding stands and says when.
 */
@ApplicationScoped
public class EarlierFindings {
    private final Visits visits;
    private final Knowledge knowledge;
    private final Assessments assessments;
    private final List<ChairRecord> records;

    EarlierFindings(Visits visits, Knowledge knowledge, Assessments assessments, @All List<ChairRecord> records) {
        this.visits = visits;
        this.knowledge = knowledge;
        this.assessments = assessments;
        this.records = records;
    }

    /** A finding and the visit it was made for. */
    public record Earlier(Finding finding, Visit visit) {}

    /** By rule, the most recent visit's; only what weighs more than now on some step. */
    public List<Earlier> of(Visit visit, Assessment now) {
        Map<String, Earlier> byRule = new LinkedHashMap<>();
        List<Visit> all = visits.of(visit.client.id);
        KeptAssessment.ready(all.stream().map(other -> other.id).toList());
        lasting(all.stream().filter(other -> !other.id.equals(visit.id)))
            .filter(was -> weighsMore(was.finding(), now) && !answered(was.finding(), now))
            .forEach(was -> byRule.merge(was.finding().ruleId(), was, EarlierFindings::heavier));
        records.stream().flatMap(record -> record.wentWrong(visit).stream())
            .filter(saw -> weighsMore(saw.finding(), now))
            .forEach(saw -> byRule.merge(saw.finding().ruleId(), saw, EarlierFindings::heavier));
        return List.copyOf(byRule.values());
    }

    /** Everything of that kind found at any visit of this client, by rule the heaviest. */
    public List<Earlier> standing(UUID clientId) {
        List<Visit> all = visits.of(clientId);
        KeptAssessment.ready(all.stream().map(visit -> visit.id).toList());
        return heaviest(lasting(all.stream()).toList());
    }

    /** By rule the heaviest, the heavier rules first. */
    public static List<Earlier> heaviest(List<Earlier> all) {
        Map<String, Earlier> byRule = new LinkedHashMap<>();
        all.forEach(e -> byRule.merge(e.finding().ruleId(), e, EarlierFindings::heavier));
        return byRule.values().stream().sorted(Comparator.comparing((Earlier e) -> e.finding().weight()).reversed())
            .toList();
    }

    private Stream<Earlier> lasting(Stream<Visit> all) {
        return all.filter(visit -> visit.state != State.WITHDRAWN)
            .flatMap(visit -> KeptAssessment.newest(visit.id).stream().flatMap(this::lasting)
                .map(finding -> new Earlier(finding, visit)));
    }

    private Stream<Finding> lasting(KeptAssessment kept) {
        return assessments.read(kept).findings().stream()
            .filter(f -> !f.onlyIfUnknown() && f.causes().stream().anyMatch(this::staysGood));
    }

    private boolean staysGood(String question) {
        return knowledge.questionnaire().question(question).filter(q -> q.keeps() == Question.Keeps.FOR_GOOD)
            .isPresent();
    }

    /**
     * Today's answers make it too, and only what staff tested or wrote down lifts it: that is how it is meant to be lifted. It is
     * asked by putting every such fact back to "not done".
     */
    private boolean answered(Finding then, Assessment now) {
        return now.finding(then.ruleId()).isEmpty() && knowledge.ruleSet().rule(then.ruleId())
            .filter(rule -> rule.when().of(undone(rule.when().reads(), now.facts())) != Truth.FALSE).isPresent();
    }

    private Facts undone(Set<String> reads, Facts facts) {
        Facts undone = facts;
        for (String id : reads) {
            FactDef def = knowledge.ruleSet().fact(id).orElseThrow();
            int notDone = def.notDone();
            undone = facts.get(id).worst() < notDone ? undone.with(FactValue.known(def, notDone, List.of())) : undone;
        }
        return undone;
    }

    private static boolean weighsMore(Finding then, Assessment now) {
        Map<String, Weight> today = now.finding(then.ruleId()).map(Finding::byStep).orElse(Map.of());
        return then.byStep().entrySet().stream()
            .anyMatch(e -> e.getValue().compareTo(today.getOrDefault(e.getKey(), Weight.NOTHING_FOUND)) > 0);
    }

    private static Earlier heavier(Earlier newer, Earlier older) {
        return older.finding().weight().compareTo(newer.finding().weight()) > 0 ? older : newer;
    }
}
