package foretress.intake;

import foretress.questionnaire.AnswerMistake;
import foretress.web.ClientWords;
import jakarta.enterprise.context.RequestScoped;
import java.time.Month;
import java.time.format.TextStyle;

/** What needs a second look, as a sentence that names the thing, the value and the way out. */
@RequestScoped
class MistakeWords {
    private final ClientLanguage speech;

    MistakeWords(ClientLanguage speech) {
        this.speech = speech;
    }

    /** @param question the question's short name */
    String sentence(AnswerMistake mistake, String question) {
        ClientWords say = speech.say();
        return switch (mistake.code()) {
            case "required" -> required(say, mistake.field(), question);
            case "not-offered" -> say.mistake_not_offered(question);
            case "doubled" -> say.mistake_doubled(question);
            case "none-and-others" -> say.mistake_none_and_others();
            case "not-a-year" -> say.mistake_not_a_year(arg(mistake, 0));
            case "year-in-future" -> say.mistake_year_in_future(arg(mistake, 0), arg(mistake, 1));
            case "year-too-early" -> say.mistake_year_too_early(arg(mistake, 0), arg(mistake, 1));
            case "year-missing" -> say.mistake_year_missing();
            case "month-missing" -> say.mistake_month_missing();
            case "day-missing" -> say.mistake_day_missing();
            case "season-missing" -> say.mistake_season_missing();
            case "ago-missing" -> say.mistake_ago_missing();
            case "not-a-month" -> say.mistake_not_a_month(arg(mistake, 0));
            case "month-in-future" -> say.mistake_month_in_future(month(arg(mistake, 0)), arg(mistake, 1));
            case "not-a-day" -> notADay(say, mistake);
            case "day-in-future" -> say.mistake_day_in_future(arg(mistake, 0), month(arg(mistake, 1)), arg(mistake, 2));
            case "not-a-length" -> say.mistake_not_a_length(arg(mistake, 0));
            case "length-out-of-range" ->
                say.mistake_length_out_of_range(arg(mistake, 0), arg(mistake, 1), arg(mistake, 2), arg(mistake, 3));
            case "too-long" -> say.mistake_too_long(arg(mistake, 0), arg(mistake, 1));
            case "too-many" -> say.mistake_too_many(arg(mistake, 0));
            case "first-after-last" -> say.mistake_first_after_last();
            default -> throw new IllegalStateException("no words for the mistake " + mistake.code());
        };
    }

    private static String required(ClientWords say, String field, String question) {
        String part = field.substring(field.lastIndexOf('.') + 1);
        return switch (part) {
            case "what" -> say.mistake_required_what();
            case "zone" -> say.mistake_required_zone();
            case "precision" -> say.mistake_required_when();
            case "straight" -> say.mistake_required_straight();
            case "name" -> say.mistake_required_name();
            default -> say.mistake_required(question);
        };
    }

    private String notADay(ClientWords say, AnswerMistake mistake) {
        return mistake.args().size() == 3
            ? say.mistake_not_a_day_of_month(arg(mistake, 0), month(arg(mistake, 1)), arg(mistake, 2))
            : say.mistake_not_a_day(arg(mistake, 0));
    }

    private String month(String number) {
        return Month.of(Integer.parseInt(number)).getDisplayName(TextStyle.FULL_STANDALONE, speech.locale());
    }

    private static String arg(AnswerMistake mistake, int place) {
        return mistake.args().size() > place ? mistake.args().get(place) : "";
    }
}
