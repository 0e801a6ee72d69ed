package foretress.invitation;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.invitation.BirthDateField.Mistake;
import java.time.LocalDate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BirthDateFieldTest {
    private static final LocalDate TODAY = LocalDate.parse("2026-11-24");

    @ParameterizedTest(name = "{0}")
    @CsvSource(nullValues = "-", value = {
        "'nothing typed',              '',     '',   '',      DAY_MISSING",
        "'a word for the day',         'two',  '3',  '1990',  DAY_MISSING",
        "'no month chosen',            '2',    '',   '1990',  MONTH_MISSING",
        "'a thirteenth month',         '2',    '13', '1990',  MONTH_MISSING",
        "'no year',                    '2',    '3',  ' ',     YEAR_MISSING",
        "'two figures of the year',    '2',    '3',  '90',    YEAR_SHORT",
        "'five figures of the year',   '2',    '3',  '19900', YEAR_SHORT",
        "'the 31st of April',          '31',   '4',  '1990',  NO_SUCH_DAY",
        "'29 February, no leap year',  '29',   '2',  '1900',  NO_SUCH_DAY",
        "'day zero',                   '0',    '4',  '1990',  NO_SUCH_DAY",
        "'tomorrow',                   '25',   '11', '2026',  AHEAD",
        "'126 years ago',              '24',   '11', '1900',  TOO_LONG_AGO",
    })
    void whatIsWrongIsNamed(String name, String day, String month, String year, Mistake mistake) {
        BirthDateField.Read read = new BirthDateField(day, month, year).read(TODAY);
        assertThat(read.mistake()).contains(mistake);
        assertThat(read.date()).isEmpty();
    }

    @Test
    void todayAndTheOldestDayAreStillDates() {
        assertThat(new BirthDateField("24", "11", "2026").read(TODAY).date()).contains(TODAY);
        assertThat(new BirthDateField("24", "11", "1901").read(TODAY).date()).contains(LocalDate.of(1901, 11, 24));
    }

    /** A30. The outside check is the Unicode character data that ships with Java: every decimal digit it lists. */
    @Test
    void everyScriptsDigitsReadAlike() {
        int[] zeros = IntStream.rangeClosed(0, Character.MAX_CODE_POINT)
            .filter(c -> Character.getType(c) == Character.DECIMAL_DIGIT_NUMBER && Character.digit(c, 10) == 0)
            .toArray();
        assertThat(zeros.length).isGreaterThan(50);
        for (int zero : zeros) {
            assertThat(new BirthDateField(in(zero, "07"), in(zero, "4"), in(zero, "1958")).read(TODAY).date())
                .as("digits from U+%04X", zero).contains(LocalDate.of(1958, 4, 7));
        }
    }

    private static String in(int zero, String digits) {
        return digits.chars().map(c -> zero + c - '0')
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
    }
}
