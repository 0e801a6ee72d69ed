package foretress.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.narayana.jta.QuarkusTransactionException;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
@DisplayName("D14, B31: the audit chain has one writer, no gap, and shows where it was touched")
class LedgerTest {
    @Inject Ledger ledger;
    @Inject DataSource store;

    @BeforeEach
    @AfterEach
    void empty() throws SQLException {
        sql("delete from ledger_entry");
        sql("update ledger_head set number = 0, sha256 = '" + AuditEntry.NOTHING_BEFORE + "'");
    }

    private void sql(String statement) throws SQLException {
        try (Connection connection = store.getConnection(); Statement s = connection.createStatement()) {
            s.execute(statement);
        }
    }

    private long count() throws SQLException {
        try (Connection connection = store.getConnection(); Statement s = connection.createStatement();
            ResultSet rows = s.executeQuery("select count(*) from ledger_entry")) {
            rows.next();
            return rows.getLong(1);
        }
    }

    private void fiveEntries() {
        for (int i = 1; i <= 5; i++) {
            ledger.note("staff", "visit opened", "visit " + i);
        }
    }

    @Test
    void anUntouchedChainHolds() {
        fiveEntries();
        assertThat(ledger.firstBroken()).isEmpty();
    }

    @Test
    void anEditIsFound() throws SQLException {
        fiveEntries();
        sql("update ledger_entry set what = 'visit closed' where number = 3");
        assertThat(ledger.firstBroken()).contains(3L);
    }

    @Test
    void aDeletedEntryIsFound() throws SQLException {
        fiveEntries();
        sql("delete from ledger_entry where number = 2");
        assertThat(ledger.firstBroken()).contains(2L);
    }

    @Test
    void swappedEntriesAreFound() throws SQLException {
        fiveEntries();
        sql("update ledger_entry set number = 100 where number = 2");
        sql("update ledger_entry set number = 2 where number = 4");
        sql("update ledger_entry set number = 4 where number = 100");
        assertThat(ledger.firstBroken()).contains(2L);
    }

    @Test
    void aCutTailIsFound() throws SQLException {
        fiveEntries();
        sql("delete from ledger_entry where number >= 4");
        assertThat(ledger.firstBroken()).contains(4L);
    }

    @Test
    void entriesBeyondTheKeptEndAreFound() throws SQLException {
        fiveEntries();
        sql("update ledger_head set number = 3, sha256 = (select sha256 from ledger_entry where number = 3)");
        assertThat(ledger.check()).isEqualTo(new Ledger.Checked(3, Optional.of(4L)));
    }

    @Test
    void anotherEndThanTheKeptOneIsFound() throws SQLException {
        fiveEntries();
        sql("update ledger_head set sha256 = (select sha256 from ledger_entry where number = 2)");
        assertThat(ledger.firstBroken()).contains(5L);
        sql("delete from ledger_entry");
        assertThat(ledger.check()).isEqualTo(new Ledger.Checked(0, Optional.of(1L)));
    }

    @Test
    void anActAndItsEntryAreUndoneTogether() throws SQLException {
        assertThatThrownBy(() -> QuarkusTransaction.requiringNew().run(() -> {
            ledger.note("staff", "visit opened", "visit");
            throw new IllegalStateException("the act failed");
        })).hasMessageContaining("the act failed");
        assertThat(count()).isZero();
    }

    @Test
    void anActWhoseEntryCannotBeWrittenIsUndone() throws SQLException {
        sql("delete from ledger_head");
        sql("create table probe (n integer)");
        try {
            assertThatThrownBy(() -> QuarkusTransaction.requiringNew().run(() -> {
                try {
                    sql("insert into probe (n) values (1)");
                } catch (SQLException e) {
                    throw new IllegalStateException(e);
                }
                ledger.note("staff", "visit opened", "visit");
            })).isInstanceOf(RuntimeException.class);
            assertThat(probes()).isZero();
        } finally {
            sql("drop table probe");
            sql("insert into ledger_head (id, number, sha256) values (1, 0, '" + AuditEntry.NOTHING_BEFORE + "')");
        }
    }

    private long probes() throws SQLException {
        try (Connection connection = store.getConnection(); Statement s = connection.createStatement();
            ResultSet rows = s.executeQuery("select count(*) from probe")) {
            rows.next();
            return rows.getLong(1);
        }
    }

    @Test
    void theSubjectIsNotNamed() throws SQLException {
        ledger.note("staff", "visit opened", "Wilma Thorn");
        try (Connection connection = store.getConnection(); Statement s = connection.createStatement();
            ResultSet row = s.executeQuery("select subject from ledger_entry")) {
            row.next();
            assertThat(row.getString(1)).matches("[0-9a-f]{64}");
        }
    }

    @Test
    void manyHandsWriteOneChain() throws Exception {
        ExecutorService hands = Executors.newFixedThreadPool(8);
        var done = new ArrayList<Future<?>>();
        for (int i = 0; i < 200; i++) {
            String visit = "visit " + i;
            done.add(hands.submit(() -> ledger.note("staff", "visit opened", visit)));
        }
        for (Future<?> each : done) {
            each.get();
        }
        hands.shutdown();
        assertThat(count()).isEqualTo(200);
        assertThat(ledger.firstBroken()).isEmpty();
    }

    @Test
    @DisplayName("a page read again by the same person makes one entry; one read by another, its own")
    void aPageReadAgainMakesOneEntry() throws SQLException {
        String visit = UUID.randomUUID().toString();
        ledger.read("petra", "consultation read", visit);
        ledger.read("petra", "consultation read", visit);
        assertThat(count()).isOne();
        ledger.read("edda", "consultation read", visit);
        assertThat(count()).isEqualTo(2);
    }

    @Test
    @DisplayName("a reading whose entry was rolled back is covered by none")
    void aReadingThatWasRolledBackIsNotCovered() throws SQLException {
        String visit = UUID.randomUUID().toString();
        assertThatThrownBy(() -> QuarkusTransaction.requiringNew().run(() -> {
            ledger.read("petra", "consultation read", visit);
            QuarkusTransaction.setRollbackOnly();
        })).isInstanceOf(QuarkusTransactionException.class);
        assertThat(count()).isZero();
        ledger.read("petra", "consultation read", visit);
        assertThat(count()).isOne();
    }
}
