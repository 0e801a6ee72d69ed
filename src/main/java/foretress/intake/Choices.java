package foretress.intake;

import foretress.knowledge.AnswerWords;
import foretress.knowledge.Words;
import foretress.questionnaire.Question;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What can be chosen in the parts of a compound answer: dates, zones of the hair, who did it, doses. */
public record Choices(List<Choice> precisions, List<Choice> months, List<Choice> seasons, List<Choice> agos,
    List<Choice> zones,
    List<Choice> by, List<Choice> often, List<Choice> every, List<Choice> doses, List<Choice> routes, List<Choice> last,
    List<Choice> straight, String unsure) {

    public record Choice(String code, String label) {}

    static Choices in(Words words, Locale locale) {
        return new Choices(
            of(words, "precision", "month", "season", "year", "years-ago", Question.DONT_KNOW),
            months(locale),
            of(words, "season", "spring", "summer", "autumn", "winter"),
            of(words, "years-ago", "0-2-weeks", "2-4-weeks", "1-2-months", "2-3-months", "3-6-months", "6-12-months",
                "0-1", "1-2", "2-3", "3-5", "5-plus"),
            of(words, "zone", "whole", "regrowth", "lengths-ends", "ends", "strands", Question.DONT_KNOW),
            of(words, "by", "home", "salon", Question.DONT_KNOW),
            of(words, "often", "once", "several", "regularly"),
            of(words, "every", "weekly", "4-weeks", "6-weeks", "8-weeks", "12-weeks", "4-months", "6-months",
                "few-a-year",
                "yearly",
                Question.DONT_KNOW),
            of(words, "dose", "low", "high", Question.DONT_KNOW),
            of(words, "route", "mouth", "skin", "skin-elsewhere", "scalp", "inhaled", "injection", "eye-nose",
                Question.DONT_KNOW),
            of(words, "last", "now", "week", "month", "longer", Question.DONT_KNOW),
            List.of(new Choice("yes", AnswerWords.slip("length", "straight-yes", words)),
                new Choice("no", AnswerWords.slip("length", "straight-no", words))),
            words.text("answers.dont-know"));
    }

    private static List<Choice> of(Words words, String group, String... codes) {
        return Arrays.stream(codes).map(c -> new Choice(c, AnswerWords.slip(group, c, words))).toList();
    }

    private static List<Choice> months(Locale locale) {
        return Arrays.stream(Month.values())
            .map(m -> new Choice(Integer.toString(m.getValue()),
                capital(m.getDisplayName(TextStyle.FULL_STANDALONE, locale), locale)))
            .toList();
    }

    private static String capital(String words, Locale locale) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(locale) + words.substring(1);
    }
}
