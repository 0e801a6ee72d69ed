package foretress.start;

import foretress.running.ConsoleNotices;
import foretress.web.PublicAddress;
import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.QuarkusApplication;
import java.io.IOException;

/** What the console reads once requests are answered. */
public class Ready implements QuarkusApplication {
    private final ConsoleNotices notices;
    private final PublicAddress address;

    Ready(ConsoleNotices notices, PublicAddress address) {
        this.notices = notices;
        this.address = address;
    }

    @Override
    public int run(String... arguments) throws IOException, StartRefused {
        Preparation.closeFiles(Settings.ofThisProcess());
        notices.lines().forEach(System.out::println);
        System.out.println("ready at " + address.base());
        Quarkus.waitForExit();
        return 0;
    }
}
