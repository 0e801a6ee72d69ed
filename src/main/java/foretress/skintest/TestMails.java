package foretress.skintest;

import foretress.invitation.Invitation;
import foretress.invitation.Invitations;
import foretress.invitation.LinkLetters;
import foretress.invitation.Token;
import foretress.post.Letter;
import foretress.post.Post;
import foretress.salon.Salon;
import foretress.visit.Visit;
import io.quarkus.qute.i18n.Localized;
import io.quarkus.qute.i18n.MessageBundles;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * The mails of this room. Mail is read by others, so none says what the visit is for or how anything came out: the first only
 * that a short visit is needed, the others that the salon has a page for the client.
 */
@ApplicationScoped
class TestMails {
    static final String VISIT = "test-visit";
    static final String PAGE = "aftercare";
    static final String REMINDER = "aftercare-reminder";

    private final Post post;
    private final Invitations invitations;
    private final Links links;
    private final CalendarFile calendar;

    TestMails(Post post, Invitations invitations, Links links, CalendarFile calendar) {
        this.post = post;
        this.invitations = invitations;
        this.links = links;
        this.calendar = calendar;
    }

    static AftercareWords in(String language) {
        return MessageBundles.get(AftercareWords.class, Localized.Literal.of(language));
    }

    /** Whether a mail can reach this client: there is an address, and a way to send. */
    boolean reaches(Visit visit) {
        return post.canSend() && visit.client.email().isPresent();
    }

    /** The short visit was booked, moved or called off; false when no mail can reach the client, and none is made. */
    @Transactional
    boolean visit(TestVisit planned, CalendarFile.What what, String actor) {
        Visit visit = Visit.findById(planned.visitId());
        AftercareWords say = in(visit.client.language);
        Salon salon = Salon.the();
        visit.client.email().filter(any -> reaches(visit)).ifPresent(to -> {
            boolean off = what == CalendarFile.What.CANCELLED;
            String when = moment(planned.startsAt(), visit);
            Optional<Token> token = off || !visit.state.isAhead() ? Optional.empty()
                : Optional.of(invitations.issue(visit.id, Invitation.Way.MAILED, actor));
            Optional<Letter.Link> link =
                token.map(one -> new Letter.Link(say.mail_visit_open(), invitations.address(one)));
            List<String> says = List.of(say.mail_hello(visit.client.givenName), off ? say.mail_visit_off(when)
                : planned.sequenceNo() > 0 ? say.mail_visit_moved(salon.name, when)
                    : say.mail_visit_when(salon.name, when));
            UUID mail = post.mail(visit.client.id, visit.id, VISIT, visit.client.language,
                new Letter(to, off ? say.mail_visit_off_subject(salon.name)
                    : say.mail_visit_subject(salon.name), says, link, off ? List.of() : List.of(say.mail_visit_other()),
                    LinkLetters.signed(salon),
                    Optional.of(calendar.of(planned, visit, salon, to, what))));
            token.ifPresent(one -> invitations.carried(one, mail));
        });
        return reaches(visit);
    }

    /** A page on which the client can tell how they are. */
    @Transactional
    void page(UUID testId, boolean reminder, String actor) {
        TestApplied test = TestApplied.byId(testId).orElseThrow();
        Visit visit = Visit.findById(test.visitId());
        AftercareWords say = in(visit.client.language);
        Salon salon = Salon.the();
        visit.client.email().filter(any -> reaches(visit))
            .ifPresent(to -> post.mail(visit.client.id, visit.id, reminder ? REMINDER : PAGE, visit.client.language,
                new Letter(to, reminder ? say.mail_reminder_subject(salon.name) : say.mail_page_subject(salon.name),
                    List.of(say.mail_hello(visit.client.givenName), reminder ? say.mail_reminder() : say.mail_page()),
                    Optional.of(new Letter.Link(say.mail_page_open(), links.make(testId, actor))),
                    List.of(say.mail_page_after(salon.phone)), LinkLetters.signed(salon))));
    }

    /** In the client's language, as the salon's country writes dates. */
    static String moment(Instant at, Visit visit) {
        return Salon.the().dates(visit.client.language).fullAndHour(at.atZone(visit.zone()));
    }
}
