package foretress.alternative;

import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Weight;
import foretress.hair.StrandMap;
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
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What the booked service itself still needs before it is possible. */
@RequestScoped
class NeedViews {
    /** What hair is cut for. */
    private static final Set<String> TUFTS = Set.of("incompatibility-test", "test-cutting");
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
        StrandMap map = maps.map(visit, said, words());
        Outlook outlook = Outlook.of(knowledge, assessments::assess, assessments.situation(visit, said), service, map);
        List<Need> needs = new ArrayList<>();
        if (weight == Weight.TEST_FIRST) {
            TestPlan plan = plans.instead(visit, said, List.of(service));
            needs.add(new Need(say.tests_good(ways.owes(plan)), ways.earliest(visit, plan), say.tests_good_how(),
                cutsHair(plan) ? NeedSketch.tufts() : Optional.empty(), false));
        }
        if (outlook.word()) {
            needs.add(new Need(say.doctor(), "", say.doctor_how(), Optional.empty(), true));
        }
        if (outlook.heals()) {
            needs.add(new Need(say.heals(), "", say.heals_how(), Optional.empty(), false));
        }
        if (outlook.recovers()) {
            needs.add(new Need(say.recovers(), "", say.recovers_how(), Optional.empty(), true));
        }
        outlook.cut().ifPresent(cut -> cut(cut, map, needs));
        outlook.settled().ifPresent(
            finding -> needs.add(new Need(say.final_reason(title(finding)), "", "", Optional.empty(), false)));
        return needs;
    }

    private void cut(Outlook.CutTo cut, StrandMap map, List<Need> needs) {
        String left = cut.left().map(finding -> say.after_cut_left(title(finding))).orElse("");
        needs.add(
            new Need(say.cut_to(cut.cm()), say.after_cut(), left,
                NeedSketch.cut(cut.cm(), map.lengthCm(), words().text("strand.texts.strand-cm")), true));
        cut.grown().ifPresent(month -> needs.add(new Need(say.grown(),
            new DateWords(language.locale()).month(month), say.grown_how() + (left.isEmpty() ? "" : " " + left),
            NeedSketch.grown(), false)));
    }

    private static boolean cutsHair(TestPlan plan) {
        return Stream.concat(plan.tests().stream(), plan.onTheDay().stream()).anyMatch(TUFTS::contains);
    }

    private String title(Finding finding) {
        return words().finding(finding.ruleId(), finding.onlyIfUnknown()).title();
    }

    private Words words() {
        return knowledge.words(language.getTag());
    }
}
