package foretress.intake;

import foretress.consent.SignatureMark;
import foretress.web.ClientWords;
import foretress.web.Form;
import foretress.web.Mistake;
import java.util.List;
import java.util.Optional;

/**
 * What somebody put under a text, as the form sent it.
 *
 * @param prefix in front of the fields' names; empty for the client's own
 * @param kind the one chosen; a name typed, where nothing is drawn
 * @param posted strokes or name; blank when there is neither
 */
public record MarkField(String prefix, SignatureMark.Kind kind, String posted) {
    public static MarkField of(Form form) {
        return of(form, "");
    }

    /** One of several on a page. */
    public static MarkField of(Form form, String prefix) {
        SignatureMark.Kind kind =
            SignatureMark.Kind.of(form.one(prefix + "mark")).orElse(SignatureMark.Kind.TYPED);
        return new MarkField(prefix, kind,
            form.one(prefix + (kind == SignatureMark.Kind.DRAWN ? "strokes" : "typed")));
    }

    /** Empty when it is none, which is then said among the mistakes. */
    public Optional<SignatureMark> read(List<Mistake> mistakes, ClientWords say) {
        if (posted.isEmpty()) {
            mistakes.add(new Mistake(prefix + "mark", say.sign_mark_missing()));
            return Optional.empty();
        }
        try {
            return Optional.of(kind == SignatureMark.Kind.DRAWN ? new SignatureMark.Drawn(Strokes.read(posted))
                : new SignatureMark.Typed(posted));
        } catch (IllegalArgumentException refused) {
            mistakes.add(new Mistake(prefix + "mark",
                kind == SignatureMark.Kind.DRAWN ? say.sign_mark_too_long() : say.sign_name_too_long()));
            return Optional.empty();
        }
    }
}
