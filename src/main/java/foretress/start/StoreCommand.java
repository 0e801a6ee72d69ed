package foretress.start;

import java.io.IOException;
import java.io.PrintStream;
import java.security.GeneralSecurityException;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Option;

/** A command that works on the salon's store, with the folders and keys the server would use. Ends with the exit codes of a start. */
abstract class StoreCommand implements Callable<Integer> {
    static final int FINE = 0;
    /** Done, but something was found that the owner has to look at. */
    static final int FOUND = 1;
    static final int BAD_INPUT = 2;

    final PrintStream out;
    final PrintStream err;
    final Clock clock = Clock.systemUTC();

    @Option(names = { "-h", "--help" }, usageHelp = true, description = "Shows this and ends.") boolean asked;

    StoreCommand(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    static List<StoreCommand> all(PrintStream out, PrintStream err) {
        return List.of(new BackupCommand(out, err), new RestoreCommand(out, err), new MoveCommand(out, err),
            new SharesCommand(out, err), new NewMasterKeyCommand(out, err));
    }

    abstract int run(Settings settings, KeyFolder keys)
        throws StartRefused, IOException, SQLException, GeneralSecurityException, InterruptedException;

    @Override
    public final Integer call() {
        try {
            Settings settings = Settings.ofThisProcess();
            return run(settings, new KeyFolder(settings.keys()));
        } catch (StartRefused refused) {
            err.println(refused.getMessage());
            return refused.reason.exitCode;
        } catch (IOException | SQLException | GeneralSecurityException | RuntimeException e) {
            err.println("It was not done: " + e.getMessage());
            return BAD_INPUT;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return BAD_INPUT;
        }
    }
}
