package foretress.bench;

import foretress.assessment.TestFact;
import foretress.visit.Visit;
import foretress.web.StylistWords;
import jakarta.enterprise.context.RequestScoped;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Where a test that is owed is begun, gone on with or read. */
@RequestScoped
class OwedActs {
    private final BenchRecords tests;
    private final StylistWords say;

    OwedActs(BenchRecords tests, StylistWords say) {
        this.tests = tests;
        this.say = say;
    }

    /** What the button beside a test says, and where it leads. */
    record Act(String href, String words) {
        static final Act NONE = new Act("", "");
    }

    /** A test that is begun and waits to be read. */
    Act read(Visit visit) {
        return visit.state.isAhead() ? new Act(skinTest(visit), say.owed_read()) : Act.NONE;
    }

    Act begin(Visit visit, String test) {
        if (!visit.state.isAhead()) {
            return Act.NONE;
        }
        return test.equals(TestFact.SKIN_TEST) ? new Act(skinTest(visit), say.owed_record())
            : BenchKind.of(test).map(kind -> bench(visit, kind)).orElse(Act.NONE);
    }

    private Act bench(Visit visit, BenchKind kind) {
        Optional<BenchRecord> begun = tests.ofVisit(visit.id).stream()
            .filter(t -> t.kind() == kind && !t.struck() && t.state() != BenchRecord.State.ENDED).findFirst();
        return begun.map(t -> new Act(BenchDoor.at(t), say.owed_go_on()))
            .orElseGet(() -> new Act(BenchDoor.at(visit) + "/" + kind.code(), say.owed_start()));
    }

    private static String skinTest(Visit visit) {
        return "/visits/" + visit.id + "/skin-test";
    }

    /** The same list with its first act marked as the one to do next; what comes too late for the visit is none. */
    static List<OwedLine> withNext(List<OwedLine> owed) {
        int next = IntStream.range(0, owed.size()).filter(i -> !owed.get(i).href().isEmpty() && !owed.get(i).late())
            .findFirst().orElse(-1);
        return IntStream.range(0, owed.size()).mapToObj(i -> i == next ? owed.get(i).next() : owed.get(i)).toList();
    }
}
