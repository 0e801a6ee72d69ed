package foretress.salon;

import foretress.knowledge.Knowledge;
import foretress.running.AtStart;
import foretress.running.AuditEvent;
import foretress.web.SpokenLanguages;
import foretress.web.Supported;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.event.TransactionPhase;
import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Which drafted languages a named person has read, and so which of those the salon chose a client is spoken to in. */
@ApplicationScoped
public class LanguageReviews implements AtStart {
    private final Knowledge knowledge;
    private final SpokenLanguages spoken;
    private final Event<AuditEvent> happened;
    private final Clock clock;
    private final boolean demo;

    LanguageReviews(Knowledge knowledge, SpokenLanguages spoken, Event<AuditEvent> happened, Clock clock,
        @ConfigProperty(name = "foretress.demo") Optional<Boolean> demo) {
        this.knowledge = knowledge;
        this.spoken = spoken;
        this.happened = happened;
        this.clock = clock;
        this.demo = demo.orElse(false);
    }

    @Override
    public void run() {
        tell();
    }

    void changed(@Observes(during = TransactionPhase.AFTER_SUCCESS) RulesChanged salon) {
        tell();
    }

    /** The demo shows every draft; everything in it is invented, and says so. */
    private void tell() {
        Collection<String> read =
            demo ? Supported.TAGS : QuarkusTransaction.requiringNew().call(LanguageReviews::chosenAndRead);
        spoken.are(read::contains);
    }

    private static List<String> chosenAndRead() {
        List<String> chosen = Salon.found().map(Salon::languageTags).orElse(List.of());
        return LanguageReview.holding().stream().map(LanguageReview::language).filter(chosen::contains).toList();
    }

    ClientSentences sentences(String tag) {
        return new ClientSentences(knowledge, tag);
    }

    /** @param reader who read all of it */
    public void read(String tag, String reader, UUID staff) {
        QuarkusTransaction.requiringNew().run(() -> {
            LanguageReview.of(tag).ifPresent(before -> before.takeBack(clock.instant()));
            new LanguageReview(tag, reader, LanguageReview.written(sentences(tag).marks()), staff, clock.instant())
                .persist();
            note("let a language be shown", tag, staff);
        });
        tell();
    }

    void takeBack(String tag, UUID staff) {
        QuarkusTransaction.requiringNew().run(() -> LanguageReview.of(tag).ifPresent(review -> {
            review.takeBack(clock.instant());
            note("took a language back", tag, staff);
        }));
        tell();
    }

    private void note(String what, String tag, UUID staff) {
        happened.fire(new AuditEvent(staff.toString(), what, tag));
    }
}
