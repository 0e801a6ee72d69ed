package foretress.intake;

import foretress.consent.Mark;
import foretress.web.Form;
import foretress.web.Mistake;
import foretress.web.Say;
import java.util.List;
import java.util.Optional;

/**
 * What a client put under a text, as the form sent it.
 *
 * @param kind the one chosen; a name typed, where nothing is drawn
 * @param posted strokes or name; blank when there is neither
 */
public record MarkField(Mark.Kind kind, String posted) {
    public static MarkField of(Form form) {
        Mark.Kind kind = Mark.Kind.of(form.one("mark")).orElse(Mark.Kind.TYPED);
        return new MarkField(kind, form.one(kind == Mark.Kind.DRAWN ? "strokes" : "typed"));
    }

    /** Empty when it is none, which is then said among the mistakes. */
    public Optional<Mark> read(List<Mistake> mistakes, Say say) {
        if (posted.isEmpty()) {
            mistakes.add(new Mistake("mark", say.sign_mark_missing()));
            return Optional.empty();
        }
        try {
            return Optional.of(kind == Mark.Kind.DRAWN ? new Mark.Drawn(Strokes.read(posted)) : new Mark.Typed(posted));
        } catch (IllegalArgumentException refused) {
            mistakes.add(new Mistake("mark", kind == Mark.Kind.DRAWN ? say.sign_mark_too_long() : say.sign_name_too_long()));
            return Optional.empty();
        }
    }
}
