package foretress.consultation;

import foretress.alternative.InsteadViews;
import foretress.assessment.Assessment;
import foretress.assessment.Weight;
import foretress.bench.OwedLines;
import foretress.consultation.VisitView.Found;
import foretress.consultation.VisitView.Point;
import foretress.intake.Assessments;
import foretress.intake.BookedChemistry;
import foretress.intake.EarlierFindings;
import foretress.intake.EarlierFindings.Earlier;
import foretress.intake.Intake;
import foretress.intake.TakenBackElsewhere;
import foretress.plan.TestPlan;
import foretress.questionnaire.Answers;
import foretress.visit.Visit;
import foretress.web.StylistWords;
import foretress.web.WeightSaid;
import jakarta.enterprise.context.RequestScoped;
import java.util.ArrayList;
import java.util.List;

/** Turns a visit's answers and assessment into what the stylist reads. */
@RequestScoped
public class VisitViews {
    /** Room for what is read beside the standing, see {@link Point#lines}; the rest is one tap away. */
    private static final int SHOWN = 7;

    private final VisitHeads heads;
    private final VisitFolds folds;
    private final Intake intake;
    private final Assessments assessments;
    private final BookedChemistry chemistry;
    private final Points points;
    private final EarlierFindings earlier;
    private final OwedLines owedTests;
    private final InsteadViews instead;
    private final StillToAsk asks;
    private final OverReading over;
    private final Contradicted contradicted;
    private final TakenBackElsewhere elsewhere;
    private final StylistWords say;

    VisitViews(VisitHeads heads, VisitFolds folds, Intake intake, Assessments assessments, BookedChemistry chemistry,
        Points points,
        EarlierFindings earlier, OwedLines owedTests, InsteadViews instead, StillToAsk asks, OverReading over,
        Contradicted contradicted, TakenBackElsewhere elsewhere, StylistWords say) {
        this.heads = heads;
        this.folds = folds;
        this.intake = intake;
        this.assessments = assessments;
        this.chemistry = chemistry;
        this.points = points;
        this.earlier = earlier;
        this.owedTests = owedTests;
        this.instead = instead;
        this.asks = asks;
        this.over = over;
        this.contradicted = contradicted;
        this.elsewhere = elsewhere;
        this.say = say;
    }

    VisitView of(Visit visit) {
        Answers said = intake.said(visit);
        Assessment assessment = assessments.of(visit, said);
        boolean answered = !said.byQuestion().isEmpty() && intake.missing(visit, said).isEmpty();
        List<Earlier> before = earlier.of(visit, assessment);
        List<Point> all = points.of(visit, assessment, said, before);
        List<Point> heavy = heavier(all, true);
        int shown = shown(heavy);
        Weight standing =
            assessments.booked(visit, assessment).heavier(Weight.heaviest(all.stream().map(Point::weight).toList()))
                .heavier(elsewhere.on(visit, chemistry.services(visit)));
        TestPlan plan = owedTests.plan(visit);
        var found = new Found(standing, WeightSaid.of(standing, say), heavy.subList(0, shown),
            heavy.subList(shown, heavy.size()));
        return new VisitView(heads.of(visit), over.of(visit), !said.byQuestion().isEmpty(), answered, found,
            follows(visit, said, plan), asks.of(visit, said), contradicted.of(said), heads.hair(visit, said),
            owedTests.of(visit, plan), instead.of(visit, assessment, before),
            folds.of(visit, heavier(all, false), assessment, said));
    }

    /** What follows beside the standing; first, what it does not know yet. */
    private List<String> follows(Visit visit, Answers said, TestPlan plan) {
        List<String> follows = new ArrayList<>();
        if (elsewhere.isOpen(visit)) {
            follows.add(say.consultation_taken_back());
        }
        if (assessments.takesTheDayForGranted(visit, said)) {
            follows.add(say.consultation_skin_not_asked());
        }
        follows.addAll(owedTests.follows(visit, plan));
        return follows;
    }

    private static List<Point> heavier(List<Point> all, boolean heavy) {
        return all.stream().filter(p -> (p.weight().compareTo(Weight.RESTRICTS) >= 0) == heavy).toList();
    }

    /** How many of them, from the first on, find room beside the standing. */
    private static int shown(List<Point> points) {
        int lines = 0;
        int shown = 0;
        while (shown < points.size() && lines + points.get(shown).lines() <= SHOWN) {
            lines += points.get(shown++).lines();
        }
        return shown;
    }
}
