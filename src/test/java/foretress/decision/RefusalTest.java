package foretress.decision;

import static foretress.decision.Refusal.LASTING;
import static foretress.decision.Refusal.NOT_ANSWERED;
import static foretress.decision.Refusal.NOT_ON_THE_DAY;
import static foretress.decision.Refusal.NOT_SIGNED;
import static foretress.decision.Refusal.OWNER_ONLY;
import static foretress.decision.Refusal.RESTRICTED;
import static foretress.decision.Refusal.SPOT_NOT_SEEN;
import static foretress.decision.Refusal.WITHOUT_CONDITIONS;
import static foretress.decision.Refusal.WITHOUT_REASON;
import static foretress.decision.Verdict.PROCEED;
import static foretress.decision.Verdict.PROCEED_WITH_CHANGES;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Weight;
import foretress.questionnaire.Question;
import foretress.visit.State;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("Every reason that refuses a decision, on the page and where it is kept")
class RefusalTest {
    private static final List<Question> NONE = List.of();
    private static final List<Question> ONE = Collections.nCopies(1, null);
    private static final Signature.Holds SIGNED = new Signature.Holds(Optional.empty(), Set.of());
    private static final Gate.Open NOTHING_OPEN = new Gate.Open(NONE, NONE, SIGNED, false);
    private static final Refusal.Decider STYLIST = new Refusal.Decider(false, "a reason that is not hers to give");
    private static final Refusal.Decider OWNER = new Refusal.Decider(true, "tested elsewhere");

    private static List<Gate.Weighing> weighs(Weight weight, boolean lasting) {
        return List.of(new Gate.Weighing(null, Weight.NOTE, false, Optional.empty()),
            new Gate.Weighing(null, weight, lasting, Optional.empty()));
    }

    private static Set<Refusal> of(Verdict verdict, Refusal.Decider by, Gate.Open open, Weight weight,
        boolean lasting) {
        return Refusal.of(new Refusal.Asked(verdict, "a weaker mix"), by, open, weighs(weight, lasting));
    }

    @Test
    void whatIsOpenRefusesEachForItselfWhoeverAsks() {
        var never = new Signature.Holds(Optional.empty(), Set.of(Signature.Changed.ANSWERS));
        for (Refusal.Decider by : List.of(STYLIST, OWNER)) {
            assertThat(of(PROCEED, by, NOTHING_OPEN, Weight.NOTE, false)).isEmpty();
            assertThat(of(PROCEED, by, new Gate.Open(ONE, NONE, SIGNED, false), Weight.NOTE, false))
                .containsExactly(NOT_ANSWERED);
            assertThat(of(PROCEED, by, new Gate.Open(NONE, ONE, SIGNED, false), Weight.NOTE, false))
                .containsExactly(NOT_ON_THE_DAY);
            assertThat(of(PROCEED, by, new Gate.Open(NONE, NONE, never, false), Weight.NOTE, false))
                .containsExactly(NOT_SIGNED);
            assertThat(of(PROCEED, by, new Gate.Open(NONE, NONE, SIGNED, true), Weight.NOTE, false))
                .containsExactly(SPOT_NOT_SEEN);
            assertThat(of(PROCEED_WITH_CHANGES, by, new Gate.Open(ONE, ONE, never, true), Weight.NOTE, false))
                .containsExactlyInAnyOrder(NOT_ANSWERED, NOT_ON_THE_DAY, NOT_SIGNED, SPOT_NOT_SEEN);
        }
    }

    @ParameterizedTest
    @EnumSource(value = Weight.class, names = { "TEST_FIRST", "COULD_NOT_BE_ASSESSED", "PREVENTS" })
    void whatStandsInTheWayIsTheOwnersWithAReasonAndNobodysWhenItLasts(Weight weight) {
        assertThat(of(PROCEED_WITH_CHANGES, STYLIST, NOTHING_OPEN, weight, false)).containsExactly(OWNER_ONLY);
        assertThat(of(PROCEED_WITH_CHANGES, OWNER, NOTHING_OPEN, weight, false)).isEmpty();
        assertThat(of(PROCEED_WITH_CHANGES, new Refusal.Decider(true, "  "), NOTHING_OPEN, weight, false))
            .containsExactly(WITHOUT_REASON);
        assertThat(of(PROCEED, OWNER, NOTHING_OPEN, weight, false)).as("never as it is").containsExactly(RESTRICTED);
        assertThat(of(PROCEED_WITH_CHANGES, OWNER, NOTHING_OPEN, weight, true)).containsExactly(LASTING);
    }

    @Test
    void whatRestrictsGoesAheadWithConditionsWrittenDownOnly() {
        assertThat(of(PROCEED, STYLIST, NOTHING_OPEN, Weight.RESTRICTS, false)).containsExactly(RESTRICTED);
        assertThat(of(PROCEED_WITH_CHANGES, STYLIST, NOTHING_OPEN, Weight.RESTRICTS, false)).isEmpty();
        assertThat(Refusal.of(new Refusal.Asked(PROCEED_WITH_CHANGES, " "), STYLIST, NOTHING_OPEN, List.of()))
            .containsExactly(WITHOUT_CONDITIONS);
    }

    @ParameterizedTest
    @EnumSource(value = Verdict.class, names = { "POSTPONE", "DECLINE" })
    void puttingOffAndDecliningAreNeverRefused(Verdict verdict) {
        assertThat(Refusal.of(new Refusal.Asked(verdict, ""), STYLIST, new Gate.Open(ONE, ONE, SIGNED, true),
            weighs(Weight.PREVENTS, true))).isEmpty();
    }

    @Test
    void onlyAVisitBegunAndNotOverIsDecided() {
        assertThat(Arrays.stream(State.values()).filter(state -> Refusal.of(state).isEmpty()))
            .containsExactly(State.ANSWERING, State.SIGNED, State.DECIDED);
        assertThat(Arrays.stream(State.values())
            .filter(state -> Refusal.of(state).filter(Refusal.NOT_BEGUN::equals).isPresent()))
            .containsExactly(State.BOOKED, State.INVITED);
    }

    @Test
    void onlyWordsNotWrittenYetLeaveAVerdictOnThePage() {
        assertThat(Arrays.stream(Refusal.values()).filter(Refusal::isMendedByWriting)).containsExactly(WITHOUT_REASON,
            WITHOUT_CONDITIONS);
    }
}
