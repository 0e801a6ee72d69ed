package foretress.skintest;

import foretress.assessment.Assessment;
import foretress.assessment.Finding;
import foretress.assessment.TestFact;
import foretress.intake.Assessments;
import foretress.intake.BookedChemistry;
import foretress.intake.Intake;
import foretress.intake.Refusals;
import foretress.questionnaire.Answers;
import foretress.visit.PlannedProducts;
import foretress.visit.Visit;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What must be so before a test is put on: answers, a signature, a product; and nobody whom a salon must not test, or who does not want it. */
@Singleton
class SkinTestGate {
    /** What is in the way of a test, the first to be put right in front. */
    enum Missing {
        OVER, ANSWERS, MUST_NOT, REFUSED, SIGNATURE, PRODUCT
    }

    /** @param because what is known to stand against a test */
    record State(List<Missing> missing, List<Finding> because) {
        State {
            missing = List.copyOf(missing);
            because = List.copyOf(because);
        }

        boolean mustNot() {
            return missing.contains(Missing.MUST_NOT);
        }
    }

    private final Intake intake;
    private final Assessments assessments;
    private final TestExclusion mayTest;
    private final TestConsent consent;
    private final BookedChemistry chemistry;
    private final PlannedProducts planned;
    private final Refusals refusals;

    SkinTestGate(Intake intake, Assessments assessments, TestExclusion mayTest, TestConsent consent,
        BookedChemistry chemistry, PlannedProducts planned, Refusals refusals) {
        this.intake = intake;
        this.assessments = assessments;
        this.mayTest = mayTest;
        this.consent = consent;
        this.chemistry = chemistry;
        this.planned = planned;
        this.refusals = refusals;
    }

    boolean open(Visit visit) {
        return of(visit).missing().isEmpty();
    }

    State of(Visit visit) {
        if (!visit.state.isAhead()) {
            return new State(List.of(Missing.OVER), List.of());
        }
        Answers said = intake.said(visit);
        if (said.byQuestion().isEmpty() || !intake.missing(visit, said).isEmpty()) {
            return new State(List.of(Missing.ANSWERS), List.of());
        }
        Assessment assessment = assessments.of(visit, said);
        Set<String> used = used(visit);
        if (mayTest.mustNot(assessment, used)) {
            return new State(List.of(Missing.MUST_NOT), mayTest.against(assessment, used));
        }
        Assessment today = assessments.asOfToday(visit, said);
        if (mayTest.mustNot(today, used)) {
            return new State(List.of(Missing.MUST_NOT), mayTest.against(today, used));
        }
        if (refusals.of(visit).contains(TestFact.SKIN_TEST)) {
            return new State(List.of(Missing.REFUSED), List.of());
        }
        return new State(Stream.of(Missing.SIGNATURE, Missing.PRODUCT).filter(one -> lacks(visit, one)).toList(),
            List.of());
    }

    /** What is booked, and the product that would be put on the skin. */
    private Set<String> used(Visit visit) {
        Stream<String> product = planned.of(visit.id).stream().map(one -> one.line().kind);
        return Stream.concat(chemistry.of(visit).stream(), product).collect(Collectors.toSet());
    }

    private boolean lacks(Visit visit, Missing what) {
        return what == Missing.SIGNATURE ? !consent.possible(visit) : planned.of(visit.id).isEmpty();
    }
}
