package foretress.salon;

import jakarta.inject.Singleton;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/** Hashes and checks passwords, at most two at a time, so that a flood of tries leaves memory and processor to everybody else. */
@Singleton
class Passwords {
    private static final int AT_ONCE = 2;
    private static final long PATIENCE_SECONDS = 10;

    private final Semaphore hands = new Semaphore(AT_ONCE, true);
    /** Checked when there is nobody to check, so that a known and an unknown login take the same time. */
    private final PasswordHash nobody = PasswordHash.ofNobody();

    PasswordHash hash(String password) {
        return inTurn(() -> PasswordHash.of(password));
    }

    /** Whether this is that person's password; as slow for nobody, or somebody without a password, as for anybody. */
    boolean check(Optional<Staff> staff, String password) {
        Optional<PasswordHash> stored =
            staff.filter(s -> s.active).flatMap(Staff::passwordHash).map(PasswordHash::parse);
        Boolean matches = inTurn(() -> stored.orElse(nobody).matches(password));
        return matches && stored.isPresent();
    }

    private <T> T inTurn(Supplier<T> work) {
        try {
            if (!hands.tryAcquire(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw new TooBusy();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new TooBusy();
        }
        try {
            return work.get();
        } finally {
            hands.release();
        }
    }

    /** More tries than can be hashed in good time. */
    static class TooBusy extends RuntimeException {}
}
