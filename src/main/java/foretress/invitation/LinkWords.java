package foretress.invitation;

import foretress.post.Post;
import foretress.visit.Client;
import foretress.visit.When;
import foretress.web.StaffWords;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/** What the desk's page says about a visit's link, its mail and the birth date on file. */
@ApplicationScoped
public class LinkWords {
    private final StaffWords say;

    LinkWords(StaffWords say) {
        this.say = say;
    }

    String link(Optional<LinkState> link, When when) {
        return link.map(l -> link(l, when)).orElseGet(say::visit_desk_link_none);
    }

    private String link(LinkState link, When when) {
        return switch (link.state()) {
            case LIVE -> say.visit_desk_link_live(when.moment(link.issuedAt()), when.moment(link.expiresAt()));
            case LOCKED -> say.visit_desk_link_locked();
            case REVOKED -> say.visit_desk_link_revoked();
            case EXPIRED -> say.visit_desk_link_expired(when.moment(link.expiresAt()));
            case OVER -> say.visit_desk_link_over();
        };
    }

    /** What became of the last mail with a link; blank when none was sent. */
    String mailed(Optional<Post.Trace> mail, boolean canSend, When when) {
        return mail.map(m -> mailed(m, canSend, when.moment(m.handedIn()))).orElse("");
    }

    private String mailed(Post.Trace mail, boolean canSend, String at) {
        return switch (mail.progress()) {
            case WAITING -> canSend ? say.visit_desk_mail_waiting(at) : say.visit_desk_mail_stuck(at);
            case SENT -> say.visit_desk_mail_sent(at);
            case GIVEN_UP -> say.visit_desk_mail_given_up(at);
        };
    }

    String birthDate(Client client, When when) {
        return client.birthDate().map(when::date)
            .map(date -> client.birthDateConfirmed ? say.visit_desk_birth_sure(date) : say.visit_desk_birth_said(date))
            .orElseGet(say::visit_desk_birth_none);
    }

    /** What was just done, from the address; anything unknown says nothing. */
    String said(String what) {
        return switch (what) {
            case "mailed" -> say.visit_desk_said_mailed();
            case "not-set-up" -> say.visit_desk_said_not_set_up();
            case "no-address" -> say.visit_desk_said_no_address();
            case "unlocked" -> say.visit_desk_said_unlocked();
            case "revoked" -> say.visit_desk_said_revoked();
            case "confirmed" -> say.visit_desk_said_confirmed();
            case "cancelled" -> say.visit_desk_said_cancelled();
            case "link-gone" -> say.visit_desk_said_link_gone();
            default -> "";
        };
    }
}
