package foretress.bench;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.MovedClock;
import foretress.running.Clockwork;
import foretress.salon.OpenSalon;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The server's own counter across restarts and jumps of the wall clock; no two of these figures may differ by a slow machine's seconds. */
@QuarkusTest
class BenchTimeTest {
    private static final long SLOW_SECONDS = 90;

    @Inject BenchTime time;
    @Inject BenchRecords tests;
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject MovedClock clock;
    @Inject MovedNanos nanos;

    @BeforeEach
    void open() {
        salon.open();
    }

    @AfterEach
    void putTheClockBack() {
        clock.reset();
        nanos.step(Duration.ZERO);
    }

    private BenchRecord running(BenchKind kind, int minutes) {
        UUID visit = make.visit(LocalDate.of(1965, 3, 4));
        UUID petra = salon.stylist().id;
        BenchRecord made = tests.make(visit, kind, UUID.randomUUID().toString(),
            new BenchTrialBody("Larkmoss 4-0", 6, minutes, Optional.empty()), petra);
        tests.start(made, minutes * 60, petra);
        return found(made);
    }

    private BenchRecord found(BenchRecord test) {
        return QuarkusTransaction.requiringNew().call(() -> BenchRecord.findById(test.id()));
    }

    private void assertMinutesLeft(BenchRecord test, long minutes) {
        assertThat(tests.leftSeconds(test)).isBetween(Math.max(0, minutes * 60 - SLOW_SECONDS), minutes * 60);
    }

    /** What a start of the server does: it knows only what was written down. */
    private void restart() {
        time.run();
    }

    @Test
    void aTestGoesOnAfterARestartAndTheTimeWithoutAServerDoesNotCount() {
        BenchRecord test = running(BenchKind.CUTTING, 30);
        nanos.move(Duration.ofMinutes(10));
        time.keep();
        clock.move(Duration.ofMinutes(45));
        restart();
        assertMinutesLeft(test, 20);
        nanos.move(Duration.ofMinutes(20));
        assertThat(tests.leftSeconds(test)).isZero();
    }

    @Test
    void whatRanSinceTheLastWritingIsLostInACrashSoTheTestTakesLonger() {
        BenchRecord test = running(BenchKind.CUTTING, 30);
        nanos.move(Duration.ofMinutes(10));
        time.keep();
        nanos.move(Duration.ofMinutes(3));
        restart();
        assertMinutesLeft(test, 20);
    }

    @Test
    void onAHeadTheTimeWithoutAServerCounts() {
        BenchRecord test = running(BenchKind.STRAND, 30);
        nanos.move(Duration.ofMinutes(10));
        clock.move(Duration.ofMinutes(10));
        time.keep();
        clock.move(Duration.ofMinutes(5));
        restart();
        assertMinutesLeft(test, 15);
    }

    @Test
    @DisplayName("R58: a restart during a watch is on the record, from when to when; one before it or after it is not")
    void theTimeWithoutAServerIsSaid() {
        restart();
        BenchRecord test = running(BenchKind.CUTTING, 30);
        nanos.move(Duration.ofMinutes(10));
        clock.move(Duration.ofMinutes(10));
        time.keep();
        clock.move(Duration.ofMinutes(4));
        restart();
        List<BenchGap> gaps = QuarkusTransaction.requiringNew().call(() -> tests.gaps(found(test)));
        assertThat(gaps).hasSize(1);
        assertThat(Duration.between(gaps.get(0).from(), gaps.get(0).to())).isBetween(Duration.ofMinutes(4),
            Duration.ofMinutes(4).plusSeconds(SLOW_SECONDS));
        tests.end(found(test), salon.stylist().id);
        clock.move(Duration.ofMinutes(20));
        restart();
        assertThat(QuarkusTransaction.requiringNew().call(() -> tests.gaps(found(test)))).hasSize(1);
    }

    @Test
    @DisplayName("R58: a machine that sleeps under a running watch, with no restart, is on the record too; the dish waits, hair on a head does not")
    void aSleepIsSaid() {
        restart();
        BenchRecord dish = running(BenchKind.CUTTING, 30), head = running(BenchKind.STRAND, 30);
        nanos.move(Duration.ofMinutes(10));
        clock.move(Duration.ofMinutes(10));
        time.beat();
        clock.move(Duration.ofMinutes(7));
        time.beat();
        time.beat();
        assertMinutesLeft(dish, 20);
        assertMinutesLeft(head, 13);
        for (BenchRecord test : List.of(dish, head)) {
            List<BenchGap> gaps = QuarkusTransaction.requiringNew().call(() -> tests.gaps(found(test)));
            assertThat(gaps).singleElement().matches(gap -> gap.asleep());
            assertThat(Duration.between(gaps.get(0).from(), gaps.get(0).to()))
                .isBetween(Duration.ofMinutes(7).minusSeconds(5), Duration.ofMinutes(7).plusSeconds(SLOW_SECONDS));
        }
        restart();
        assertThat(QuarkusTransaction.requiringNew().call(() -> tests.gaps(found(dish)))).as("nothing is said twice")
            .filteredOn(gap -> gap.asleep()).hasSize(1);
    }

    @Test
    @DisplayName("R58: a machine asleep until the very moment a test is taken down is on its record; one asleep before its start or after its end is not")
    void onlyASleepDuringTheWatchIsSaid() {
        restart();
        clock.move(Duration.ofMinutes(3));
        BenchRecord test = running(BenchKind.CUTTING, 30);
        nanos.move(Duration.ofMinutes(1));
        clock.move(Duration.ofMinutes(21).plusSeconds(30));
        tests.end(found(test), salon.stylist().id);
        nanos.move(Duration.ofMinutes(1));
        clock.move(Duration.ofMinutes(9));
        time.beat();
        List<BenchGap> gaps = QuarkusTransaction.requiringNew().call(() -> tests.gaps(found(test)));
        assertThat(gaps).singleElement().matches(gap -> Duration.between(gap.from(), gap.to()).toMinutes() == 20);
    }

