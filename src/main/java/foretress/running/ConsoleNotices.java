package foretress.running;

import jakarta.inject.Singleton;
import java.util.ArrayList;
import java.util.List;

/** What the person at the console should read once the server is ready: the owner's set-up link, the demo's links. Never logged. */
@Singleton
public class ConsoleNotices {
    private final List<String> lines = new ArrayList<>();

    public void add(String line) {
        lines.add(line);
    }

    public List<String> lines() {
        return List.copyOf(lines);
    }
}
