package foretress.start;

import foretress.backup.BackupShelf;
import io.smallrye.config.SmallRyeConfig;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** What was set from outside, under the names the server itself uses: {@code quarkus.http.port} is {@code QUARKUS_HTTP_PORT}. */
class Settings {
    private final Function<String, String> source;

    Settings(Function<String, String> source) {
        this.source = source;
    }

    static Settings ofThisProcess() throws StartRefused {
        SmallRyeConfig settings = Built.settings();
        return new Settings(name -> settings.getOptionalValue(name, String.class).orElse(null));
    }

    /** The same with another data folder; its keys lie in it unless a folder of keys is named. */
    Settings inFolder(Path data) {
        return new Settings(name -> name.equals("foretress.data") ? data.toString() : source.apply(name));
    }

    Optional<String> get(String name) {
        return Optional.ofNullable(source.apply(name)).map(String::strip).filter(text -> !text.isEmpty());
    }

    private static String asVariable(String name) {
        return name.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "_");
    }

    /** The program was built for PostgreSQL. */
    boolean postgres() {
        return get("quarkus.datasource.db-kind").filter("postgresql"::equals).isPresent();
    }

    boolean demo() {
        return get("foretress.demo").filter(value -> value.equals("1") || value.equalsIgnoreCase("true")).isPresent();
    }

    Path data() {
        return Path.of(get("foretress.data").orElse(demo() ? "demo-data" : development() ? "dev-data" : "data"))
            .toAbsolutePath().normalize();
    }

    /** A reload in development mode starts again while the port is still held. */
    boolean development() {
        return get("foretress.development").isPresent();
    }

    Path keys() {
        return get("foretress.keys").map(Path::of).orElse(data().resolve("keys")).toAbsolutePath().normalize();
    }

    /** Best on another device than the data. */
    Path backups() {
        return get("foretress.backups").map(Path::of).orElse(data().resolve("backups")).toAbsolutePath().normalize();
    }

    BackupShelf shelf() throws StartRefused {
        return new BackupShelf(backups(), number("foretress.backups-kept", 14));
    }

    String host() {
        return get("quarkus.http.host").orElse("127.0.0.1");
    }

    int port() throws StartRefused {
        return number("quarkus.http.port", 8080);
    }

    int tlsPort() throws StartRefused {
        return number("quarkus.http.ssl-port", 8443);
    }

    private int number(String name, int otherwise) throws StartRefused {
        String text = get(name).orElse(Integer.toString(otherwise));
        if (!text.matches("[0-9]{1,5}") || Integer.parseInt(text) > 65_535) {
            throw new StartRefused(StartRefused.Reason.SETTING,
                "%s is set to \"%s\", which is not a port between 0 and 65535.", asVariable(name), text);
        }
        return Integer.parseInt(text);
    }

    boolean tls() {
        return get("quarkus.http.ssl.certificate.files").isPresent()
            || get("quarkus.http.ssl.certificate.key-store-file").isPresent()
            || get("quarkus.http.tls-configuration-name").isPresent();
    }
}
