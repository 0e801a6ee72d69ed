package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer;
import foretress.questionnaire.Answer.Chosen;
import foretress.questionnaire.Answer.Length;
import foretress.questionnaire.Answer.Medicines;
import foretress.questionnaire.Answer.Said;
import foretress.questionnaire.Answer.Text;
import foretress.questionnaire.Answer.Treatments;
import foretress.questionnaire.Medicine;
import foretress.questionnaire.Question;
import foretress.questionnaire.SaidDate;
import foretress.questionnaire.SaidDate.InMonth;
import foretress.questionnaire.SaidDate.InSeason;
import foretress.questionnaire.SaidDate.InYear;
import foretress.questionnaire.SaidDate.LatelyAgo;
import foretress.questionnaire.SaidDate.LongerThan;
import foretress.questionnaire.SaidDate.NotKnown;
import foretress.questionnaire.SaidDate.OnDay;
import foretress.questionnaire.SaidDate.Season;
import foretress.questionnaire.SaidDate.YearsAgo;
import foretress.questionnaire.SaidTreatment;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class AnswerWordsTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final SaidTreatment LOTION =
        new SaidTreatment("restorer", new InSeason(Season.SUMMER, Year.of(2024)), "whole", "home", "dont-know");

    private static final Question TREATMENTS = question("treatments");

    private static String say(String question, Answer answer, String language) {
        return AnswerWords.say(question(question), answer, KNOWLEDGE.words(language));
    }

    private static Question question(String id) {
        return KNOWLEDGE.questionnaire().question(id).orElseThrow();
    }

    private static Stream<Arguments> dates() {
        return Stream.of(
            Arguments.of(new OnDay(LocalDate.of(2024, 2, 3)), "3 February 2024", "3 de febrero de 2024"),
            Arguments.of(new InMonth(YearMonth.of(2025, 3)), "March 2025", "marzo de 2025"),
            Arguments.of(new InSeason(Season.AUTUMN, Year.of(2023)), "autumn 2023", "otoño de 2023"),
            Arguments.of(new InYear(Year.of(2021)), "2021", "2021"),
            Arguments.of(new YearsAgo(0, 1), "less than a year ago", "hace menos de un año"),
            Arguments.of(new LatelyAgo(3, 6, LatelyAgo.Unit.MONTHS), "three to six months ago",
                "hace entre tres y seis meses"),
            Arguments.of(new LatelyAgo(5, 7, LatelyAgo.Unit.WEEKS), "5 to 7 weeks ago", "hace entre 5 y 7 semanas"),
            Arguments.of(new YearsAgo(2, 3), "two to three years ago", "hace entre dos y tres años"),
            Arguments.of(new YearsAgo(6, 8), "6 to 8 years ago", "hace entre 6 y 8 años"),
            Arguments.of(new LongerThan(5), "longer than five years ago", "hace más de cinco años"),
            Arguments.of(new LongerThan(9), "longer than 9 years ago", "hace más de 9 años"),
            Arguments.of(new NotKnown(), "not sure when", "no sé cuándo"));
    }

    @ParameterizedTest
    @MethodSource("dates")
    void aDateIsSaidAsPreciselyAsItWasGiven(SaidDate date, String english, String spanish) {
        assertThat(AnswerWords.say(date, KNOWLEDGE.words("en"))).isEqualTo(english);
        assertThat(AnswerWords.say(date, KNOWLEDGE.words("es"))).isEqualTo(spanish);
    }

    @Test
    void aTreatmentIsSaidInOneLine() {
        assertThat(AnswerWords.say(TREATMENTS, LOTION, KNOWLEDGE.words("en")))
            .isEqualTo("Lotion or foam that darkens grey hair day by day – summer 2024, all of it, at home");
        assertThat(AnswerWords.say(TREATMENTS, LOTION, KNOWLEDGE.words("es")))
            .isEqualTo("Loción o espuma que oscurece las canas día a día – verano de 2024, todo el pelo, en casa");
    }

    @Test
    void howOftenIsSaidWhereItIsKnown() {
        var perm = new SaidTreatment("perm", new InYear(Year.of(2023)), "dont-know", "salon", "several");
        assertThat(AnswerWords.say(TREATMENTS, perm, KNOWLEDGE.words("en")))
            .isEqualTo("Perm: lasting curls – 2023, not sure where, at a salon, several times, "
                + "not sure how far apart, first time: not sure when");
    }

    @Test
    void aRepeatedTreatmentSaysHowFarApartAndSinceWhen() {
        var dye = new SaidTreatment("box-dye", new InMonth(YearMonth.of(2025, 3)), "regrowth", "home",
            "regularly", "6-weeks", new YearsAgo(2, 3));
        assertThat(AnswerWords.say(TREATMENTS, dye, KNOWLEDGE.words("en")))
            .isEqualTo("Colour from a box, at home – March 2025, the new growth, at home, regularly, "
                + "about every 6 weeks, first time: two to three years ago");
        assertThat(AnswerWords.whereAndWhen(dye, KNOWLEDGE.words("en")))
            .isEqualTo("the new growth, about every 6 weeks, two to three years ago to March 2025");
        assertThat(AnswerWords.whereAndWhen(LOTION, KNOWLEDGE.words("en"))).isEqualTo("all of it, summer 2024");
    }

    @Test
    void severalTreatmentsAreParted() {
        assertThat(say("treatments", new Treatments(List.of(LOTION, LOTION)), "en"))
            .isEqualTo("Lotion or foam that darkens grey hair day by day – summer 2024, all of it, at home; "
                + "Lotion or foam that darkens grey hair day by day – summer 2024, all of it, at home");
    }

    @Test
    void emptyListsAreSaidAsNone() {
        assertThat(say("treatments", new Treatments(List.of()), "en")).isEqualTo("Nothing at all");
        assertThat(say("medicines", new Medicines(List.of()), "es")).isEqualTo("No tomo medicinas");
    }

    @Test
    void aMedicineIsSaidAsTypedWithWhatWasAsked() {
        var known = new Medicine("prednisolone", "low", "mouth", "now");
        var bare = new Medicine("ميثوتريكسات", Medicine.NOT_ASKED, Medicine.NOT_ASKED, Medicine.NOT_ASKED);
        assertThat(say("medicines", new Medicines(List.of(known, bare)), "en"))
            .isEqualTo("prednisolone, low dose, up to 10 mg a day, by mouth, taking it now; ميثوتريكسات");
    }

    @Test
    void choicesAreSaidInTheReadersWords() {
        assertThat(say("colour-reaction", Chosen.of("no"), "en")).isEqualTo("No");
        assertThat(say("water", Chosen.of("pool", "well"), "es")).isEqualTo("Agua de piscina; Agua de pozo");
    }

    @Test
    void notKnowingAndNotSayingAreSaid() {
        assertThat(say("colour-reaction", Answer.DONT_KNOW, "en")).isEqualTo("Don't know");
        assertThat(say("pregnancy", Answer.RATHER_NOT_SAY, "es")).isEqualTo("Prefiero no decirlo");
    }

    @Test
    void aDateThatStandsAloneBeginsWithACapital() {
        assertThat(say("black-tattoo-when", new Said(new InSeason(Season.SPRING, Year.of(2025))), "en"))
            .isEqualTo("Spring 2025");
        assertThat(say("black-tattoo-when", new Said(new InMonth(YearMonth.of(2025, 5))), "es"))
            .isEqualTo("Mayo de 2025");
    }

    @Test
    void aLengthSaysHowItWasMeasured() {
        assertThat(say("hair-length", new Length(40, true), "en")).isEqualTo("40 cm. Drawn straight: Yes");
        assertThat(say("hair-length", new Length(40, false), "es")).isEqualTo("40 cm. Estirado al medirlo: No");
    }

    @Test
    void freeWordsAreLeftAlone() {
        assertThat(say("anything-else", new Text("<b>Ünlaut</b> {cm}"), "en")).isEqualTo("<b>Ünlaut</b> {cm}");
    }

    @Test
    void aCodeNoLongerOfferedIsShownAsItIs() {
        assertThat(say("colour-reaction", Chosen.of("once-upon-a-time"), "en")).isEqualTo("once-upon-a-time");
        assertThat(AnswerWords.say(TREATMENTS, new SaidTreatment("egg-wash", new NotKnown(), "whole", "home", "once"),
            KNOWLEDGE.words("en"))).startsWith("egg-wash – ");
    }

    @Test
    void everyPartOfAnAnswerHasWordsInEveryLanguage() {
        for (String language : KNOWLEDGE.languages()) {
            Words words = KNOWLEDGE.words(language);
            assertAll(words, "treatment", question("treatments").options());
            assertAll(words, "zone", SaidTreatment.ZONES);
            assertAll(words, "every", SaidTreatment.EVERY);
            assertAll(words, "by", SaidTreatment.BY);
            assertAll(words, "often",
                SaidTreatment.OFTEN.stream().filter(c -> !c.equals(SaidTreatment.DONT_KNOW)).toList());
            assertAll(words, "dose", asked(Medicine.DOSES));
            assertAll(words, "route", asked(Medicine.ROUTES));
            assertAll(words, "last", asked(Medicine.LAST_TAKEN));
            assertAll(words, "season", List.of("spring", "summer", "autumn", "winter"));
            assertAll(words, "years-ago", List.of("0-2-weeks", "2-4-weeks", "1-2-months", "2-3-months",
                "3-6-months", "6-12-months", "0-1", "1-2", "2-3", "3-5", "5-plus"));
            assertAll(words, "precision",
                List.of("day", "month", "season", "year", "years-ago", "longer", "dont-know"));
        }
    }

    private static List<String> asked(List<String> codes) {
        return codes.stream().filter(c -> !c.equals(Medicine.NOT_ASKED)).toList();
    }

    private static void assertAll(Words words, String group, List<String> codes) {
        for (String code : codes) {
            assertThat(words.own()).contains("answers.%s.%s".formatted(group, code));
            assertThat(AnswerWords.slip(group, code, words)).isNotBlank()
                .matches(s -> !Character.isLowerCase(s.charAt(0)));
        }
    }

    @Test
    void howManyCentimetresIsSaidAfterWhere() {
        SaidTreatment ends = new SaidTreatment("box-dye", new InMonth(YearMonth.of(2025, 3)), "ends", "home", "once")
            .reaching("10-cm");
        assertThat(AnswerWords.say(TREATMENTS, ends, KNOWLEDGE.words("en")))
            .isEqualTo("Colour from a box, at home – March 2025, the ends, about 10 cm (4 inches), at home, once");
        assertThat(AnswerWords.whereAndWhen(ends, KNOWLEDGE.words("en")))
            .isEqualTo("the ends, about 10 cm (4 inches), March 2025");
    }
}
