package foretress.consultation;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.salon.OpenSalon;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
@DisplayName("R67: the owner is told whether the audit chain is whole")
class OwnerPagesTest {
    @Inject OpenSalon salon;
    @Inject DataSource store;

    @BeforeEach
    void open() {
        salon.open();
    }

    private long sql(String statement) throws SQLException {
        try (Connection connection = store.getConnection(); Statement prepared = connection.createStatement()) {
            if (!prepared.execute(statement)) {
                return prepared.getUpdateCount();
            }
            try (ResultSet rows = prepared.getResultSet()) {
                rows.next();
                return rows.getLong(1);
            }
        }
    }

    private static String checked(Walker owner) {
        return owner.open(owner.open("/owner").only("a[href*=chain]").attr("href")).expect(200).only("#chain").text();
    }

    @Test
    @DisplayName("only when asked; whole until a row is altered behind the program's back, then the row is named, and how far the chain holds")
    void anAlteredRowIsNamed() throws SQLException {
        Walker owner = salon.as("edda");
        assertThat(owner.open("/owner").only("#chain").text()).doesNotContain("Checked");
        assertThat(checked(owner)).contains("Checked", ": whole. All ").doesNotContain("not as it was written");
        long last = sql("select max(number) from ledger_entry");
        assertThat(sql("update ledger_entry set what = concat(what, '!') where number = " + last)).isOne();
        try {
            assertThat(checked(owner))
                .contains("entry " + last + " is missing or not as it was written", "Copy the whole data folder now")
                .doesNotContain(": whole.");
        } finally {
            sql("update ledger_entry set what = substring(what, 1, length(what) - 1) where number = " + last);
        }
        assertThat(checked(owner)).contains(": whole. All ");
    }

    @Test
    @DisplayName("nobody else is told")
    void nobodyElse() {
        salon.as("petra").open("/owner?chain=check").expect(403);
        salon.as("sanna").open("/owner?chain=check").expect(403);
    }
}
