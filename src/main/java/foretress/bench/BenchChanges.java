package foretress.bench;

import foretress.assessment.Assessment;
import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.Standing;
import foretress.assessment.TestFact;
import foretress.assessment.Weight;
import foretress.intake.Assessments;
import foretress.intake.Intake;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.questionnaire.Answers;
import foretress.salon.Menu;
import foretress.visit.Visit;
import foretress.web.Language;
import foretress.web.StylistWords;
import foretress.web.WeightSaid;
import jakarta.enterprise.context.RequestScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which services one test opens, changes or closes: everything is assessed with it and without it. */
@RequestScoped
public class BenchChanges {
    private final Intake intake;
    private final Assessments assessments;
    private final BenchRecords tests;
    private final Knowledge knowledge;
    private final Menu menu;
    private final Language language;
    private final StylistWords say;

    BenchChanges(Intake intake, Assessments assessments, BenchRecords tests, Knowledge knowledge, Menu menu,
        Language language, StylistWords say) {
        this.intake = intake;
        this.assessments = assessments;
        this.tests = tests;
        this.knowledge = knowledge;
        this.menu = menu;
        this.language = language;
        this.say = say;
    }

    /** The booked services in front; empty while the test says nothing, or the client has said nothing. */
    List<BenchChange> of(Visit visit, BenchRecord test) {
        Answers said = intake.said(visit);
        if (said.byQuestion().isEmpty() || test.struck()) {
            return List.of();
        }
        Situation with = assessments.situation(visit, said);
        return without(visit, with, test).map(other -> between(visit, other, with)).orElse(List.of());
    }

    /** Which services stand otherwise in the second situation, in the order in which they are looked at. */
    public List<BenchChange> between(Visit visit, Situation before, Situation after) {
        return changes(visit, assess(visit, before), assess(visit, after));
    }

    /** Where the booked services would stand, in a word, if this came out; empty while the client has said nothing. */
    Optional<String> booked(Visit visit, TestFact fact) {
        return bookedIf(visit, List.of(fact)).map(weight -> WeightSaid.of(weight, say));
    }

    /** The same of several facts, as a weight. */
    Optional<Weight> bookedIf(Visit visit, List<TestFact> facts) {
        Answers said = intake.said(visit);
        if (said.byQuestion().isEmpty()) {
            return Optional.empty();
        }
        Situation now = assessments.situation(visit, said);
        List<TestFact> more = new ArrayList<>(now.tests());
        more.addAll(facts);
        return Optional.of(assessments.booked(visit, assess(visit, now.tested(more, now.measuredLengthCm()))));
    }

    private Optional<Situation> without(Visit visit, Situation with, BenchRecord test) {
        if (test.kind() == BenchKind.LENGTH) {
            return Optional.of(with.tested(with.tests(), Optional.empty()));
        }
        List<TestFact> fewer = new ArrayList<>(with.tests());
        return fewer.removeAll(tests.facts(visit, test)) ? Optional.of(with.tested(fewer, with.measuredLengthCm()))
            : Optional.empty();
    }

    private Assessment assess(Visit visit, Situation situation) {
        return assessments.assess(situation, assessments.looked(visit));
    }

    private List<BenchChange> changes(Visit visit, Assessment before, Assessment after) {
        List<String> booked = visit.services.stream().map(s -> s.serviceId).toList();
        return assessments.looked(visit).stream().filter(s -> !weight(before, s).equals(weight(after, s)))
            .map(s -> change(s, booked.contains(s.id()), weight(before, s), weight(after, s), after)).toList();
    }

    private static Weight weight(Assessment assessment, Service service) {
        return assessment.standing(service.id()).map(Standing::weight).orElse(Weight.COULD_NOT_BE_ASSESSED);
    }

    private BenchChange change(Service service, boolean booked, Weight before, Weight now, Assessment after) {
        return new BenchChange(menu.name(service.id(), words()), booked, before, WeightSaid.of(before, say), now,
            WeightSaid.of(now, say),
            after.spokenOn(service).stream().filter(f -> f.on(service) == now).findFirst().map(this::title).orElse(""));
    }

    private String title(Finding finding) {
        return words().finding(finding.ruleId(), finding.onlyIfUnknown()).title();
    }

    private Words words() {
        return knowledge.words(language.getTag());
    }
}
