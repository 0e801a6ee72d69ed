package foretress.told;

import foretress.invitation.LinkLetters;
import foretress.post.Letter;
import foretress.post.Post;
import foretress.salon.Role;
import foretress.salon.Salon;
import foretress.salon.Staff;
import foretress.skintest.AftercareWords;
import foretress.visit.Visit;
import foretress.web.PublicAddress;
import foretress.web.Supported;
import io.quarkus.qute.i18n.Localized;
import io.quarkus.qute.i18n.MessageBundles;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.Optional;

/**
 * The mails about a complaint. Mail is read by others: the owner's names nobody, the client's does not say what was answered, and neither
 * says what it is about. Call it in the transaction of the act: what is rolled back sends nothing.
 */
@Singleton
class ComplaintLetters {
    static final String TO_OWNER = "client-wrote", TO_CLIENT = "answer-waits";

    private final Post post;
    private final PublicAddress address;

    ComplaintLetters(Post post, PublicAddress address) {
        this.post = post;
        this.address = address;
    }

    /** To the salon's own address, in the language the owner reads; there is no address of the owner's own. */
    void toOwner(Visit visit) {
        Salon salon = Salon.the();
        String language = Staff.atWork().stream().filter(one -> one.role == Role.OWNER).findFirst()
            .map(owner -> owner.language).orElse(Supported.ORIGINAL);
        ToldWords say = MessageBundles.get(ToldWords.class, Localized.Literal.of(language));
        if (post.canSend() && !salon.email.isBlank()) {
            post.mail(visit.client.id, visit.id, TO_OWNER, language,
                new Letter(salon.email, say.mail_subject(), List.of(say.mail_text()),
                    Optional.of(new Letter.Link(say.mail_open(), address.link("/owner"))), List.of(),
                    LinkLetters.signed(salon)));
        }
    }

    /** Where to read it is the link she has: a fresh one would end it. */
    void toClient(Visit visit) {
        Salon salon = Salon.the();
        String language = visit.client.language;
        AftercareWords say = MessageBundles.get(AftercareWords.class, Localized.Literal.of(language));
        visit.client.email().filter(any -> post.canSend())
            .ifPresent(to -> post.mail(visit.client.id, visit.id, TO_CLIENT, language,
                new Letter(to, say.mail_answer_subject(salon.name),
                    List.of(say.mail_hello(visit.client.givenName), say.mail_answer()), Optional.empty(),
                    List.of(say.mail_answer_lost(salon.phone)), LinkLetters.signed(salon))));
    }
}
