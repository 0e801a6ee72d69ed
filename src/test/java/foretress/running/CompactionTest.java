package foretress.running;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.h2.jdbc.JdbcConnection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** As shipped, but for old pages that may be written over at once instead of after 45 seconds. */
class CompactionTest {
    private static final int ROWS = 1_000;
    private static final int COMMITS = 400;
    @TempDir Path folder;

    private Connection open() throws SQLException {
        return DriverManager.getConnection("jdbc:h2:file:" + folder.resolve("tried")
            + ";CIPHER=AES;WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE;RETENTION_TIME=0", "sa", "file user");
    }

    /** @return bytes of the file after so many commits, each to another place in it */
    private long written(boolean compacted) throws SQLException, IOException {
        try (Connection connection = open(); Statement statement = connection.createStatement()) {
            statement.execute("create table said(id int primary key, times int, bytes varchar)");
            statement.execute("insert into said select x, 0, repeat('x', 2000) from system_range(1, " + ROWS + ")");
            for (int commit = 0; commit < COMMITS; commit++) {
                statement.execute("update said set times = times + 1 where id = " + (commit * 577 % ROWS + 1));
                if (compacted && commit % 10 == 0) {
                    Compaction.compact(connection.unwrap(JdbcConnection.class));
                }
            }
            return Files.size(folder.resolve("tried.mv.db"));
        }
    }

    @Test
    void aFileThatIsCompactedWhileOpenStaysSmallAndLosesNothing() throws Exception {
        long compacted = written(true);
        assertThat(everyCommitIsThere()).isTrue();
        Files.delete(folder.resolve("tried.mv.db"));
        assertThat(compacted).isLessThan(written(false) / 2);
    }

    private boolean everyCommitIsThere() throws SQLException {
        try (Connection again = open(); Statement statement = again.createStatement();
            ResultSet row =
                statement.executeQuery("select count(*) from said where length(bytes) = 2000 and times = 1")) {
            return row.next() && row.getInt(1) == COMMITS;
        }
    }

    @Test
    void aDatabaseInMemoryIsLeftAlone() throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:h2:mem:compaction", "sa", "")) {
            Compaction.compact(connection.unwrap(JdbcConnection.class));
            assertThat(connection.isValid(1)).isTrue();
        }
    }
}
