package foretress.invitation;

import foretress.post.Letter;
import foretress.post.Post;
import foretress.salon.Salon;
import foretress.visit.Client;
import foretress.visit.Visit;
import foretress.web.PublicAddress;
import foretress.web.Say;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/** Writes the mail that carries a link. It says who, when and where, and nothing about what is to be done. */
@ApplicationScoped
public class LinkLetters {
    public static final String KIND = "link";

    private final Invitations invitations;
    private final Post post;
    private final PublicAddress address;

    LinkLetters(Invitations invitations, Post post, PublicAddress address) {
        this.invitations = invitations;
        this.post = post;
        this.address = address;
    }

    /** Issues a fresh link and mails it; false when the client has no address. A second tap mails nothing more. */
    @Transactional
    public boolean invite(UUID visitId, String actor) {
        Visit visit = Visit.findById(visitId);
        Optional<String> to = visit.client.email();
        if (to.isPresent() && !invitations.wasJustMailed(visitId))
            send(visit, to.get(), invitations.issue(visitId, Invitation.Way.MAILED, actor));
        return to.isPresent();
    }

    /** Mails a link that stands on the screen already. */
    @Transactional
    public boolean mail(UUID visitId, Token token) {
        Visit visit = Visit.findById(visitId);
        visit.client.email().ifPresent(to -> send(visit, to, token));
        return visit.client.email().isPresent();
    }

    private void send(Visit visit, String to, Token token) {
        Client client = visit.client;
        post.mail(client.id, visit.id, KIND, client.language, letter(visit, to, address.link("/i/" + token.reveal())));
    }

    private static Letter letter(Visit visit, String to, String link) {
        Say say = DoorWords.in(visit.client.language);
        Salon salon = Salon.the();
        return new Letter(to, say.mail_link_subject(),
            List.of(say.mail_hello(visit.client.givenName), say.mail_link_when(salon.name, starts(visit)), say.mail_link_why()),
            Optional.of(new Letter.Link(say.mail_link_open(), link)),
            List.of(say.mail_link_birth_date(), say.mail_link_not_you()), signed(salon));
    }

    /** The visit's start in the client's language. */
    public static String starts(Visit visit) {
        Locale locale = local(visit.client.language);
        return visit.startsThere().format(DateTimeFormatter.ofLocalizedDate(FormatStyle.FULL).withLocale(locale)) + ", "
            + visit.startsThere().format(DateTimeFormatter.ofPattern("HH:mm", locale));
    }

    /** English has its dates as the salon's country writes them. */
    private static Locale local(String language) {
        if (!language.equals("en")) return Locale.forLanguageTag(language);
        return Salon.the().jurisdiction.equals("us") ? Locale.US : Locale.UK;
    }

    static List<String> signed(Salon salon) {
        return List.of(salon.name, salon.address + ", " + salon.town, salon.phone);
    }
}
