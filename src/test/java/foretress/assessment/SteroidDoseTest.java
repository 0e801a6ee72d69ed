package foretress.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("What the amount on a line with a steroid is worth in prednisolone")
class SteroidDoseTest {
    private static SteroidDose dose(String typed, String... names) {
        return new SteroidDose(typed, List.of(names));
    }

    /** The table of equal doses that the source lists: 15 mg of prednisolone against each. */
    @ParameterizedTest
    @CsvSource({ "prednisolone 10 mg, prednisolone, false", "prednisolone 10.5 mg, prednisolone, true",
        "prednisolone 10mg, Prednisolone, false", "prednisone 11 mg, prednisone, true",
        "methylprednisolone 8 mg, methylprednisolone, false", "methylprednisolone 8.1, methylprednisolone, true",
        "triamcinolone 9 mg, triamcinolone, true", "dexamethasone 1.5 mg, dexamethasone, false",
        "dexamethasone 1.6 mg, dexamethasone, true", "betamethasone 2 mg, betamethasone, true",
        "hydrocortisone 40 mg, hydrocortisone, false", "hydrocortisone 41 mg, hydrocortisone, true",
        "cortisone 50 mg, cortisone, false", "cortisone 51 mg, cortisone, true" })
    void tenMilligramsAreReachedAtTheEqualDoseAndNotBefore(String typed, String name, boolean above) {
        assertThat(dose(typed, name).above(10)).isEqualTo(above);
        assertThat(dose(typed, name).within(10)).isEqualTo(!above);
    }

    @ParameterizedTest
    @CsvSource({ "prednisolone 1 g, true", "prednisolone 0.5 gram, true", "prednisolone 500 mcg, false",
        "prednisolone 9000 micrograms, false", "prednisolone 11000 µg, true", "'prednisolone 2,5 mg', false",
        "prednisolone 20, true" })
    void theUnitCountsAndWithoutOneItIsMilligrams(String typed, boolean above) {
        assertThat(dose(typed, "prednisolone").above(10)).isEqualTo(above);
    }

    /** Words our pages are read in; the Arabic pages themselves write the band as "10 ملغ". */
    @ParameterizedTest
    @CsvSource({ "بريدنيزولون ٢٠ ملغ, true", "بريدنيزولون ٥ ملغ, false", "بريدنيزولون ۲۰ ملغ, true",
        "prednisolone ２０ ｍｇ, true", "'بريدنيزولون ٢٫٥ ملغ', false", "بريدنيزولون 1 غرام, true",
        "بريدنيزولون 500 ميكروغرام, false", "prednisolona 1 gramo, true", "prednisolone 1 gramme, true",
        "prednizolon 1 gram, true", "prednizolon 2 gramy, true", "prednisolone 500 microgrammes, false",
        "prednizolon 500 mikrogramów, false", "prednisolone 1 gr, true", "prednisolone 5 gouttes, false" })
    void digitsAndUnitsOfOtherLanguagesAreTheSameAmounts(String typed, boolean above) {
        assertThat(dose(typed, "prednisolone").above(10)).isEqualTo(above);
        assertThat(dose(typed, "prednisolone").within(10)).isEqualTo(!above);
    }

    @ParameterizedTest
    @CsvSource({ "'1,000 mg', true", "1.000 mg, true", "'1,250.5 mg', true", "'0,125 mg', false", "0.125 mg, false",
        "'1,5 mg', false", "1.25 mg, false", "1.0000 mg, false", "2.125, true" })
    void whatMayBeThousandsIsReadAsThousands(String amount, boolean above) {
        assertThat(dose("prednisolone " + amount, "prednisolone").above(10)).isEqualTo(above);
    }

    @ParameterizedTest
    @ValueSource(strings = { "prednisolone 5 mg twice a day", "prednisolone 7.5 mg b.d.", "prednisolone 7.5 mg B.I.D",
        "t.d.s. prednisolone 5 mg", "prednisolone 2 x 5 mg", "prednisolone 5 mg and 2 mg",
        "five prednisolone 5 mg", "prednisolona 5 mg cada ocho horas", "Prednisolon 5 mg, vier Tabletten",
        "prednisolone 5 mg quatre fois", "prednizolon 5 mg sześć tabletek", "prednisolone 5 mg + 5 mg",
        "prednisolone 5mg 5mg", "بريدنيزولون 5 ملغ مرتين يوميا", "بريدنيزولون ٥ ملغ ثلاث مرات",
        "حبتان بريدنيزولون 5 ملغ",
        "prednisolone 5 mg hai lần mỗi ngày", "prednisolone 5 mg, ba viên", "بريدنيزولون ٥ ملغ و ٥ ملغ" })
    void whatIsMultipliedOrAddedToIsNotSurelyWithin(String typed) {
        assertThat(dose(typed, "prednisolone").within(10)).isFalse();
    }

    @Test
    void withoutAnAmountTheBandIsBelievedOfTheSteroidItIsToldInAlone() {
        assertThat(dose("prednisolone", "prednisolone").within(10)).isTrue();
        assertThat(dose("prednisone or prednisolone", "prednisone", "prednisolone").within(10)).isTrue();
        assertThat(dose("dexamethasone", "dexamethasone").within(10)).isFalse();
        assertThat(dose("prednisolone or dexamethasone", "prednisolone", "dexamethasone").within(10)).isFalse();
    }

    @Test
    void whatNobodyKnowsTheWorthOfIsNeitherAboveNorSurelyWithin() {
        assertThat(dose("deflazacort 6 mg", "deflazacort").above(10)).isFalse();
        assertThat(dose("deflazacort 6 mg", "deflazacort").within(10)).isFalse();
        assertThat(dose("steroid 5 mg").within(10)).isFalse();
        assertThat(dose("prednisolone or deflazacort 6 mg", "prednisolone", "deflazacort").within(10)).isFalse();
    }

    @Test
    void ofTwoNamesItMayBeTheStrongerCounts() {
        SteroidDose either = dose("5 mg", "prednisolone", "dexamethasone");
        assertThat(either.above(10)).isTrue();
        assertThat(either.within(10)).isFalse();
    }
}
