package foretress;

import io.quarkus.dev.console.DevConsoleManager;
import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;

/** The way in: prepares folders, keys and database, or says in one sentence why not, and runs the server. */
@QuarkusMain
public class Start {
    public static void main(String... arguments) {
        if (isDevelopment()) System.setProperty("foretress.development", "true");
        try {
            for (var line : new Preparation(Settings.ofThisProcess(), System::setProperty).prepare()) System.out.println(line);
        } catch (Refusal refusal) {
            System.err.println(refusal.getMessage());
            System.exit(refusal.reason.exitCode);
        }
        Quarkus.run(Ready.class, arguments);
    }

    /** The framework itself does not know yet that this is development mode; who reloads its classes is known already. */
    private static boolean isDevelopment() {
        return DevConsoleManager.getHotReplacementContext() != null;
    }
}
