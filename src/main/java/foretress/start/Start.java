package foretress.start;

import foretress.api.Command;
import io.quarkus.dev.console.DevConsoleManager;
import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Optional;
import org.jboss.logging.Logger;

/** The way in: runs a command if one is given; else prepares folders, keys and database, or says in one sentence why not, and runs the server. */
@QuarkusMain
public class Start {
    public static void main(String... arguments) {
        if (arguments.length > 0) {
            System.exit(command(arguments));
        }
        if (isDevelopment()) {
            System.setProperty("foretress.development", "true");
        }
        try {
            for (String line : new Preparation(Settings.ofThisProcess(), System::setProperty).prepare()) {
                System.out.println(line);
            }
        } catch (StartRefused refusal) {
            System.err.println(refusal.getMessage());
            System.exit(refusal.reason.exitCode);
        }
        Quarkus.run(Ready.class, Start::ended, arguments);
    }

    /** The server has ended, or never came up: a known reason is said in its sentence, any other with its whole story. */
    private static void ended(int exitCode, Throwable failure) {
        if (failure == null) {
            System.exit(exitCode);
        }
        Optional<StartRefused> known = TooBusy.behind(failure).or(() -> PortTaken.behind(failure));
        known.ifPresentOrElse(refusal -> System.err.println(refusal.getMessage()),
            () -> Logger.getLogger(Start.class).error("the server could not start", failure));
        System.exit(known.map(refusal -> refusal.reason.exitCode).orElse(1));
    }

    /** Whatever follows the jar's name is a command, which needs no server; what opens the store is added here. */
    private static int command(String... arguments) {
        var out = new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
        var err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        var commands = new ArrayList<Object>(StoreCommand.all(out, err));
        commands.add(new VerifyTrail(() -> Store.of(Settings.ofThisProcess()).openExisting(), out, err));
        return Command.run(arguments, System.in, out, err, commands);
    }

    /** The framework itself does not know yet that this is development mode; who reloads its classes is known already. */
    private static boolean isDevelopment() {
        return DevConsoleManager.getHotReplacementContext() != null;
    }
}
