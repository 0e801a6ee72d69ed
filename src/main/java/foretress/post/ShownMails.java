package foretress.post;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** In the demo, the last mails sent, so that they can be read on a page; in memory only. Elsewhere it keeps nothing. */
@ApplicationScoped
public class ShownMails {
    private static final int AT_MOST = 100;

    public record Shown(Letter letter, String language, Instant sentAt) {}

    private final boolean demo;
    private final Deque<Shown> mails = new ArrayDeque<>();

    ShownMails(@ConfigProperty(name = "foretress.demo") Optional<Boolean> demo) {
        this.demo = demo.orElse(false);
    }

    synchronized void keep(Letter letter, String language, Instant at) {
        if (!demo) {
            return;
        }
        mails.addFirst(new Shown(letter, language, at));
        if (mails.size() > AT_MOST) {
            mails.removeLast();
        }
    }

    /** The newest first. */
    public synchronized List<Shown> newest() {
        return List.copyOf(mails);
    }
}
