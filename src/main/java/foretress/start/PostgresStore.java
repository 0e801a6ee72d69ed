package foretress.start;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;

/** A PostgreSQL server, named by the usual settings of the datasource. */
record PostgresStore(Settings settings) implements Store {
    @Override
    public boolean exists() throws StartRefused {
        try (Connection connection = open();
            ResultSet tables = connection.getMetaData().getTables(null, null, "mark", null)) {
            return tables.next();
        } catch (SQLException e) {
            throw unreachable(e);
        }
    }

    @Override
    public void tell(Properties properties) {
        // address, user and password are the operator's, and the server reads them itself
    }

    @Override
    public Connection open() throws StartRefused {
        try {
            return DriverManager.getConnection(url(), settings.get("quarkus.datasource.username").orElse(""),
                settings.get("quarkus.datasource.password").orElse(""));
        } catch (SQLException e) {
            throw unreachable(e);
        }
    }

    DataSource source() throws StartRefused {
        return Flyway.configure().dataSource(url(), settings.get("quarkus.datasource.username").orElse(""),
            settings.get("quarkus.datasource.password").orElse("")).getDataSource();
    }

    private String url() throws StartRefused {
        return settings.get("quarkus.datasource.jdbc.url").filter(url -> url.startsWith("jdbc:postgresql:"))
            .orElseThrow(() -> new StartRefused(
                StartRefused.Reason.DATABASE_UNREACHABLE,
                "This build is for PostgreSQL: set QUARKUS_DATASOURCE_JDBC_URL to an address that begins with "
                    + "jdbc:postgresql:, and QUARKUS_DATASOURCE_USERNAME and _PASSWORD."));
    }

    private static StartRefused unreachable(SQLException e) {
        return new StartRefused(StartRefused.Reason.DATABASE_UNREACHABLE,
            "The PostgreSQL server does not let us in: %s",
            String.valueOf(e.getMessage()).lines().findFirst().orElse("no reason given"));
    }
}
