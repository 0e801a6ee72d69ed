package foretress.intake;

import foretress.consent.Evidence;
import foretress.vault.Vault;
import foretress.visit.Visit;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Notes when a page was put before the client, for the evidence behind the signature. */
@Singleton
public class PageViews {
    /** A page looked at again within it, with no other page in between, was last shown when it is noted or up to so much later. */
    static final Duration EXACT = Duration.ofMinutes(1);

    private final Vault vault;
    private final Clock clock;

    PageViews(Vault vault, Clock clock) {
        this.vault = vault;
        this.clock = clock;
    }

    /** Writes only what is new: the first time, a way back from another page, and the last time to the minute. */
    public void page(Visit visit, String page) {
        Instant now = clock.instant();
        Optional<PageShown> before = shown(visit, page);
        if (before.isEmpty()) {
            QuarkusTransaction.joiningExisting().run(() -> first(visit, page, now));
        } else if (!isStillShown(visit, before.get(), now)) {
            QuarkusTransaction.joiningExisting().run(() -> PageShown.again(before.get().id, now));
        }
    }

    private static boolean isStillShown(Visit visit, PageShown before, Instant now) {
        return now.isBefore(before.lastAt().plus(EXACT))
            && PageShown.of(visit.id).stream().noneMatch(other -> other.lastAt().isAfter(before.lastAt()));
    }

    private void first(Visit visit, String page, Instant now) {
        new PageShown(visit.id, code(visit, page), now, place -> vault.sealWord(visit.keyOf, place, page)).persist();
    }

    /** Whether that page was ever put before the client. */
    boolean ever(Visit visit, String page) {
        return shown(visit, page).isPresent();
    }

    private Optional<PageShown> shown(Visit visit, String page) {
        String code = code(visit, page);
        return PageShown.of(visit.id).stream().filter(shown -> shown.page().equals(code)).findFirst();
    }

    /** Every page with when it was first and last shown, the first one first. */
    List<Evidence.PageShown> pages(Visit visit) {
        return PageShown.of(visit.id).stream()
            .map(p -> new Evidence.PageShown(vault.openWord(visit.keyOf, p.place("name"), p.name()), p.firstAt(),
                p.lastAt()))
            .toList();
    }

    Instant last(Visit visit, String page) {
        return shown(visit, page).map(PageShown::lastAt).orElseThrow();
    }

    private String code(Visit visit, String page) {
        return vault.code(visit.keyOf, "page_shown.page", page);
    }
}
