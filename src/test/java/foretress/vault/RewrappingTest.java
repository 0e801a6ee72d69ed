package foretress.vault;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.security.GeneralSecurityException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.h2.jdbcx.JdbcDataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("a new master key wraps every client's data key anew, and what they sealed stays as it is")
class RewrappingTest {
    private static final Instant CHANGE = Instant.parse("2026-12-01T10:00:00Z");
    private static final String PLACE = "topic_answers.body.7";
    private static final MasterKeys FIRST = MasterKeys.read("AAECAwQFBgcICQoLDA0ODxAREhMUFRYXGBkaGxwdHh8=");
    private static final MasterKeys BOTH = FIRST.with(new byte[MasterKeys.BYTES], CHANGE);
    /** More than are held at once, and one more. */
    private static final int CLIENTS = 2 * Rewrapping.SOME + 1;

    private record Client(UUID id, String sealed) {}

    private final JdbcDataSource store = new JdbcDataSource();
    private final List<Client> clients = new ArrayList<>();
    private Connection open;

    private static MasterKey master(MasterKeys keys, Instant now) throws GeneralSecurityException {
        return new MasterKey(keys.text(), Clock.fixed(now, ZoneOffset.UTC));
    }

    private static MasterKey newest() throws GeneralSecurityException {
        return master(BOTH.withoutBefore(CHANGE), CHANGE);
    }

    @BeforeEach
    void clientsOfTheFirstKey() throws Exception {
        store.setURL("jdbc:h2:mem:" + UUID.randomUUID());
        open = store.getConnection();
        try (Statement statement = open.createStatement()) {
            statement
                .execute("create table client_key (client_id uuid primary key, wrapped text, wrapped_by varchar(32))");
        }
        MasterKey first = master(FIRST, CHANGE);
        for (int i = 0; i < CLIENTS; i++) {
            UUID id = new UUID(i % 2 == 0 ? i : -i, i);
            String wrapped = first.newWrappedKey(id).text();
            put(id, wrapped);
            clients.add(new Client(id, first.unwrap(id, wrapped).seal(PLACE, said(id), SizeClass.WORD)));
        }
    }

    @AfterEach
    void close() throws SQLException {
        open.close();
    }

    private void put(UUID id, String wrapped) throws SQLException {
        try (PreparedStatement insert = open.prepareStatement("insert into client_key values (?, ?, null)")) {
            insert.setObject(1, id);
            insert.setString(2, wrapped);
            insert.executeUpdate();
        }
    }

    private static byte[] said(UUID id) {
        return ("hives, said " + id).getBytes(UTF_8);
    }

    private String wrapped(UUID id) throws SQLException {
        try (PreparedStatement select = open.prepareStatement("select wrapped from client_key where client_id = ?")) {
            select.setObject(1, id);
            try (ResultSet row = select.executeQuery()) {
                row.next();
                return row.getString(1);
            }
        }
    }

    private static Rewrapping.Done rewrap(JdbcDataSource store, MasterKey with) throws SQLException {
        return new Rewrapping(store, with).all(with.current());
    }

    @Test
    void theNewKeyAloneOpensWhatWasSealedBefore() throws Exception {
        assertThat(rewrap(store, master(BOTH, CHANGE))).isEqualTo(new Rewrapping.Done(CLIENTS, 0));
        MasterKey alone = newest();
        for (Client client : clients) {
            assertThat(alone.unwrap(client.id(), wrapped(client.id())).open(PLACE, client.sealed()))
                .isEqualTo(said(client.id()));
            assertThatThrownBy(() -> master(FIRST, CHANGE).unwrap(client.id(), wrapped(client.id())))
                .isInstanceOf(GeneralSecurityException.class);
        }
    }

    @Test
    void whatIsWrappedByTheNewKeyIsNotWrappedAgain() throws Exception {
        rewrap(store, master(BOTH, CHANGE));
        String before = wrapped(clients.get(0).id());
        assertThat(rewrap(store, master(BOTH, CHANGE))).isEqualTo(new Rewrapping.Done(0, 0));
        assertThat(wrapped(clients.get(0).id())).isEqualTo(before);
    }

    @Test
    void beforeItsMomentBothOpenAndTheFirstWraps() throws Exception {
        MasterKey early = master(BOTH, CHANGE.minusNanos(1));
        assertThat(early.current()).isEqualTo(master(FIRST, CHANGE).current());
        UUID other = UUID.randomUUID();
        MasterKey.Wrapped elsewhere = master(BOTH, CHANGE).newWrappedKey(other);
        assertThat(early.unwrap(other, elsewhere.text())).isNotNull();
        assertThat(elsewhere.by()).isNotEqualTo(early.newWrappedKey(other).by());
    }

    @Test
    void aKeyThatWasAlteredIsCountedAndLeft() throws Exception {
        UUID altered = UUID.randomUUID();
        put(altered, wrapped(clients.get(0).id()));
        assertThat(rewrap(store, master(BOTH, CHANGE))).isEqualTo(new Rewrapping.Done(CLIENTS, 1));
        assertThat(rewrap(store, master(BOTH, CHANGE))).isEqualTo(new Rewrapping.Done(0, 1));
    }

    @Test
    void aClientForgottenMeanwhileStaysForgotten() throws Exception {
        UUID forgotten = clients.get(3).id();
        MasterKey forgetting = new MasterKey(BOTH.text(), Clock.fixed(CHANGE, ZoneOffset.UTC)) {
            @Override
            Wrapped wrappedAnew(UUID client, String before) throws GeneralSecurityException {
                if (client.equals(forgotten)) {
                    forget(forgotten);
                }
                return super.wrappedAnew(client, before);
            }
        };
        rewrap(store, forgetting);
        assertThatThrownBy(() -> wrapped(forgotten)).isInstanceOf(SQLException.class);
    }

    private void forget(UUID client) {
        try (PreparedStatement delete = open.prepareStatement("delete from client_key where client_id = ?")) {
            delete.setObject(1, client);
            delete.executeUpdate();
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }
}
