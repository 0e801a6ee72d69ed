package foretress.running;

import jakarta.enterprise.inject.spi.CDI;
import jakarta.transaction.Status;
import jakarta.transaction.Synchronization;
import jakarta.transaction.TransactionSynchronizationRegistry;
import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * What everybody asks of the store and hardly anybody changes, asked once and held. A change made here drops it when it is committed, and
 * until then only the transaction that makes it sees it; a change made by another server is seen after {@link #LONGEST}.
 */
public final class Held<T> {
    public static final Duration LONGEST = Duration.ofSeconds(5);

    private static final Map<String, Collection<Held<?>>> BY_TABLE = new ConcurrentHashMap<>();

    private record Value<T>(T held, long asOf) {}

    private final Supplier<T> ask;
    private final LongSupplier nanos;
    private volatile Value<T> value;
    private long drops;
    private int changing;

    /**
     * @param tables what it is made from: a statement that writes one of them changes it
     * @param ask the value as the store has it; nothing in it may be changed, or hang on the session it was read in
     */
    public static <T> Held<T> of(List<String> tables, Supplier<T> ask) {
        Held<T> held = new Held<>(ask, System::nanoTime);
        tables.forEach(table -> BY_TABLE.computeIfAbsent(table, any -> new CopyOnWriteArrayList<>()).add(held));
        return held;
    }

    Held(Supplier<T> ask, LongSupplier nanos) {
        this.ask = ask;
        this.nanos = nanos;
    }

    /** A statement writes this table. */
    static void written(String table) {
        BY_TABLE.getOrDefault(table, List.of()).forEach(Held::changes);
    }

    public T get() {
        if (isChangedHere()) {
            return ask.get();
        }
        Value<T> known = value;
        return known != null && nanos.getAsLong() - known.asOf() < LONGEST.toNanos() ? known.held() : anew();
    }

    private T anew() {
        long before = drops();
        long now = nanos.getAsLong();
        T asked = ask.get();
        hold(new Value<>(asked, now), before);
        return asked;
    }

    private synchronized long drops() {
        return drops;
    }

    /** What was asked before a change was committed is not held after it; while one is under way nothing is. */
    private synchronized void hold(Value<T> asked, long before) {
        if (drops == before && changing == 0) {
            value = asked;
        }
    }

    private synchronized void drop(int more) {
        changing += more;
        drops++;
        value = null;
    }

    /** Somebody changes it: call it before the change, where that could be asked for before it is written. */
    public void changes() {
        if (isInTransaction() && !isChangedHere()) {
            TransactionSynchronizationRegistry here = transaction();
            here.putResource(this, true);
            here.registerInterposedSynchronization(new AfterIt());
            drop(1);
        } else {
            drop(0);
        }
    }

    /** Whether the transaction around this is the one that changes it. */
    public boolean isChangedHere() {
        return isInTransaction() && transaction().getResource(this) != null;
    }

    private static boolean isInTransaction() {
        int status = transaction().getTransactionStatus();
        return status == Status.STATUS_ACTIVE || status == Status.STATUS_PREPARING;
    }

    private static TransactionSynchronizationRegistry transaction() {
        return CDI.current().select(TransactionSynchronizationRegistry.class).get();
    }

    private final class AfterIt implements Synchronization {
        @Override
        public void beforeCompletion() {}

        @Override
        public void afterCompletion(int status) {
            drop(-1);
        }
    }
}
