package foretress.owner;

import foretress.invitation.LinkLetters;
import foretress.ledger.Anchors;
import foretress.ledger.Slip;
import foretress.post.Letter;
import foretress.post.Post;
import foretress.running.Clockwork;
import foretress.salon.Role;
import foretress.salon.Salon;
import foretress.salon.Staff;
import foretress.web.PublicAddress;
import foretress.web.Supported;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.i18n.Localized;
import io.quarkus.qute.i18n.MessageBundles;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jboss.logging.Logger;

/**
 * Once a day a slip of the audit chain is made and, where mail is set up, sent to the salon's own address: what lies there nobody can
 * change who can only write to the store. Of several servers one makes it. A slip and its mail are kept together or not at all.
 */
@ApplicationScoped
public class DailyAnchor {
    private static final Logger LOG = Logger.getLogger(DailyAnchor.class);
    static final String KIND = "audit-slip";

    private final Anchors anchors;
    private final Post post;
    private final PublicAddress address;
    private final Clock clock;
    private final Clockwork clockwork;

    DailyAnchor(Anchors anchors, Post post, PublicAddress address, Clock clock, Clockwork clockwork) {
        this.anchors = anchors;
        this.post = post;
        this.address = address;
        this.clock = clock;
        this.clockwork = clockwork;
    }

    @Scheduled(every = "${foretress.anchor.every:10m}", delayed = "${foretress.anchor.delay:1m}",
        concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void onTheDot() {
        clockwork.run(this::makeDue);
    }

    /** The slip of today, unless there is one already or nothing was entered since the last. */
    @ActivateRequestContext
    public Optional<Slip> makeDue() {
        Optional<Salon> salon = QuarkusTransaction.requiringNew().call(Salon::found);
        if (salon.isEmpty() || anchors.madeSince(today(salon.get()).atStartOfDay(salon.get().zoneId()).toInstant())) {
            return Optional.empty();
        }
        return make();
    }

    /** The slip of everything since the last one, now. */
    public Optional<Slip> make() {
        try {
            return QuarkusTransaction.requiringNew().call(() -> {
                Optional<Slip> made = anchors.make(today(Salon.the()));
                made.ifPresent(this::mail);
                return made;
            });
        } catch (Anchors.MadeElsewhere other) {
            return Optional.empty();
        } catch (IllegalStateException broken) {
            LOG.error("no slip of the audit chain can be made; the owner's page tells where it is broken", broken);
            return Optional.empty();
        }
    }

    private LocalDate today(Salon salon) {
        return LocalDate.ofInstant(clock.instant(), salon.zoneId());
    }

    private void mail(Slip slip) {
        Salon salon = Salon.the();
        if (!post.canSend() || salon.email.isBlank()) {
            return;
        }
        String language = Staff.atWork().stream().filter(one -> one.role == Role.OWNER).findFirst()
            .map(owner -> owner.language).orElse(Supported.ORIGINAL);
        TrailWords say = MessageBundles.get(TrailWords.class, Localized.Literal.of(language));
        post.mailHouse(KIND, language,
            new Letter(salon.email, say.mail_subject(), List.of(say.mail_text(slip.entries()), slip.text()),
                Optional.of(new Letter.Link(say.mail_open(), address.link("/owner/proof"))), List.of(),
                LinkLetters.signed(salon)));
    }
}
