package foretress.questionnaire;

import foretress.questionnaire.Answer.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Reads the length of the longest hair from {@code .cm}, {@code .unit} (cm or in; blank means cm) and {@code .straight}.
 * Parts of a centimetre are rounded up: longer hair can hold older treatments.
 */
final class LengthReader {
    private static final BigDecimal CM_PER_INCH = new BigDecimal("2.54");
    private static final List<String> SAYINGS = List.of("yes", "no", Question.DONT_KNOW);
    private static final int MOST_INCHES = (int) (Length.LONGEST_CM / 2.54);

    private final AnswerForm form;
    private final String name;

    LengthReader(AnswerForm form, String name) {
        this.form = form;
        this.name = name;
    }

    boolean blank() {
        return form.blank(name + ".cm");
    }

    Optional<Answer> read() {
        String unit = form.code(name + ".unit", List.of("cm", "in")).orElse("cm");
        Optional<Integer> cm = form.one(name + ".cm").flatMap(typed -> cm(typed, unit));
        Optional<String> straight = form.code(name + ".straight", SAYINGS);
        if (cm.isPresent() && straight.isEmpty() && form.blank(name + ".straight")) {
            return form.wrong(name + ".straight", "required");
        }
        return cm.flatMap(length -> straight.map(said -> new Length(length, said.equals("yes"))));
    }

    private Optional<Integer> cm(String typed, String unit) {
        Optional<BigDecimal> number = Digits.decimal(withoutUnit(typed, unit));
        if (number.isEmpty()) {
            return form.wrong(name + ".cm", "not-a-length", typed);
        }
        int cm = number.get().multiply(unit.equals("in") ? CM_PER_INCH : BigDecimal.ONE)
            .setScale(0, RoundingMode.CEILING).intValue();
        return cm >= 1 && cm <= Length.LONGEST_CM ? Optional.of(cm)
            : form.wrong(name + ".cm", "length-out-of-range", typed, "1",
                unit.equals("in") ? MOST_INCHES + "" : Length.LONGEST_CM + "", unit);
    }

    /** "40 cm" is a length too, as long as the unit written is the unit chosen. */
    private static String withoutUnit(String typed, String unit) {
        String said = typed.strip();
        return said.toLowerCase(Locale.ROOT).endsWith(unit) ? said.substring(0, said.length() - unit.length()) : said;
    }
}
