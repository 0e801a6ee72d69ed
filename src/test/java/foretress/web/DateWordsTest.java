package foretress.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dates as each language writes them, after CLDR's patterns yMMMMd, yMMMM and MMMMEEEEd. */
class DateWordsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 11);

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "en | 11 June 2026 | June 2026 | Thursday 11 June",
        "es | 11 de junio de 2026 | junio de 2026 | jueves 11 de junio",
        "fr | 11 juin 2026 | juin 2026 | jeudi 11 juin",
        "pl | 11 czerwca 2026 | czerwiec 2026 | czwartek 11 czerwca",
        "ar | 11 يونيو 2026 | يونيو 2026 | الخميس 11 يونيو",
        "vi | 11 tháng 6 năm 2026 | tháng 6 năm 2026 | Thứ Năm 11 tháng 6" })
    void aDateIsWrittenAsTheLanguageWritesIt(String tag, String date, String month, String weekday) {
        var words = new DateWords(Locale.forLanguageTag(tag));
        assertThat(words.date(DAY)).isEqualTo(date);
        assertThat(words.month(DAY)).isEqualTo(month);
        assertThat(words.weekday(DAY)).isEqualTo(weekday);
    }
}
