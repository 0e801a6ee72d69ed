package foretress.running;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.narayana.jta.QuarkusTransactionException;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
@DisplayName("What is held is what the store has, but for another server's change of the last five seconds")
class HeldTest {
    @Inject EntityManager store;
    private final AtomicInteger stored = new AtomicInteger(1);
    private final AtomicInteger asked = new AtomicInteger();
    private final AtomicLong nanos = new AtomicLong();
    private final Held<Integer> held = new Held<>(() -> {
        asked.incrementAndGet();
        return stored.get();
    }, nanos::get);

    @Test
    void itIsAskedOnce() {
        assertThat(held.get()).isEqualTo(1);
        assertThat(held.get()).isEqualTo(1);
        assertThat(asked).hasValue(1);
    }

    @Test
    void whatAnotherServerChangedIsSeenAfterFiveSeconds() {
        held.get();
        stored.set(2);
        nanos.addAndGet(Held.LONGEST.toNanos() - 1);
        assertThat(held.get()).isEqualTo(1);
        nanos.addAndGet(1);
        assertThat(held.get()).isEqualTo(2);
    }

    @Test
    @DisplayName("whoever changes it sees the change at once; when it is committed, so does everybody")
    void aChangeHere() {
        held.get();
        QuarkusTransaction.requiringNew().run(() -> {
            held.changes();
            stored.set(2);
            assertThat(held.get()).isEqualTo(2);
        });
        assertThat(held.get()).isEqualTo(2);
    }

    @Test
    @DisplayName("what others ask while it is being changed is not held beyond the change")
    void askedMeanwhile() {
        QuarkusTransaction.requiringNew().run(() -> {
            held.changes();
            QuarkusTransaction.requiringNew().run(() -> assertThat(held.get()).isEqualTo(1));
            stored.set(2);
        });
        assertThat(held.get()).isEqualTo(2);
    }

    @Test
    void aChangeRolledBackIsNone() {
        assertThatThrownBy(() -> QuarkusTransaction.requiringNew().run(() -> {
            held.changes();
            stored.set(2);
            held.get();
            stored.set(1);
            QuarkusTransaction.setRollbackOnly();
        })).isInstanceOf(QuarkusTransactionException.class);
        assertThat(held.get()).isEqualTo(1);
    }

    @Test
    @DisplayName("a statement that writes the table drops it, whoever sends it")
    void aStatementDropsIt() {
        Held<Integer> watched = Held.of(List.of("look_up"), stored::get);
        watched.get();
        stored.set(2);
        QuarkusTransaction.requiringNew().run(() -> store.createQuery("select count(*) from LookUp").getSingleResult());
        assertThat(watched.get()).as("reading changes nothing").isEqualTo(1);
        QuarkusTransaction.requiringNew()
            .run(() -> store.createQuery("delete from LookUp where madeAt is null").executeUpdate());
        assertThat(watched.get()).isEqualTo(2);
    }
}
