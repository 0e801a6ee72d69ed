package foretress.note;

import foretress.assessment.Assessment;
import foretress.assessment.Assessor;
import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.Standing;
import foretress.assessment.Weight;
import foretress.bench.BenchChange;
import foretress.intake.Assessments;
import foretress.intake.Intake;
import foretress.knowledge.Knowledge;
import foretress.questionnaire.Answers;
import foretress.salon.Menu;
import foretress.visit.Visit;
import foretress.web.Language;
import foretress.web.StylistWords;
import foretress.web.WeightSaid;
import jakarta.enterprise.context.RequestScoped;
import java.util.List;

/** Which services stand otherwise because of one note: everything is assessed with it and without it. */
@RequestScoped
class NotedChanges {
    private final Intake intake;
    private final Assessments assessments;
    private final NotedFacts facts;
    private final Knowledge knowledge;
    private final Menu menu;
    private final Language language;
    private final StylistWords say;

    NotedChanges(Intake intake, Assessments assessments, NotedFacts facts, Knowledge knowledge, Menu menu,
        Language language, StylistWords say) {
        this.intake = intake;
        this.assessments = assessments;
        this.facts = facts;
        this.knowledge = knowledge;
        this.menu = menu;
        this.language = language;
        this.say = say;
    }

    /** In the order in which the services are looked at; empty for what was struck out, and while the client has said nothing. */
    List<BenchChange> of(Visit visit, Noted note) {
        Answers said = intake.said(visit);
        if (said.byQuestion().isEmpty() || note.struck()) {
            return List.of();
        }
        Situation with = assessments.situation(visit, said);
        Assessment before = assess(visit, facts.without(visit, note, with));
        Assessment after = assess(visit, with);
        return assessments.looked(visit).stream().filter(s -> weight(before, s) != weight(after, s))
            .map(s -> change(visit, s, before, after)).toList();
    }

    private Assessment assess(Visit visit, Situation situation) {
        return Assessor.assess(knowledge.ruleSet(), knowledge.factFinder().find(situation), assessments.looked(visit));
    }

    private static Weight weight(Assessment assessment, Service service) {
        return assessment.standing(service.id()).map(Standing::weight).orElse(Weight.COULD_NOT_BE_ASSESSED);
    }

    private BenchChange change(Visit visit, Service service, Assessment before, Assessment after) {
        boolean booked = visit.services.stream().anyMatch(s -> s.serviceId.equals(service.id()));
        Weight was = weight(before, service);
        Weight is = weight(after, service);
        String because =
            after.spokenOn(service).stream().filter(f -> f.on(service) == is).findFirst().map(this::title).orElse("");
        return new BenchChange(menu.name(service.id(), knowledge.words(language.getTag())), booked, was,
            WeightSaid.of(was, say), is, WeightSaid.of(is, say), because);
    }

    private String title(Finding finding) {
        return knowledge.words(language.getTag()).finding(finding.ruleId(), finding.onlyIfUnknown()).title();
    }
}