    @Test
    @DisplayName("R58: a machine that falls asleep right after a test began sleeps in that test, however long the start took to write down")
    void aSleepRightAfterTheStartIsSaid() {
        nanos.step(Duration.ofMillis(3));
        BenchRecord test = running(BenchKind.CUTTING, 30);
        clock.move(Duration.ofMinutes(7));
        tests.end(found(test), salon.stylist().id);
        assertThat(QuarkusTransaction.requiringNew().call(() -> tests.gaps(found(test)))).hasSize(1);
    }

    @Test
    @DisplayName("R58: what looks like a sleep may be a clock put forward, so the wait for the next day's look is not shortened by it")
    void aSleepShortensNoWait() {
        BenchRecord test = running(BenchKind.CUTTING, 30);
        clock.move(Duration.ofHours(24));
        time.beat();
        assertThat(Duration.ofMillis(tests.sinceBegunMillis(test))).isLessThan(Duration.ofHours(1));
    }

    @Test
    void aClockCorrectedByAFewSecondsOrPutBackIsNoSleep() {
        var then = new BenchLook(clock.instant(), 0, Run.NONE);
        long minute = Duration.ofMinutes(1).toNanos();
        assertThat(new BenchLook(then.wall().plusSeconds(69), minute, Run.NONE).sleptSince(then)).isEmpty();
        assertThat(new BenchLook(then.wall().plusSeconds(70), minute, Run.NONE).sleptSince(then))
            .contains(new BenchLook.Sleep(0, then.wall().plusSeconds(60), then.wall().plusSeconds(70)));
        assertThat(new BenchLook(then.wall().minusSeconds(900), minute, Run.NONE).sleptSince(then)).isEmpty();
    }

    @Test
    void aWallClockPutForwardOrBackLeavesARunningClockAlone() {
        BenchRecord test = running(BenchKind.CUTTING, 30);
        nanos.move(Duration.ofMinutes(5));
        clock.move(Duration.ofHours(8));
        assertMinutesLeft(test, 25);
        time.keep();
        clock.move(Duration.ofHours(-30));
        restart();
        assertMinutesLeft(test, 25);
    }

    @Test
    void theNightBetweenCountsForTheLookOnTheNextDay() {
        BenchRecord test = running(BenchKind.CUTTING, 30);
        time.keep();
        clock.move(Duration.ofHours(24));
        restart();
        assertThat(Duration.ofMillis(tests.sinceBegunMillis(test))).isGreaterThanOrEqualTo(Duration.ofHours(24));
        assertMinutesLeft(test, 30);
    }

    @Test
    void aServerThatNeverWroteStartsAtNothing() {
        QuarkusTransaction.requiringNew().run(() -> BenchClock.deleteAll());
        var first = new BenchTime(nanos, Clock.systemUTC(), new Clockwork(), "h2");
        first.run();
        Run now = first.reading();
        assertThat(now.ranMillis()).isLessThan(SLOW_SECONDS * 1000);
        time.keep();
    }

    /** A server of its own on the same store, with a counter that only the test moves. */
    private final class Beside implements BenchNanos {
        private final BenchTime time = new BenchTime(this, clock, new Clockwork(), "postgresql");
        private long nanos;

        @Override
        public long read() {
            return nanos;
        }
    }

    /** Whichever began it and whichever reads it; the lot decides who beats when, and one of them starts late. */
    @Test
    @DisplayName("with three servers on one store no test is over too early at any, and none takes half a minute longer")
    void severalServersCountTogether() {
        QuarkusTransaction.requiringNew().run(() -> BenchClock.deleteAll());
        var random = new Random(20261201);
        var servers = new ArrayList<Beside>(List.of(new Beside(), new Beside()));
        servers.forEach(one -> one.time.run());
        record Began(Run at, long second) {}
        var began = new ArrayList<Began>();
        for (long second = 1; second <= 240; second++) {
            for (Beside one : servers) {
                one.nanos += 1_000_000_000L;
            }
            clock.move(Duration.ofSeconds(1));
            if (second == 60) {
                servers.add(new Beside());
                servers.get(2).time.run();
            }
            for (int i = 0; i < servers.size(); i++) {
                if (second % 5 == i * 2 && random.nextInt(10) > 0) {
                    servers.get(i).time.beat();
                }
            }
            if (second % 20 == 0) {
                began.add(new Began(servers.get(random.nextInt(servers.size())).time.begin(), second));
            }
            for (Began test : began) {
                for (Beside one : servers) {
                    long passed = (second - test.second) * 1000;
                    assertThat(one.time.reading().since(test.at).ranMillis()).as("after %d ms", passed)
                        .isLessThanOrEqualTo(passed).isGreaterThanOrEqualTo(passed - 30_000);
                }
            }
        }
        time.keep();
    }

    @Test
    void aTestEndedStandsStill() {
        BenchRecord test = running(BenchKind.CUTTING, 30);
        nanos.move(Duration.ofMinutes(12));
        tests.end(test, salon.stylist().id);
        BenchRecord ended = found(test);
        nanos.move(Duration.ofHours(1));
        assertMinutesLeft(ended, 18);
        assertThat(ended.state()).isEqualTo(BenchRecord.State.ENDED);
    }
}
