package foretress.invitation;

import foretress.post.Letter;
import foretress.post.Post;
import foretress.salon.Salon;
import foretress.visit.Client;
import foretress.visit.Visit;
import foretress.web.ClientWords;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Writes the mail that carries a link. It says who, when and where, and nothing about what is to be done. */
@ApplicationScoped
public class LinkLetters {
    public static final String KIND = "link";

    private final Invitations invitations;
    private final Post post;

    LinkLetters(Invitations invitations, Post post) {
        this.invitations = invitations;
        this.post = post;
    }

    /** What became of a link that was to be mailed. */
    public enum Sent { MAILED, NO_ADDRESS, NOT_SET_UP }

    /** Issues a fresh link and mails it, where there is an address and a way; else nothing changes. A second tap mails nothing more. */
    @Transactional
    public Sent invite(UUID visitId, String actor) {
        Visit visit = Visit.findById(visitId);
        Sent how = how(visit);
        if (how == Sent.MAILED && !invitations.wasJustMailed(visitId)) {
            send(visit, invitations.issue(visitId, Invitation.Way.MAILED, actor));
        }
        return how;
    }

    /** Mails a link that stands on the screen already. */
    @Transactional
    public Sent mail(UUID visitId, Token token) {
        Visit visit = Visit.findById(visitId);
        Sent how = how(visit);
        if (how == Sent.MAILED) {
            send(visit, token);
        }
        return how;
    }

    private Sent how(Visit visit) {
        if (visit.client.email().isEmpty()) {
            return Sent.NO_ADDRESS;
        }
        return post.canSend() ? Sent.MAILED : Sent.NOT_SET_UP;
    }

    /** An older mail still waiting does not go after it: its link would be dead when it arrived. */
    private void send(Visit visit, Token token) {
        Client client = visit.client;
        post.callBack(visit.id, KIND);
        invitations.carried(token, post.mail(client.id, visit.id, KIND, client.language,
            letter(visit, client.email().orElseThrow(), invitations.address(token))));
    }

    private static Letter letter(Visit visit, String to, String link) {
        ClientWords say = DoorWords.in(visit.client.language);
        Salon salon = Salon.the();
        return new Letter(to, say.mail_link_subject(),
            List.of(say.mail_hello(visit.client.givenName), say.mail_link_when(salon.name, starts(visit)),
                say.mail_link_why()),
            Optional.of(new Letter.Link(say.mail_link_open(), link)),
            List.of(say.mail_link_birth_date(), say.mail_link_not_you()), signed(salon));
    }

    /** The visit's start in the client's language. */
    public static String starts(Visit visit) {
        return Salon.the().dates(visit.client.language).fullAndHour(visit.startsThere());
    }

    /** Who writes, and where they are: the foot of every letter. */
    public static List<String> signed(Salon salon) {
        return List.of(salon.name, salon.address + ", " + salon.town, salon.phone);
    }
}
