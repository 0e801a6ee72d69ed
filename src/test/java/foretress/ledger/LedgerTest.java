package foretress.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.narayana.jta.QuarkusTransactionException;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.BrokenBarrierException;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
@DisplayName("D14, B31: the audit chain has one writer, no gap, and shows where it was touched")
class LedgerTest {
    @Inject Ledger ledger;
    @Inject Anchors anchors;
    @Inject AuditTrail trail;
    @Inject DataSource store;

    @BeforeEach
    @AfterEach
    void empty() throws SQLException {
        sql("delete from ledger_anchor");
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

    private static void await(CyclicBarrier together) {
        try {
            together.await(10, TimeUnit.SECONDS);
        } catch (InterruptedException | BrokenBarrierException | TimeoutException e) {
            throw new IllegalStateException(e);
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
        assertThat(ledger.check(List.of())).isEqualTo(new TrailVerdict(3, Optional.of(4L), 0, Optional.empty()));
    }

    @Test
    void anotherEndThanTheKeptOneIsFound() throws SQLException {
        fiveEntries();
        sql("update ledger_head set sha256 = (select sha256 from ledger_entry where number = 2)");
        assertThat(ledger.firstBroken()).contains(5L);
        sql("delete from ledger_entry");
        assertThat(ledger.check(List.of())).isEqualTo(new TrailVerdict(0, Optional.of(1L), 0, Optional.empty()));
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
    @DisplayName("D14: 64 hands write one chain without a fork; -Dappends=1000 each for the long one")
    void manyHandsWriteOneChain() throws Exception {
        int hands = 64, each = Integer.getInteger("appends", 10);
        ExecutorService all = Executors.newFixedThreadPool(hands);
        var done = new ArrayList<Future<?>>();
        for (int i = 0; i < hands; i++) {
            String visit = "visit " + i;
            done.add(all.submit(() -> {
                for (int n = 0; n < each; n++) {
                    ledger.note("staff", "visit opened", visit);
                }
            }));
        }
        for (Future<?> one : done) {
            one.get();
        }
        all.shutdown();
        assertThat(count()).isEqualTo((long) hands * each);
        assertThat(ledger.firstBroken()).isEmpty();
    }

    @Test
    @DisplayName("D14: slips follow each other without a gap, agree with the chain they were made of, and not with one written anew")
    void slipsFollowEachOther() throws SQLException {
        LocalDate day = LocalDate.of(2026, 6, 1);
        assertThat(anchors.make(day)).isEmpty();
        fiveEntries();
        Slip first = anchors.make(day).orElseThrow();
        assertThat(anchors.make(day)).isEmpty();
        fiveEntries();
        Slip second = anchors.make(day.plusDays(1)).orElseThrow();
        assertThat(List.of(first.first(), first.last(), second.first(), second.last())).containsExactly(1L, 5L, 6L,
            10L);
        assertThat(anchors.newest(5)).containsExactly(second, first);
        ledger.note("staff", "visit opened", "visit");
        assertThat(ledger.check(anchors.newest(5)))
            .isEqualTo(new TrailVerdict(11, Optional.empty(), 10, Optional.empty()));
        empty();
        for (int i = 0; i < 3; i++) {
            fiveEntries();
        }
        assertThat(ledger.firstBroken()).isEmpty();
        assertThat(ledger.check(List.of(first, second)).against()).contains(first);
    }

    @Test
    @DisplayName("D14: of two servers that make a slip at the same moment one does, and the other's transaction is lost")
    void oneServerMakesTheSlip() throws Exception {
        fiveEntries();
        ExecutorService servers = Executors.newFixedThreadPool(2);
        var together = new CyclicBarrier(2);
        Callable<Boolean> server = () -> {
            try {
                return QuarkusTransaction.requiringNew().call(() -> {
                    anchors.newest(1);
                    await(together);
                    return anchors.make(LocalDate.of(2026, 6, 1)).isPresent();
                });
            } catch (Anchors.MadeElsewhere other) {
                return false;
            }
        };
        List<Future<Boolean>> both = List.of(servers.submit(server), servers.submit(server));
        List<Boolean> made = new ArrayList<>();
        for (Future<Boolean> one : both) {
            made.add(one.get());
        }
        servers.shutdown();
        assertThat(anchors.newest(5)).hasSize(1);
        assertThat(made).containsExactlyInAnyOrder(true, false);
    }

    @Test
    void noSlipIsMadeOfWhatDoesNotHangTogether() throws SQLException {
        fiveEntries();
        sql("update ledger_entry set what = 'visit closed' where number = 3");
        assertThatThrownBy(() -> anchors.make(LocalDate.of(2026, 6, 1))).hasMessageContaining("entry 3");
        assertThat(anchors.newest(5)).isEmpty();
    }

    @Test
    @DisplayName("what is exported can be proved from the file alone; a part of it cannot, and a line touched in it is named")
    void anExportIsProvedOffline() throws Exception {
        fiveEntries();
        Slip slip = anchors.make(LocalDate.of(2026, 6, 1)).orElseThrow();
        ledger.note("staff", "visit opened", "");
        String file = exported(Optional.empty());
        assertThat(proved(file, slip)).isEqualTo(new TrailVerdict(6, Optional.empty(), 5, Optional.empty()));
        assertThat(proved(file.replaceFirst("(\"number\":4,.*?)staff", "$1edda"), slip).firstBroken()).contains(4L);
        assertThat(proved(file.replaceFirst(",\\{\"number\":2,[^}]*}", ""), slip).firstBroken()).contains(2L);
        assertThat(proved(file.replaceFirst(",\\s*\\{\"number\":5,(?s:.*)}]", "]"), slip).firstBroken()).contains(5L);
        assertThat(proved(file.replaceFirst("\"at\":\"[^\"]*\"", "\"at\":\"noon\""), slip).firstBroken()).contains(1L);
        assertThatThrownBy(() -> proved(exported(Optional.of("staff")), slip)).hasMessageContaining("a part");
        assertThatThrownBy(() -> proved("[]", slip)).hasMessageContaining("not JSON of an exported trail");
        assertThatThrownBy(() -> proved(file.substring(0, file.length() - 9), slip))
            .isInstanceOf(TrailProof.NotATrail.class);
    }

    private String exported(Optional<String> actor) throws IOException {
        var out = new ByteArrayOutputStream();
        trail.write(new AuditTrail.Asked(Optional.empty(), actor, Optional.empty(), Optional.empty(), Optional.empty()),
            out);
        return out.toString(StandardCharsets.UTF_8);
    }

    private static TrailVerdict proved(String file, Slip slip) throws IOException, TrailProof.NotATrail {
        return TrailProof.ofFile(new ByteArrayInputStream(file.getBytes(StandardCharsets.UTF_8)), List.of(slip));
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
