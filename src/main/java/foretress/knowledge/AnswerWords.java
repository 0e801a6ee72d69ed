package foretress.knowledge;

import foretress.questionnaire.Answer;
import foretress.questionnaire.Answer.Chosen;
import foretress.questionnaire.Answer.Length;
import foretress.questionnaire.Answer.Medicines;
import foretress.questionnaire.Answer.RatherNotSay;
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
import foretress.questionnaire.SaidDate.OnDay;
import foretress.questionnaire.SaidDate.YearsAgo;
import foretress.questionnaire.SaidTreatment;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says an answer in the reader's language: "Darkening lotion, summer 2024, all of it, at home". */
public final class AnswerWords {
    private AnswerWords() {}

    public static String say(Question question, Answer answer, Words words) {
        if (answer instanceof Chosen chosen) {
            return joined("entry-joint", chosen.codes().stream().map(code -> option(question, code, words)), words);
        }
        if (answer instanceof Said said) {
            return capital(say(said.date(), words), words);
        }
        if (answer instanceof Length length) {
            return text("length", "said", words).replace("{cm}", length.lengthCm() + "")
                .replace("{straight}", text("length", length.drawnStraight() ? "straight-yes" : "straight-no", words));
        }
        return answer instanceof Text text ? text.text() : listOrUnsaid(question, answer, words);
    }

    /** An old record can hold a code that is no longer offered; then the code itself is shown, never nothing. */
    private static String option(Question question, String code, Words words) {
        return question.offers(code) ? words.option(question.id(), code) : code;
    }

    private static String listOrUnsaid(Question question, Answer answer, Words words) {
        if (answer instanceof Treatments treatments) {
            return entries(question, treatments.list().stream().map(t -> say(question, t, words)).toList(), words);
        }
        if (answer instanceof Medicines medicines) {
            return entries(question, medicines.list().stream().map(m -> say(m, words)).toList(), words);
        }
        String code = answer instanceof RatherNotSay ? Question.RATHER_NOT_SAY : Question.DONT_KNOW;
        return question.kind() == Question.Kind.SAID_DATE ? slip("precision", code, words)
            : words.option(question.id(), code);
    }

    private static String entries(Question question, List<String> entries, Words words) {
        return entries.isEmpty() ? none(question, words) : joined("entry-joint", entries.stream(), words);
    }

    /** What is chosen to say that a list stays empty. */
    public static String none(Question question, Words words) {
        return words
            .text("answers." + (question.kind() == Question.Kind.MEDICINES ? "medicines-none" : "treatments-none"));
    }

    /**
     * One earlier treatment, in the words that were chosen: what, when, where on the hair, by whom, how often and, of one that was
     * repeated, how far apart and since when.
     */
    public static String say(Question question, SaidTreatment treatment, Words words) {
        List<String> parts = new ArrayList<>(List.of(say(treatment.when(), words),
            text("zone", treatment.zone(), words)));
        known("extent", treatment.extent(), words).ifPresent(parts::add);
        parts.add(text("by", treatment.by(), words));
        Optional<String> often = known("often", treatment.often(), words);
        often.ifPresent(parts::add);
        if (often.isPresent() && treatment.repeated()) {
            parts.add(text("every", treatment.every(), words));
            parts.add(words.text("answers.first-time").replace("{date}", say(treatment.since(), words)));
        }
        return words.text("answers.treatment-line").replace("{what}", option(question, treatment.what(), words))
            .replace("{rest}", joined("list-joint", parts.stream(), words));
    }

    private static Optional<String> again(SaidTreatment treatment, Words words) {
        Optional<String> every = known("every", treatment.every(), words);
        return every.isPresent() || !treatment.repeated() ? every : known("often", treatment.often(), words);
    }

    private static Optional<String> known(String group, String code, Words words) {
        return SaidTreatment.DONT_KNOW.equals(code) || SaidTreatment.NOT_ASKED.equals(code) ? Optional.empty()
            : Optional.of(text(group, code, words));
    }

