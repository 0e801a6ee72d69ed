package foretress.post;

import foretress.running.Clockwork;
import foretress.salon.Salon;
import io.quarkus.mailer.Mail;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.enterprise.event.Event;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jboss.logging.Logger;

/**
 * Sends what is due. A mail is claimed before it is handed over, so two senders never send the same one; should the
 * server die in between, it goes again under the same Message-ID, which receiving servers know to be the same mail.
 */
@ApplicationScoped
public class Sender {
    private static final Logger LOG = Logger.getLogger(Sender.class);
    /** Waiting after each failed try; after the last one the mail is given up. */
    private static final List<Duration> PAUSES = List.of(Duration.ofMinutes(1), Duration.ofMinutes(5),
        Duration.ofMinutes(15), Duration.ofHours(1), Duration.ofHours(3), Duration.ofHours(8), Duration.ofHours(12));
    private static final int BATCH = 20;

    @CheckedTemplate(basePath = "post", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record LetterPage(Letter letter, String language) implements TemplateInstance {}

    private final Handover server;
    private final Post post;
    private final ShownMails shown;
    private final Event<MailSent> left;
    private final Clock clock;
    private final Clockwork clockwork;

    Sender(Handover server, Post post, ShownMails shown, Event<MailSent> left, Clock clock, Clockwork clockwork) {
        this.clockwork = clockwork;
        this.server = server;
        this.post = post;
        this.shown = shown;
        this.left = left;
        this.clock = clock;
    }

    @Scheduled(every = "${foretress.post.every:3s}", concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void onTheDot() {
        clockwork.run(this::sendDue);
    }

    /** Sends every mail that is due; how many left. */
    @ActivateRequestContext
    public int sendDue() {
        int left = 0;
        for (UUID id : due()) {
            if (claim(id) && deliver(id)) {
                left++;
            }
        }
        return left;
    }

    private List<UUID> due() {
        return QuarkusTransaction.requiringNew().call(() -> Outgoing.<Outgoing>find(
            "sentAt is null and givenUpAt is null and dueAt <= ?1 order by dueAt", clock.instant())
            .page(0, BATCH).stream().map(mail -> mail.id).toList());
    }

    /** Pushes the next try away in one statement: whoever changes the row has the mail. */
    private boolean claim(UUID id) {
        Instant now = clock.instant();
        return QuarkusTransaction.requiringNew().call(() -> Outgoing.update(
            "tries = tries + 1, dueAt = ?1 where id = ?2 and sentAt is null and givenUpAt is null and dueAt <= ?3",
            now.plus(PAUSES.get(0)), id, now)) == 1;
    }

    private boolean deliver(UUID id) {
        Outgoing mail = QuarkusTransaction.requiringNew().call(() -> Outgoing.<Outgoing>findById(id));
        try {
            Letter letter = post.open(mail);
            server.send(asMail(mail, letter));
            shown.keep(letter, mail.language, clock.instant());
            done(id);
            return true;
        } catch (RuntimeException notTaken) {
            LOG.warnf("Mail %s was not taken (try %d): %s", id, mail.tries, cause(notTaken));
            again(mail);
            return false;
        }
    }

    /** The kind of failure alone: a server's answer may quote the address. */
    private static String cause(Throwable thrown) {
        return thrown.getCause() == null ? thrown.getClass().getSimpleName() : cause(thrown.getCause());
    }

    private void done(UUID id) {
        QuarkusTransaction.requiringNew().run(() -> {
            Outgoing.update("sentAt = ?1, body = null where id = ?2", clock.instant(), id);
            left.fire(new MailSent(id));
        });
    }

    private void again(Outgoing mail) {
        Instant now = clock.instant();
        boolean last = mail.tries > PAUSES.size();
        QuarkusTransaction.requiringNew().run(() -> {
            if (last) {
                Outgoing.update("givenUpAt = ?1, body = null where id = ?2", now, mail.id);
            } else {
                Outgoing.update("dueAt = ?1 where id = ?2", now.plus(PAUSES.get(mail.tries - 1)), mail.id);
            }
        });
    }

    private Mail asMail(Outgoing outgoing, Letter letter) {
        Locale locale = Locale.forLanguageTag(outgoing.language);
        Mail mail = Mail.withText(letter.to(), letter.subject(), letter.plain())
            .setHtml(new LetterPage(letter, outgoing.language).setLocale(locale).render())
            .addHeader("Message-ID", "<" + outgoing.id + "@" + domain() + ">")
            .addHeader("Content-Language", outgoing.language)
            .addHeader("Auto-Submitted", "auto-generated");
        letter.file().ifPresent(
            file -> mail.addAttachment(file.name(), file.text().getBytes(StandardCharsets.UTF_8), file.type()));
        salon().ifPresent(salon -> mail.setFrom(sender(salon)));
        return mail;
    }

    private static Optional<Salon> salon() {
        return QuarkusTransaction.requiringNew().call(Salon::found).filter(salon -> !salon.email.isBlank());
    }

    private static String domain() {
        return salon().map(salon -> salon.email.replaceAll(".*@", "")).orElse("localhost");
    }

    private static String sender(Salon salon) {
        return "\"%s\" <%s>".formatted(salon.name.replaceAll("[\"\\\\\\p{Cc}]", " "), salon.email);
    }
}
