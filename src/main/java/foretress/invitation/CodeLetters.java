package foretress.invitation;

import foretress.post.Letter;
import foretress.post.Post;
import foretress.salon.Salon;
import foretress.visit.Visit;
import foretress.web.ClientWords;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Mails a one-use code to the address on file. */
@ApplicationScoped
public class CodeLetters {
    private static final String KIND = "code";

    private final Codes codes;
    private final Post post;

    CodeLetters(Codes codes, Post post) {
        this.codes = codes;
        this.post = post;
    }

    boolean canSend() {
        return post.canSend();
    }

    /** Whether a code went out: there is an address, and not too many went lately. */
    @Transactional
    boolean mail(UUID visitId) {
        Visit visit = Visit.findById(visitId);
        Optional<String> to = visit.client.email();
        Optional<String> code = to.flatMap(address -> codes.toMail(visitId));
        code.ifPresent(digits -> post.mail(visit.client.id, visitId, KIND, visit.client.language,
            letter(visit, to.orElseThrow(), digits)));
        return code.isPresent();
    }

    private static Letter letter(Visit visit, String to, String code) {
        ClientWords say = DoorWords.in(visit.client.language);
        return new Letter(to, say.mail_code_subject(),
            List.of(say.mail_hello(visit.client.givenName), say.mail_code_is(grouped(code)), say.mail_code_life()),
            Optional.empty(), List.of(say.mail_link_not_you()), LinkLetters.signed(Salon.the()));
    }

    /** Eight digits in two groups are read and typed with fewer slips. */
    static String grouped(String code) {
        return code.substring(0, 4) + " " + code.substring(4);
    }
}
