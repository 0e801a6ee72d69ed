package foretress.running;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.runtime.ShutdownEvent;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("R5: what is done by the clock ends with the server")
class ClockworkTest {
    private final Clockwork clockwork = new Clockwork();

    @Test
    void nothingBeginsOnceTheServerWasToldToStop() throws InterruptedException {
        var done = new AtomicInteger();
        clockwork.run(done::incrementAndGet);
        clockwork.stop(new ShutdownEvent());
        clockwork.run(done::incrementAndGet);
        assertThat(done).hasValue(1);
    }

    @Test
    void whatRunsMayFinishBeforeTheStoreCloses() throws InterruptedException {
        var begun = new CountDownLatch(1);
        var go = new CountDownLatch(1);
        var finished = new AtomicBoolean();
        var job = new Thread(() -> clockwork.run(() -> {
            begun.countDown();
            await(go);
            finished.set(true);
        }));
        job.start();
        begun.await();
        new Thread(go::countDown).start();
        clockwork.stop(new ShutdownEvent());
        assertThat(finished).isTrue();
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void aJobThatFailsLeavesTheEndFree() throws InterruptedException {
        try {
            clockwork.run(() -> {
                throw new IllegalStateException("no such table");
            });
        } catch (IllegalStateException expected) {
            assertThat(expected).hasMessage("no such table");
        }
        clockwork.stop(new ShutdownEvent());
    }
}