    /** Where on the hair and when, for the line beside a band: "the new growth, every 6 weeks, summer 2024 to March 2026". */
    public static String whereAndWhen(SaidTreatment treatment, Words words) {
        String last = say(treatment.when(), words);
        String when = treatment.since() instanceof SaidDate.NotKnown ? last
            : words.text("answers.from-to").replace("{first}", say(treatment.since(), words)).replace("{last}", last);
        return joined("list-joint", Stream.of(Optional.of(text("zone", treatment.zone(), words)),
            known("extent", treatment.extent(), words), again(treatment, words), Optional.of(when))
            .flatMap(Optional::stream), words);
    }

    /** One medicine: as typed, then dose, way and last time as far as they were asked. */
    public static String say(Medicine medicine, Words words) {
        return joined("list-joint",
            Stream.of(medicine.name(), asked("dose", medicine.dose().code(), words),
                asked("route", medicine.route().code(), words),
                asked("last", medicine.lastTaken().code(), words)).filter(part -> !part.isEmpty()),
            words);
    }

    private static String asked(String group, String code, Words words) {
        return Medicine.NOT_ASKED.equals(code) ? "" : text(group, code, words);
    }

    /** A date in the middle of a sentence: "summer 2024", "two to three years ago". */
    public static String say(SaidDate date, Words words) {
        if (date instanceof OnDay on) {
            return formatted("day-pattern", on.day(), words);
        }
        if (date instanceof InMonth in) {
            return formatted("month-pattern", in.month(), words);
        }
        if (date instanceof InSeason in) {
            String season = text("season", in.season().name().toLowerCase(Locale.ROOT), words);
            return text("date", "season", words).replace("{season}", season).replace("{year}", in.year().toString());
        }
        if (date instanceof InYear in) {
            return text("date", "year", words).replace("{year}", in.year().toString());
        }
        return ago(date, words);
    }

    private static String ago(SaidDate date, Words words) {
        if (date instanceof LatelyAgo ago) {
            return words.find("answers.years-ago." + ago.code())
                .orElseGet(() -> Counted.say(text("lately-ago", ago.unit().code(), words), words.language(),
                    Map.of("from", ago.from(), "to", ago.to())));
        }
        if (date instanceof YearsAgo ago) {
            return words.find("answers.years-ago.%d-%d".formatted(ago.from(), ago.to()))
                .orElseGet(() -> Counted.say(text("years-ago", "other", words), words.language(),
                    Map.of("from", ago.from(), "to", ago.to())));
        }
        if (date instanceof LongerThan longer) {
            return words.find("answers.years-ago.%d-plus".formatted(longer.years()))
                .orElseGet(() -> Counted.say(text("longer", "other", words), words.language(),
                    Map.of("years", longer.years())));
        }
        return words.text("answers.date-not-known");
    }

    private static String formatted(String pattern, TemporalAccessor date, Words words) {
        return DateTimeFormatter.ofPattern(text("date", pattern, words), locale(words)).format(date);
    }

    /**
     * A part of an answer in the middle of a sentence.
     *
     * @param group treatment, zone, by, often, every, dose, route, last, season, years-ago or precision
     * @return the code itself where there are no words for it, as in an old record
     */
    public static String text(String group, String code, Words words) {
        return words.find("answers." + group + "." + code).orElse(code);
    }

    /** A part of an answer standing alone, as on a slip to choose: with a capital letter. */
    public static String slip(String group, String code, Words words) {
        return capital(text(group, code, words), words);
    }

    private static String capital(String sentence, Words words) {
        int first = sentence.offsetByCodePoints(0, 1);
        return sentence.substring(0, first).toUpperCase(locale(words)) + sentence.substring(first);
    }

    private static String joined(String joint, Stream<String> parts, Words words) {
        return parts.collect(Collectors.joining(words.text("answers." + joint)));
    }

    private static Locale locale(Words words) {
        return Locale.forLanguageTag(words.language());
    }
}
