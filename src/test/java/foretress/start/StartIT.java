package foretress.start;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.SalonOwner;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Base64;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("B13, B29, F19: the packaged program starts by itself, or says in one sentence why not")
@Execution(ExecutionMode.CONCURRENT)
class StartIT {
    private static final Map<String, String> NOTHING = Map.of();

    @TempDir static Path made;
    @TempDir Path folder;

    @BeforeAll
    static void packaged() throws Exception {
        Assumptions.assumeTrue(Launched.isPackaged(),
            "NOT RUN: there is no " + Launched.JAR + "; run mvn package first");
        try (Launched launched = Launched.in(made, NOTHING)) {
            launched.untilReady();
        }
    }

    private void refused(Map<String, String> environment, StartRefused.Reason reason, String... parts)
        throws Exception {
        try (Launched launched = Launched.in(folder, environment)) {
            assertThat(launched.exitCode()).as("%s %s", launched.out(), launched.err()).isEqualTo(reason.exitCode);
            assertThat(launched.err()).singleElement().asString().contains(parts);
        }
    }

    /** A database is there, made and left in good order by an earlier start. */
    private void startedOnce() throws IOException {
        try (Stream<Path> files = Files.walk(made.resolve("data"))) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(made.relativize(file).toString()), StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
    }

    private void starts(Map<String, String> environment) throws Exception {
        try (Launched launched = Launched.in(folder, environment)) {
            launched.untilReady();
        }
    }

    private Path key(String name) {
        return folder.resolve("data/keys/" + name);
    }

