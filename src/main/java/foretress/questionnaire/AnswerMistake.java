package foretress.questionnaire;

import java.util.List;
import java.util.Set;

/**
 * Something on a posted page that could not be taken as an answer. The words are the page's business; the code and its
 * arguments hold what they need: what was said, and the border it crossed.
 *
 * <table>
 * <caption>Codes and their arguments</caption>
 * <tr><td>required</td><td>–</td></tr>
 * <tr><td>not-offered</td><td>what was sent</td></tr>
 * <tr><td>doubled</td><td>– (a field that holds one value came several times)</td></tr>
 * <tr><td>none-and-others</td><td>the code that stands alone: none, dont-know or rather-not-say</td></tr>
 * <tr><td>not-a-year</td><td>as typed</td></tr>
 * <tr><td>year-in-future</td><td>the year, this year</td></tr>
 * <tr><td>year-too-early</td><td>the year, the first one taken</td></tr>
 * <tr><td>year-missing, month-missing, day-missing, season-missing, ago-missing</td><td>–</td></tr>
 * <tr><td>not-a-month</td><td>as typed</td></tr>
 * <tr><td>month-in-future</td><td>month 1 to 12, year</td></tr>
 * <tr><td>not-a-day</td><td>the day as typed, then month 1 to 12 and year where the day exists in no such month</td></tr>
 * <tr><td>day-in-future</td><td>day, month 1 to 12, year</td></tr>
 * <tr><td>not-a-length</td><td>as typed</td></tr>
 * <tr><td>length-out-of-range</td><td>as typed, least, most, unit (cm or in)</td></tr>
 * <tr><td>too-long</td><td>most letters, how many there are</td></tr>
 * <tr><td>too-many</td><td>most entries</td></tr>
 * <tr><td>first-after-last</td><td>– (a treatment first done after it was last done)</td></tr>
 * </table>
 *
 * @param field name of the form field to look at again
 */
public record AnswerMistake(String field, String code, List<String> args) {
    /** Every code there is, so that the pages can be held to have words for each. */
    public static final Set<String> CODES = Set.of("required", "not-offered", "doubled", "none-and-others",
        "not-a-year", "year-in-future", "year-too-early", "year-missing", "month-missing", "day-missing",
        "season-missing", "ago-missing",
        "not-a-month", "month-in-future", "not-a-day", "day-in-future", "not-a-length", "length-out-of-range",
        "too-long", "too-many",
        "first-after-last");

    public AnswerMistake {
        if (!CODES.contains(code)) {
            throw new IllegalArgumentException("no mistake is called " + code);
        }
        args = List.copyOf(args);
    }
}
