package foretress.bench;

import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.web.ChairTime;
import jakarta.enterprise.context.RequestScoped;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The clocks at the bench in words: what runs, and when nobody watched. */
@RequestScoped
class BenchTimers {
    private final BenchRecords tests;
    private final Visits visits;
    private final BenchSay words;
    private final BenchWords say;
    private final ChairTime time;

    BenchTimers(BenchRecords tests, Visits visits, BenchSay words, BenchWords say, ChairTime time) {
        this.tests = tests;
        this.visits = visits;
        this.words = words;
        this.say = say;
        this.time = time;
    }

    List<BenchTimer> running() {
        List<BenchRecord> running = tests.running();
        Map<UUID, Visit> at = visits.byIds(running.stream().map(BenchRecord::visitId).toList()).stream()
            .collect(Collectors.toMap(visit -> visit.id, Function.identity()));
        return running.stream().map(test -> of(test, Optional.ofNullable(at.get(test.visitId())))).toList();
    }

    BenchTimer of(BenchRecord test) {
        return of(test, visits.find(test.visitId()));
    }

    private BenchTimer of(BenchRecord test, Optional<Visit> at) {
        String name = words.kind(test.kind());
        long left = tests.leftSeconds(test);
        String client = at.map(visit -> visit.client.fullName()).orElse("");
        return new BenchTimer(test.id().toString(), BenchDoor.at(test), name, client, left, BenchNumber.clock(left),
            say.due(name, client));
    }

    /** When nobody watched the clock of this test, a sentence each. */
    List<String> unwatched(Visit visit, BenchRecord test) {
        return tests.gaps(test).stream().map(
            gap -> unwatched(gap, test.kind() == BenchKind.STRAND, hour(visit, gap.from()), hour(visit, gap.to())))
            .toList();
    }

    private String unwatched(BenchGap gap, boolean onTheHead, String from, String to) {
        if (gap.asleep()) {
            return onTheHead ? say.unwatched_asleep_head(from, to) : say.unwatched_asleep(from, to);
        }
        return onTheHead ? say.unwatched_head(from, to) : say.unwatched(from, to);
    }

    private String hour(Visit visit, Instant moment) {
        return time.hour(moment.atZone(visit.zone()));
    }
}
