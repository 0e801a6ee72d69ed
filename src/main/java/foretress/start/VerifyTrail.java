package foretress.start;

import foretress.ledger.Slip;
import foretress.ledger.TrailProof;
import foretress.ledger.TrailVerdict;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Whether the audit chain is whole, asked where no server runs: of the store itself, or of an exported trail on any machine. */
@Command(name = "verify-trail", sortOptions = false,
    description = { "Reads the audit trail from its first entry on and says whether it is as it was written.",
        "Without a file it opens the store the server would use, which must not be running on the embedded database.",
        "A chain that was written anew from some entry to its very end shows only beside a slip kept outside." })
final class VerifyTrail implements Callable<Integer> {
    private static final int HOLDS = 0, BROKEN = 1, UNREADABLE = 2;

    /** How the store is opened; nothing is written to it. */
    interface Opening {
        Connection open() throws StartRefused;
    }

    @Option(names = { "-h", "--help" }, usageHelp = true, description = "Shows this and ends.") boolean help;
    @Option(names = "--slip", paramLabel = "FILE",
        description = "A text with one slip or many, as mailed or typed from paper; may be given several times.") List<Path> slips =
            new ArrayList<>();
    @Parameters(paramLabel = "TRAIL", arity = "0..1",
        description = "A trail exported as JSON from the owner's page.") Path file;

    private final Opening store;
    private final PrintStream out;
    private final PrintStream err;

    VerifyTrail(Opening store, PrintStream out, PrintStream err) {
        this.store = store;
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        try {
            Optional<List<Slip>> outside = outside();
            return outside.isEmpty() ? UNREADABLE : file == null ? ofStore(outside.get()) : ofFile(outside.get());
        } catch (StartRefused refused) {
            err.println(refused.getMessage());
        } catch (TrailProof.NotATrail wrong) {
            err.println("%s cannot be judged: %s.".formatted(file, wrong.getMessage()));
        } catch (SQLException e) {
            err.println("The store opens, but its audit trail cannot be read: %s".formatted(e.getMessage()));
        } catch (IOException e) {
            err.println("It cannot be read: %s".formatted(e));
        }
        return UNREADABLE;
    }

    private Optional<List<Slip>> outside() throws IOException {
        List<Slip> all = new ArrayList<>();
        for (Path one : slips) {
            Slip.Typed typed = Slip.read(Files.readString(one, StandardCharsets.UTF_8));
            if (typed.mistyped()) {
                err.println("%s holds no slip, or one with a mistake in it: its check does not fit.".formatted(one));
                return Optional.empty();
            }
            all.addAll(typed.slips());
        }
        return Optional.of(all);
    }

    private int ofFile(List<Slip> outside) throws IOException, TrailProof.NotATrail {
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
            return said(TrailProof.ofFile(in, outside), outside.isEmpty() ? Kept.NOWHERE : Kept.OUTSIDE);
        }
    }

    private int ofStore(List<Slip> outside) throws StartRefused, SQLException {
        try (Connection connection = store.open()) {
            List<Slip> inside = outside.isEmpty() ? TrailProof.keptIn(connection) : outside;
            return said(TrailProof.ofStore(connection, inside),
                inside.isEmpty() ? Kept.NOWHERE : outside.isEmpty() ? Kept.INSIDE : Kept.OUTSIDE);
        }
    }

    /** Where the slips lay that the chain was held against. */
    private enum Kept { OUTSIDE, INSIDE, NOWHERE }

    private int said(TrailVerdict found, Kept kept) {
        if (found.firstBroken().isPresent()) {
            out.println("Broken: entry %d is missing or not as it was written. The %d before it hang together."
                .formatted(found.firstBroken().get(), found.whole()));
        } else if (found.against().isPresent()) {
            Slip slip = found.against().get();
            out.println(
                "Written anew: the %d entries hang together, but the slip of %s (entries %d to %d) is of another chain. "
                    .formatted(found.whole(), slip.day(), slip.first(), slip.last())
                    + "The first entry that is not as it was lies between %d and %d."
                        .formatted(found.proven() + 1, slip.last()));
        } else {
            out.println("Unbroken up to entry %d.".formatted(found.whole()));
        }
        out.println(switch (kept) {
            case OUTSIDE -> "%s, %d entries after the last anchor unproven.".formatted(upTo(found), found.unproven());
            case INSIDE -> upTo(found) + ", but these slips lie in the same store; give one kept outside with --slip.";
            case NOWHERE ->
                "No slip was given: a chain written anew to its very end, or cut at its end, would not show.";
        });
        return found.holds() ? HOLDS : BROKEN;
    }

    private static String upTo(TrailVerdict found) {
        return found.proven() == 0 ? "No slip agrees" : "Slips agree up to entry %d".formatted(found.proven());
    }
}
