package foretress;

import io.quarkus.dev.console.DevConsoleManager;
import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import org.eclipse.microprofile.config.ConfigProvider;

/** The way in: prepares folders, keys and database, or says in one sentence why not, and runs the server. */
@QuarkusMain
public class Start {
    public static void main(String... arguments) {
        if (isDevelopment()) System.setProperty("foretress.development", "true");
        try {
            for (var line : new Preparation(Settings.ofThisProcess(), isForPostgres(), System::setProperty).prepare()) System.out.println(line);
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

    /** Fixed when the program was built, see application.properties. */
    private static boolean isForPostgres() {
        return ConfigProvider.getConfig().getOptionalValue("quarkus.datasource.db-kind", String.class).filter("postgresql"::equals).isPresent();
    }
}
