package foretress.intake;

import foretress.consent.Evidence;
import foretress.vault.Vault;
import foretress.visit.Visit;
import jakarta.inject.Singleton;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** Notes when a page was put before the client, for the evidence behind the signature. */
@Singleton
public class PageViews {
    private final Vault vault;
    private final Clock clock;

    PageViews(Vault vault, Clock clock) {
        this.vault = vault;
        this.clock = clock;
    }

    @Transactional
    public void page(UUID visitId, String page) {
        UUID keyOf = Visit.<Visit>findById(visitId).keyOf;
        if (!PageShown.again(visitId, code(keyOf, page), clock.instant())) {
            first(keyOf, visitId, page);
        }
    }

    private void first(UUID keyOf, UUID visitId, String page) {
        new PageShown(visitId, code(keyOf, page), clock.instant(), place -> vault.sealWord(keyOf, place, page))
            .persist();
    }

    /** Whether that page was ever put before the client. */
    boolean ever(Visit visit, String page) {
        String code = code(visit.keyOf, page);
        return PageShown.of(visit.id).stream().anyMatch(shown -> shown.page().equals(code));
    }

    /** Every page with when it was first and last shown, the first one first. */
    List<Evidence.PageShown> pages(Visit visit) {
        return PageShown.of(visit.id).stream()
            .map(p -> new Evidence.PageShown(vault.openWord(visit.keyOf, p.place("name"), p.name()), p.firstAt(),
                p.lastAt()))
            .toList();
    }

    Instant last(Visit visit, String page) {
        return pages(visit).stream().filter(shown -> shown.page().equals(page)).map(Evidence.PageShown::last)
            .findFirst().orElseThrow();
    }

    private String code(UUID keyOf, String page) {
        return vault.code(keyOf, "page_shown.page", page);
    }
}
