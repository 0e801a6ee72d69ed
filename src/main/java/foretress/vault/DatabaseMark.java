package foretress.vault;

import foretress.running.AtStart;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.Optional;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Writes into a new database what it is and which keys it belongs to, so that the next start can tell a mix-up. */
@Singleton
class DatabaseMark implements AtStart {
    private final DataSource store;
    private final Optional<String> kind;
    private final Optional<String> keys;

    DatabaseMark(DataSource store, @ConfigProperty(name = "foretress.kind") Optional<String> kind,
        @ConfigProperty(name = "foretress.keys-fingerprint") Optional<String> keys) {
        this.store = store;
        this.kind = kind;
        this.keys = keys;
    }

    /** Before anything is written that belongs to one kind. */
    @Override
    public int order() {
        return 0;
    }

    @Override
    public void run() {
        QuarkusTransaction.requiringNew().run(() -> {
            kind.ifPresent(value -> once("kind", value));
            keys.ifPresent(value -> once("keys", value));
        });
    }

    private void once(String name, String said) {
        try (Connection connection = store.getConnection(); PreparedStatement insert = connection.prepareStatement(
            "insert into mark (name, said) select ?, ? where not exists (select 1 from mark where name = ?)")) {
            insert.setString(1, name);
            insert.setString(2, said);
            insert.setString(3, name);
            insert.executeUpdate();
        } catch (SQLException e) {
            throw new IllegalStateException("the database could not be marked", e);
        }
    }
}
