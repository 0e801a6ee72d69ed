package foretress.start;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.api.Command;
import foretress.ledger.Exported;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("D14: verify-trail judges an exported trail offline, with slips kept outside")
class VerifyTrailTest {
    @TempDir Path folder;
    private Path trail;
    private Path slip;

    private record Ended(int status, String out, String err) {}

    @BeforeEach
    void export() throws IOException {
        trail = folder.resolve("trail.json");
        slip = folder.resolve("slip.txt");
        Files.writeString(trail, Exported.of(10));
        Files.writeString(slip, Exported.slip(10, 1, 7));
    }

    private static Ended run(Object... arguments) {
        var out = new ByteArrayOutputStream();
        var err = new ByteArrayOutputStream();
        var said = new PrintStream(out, true, StandardCharsets.UTF_8);
        var wrong = new PrintStream(err, true, StandardCharsets.UTF_8);
        String[] typed = new String[arguments.length + 1];
        typed[0] = "verify-trail";
        for (int i = 0; i < arguments.length; i++) {
            typed[i + 1] = arguments[i].toString();
        }
        int status = Command.run(typed, new ByteArrayInputStream(new byte[0]), said, wrong,
            List.of(new VerifyTrail(() -> {
                throw new StartRefused(StartRefused.Reason.FOLDER, "There is no database yet.");
            }, said, wrong)));
        return new Ended(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void aWholeTrailIsUnbrokenAndWhatFollowsTheSlipIsUnproven() {
        Ended ended = run("--slip", slip, trail);
        assertThat(ended.status()).isZero();
        assertThat(ended.out()).contains("Unbroken up to entry 10.",
            "agree up to entry 7, 3 entries after the last anchor unproven");
    }

    @Test
    void withoutASlipItSaysWhatWouldNotShow() {
        assertThat(run(trail).out()).contains("Unbroken up to entry 10.", "No slip was given");
    }

    @Test
    void theFirstBrokenEntryIsNamed() throws IOException {
        Files.writeString(trail, Exported.of(10).replace("act 4", "act 5"));
        Ended ended = run("--slip", slip, trail);
        assertThat(ended.status()).isOne();
        assertThat(ended.out()).contains("Broken: entry 4 is missing or not as it was written. The 3 before it");
    }

    @Test
    void aTailCutBeforeTheSlipIsNamedAndOneAfterItIsNot() throws IOException {
        Files.writeString(trail, Exported.of(5));
        assertThat(run("--slip", slip, trail).out()).contains("Broken: entry 6 is missing");
        Files.writeString(trail, Exported.of(8));
        assertThat(run("--slip", slip, trail).out()).contains("1 entries after the last anchor unproven");
    }

    @Test
    void aTrailWrittenAnewIsToldByTheSlip() throws IOException {
        Files.writeString(slip, Exported.slip(10, 1, 3) + Exported.slip(10, 4, 7));
        Files.writeString(trail, Exported.anew(10, 5));
        Ended ended = run("--slip", slip, trail);
        assertThat(ended.status()).isOne();
        assertThat(ended.out()).contains("Written anew", "entries 4 to 7", "lies between 4 and 7");
    }

    @Test
    void whatCannotBeReadIsSaidSo() throws IOException {
        assertThat(run("--slip", folder.resolve("none"), trail).status()).isEqualTo(2);
        Files.writeString(slip, "Entries 1 to 7");
        assertThat(run("--slip", slip, trail).err()).contains("its check does not fit");
        Files.writeString(trail, "{}");
        assertThat(run(trail).err()).contains("cannot be judged");
        assertThat(run().err()).contains("There is no database yet.");
    }
}
