package foretress.running;

import io.quarkus.runtime.ShutdownEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import org.jboss.logging.Logger;

/** What is done by the clock ends with the server: nothing begins once it was told to stop, and what runs may finish while the store is open. */
@Singleton
public class Clockwork {
    private static final Logger LOG = Logger.getLogger(Clockwork.class);
    private static final int PATIENCE_SECONDS = 5;
    private final ReentrantReadWriteLock running = new ReentrantReadWriteLock();
    private volatile boolean over;

    public void run(Runnable job) {
        if (over || !running.readLock().tryLock()) {
            return;
        }
        try {
            if (!over) {
                job.run();
            }
        } finally {
            running.readLock().unlock();
        }
    }

    /** Before all others who want to know of the end. */
    void stop(@Observes @Priority(1) ShutdownEvent event) throws InterruptedException {
        over = true;
        if (running.writeLock().tryLock(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            running.writeLock().unlock();
        } else {
            LOG.info("what was being done by the clock did not finish in time; it is done at the next start");
        }
    }
}
