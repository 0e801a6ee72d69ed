package foretress.intake;

import foretress.knowledge.AnswerWords;
import foretress.knowledge.Words;
import foretress.questionnaire.Medicine;
import foretress.questionnaire.Question;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * What can be chosen in the parts of a compound answer.
 *
 * @param straight whether a length was drawn straight
 * @param unsure the words for not knowing of the whole
 */
public record Choices(OfDate date, OfTreatment treatment, OfMedicine medicine, List<Choice> straight, String unsure) {

    public record Choice(String code, String label) {}

    /** How closely a date is known, and its parts. */
    public record OfDate(List<Choice> precisions, List<Choice> months, List<Choice> seasons, List<Choice> agos) {
        private static OfDate in(Words words, Locale locale) {
            return new OfDate(
                of(words, "precision", "month", "season", "year", "years-ago", Question.DONT_KNOW),
                ofTheYear(locale),
                of(words, "season", "spring", "summer", "autumn", "winter"),
                of(words, "years-ago", "0-2-weeks", "2-4-weeks", "1-2-months", "2-3-months", "3-6-months",
                    "6-12-months", "0-1", "1-2", "2-3", "3-5", "5-plus"));
        }
    }

    /** Where on the hair, by whom, how often and how far apart. */
    public record OfTreatment(List<Choice> zones, List<Choice> extents, List<Choice> by, List<Choice> often,
        List<Choice> every) {
        private static OfTreatment in(Words words) {
            return new OfTreatment(
                of(words, "zone", "whole", "regrowth", "lengths-ends", "ends", "strands", Question.DONT_KNOW),
                of(words, "extent", "1-cm", "2-cm", "3-cm", "5-cm", "10-cm", "15-cm", "20-cm", "30-cm",
                    Question.DONT_KNOW),
                of(words, "by", "home", "salon", Question.DONT_KNOW),
                of(words, "often", "once", "several", "regularly"),
                of(words, "every", "weekly", "4-weeks", "6-weeks", "8-weeks", "12-weeks", "4-months", "6-months",
                    "few-a-year", "yearly", Question.DONT_KNOW));
        }
    }

    /** How much, by which way, and when last. */
    public record OfMedicine(List<Choice> doses, List<Choice> routes, List<Choice> last) {
        private static OfMedicine in(Words words) {
            return new OfMedicine(asked(words, "dose", Medicine.DOSES), asked(words, "route", Medicine.ROUTES),
                asked(words, "last", Medicine.LAST_TAKEN));
        }

        private static List<Choice> asked(Words words, String group, List<String> codes) {
            return of(words, group, codes.stream().filter(code -> !code.equals(Medicine.NOT_ASKED))
                .toArray(String[]::new));
        }
    }

    static Choices in(Words words, Locale locale) {
        return new Choices(OfDate.in(words, locale), OfTreatment.in(words), OfMedicine.in(words),
            List.of(new Choice("yes", AnswerWords.slip("length", "straight-yes", words)),
                new Choice("no", AnswerWords.slip("length", "straight-no", words))),
            words.text("answers.dont-know"));
    }

    private static List<Choice> of(Words words, String group, String... codes) {
        return Arrays.stream(codes).map(c -> new Choice(c, AnswerWords.slip(group, c, words))).toList();
    }

    private static List<Choice> ofTheYear(Locale locale) {
        return Arrays.stream(Month.values())
            .map(m -> new Choice(Integer.toString(m.getValue()),
                capital(m.getDisplayName(TextStyle.FULL_STANDALONE, locale), locale)))
            .toList();
    }

    private static String capital(String words, Locale locale) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(locale) + words.substring(1);
    }
}
