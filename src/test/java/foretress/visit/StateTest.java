package foretress.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** B25: steps in order only. The list is written out here a second time, from how a visit flows. */
class StateTest {
    private static final Set<String> STEPS = Set.of(
        "BOOKED INVITED", "BOOKED CANCELLED",
        "INVITED ANSWERING", "INVITED CANCELLED",
        "ANSWERING SIGNED", "ANSWERING DECIDED", "ANSWERING CANCELLED", "ANSWERING WITHDRAWN",
        "SIGNED ANSWERING", "SIGNED DECIDED", "SIGNED CANCELLED", "SIGNED WITHDRAWN",
        "DECIDED SIGNED", "DECIDED CLOSED", "DECIDED CANCELLED", "DECIDED WITHDRAWN",
        "CLOSED WITHDRAWN");

    @Test
    void onlyTheListedStepsExistAmongAllPairs() {
        Set<String> allowed = Stream.of(State.values())
            .flatMap(from -> Stream.of(State.values()).filter(from::mayBecome).map(to -> from + " " + to))
            .collect(Collectors.toSet());
        assertThat(allowed).isEqualTo(STEPS);
    }

    @Test
    void aRefusedStepLeavesTheVisitWhereItWas() {
        for (State from : State.values()) {
            for (State to : State.values()) {
                if (STEPS.contains(from + " " + to)) {
                    continue;
                }
                var visit = new Visit();
                visit.state = from;
                assertThatThrownBy(() -> visit.moveTo(to)).isInstanceOf(IllegalStateException.class);
                assertThat(visit.state).isEqualTo(from);
            }
        }
    }

    @Test
    void randomWalksNeverLeaveTheList() {
        var random = new Random(20261124);
        for (int walk = 0; walk < 10_000; walk++) {
            var visit = new Visit();
            visit.state = State.BOOKED;
            for (int step = 0; step < 10; step++) {
                tryAny(visit, random);
            }
        }
    }

    private static void tryAny(Visit visit, Random random) {
        State before = visit.state;
        State wanted = State.values()[random.nextInt(State.values().length)];
        try {
            visit.moveTo(wanted);
            assertThat(STEPS).contains(before + " " + visit.state);
        } catch (IllegalStateException refused) {
            assertThat(visit.state).isEqualTo(before);
        }
    }

    @Test
    void answersAreTakenUntilTheDecisionAndNotAfter() {
        assertThat(Stream.of(State.values()).filter(State::takesAnswers))
            .containsExactly(State.INVITED, State.ANSWERING, State.SIGNED);
    }
}
