package foretress.alternative;

import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Weight;
import foretress.intake.Assessments;
import foretress.intake.Intake;
import foretress.intake.Plans;
import foretress.intake.StrandMaps;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.plan.TestPlan;
import foretress.questionnaire.Answers;
import foretress.visit.Visit;
import foretress.web.DateWords;
import foretress.web.Language;
import jakarta.enterprise.context.RequestScoped;
import java.util.ArrayList;
import java.util.List;

/** What the booked service itself still needs before it is possible. */
@RequestScoped
class NeedViews {
    private final GentlerWays ways;
    private final Assessments assessments;
    private final Intake intake;
    private final Plans plans;
    private final StrandMaps maps;
    private final Knowledge knowledge;
    private final Language language;
    private final InsteadWords say;

    NeedViews(GentlerWays ways, Assessments assessments, Intake intake, Plans plans, StrandMaps maps,
        Knowledge knowledge, Language language, InsteadWords say) {
        this.ways = ways;
        this.assessments = assessments;
        this.intake = intake;
        this.plans = plans;
        this.maps = maps;
        this.knowledge = knowledge;
        this.language = language;
        this.say = say;
    }

    List<Need> of(Visit visit, Service service, Weight weight) {
        Answers said = intake.said(visit);
        Outlook outlook = Outlook.of(knowledge, assessments.situation(visit, said), service,
            maps.map(visit, said, words()));
        List<Need> needs = new ArrayList<>();
        if (weight == Weight.TEST_FIRST) {
            TestPlan plan = plans.instead(visit, said, List.of(service));
            needs.add(
                new Need(say.tests_good(ways.owes(plan)), ways.earliest(visit, plan), say.tests_good_how(), false));
        }
        if (outlook.word()) {
            needs.add(new Need(say.doctor(), "", say.doctor_how(), true));
        }
        if (outlook.heals()) {
            needs.add(new Need(say.heals(), "", say.heals_how(), false));
        }
        if (outlook.recovers()) {
            needs.add(new Need(say.recovers(), "", say.recovers_how(), true));
        }
        outlook.cut().ifPresent(cut -> cut(cut, needs));
        outlook.settled().ifPresent(
            finding -> needs.add(new Need(say.final_reason(title(finding)), "", "", false)));
        return needs;
    }

    private void cut(Outlook.CutTo cut, List<Need> needs) {
        String left = cut.left().map(finding -> say.after_cut_left(title(finding))).orElse("");
        needs.add(new Need(say.cut_to(cut.cm()), say.after_cut(), left, true));
        cut.grown().ifPresent(month -> needs.add(new Need(say.grown(),
            new DateWords(language.locale()).month(month), say.grown_how() + (left.isEmpty() ? "" : " " + left),
            false)));
    }

    private String title(Finding finding) {
        return words().finding(finding.ruleId(), finding.onlyIfUnknown()).title();
    }

    private Words words() {
        return knowledge.words(language.getTag());
    }
}
