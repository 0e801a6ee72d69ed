package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Question;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whoever passes a gate with "no" is asked nothing more, so the gate itself must name all that a reaction can be. */
class GatesTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final Map<String, List<String>> SIGNS =
        Map.of("en", List.of("skin", "wheeze", "sick", "faint"), "es",
            List.of("piel", "respiraci", "náuseas", "mareo"));

    @ParameterizedTest
    @ValueSource(
        strings = { "colour-reaction", "tint-reaction", "black-tattoo-reaction", "bleach-reaction", "perm-reaction" })
    @DisplayName("R21: every gate asks of skin, breath, sickness and faintness, in every language")
    void everyGateNamesWhatComesWithoutARash(String gate) {
        SIGNS.forEach((language, signs) -> {
            String ask = KNOWLEDGE.words(language).find("questions." + gate + ".ask").orElseThrow();
            assertThat(signs).as("%s: %s", language, ask)
                .allSatisfy(sign -> assertThat(Pattern.compile(sign).matcher(ask).find()).as(sign).isTrue());
        });
    }

    @ParameterizedTest
    @ValueSource(
        strings = { "colour-reaction-what", "tint-reaction-what", "bleach-reaction-what", "perm-reaction-what" })
    @DisplayName("R21: an itch while it was on can be told, wherever something is put on")
    void anItchWhileItWasOnCanBeTold(String what) {
        assertThat(question(what).options()).contains("itched-on");
    }

    @ParameterizedTest
    @ValueSource(strings = { "bleach-reaction-what", "perm-reaction-what" })
    @DisplayName("R24: the nose and the eyes can be told of")
    void theNoseCanBeTold(String what) {
        assertThat(question(what).options()).contains("nose");
    }

    @ParameterizedTest
    @ValueSource(strings = "perm-reaction-which")
    @DisplayName("R24: more than one of perm, relaxer and smoothing can be told of")
    void severalCanBeTold(String which) {
        assertThat(question(which).kind()).isEqualTo(Question.Kind.SEVERAL_OF);
    }

    private static Question question(String id) {
        return KNOWLEDGE.questionnaire().question(id).orElseThrow();
    }
}
