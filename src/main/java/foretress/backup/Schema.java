package foretress.backup;

import foretress.vault.Coding;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Collection;
import java.util.List;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.ResourceProvider;
import org.flywaydb.core.api.resource.LoadableResource;

/** The tables of an empty store, made by the program's own migrations up to any version; without a server. */
final class Schema {
    private static final String FOLDER = "db/migration/";
    /** Stands beside all others; where it is found, they are. */
    private static final String LANDMARK = FOLDER + "V20261130_2300__what_is_on_file.sql";

    private final DataSource store;
    private final String masterKey;

    /** @param masterKey as {@code vault.MasterKeys} reads it; a migration that codes answers needs it */
    Schema(DataSource store, String masterKey) {
        this.store = store;
        this.masterKey = masterKey;
    }

    /** The newest migration that this store has seen. */
    static String version(Connection connection) throws SQLException {
        MigrationVersion newest = MigrationVersion.fromVersion("0");
        try (Statement statement = connection.createStatement(); ResultSet rows = statement
            .executeQuery("select \"version\" from \"flyway_schema_history\" where \"success\" = true")) {
            while (rows.next()) {
                String text = rows.getString(1);
                MigrationVersion one = MigrationVersion.fromVersion(text == null ? "0" : text);
                newest = one.compareTo(newest) > 0 ? one : newest;
            }
        }
        return newest.getVersion();
    }

    /** @throws IllegalStateException when the program is older than the version */
    void make(String version) {
        Flyway flyway = flyway(version);
        flyway.migrate();
        String reached = flyway.info().current() == null ? "none" : flyway.info().current().getVersion().getVersion();
        if (!reached.equals(version)) {
            throw new IllegalStateException(
                "this program makes the tables of version %s, and the backup has version %s: take a newer program"
                    .formatted(reached, version));
        }
    }

    /** Only for a store that was empty: takes away what was begun in it. */
    void clean() {
        Flyway.configure(Schema.class.getClassLoader()).dataSource(store).cleanDisabled(false).load().clean();
    }

    void bringToToday() {
        flyway("latest").migrate();
    }

    private Flyway flyway(String target) {
        return Flyway.configure(Schema.class.getClassLoader()).dataSource(store).target(target)
            .resourceProvider(new Migrations()).javaMigrations(new Coding(() -> masterKey)).load();
    }

    /** What the class path holds in the folder, be it a folder or a jar; the framework would only tell a running server. */
    private static final class Migrations implements ResourceProvider {
        private final List<LoadableResource> all = names().stream().sorted().<LoadableResource>map(Sql::new).toList();

        private static List<String> names() {
            URL landmark = Schema.class.getClassLoader().getResource(LANDMARK);
            if (landmark == null) {
                throw new IllegalStateException("the class path holds no " + LANDMARK);
            }
            try {
                return landmark.openConnection() instanceof JarURLConnection jar ? ofJar(jar)
                    : ofFolder(Path.of(URI.create(landmark.toString())).getParent());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private static List<String> ofFolder(Path folder) throws IOException {
            try (Stream<Path> files = Files.list(folder)) {
                return files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".sql")).toList();
            }
        }

        private static List<String> ofJar(JarURLConnection connection) throws IOException {
            connection.setUseCaches(false);
            try (JarFile jar = connection.getJarFile()) {
                return jar.stream().map(entry -> entry.getName())
                    .filter(name -> name.startsWith(FOLDER) && name.endsWith(".sql"))
                    .map(name -> name.substring(FOLDER.length())).toList();
            }
        }

        @Override
        public LoadableResource getResource(String name) {
            return all.stream().filter(one -> one.getFilename().equals(name)).findFirst().orElse(null);
        }

        @Override
        public Collection<LoadableResource> getResources(String prefix, String[] suffixes) {
            return all.stream().filter(one -> one.getFilename().startsWith(prefix))
                .filter(one -> Stream.of(suffixes).anyMatch(one.getFilename()::endsWith)).toList();
        }
    }

    private static final class Sql extends LoadableResource {
        private final String name;

        Sql(String name) {
            this.name = name;
        }

        @Override
        public Reader read() {
            InputStream in = Schema.class.getClassLoader().getResourceAsStream(FOLDER + name);
            return new InputStreamReader(in, StandardCharsets.UTF_8);
        }

        @Override
        public String getAbsolutePath() {
            return FOLDER + name;
        }

        @Override
        public String getAbsolutePathOnDisk() {
            return FOLDER + name;
        }

        @Override
        public String getFilename() {
            return name;
        }

        @Override
        public String getRelativePath() {
            return name;
        }
    }
}
