package foretress.intake;

import foretress.consent.SignatureMark;
import foretress.web.Form;
import foretress.web.Mistake;
import java.util.List;

/**
 * The field for a signature, with what was put into it.
 *
 * @param name whose it is
 * @param typed where a name was typed and not drawn
 * @param kind drawn or typed
 * @param mistake why it is none; empty while nobody tried
 */
public record MarkShown(String name, String typed, String kind, String mistake) {
    public static MarkShown of(String name, Form form, SignatureMark.Kind kind, List<Mistake> mistakes) {
        return new MarkShown(name, form.one("typed"), kind.code(), Statements.at(mistakes, "mark"));
    }
}
