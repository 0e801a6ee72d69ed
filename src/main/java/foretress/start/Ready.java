package foretress.start;

import foretress.knowledge.Knowledge;
import foretress.running.ConsoleNotices;
import foretress.web.PublicAddress;
import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.QuarkusApplication;
import java.io.IOException;

/** What the console reads once requests are answered. */
public class Ready implements QuarkusApplication {
    private final ConsoleNotices notices;
    private final PublicAddress address;
    private final Knowledge knowledge;

    Ready(ConsoleNotices notices, PublicAddress address, Knowledge knowledge) {
        this.notices = notices;
        this.address = address;
        this.knowledge = knowledge;
    }

    @Override
    public int run(String... arguments) throws IOException, StartRefused {
        Preparation.closeFiles(Settings.ofThisProcess());
        notices.lines().forEach(System.out::println);
        System.out.println("ready at " + address.base());
        knowledge.warm();
        Quarkus.waitForExit();
        return 0;
    }
}