    private static String permissions(Path path) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
    }

    @Test
    void aFirstStartNeedsNothingAndServes() throws Exception {
        try (Launched launched = Launched.in(folder, NOTHING).untilReady()) {
            assertThat(launched.get("/q/health/ready").statusCode()).isEqualTo(200);
            assertThat(launched.said("Keys were made in"))
                .hasValueSatisfying(line -> assertThat(line).contains("Copy them"));
            assertThat(launched.said("ready at http://127.0.0.1:" + launched.port)).isPresent();
            assertThat(launched.get(setUpPath(launched)).statusCode()).isEqualTo(200);
            assertThat(launched.get("/set-up/" + "A".repeat(43)).statusCode()).isEqualTo(404);
            ownerOnly();
        }
    }

    private static String setUpPath(Launched launched) {
        return launched.said("/set-up/").orElseThrow().replaceAll(".*(/set-up/\\S+)$", "$1");
    }

    private void ownerOnly() throws IOException {
        assertThat(permissions(folder.resolve("data"))).isEqualTo("rwx------");
        assertThat(permissions(folder.resolve("data/keys"))).isEqualTo("rwx------");
        try (Stream<Path> files = Files.walk(folder.resolve("data"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                assertThat(permissions(file)).as(file.toString()).isEqualTo("rw-------");
            }
        }
    }

    @Test
    @DisplayName("R5: a database that has no time is a sentence, not a stack trace")
    void aDatabaseThatHasNoTime() throws Exception {
        startedOnce();
        refused(Map.of("QUARKUS_DATASOURCE_JDBC_ACQUISITION_TIMEOUT", "PT0.000001S"), StartRefused.Reason.TOO_BUSY,
            "too busy", "Nothing was changed");
    }

    @Test
    @DisplayName("R5: an ordinary end signal writes no complaint, whatever the clockwork was doing")
    void anOrdinaryStopIsQuiet() throws Exception {
        startedOnce();
        for (int i = 0; i < 2; i++) {
            Launched launched = Launched.in(folder,
                Map.of("FORETRESS_POST_EVERY", "1s", "FORETRESS_BENCH_EVERY", "1s", "FORETRESS_SKIN_TEST_EVERY", "1s"));
            try (launched) {
                launched.untilReady();
            }
            launched.exitCode();
            assertThat(launched.out()).noneMatch(line -> line.contains("ERROR") || line.contains("WARN")
                || line.contains("Exception") || line.startsWith("\tat "));
            assertThat(launched.err()).isEmpty();
        }
    }

    @Test
    void untilThereIsAnOwnerEveryStartGivesANewLinkAndTheOldOneIsVoid() throws Exception {
        String first;
        try (Launched launched = Launched.in(folder, NOTHING).untilReady()) {
            first = setUpPath(launched);
        }
        try (Launched launched = Launched.in(folder, NOTHING).untilReady()) {
            assertThat(setUpPath(launched)).isNotEqualTo(first);
            assertThat(launched.get(first).statusCode()).isEqualTo(404);
            assertThat(launched.said("Keys were made")).isEmpty();
        }
    }

    @Test
    void theFileHoldsNoClearText() throws Exception {
        startedOnce();
        var bytes = new String(Files.readAllBytes(folder.resolve("data/foretress.mv.db")), StandardCharsets.ISO_8859_1);
        assertThat(bytes).doesNotContain("ledger_head", "LEDGER_HEAD", "flyway", "STAFF");
        assertThat(folder.resolve("data/foretress.trace.db")).doesNotExist();
    }

    @Test
    void aPortInUse() throws Exception {
        try (var other = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            refused(Map.of("QUARKUS_HTTP_PORT", Integer.toString(other.getLocalPort())),
                StartRefused.Reason.PORT_IN_USE, "Port " + other.getLocalPort());
        }
    }

    @Test
    void aDatabaseInUse() throws Exception {
        startedOnce();
        try (Launched launched = Launched.in(folder, NOTHING).untilReady()) {
            refused(NOTHING, StartRefused.Reason.DATABASE_LOCKED, "in use by another process");
            assertThat(launched.get("/q/health/ready").statusCode()).isEqualTo(200);
        }
    }

    @Test
    void aDamagedDatabaseIsLeftAsItIs() throws Exception {
        startedOnce();
        Path file = folder.resolve("data/foretress.mv.db");
        try (var bytes = new RandomAccessFile(file.toFile(), "rw")) {
            bytes.seek(4096);
            bytes.write(new byte[(int) bytes.length() - 4096]);
        }
        byte[] before = Files.readAllBytes(file);
        refused(NOTHING, StartRefused.Reason.DATABASE_DAMAGED, "is damaged", "backup");
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource({ "master.key", "ledger.key", "database.key" })
    void aMissingKey(String name) throws Exception {
        startedOnce();
        Files.delete(key(name));
        refused(NOTHING, StartRefused.Reason.KEY_MISSING, name);
        assertThat(key(name)).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({ "master.key", "ledger.key", "database.key" })
    void aWrongKey(String name) throws Exception {
        startedOnce();
        Files.writeString(key(name), Base64.getEncoder().encodeToString(new byte[32]));
        refused(NOTHING, StartRefused.Reason.KEY_WRONG, "not the one");
    }

    @Test
    void aSessionKeyTooShort() throws Exception {
        startedOnce();
        Files.writeString(key("session.key"), Base64.getEncoder().encodeToString(new byte[12]));
        refused(NOTHING, StartRefused.Reason.KEY_TOO_SHORT, "12 bytes", "needs 32");
    }

    @Test
    void aLostSessionKeyOnlySignsEverybodyOut() throws Exception {
        startedOnce();
        Files.delete(key("session.key"));
        starts(NOTHING);
        assertThat(key("session.key")).exists();
    }

    @Test
    @DisplayName("a salon from before there were backups is told to copy the new key away")
    void aNewBackupKeyIsSaid() throws Exception {
        startedOnce();
        Files.delete(key("backup.key"));
        try (Launched launched = Launched.in(folder, NOTHING).untilReady()) {
            assertThat(launched.said("backup.key was made in")).isPresent();
        }
    }

    @Test
    void keysMayLieElsewhere() throws Exception {
        Path elsewhere = folder.resolve("safe");
        starts(Map.of("FORETRESS_KEYS", elsewhere.toString()));
        assertThat(elsewhere.resolve("master.key")).exists();
        assertThat(folder.resolve("data/keys")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource(nullValues = "-", value = {
        "0.0.0.0 | - | - | FORETRESS_PUBLIC_ADDRESS is not set",
        "0.0.0.0 | https://visits.example.org | - | without encryption",
        "0.0.0.0 | http://visits.example.org | 10.0.0.1 | must begin with https://",
        "127.0.0.1 | http://visits.example.org | - | must begin with https://",
        "127.0.0.1 | https://visits.example.org/path | - | without a path",
        "127.0.0.1 | visits.example.org | - | must be like",
        "no.such.host.invalid | - | - | no address" }, delimiter = '|')
    void beyondThisMachineOnlyEncryptedAndUnderAKnownAddress(String host, String address, String proxies, String part)
        throws Exception {
        HashMap<String, String> environment = new HashMap<>(Map.of("QUARKUS_HTTP_HOST", host));
        if (address != null) {
            environment.put("FORETRESS_PUBLIC_ADDRESS", address);
        }
        if (proxies != null) {
            environment.put("FORETRESS_TRUSTED_PROXIES", proxies);
        }
        refused(environment, StartRefused.Reason.ADDRESS, part);
        assertThat(folder.resolve("data")).doesNotExist();
    }

    @Test
    void behindAProxyThatEncryptsTheCookiesArePinnedAndTheBrowserIsToldToStayEncrypted() throws Exception {
        startedOnce();
        try (Launched launched = Launched.in(folder, Map.of("FORETRESS_PUBLIC_ADDRESS", "https://visits.example.org",
            "FORETRESS_TRUSTED_PROXIES", "127.0.0.1")).untilReady()) {
            HttpResponse<String> page = launched.get("/sign-in");
            assertThat(page.headers().firstValue("Strict-Transport-Security"))
                .hasValueSatisfying(v -> assertThat(v).contains("max-age=31536000"));
            assertThat(page.headers().firstValue("Set-Cookie"))
                .hasValueSatisfying(v -> assertThat(v).startsWith("__Host-form=").contains("Secure", "Path=/"));
            assertThat(launched.said("/set-up/"))
                .hasValueSatisfying(v -> assertThat(v).contains("https://visits.example.org/set-up/"));
        }
    }

    @Test
    void aSettingThatCannotBeRead() throws Exception {
        refused(Map.of("QUARKUS_HTTP_PORT", "80 80"), StartRefused.Reason.SETTING, "quarkus.http.port");
    }

    @Test
    void theDemoIsNeverMixedIntoARealSalon() throws Exception {
        startedOnce();
        refused(Map.of("FORETRESS_DEMO", "1", "FORETRESS_DATA", "data"), StartRefused.Reason.DEMO_MIXED,
            "belongs to a real salon");
    }

    @Test
    void norARealSalonIntoTheDemo() throws Exception {
        starts(Map.of("FORETRESS_DEMO", "1"));
        assertThat(folder.resolve("demo-data/foretress.mv.db")).exists();
        refused(Map.of("FORETRESS_DATA", "demo-data"), StartRefused.Reason.DEMO_MIXED, "invented salon");
    }

    @Test
    void aFolderThatCannotBeOne() throws Exception {
        Files.writeString(folder.resolve("data"), "a file stands in the way");
        refused(NOTHING, StartRefused.Reason.FOLDER, "cannot be used");
    }

    /** B28: else every try could claim to come from somewhere else, and the brake would never bite. */
    @Test
    void whereARequestSaysItComesFromIsBelievedOfNamedProxiesOnly() throws Exception {
        startedOnce();
        assertThat(isBraked(NOTHING)).isTrue();
        assertThat(isBraked(Map.of("FORETRESS_TRUSTED_PROXIES", "192.0.2.1"))).isTrue();
        assertThat(isBraked(Map.of("FORETRESS_TRUSTED_PROXIES", "127.0.0.1"))).isFalse();
    }

    /** Forty tries are given, and one more every fifteen seconds, which a slow machine may take. */
    private boolean isBraked(Map<String, String> environment) throws Exception {
        try (Launched launched = Launched.in(folder, environment).untilReady()) {
            var somebody = new SalonOwner(launched);
            for (int i = 0; i < 60; i++) {
                if (somebody.tryToSignIn("name" + i, "203.0.113." + i) == 429) {
                    return true;
                }
            }
            return false;
        }
    }

    @Test
    void anOwnerWhoLostThePasswordGetsALinkFromWhoeverMayStartTheProgram() throws Exception {
        startedOnce();
        try (Launched launched = Launched.in(folder, NOTHING).untilReady()) {
            new SalonOwner(launched).setUp(setUpPath(launched));
        }
        try (Launched launched = Launched.in(folder, NOTHING).untilReady()) {
            assertThat(launched.said("/set-up/")).isEmpty();
        }
        try (Launched launched = Launched.in(folder, Map.of("FORETRESS_OWNER_LOST_PASSWORD", "true")).untilReady()) {
            assertThat(launched.said("A new password for edda")).isPresent();
            assertThat(launched.get(setUpPath(launched)).body()).contains("Hello Edda Wren");
        }
    }

    @Test
    void whatAnOperatorsToolsMightAskIsClosed() throws Exception {
        startedOnce();
        try (Launched launched = Launched.in(folder, NOTHING).untilReady()) {
            for (String path : new String[] { "/q/dev-ui", "/q/dev", "/q/openapi", "/q/metrics", "/q/arc",
                "/q/swagger-ui" }) {
                assertThat(launched.get(path).statusCode()).as(path).isEqualTo(404);
            }
        }
    }
}
