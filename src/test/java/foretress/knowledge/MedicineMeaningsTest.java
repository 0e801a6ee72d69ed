package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.FactFinder;
import foretress.assessment.Situation;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Medicine;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What a medicine means by the way it is taken and when it was last taken; what is not known is read as the heavier")
class MedicineMeaningsTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);
    private static final Set<String> COLOUR = Set.of("oxidative-dye", "peroxide", "alkali");
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final FactFinder FACTS = KNOWLEDGE.factFinder();
    private static final Answers WELL = new BaseClient(KNOWLEDGE).complete(Answers.NONE, COLOUR, Set.of());

    private static String found(String fact, String name, String dose, String route, String last) {
        Answers taking = WELL.with("medicines", new Answer.Medicines(List.of(new Medicine(name, dose, route, last))));
        var situation = new Situation(TODAY, TODAY, Optional.of(LocalDate.of(1990, 1, 1)), COLOUR,
            KNOWLEDGE.questionnaire(), taking, KNOWLEDGE.policy("uk"), List.of(), Optional.of(40));
        return FACTS.find(situation).get(fact).toString();
    }

    @ParameterizedTest(name = "{1}, {2}, last taken {3}: {0} = {4}")
    @CsvSource({
        "chemotherapy, paclitaxel, injection, now, now", "chemotherapy, paclitaxel, injection, dont-know, now",
        "chemotherapy, paclitaxel, injection, week, now", "chemotherapy, paclitaxel, injection, month, in-window",
        "chemotherapy, paclitaxel, injection, longer, over..in-window",
        "chemotherapy, hydroxycarbamide, mouth, now, never..now",
        "chemotherapy, methotrexate, mouth, now, never..now",
        "chemotherapy, fluorouracil, skin, now, never", "chemotherapy, fluorouracil, skin-elsewhere, now, never",
        "chemotherapy, fluorouracil, dont-know, now, never..now", "chemotherapy, cetirizine, mouth, now, never" })
    void chemotherapy(String fact, String name, String route, String last, String value) {
        assertThat(found(fact, name, "not-asked", route, last)).isEqualTo(fact + " = " + value);
    }

    @ParameterizedTest(name = "{1}, {2}, last taken {3}: {0} = {4}")
    @CsvSource({
        "skin-steroid, clobetasol, skin, now, masking", "skin-steroid, clobetasol, scalp, week, masking",
        "skin-steroid, clobetasol, dont-know, dont-know, masking", "skin-steroid, clobetasol, skin, month, elsewhere",
        "skin-steroid, clobetasol, skin, longer, elsewhere", "skin-steroid, clobetasol, skin-elsewhere, now, elsewhere",
        "skin-steroid, clobetasol, inhaled, now, none", "skin-steroid, clobetasol, eye-nose, now, none",
        "skin-steroid, prednisolone, skin, now, masking", "skin-steroid, prednisolone, mouth, now, none",
        "immune-medicine, tacrolimus, mouth, now, masking", "immune-medicine, tacrolimus, skin, now, none",
        "immune-medicine, methotrexate, mouth, longer, none..masking",
        "immune-medicine, omalizumab, injection, now, unproven",
        "immune-medicine, omalizumab, injection, longer, none..unproven" })
    void whatHidesAReaction(String fact, String name, String route, String last, String value) {
        assertThat(found(fact, name, "not-asked", route, last)).isEqualTo(fact + " = " + value);
    }

    @ParameterizedTest(name = "{1}, {2}, last taken {3}: {0} = {4}")
    @CsvSource({
        "retinoid, isotretinoin, mouth, now, taken", "retinoid, isotretinoin, dont-know, month, taken",
        "retinoid, isotretinoin, mouth, longer, none..taken", "retinoid, tretinoin, skin, now, on-skin",
        "retinoid, tretinoin, skin-elsewhere, week, on-skin", "retinoid, tretinoin, skin, longer, none",
        "retinoid, tretinoin, scalp, now, taken", "retinoid, cetirizine, skin, now, none",
        "scalp-medicine, coal tar, scalp, now, used", "scalp-medicine, coal tar, skin, now, none..used",
        "scalp-medicine, coal tar, skin-elsewhere, now, none..used", "scalp-medicine, coal tar, mouth, now, none",
        "scalp-medicine, coal tar, dont-know, now, used", "scalp-medicine, coal tar, scalp, longer, none..used",
        "scalp-medicine, coal tar, inhaled, now, none", "scalp-medicine, cetirizine, scalp, now, none" })
    void whatMakesSkinTender(String fact, String name, String route, String last, String value) {
        assertThat(found(fact, name, "not-asked", route, last)).isEqualTo(fact + " = " + value);
    }

    @ParameterizedTest(name = "{0}, {1}, {2}, last taken {3}: {4}")
    @CsvSource({ "prednisolone 5 mg, low, mouth, now, low", "prednisolone 5 mg, dont-know, mouth, now, masking",
        "prednisolone 20 mg, low, mouth, now, masking", "prednisolone 5 mg b.d., low, mouth, now, low..masking",
        "prednisolone 5 mg, low, skin, now, none", "prednisolone 5 mg, high, inhaled, now, none",
        "prednisolone 5 mg, low, mouth, longer, none..low", "prednisolone, high, injection, longer, none..masking" })
    void steroidTablets(String name, String dose, String route, String last, String value) {
        assertThat(found("steroid-tablets", name, dose, route, last)).isEqualTo("steroid-tablets = " + value);
    }
}
