package foretress.invitation;

import foretress.web.ClientWords;
import foretress.web.Language;
import io.quarkus.qute.i18n.Localized;
import io.quarkus.qute.i18n.MessageBundles;
import jakarta.enterprise.context.RequestScoped;

/** What the door says about a mistake, in the language of the page. */
@RequestScoped
public class DoorWords {
    private final Language language;

    DoorWords(Language language) {
        this.language = language;
    }

    /** All words of the client's side in this language. */
    static ClientWords in(String tag) {
        return tag.equals("en") ? MessageBundles.get(ClientWords.class)
            : MessageBundles.get(ClientWords.class, Localized.Literal.of(tag));
    }

    private ClientWords say() {
        return in(language.getTag());
    }

    String noMatch() {
        return say().birth_no_match();
    }

    String of(BirthDateField.Mistake mistake) {
        ClientWords say = say();
        return switch (mistake) {
            case DAY_MISSING -> say.birth_day_missing();
            case MONTH_MISSING -> say.birth_month_missing();
            case YEAR_MISSING, YEAR_SHORT -> say.birth_year_missing();
            case NO_SUCH_DAY -> say.birth_no_such_day();
            case AHEAD -> say.birth_ahead();
            case TOO_LONG_AGO -> say.birth_too_long_ago();
        };
    }

    String codeWrong() {
        return say().code_wrong();
    }
}
