package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Policy;
import foretress.assessment.Source.Kind;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("R17: law, maker, trade rule and house rule are told apart, and every limit names the one that really sets it")
class KindsOfSourceTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;

    /** Who sets what, from the texts named in sources.yaml; where nobody was found to set a figure it is a house rule. */
    @ParameterizedTest
    @CsvSource({
        "uk, label-age, LAW", "eu, label-age, LAW", "us, label-age, HOUSE_RULE",
        "uk, skin-test-wait-hours, TRADE_RULE", "eu, skin-test-wait-hours, MAKER",
        "us, skin-test-wait-hours, HEALTH_ADVICE",
        "uk, skin-test-validity-months, TRADE_RULE", "eu, skin-test-validity-months, HOUSE_RULE",
        "us, skin-test-validity-months, MAKER",
        "uk, minimum-age, HOUSE_RULE", "eu, minimum-age, HOUSE_RULE", "us, minimum-age, HOUSE_RULE",
        "uk, guardian-below-age, HOUSE_RULE", "eu, guardian-below-age, LAW", "us, guardian-below-age, HOUSE_RULE",
        "uk, retention-years, TRADE_RULE", "eu, retention-years, HOUSE_RULE", "us, retention-years, HOUSE_RULE",
        "uk, minor-retention-age, LAW", "us, lash-tint-allowed, LAW", "uk, chemotherapy-months, HEALTH_ADVICE",
        "uk, relaxer-weeks, TEACHING" })
    void aLimitIsWhatItIs(String place, String figure, Kind kind) {
        assertThat(kind(KNOWLEDGE.policy(place).source(figure))).isEqualTo(kind);
    }

    /** Annex III of the cosmetics regulation speaks of hair dye; lightener, relaxer and perm go by the house's own age. */
    @Test
    void theDyeLabelsAgeForbidsNothingButDye() {
        assertThat(KNOWLEDGE.ruleSet().rule("under-the-label-age").orElseThrow().weights().keySet())
            .containsExactlyInAnyOrder("oxidative-dye", "direct-dye", "lash-dye");
        assertThat(KNOWLEDGE.ruleSet().rule("under-the-salon-age").orElseThrow().sources())
            .allMatch(source -> kind(source) == Kind.HOUSE_RULE);
    }

    @ParameterizedTest
    @ValueSource(strings = { "uk", "eu", "us" })
    void everyWarningIsThatOfALawOfThePlace(String place) {
        assertThat(KNOWLEDGE.policy(place).warnings()).isNotEmpty()
            .allMatch(warning -> kind(warning.source()) == Kind.LAW);
        Set<String> sources =
            KNOWLEDGE.policy(place).warnings().stream().map(Policy.Warning::source).collect(Collectors.toSet());
        assertThat(sources).allMatch(source -> source.startsWith(place + "-"));
    }

    @Test
    void aWarningIsReadByWhoeverItsProductTouchesAndByNobodyElse() {
        assertThat(KNOWLEDGE.policy("eu").warningsOn(Set.of("oxidative-dye", "peroxide"))).contains("severe-allergy",
            "not-under-16", "tattoo-reaction");
        assertThat(KNOWLEDGE.policy("eu").warningsOn(Set.of("hydroxide"))).isEmpty();
        assertThat(KNOWLEDGE.policy("us").warningsOn(Set.of("oxidative-dye"))).containsExactly("preliminary-test",
            "never-lashes");
    }

    @Test
    @DisplayName("R20: no screen shows a file's path or speaks of the project")
    void whatAScreenPrintsOfASourceHoldsNoPath() {
        assertThat(KNOWLEDGE.ruleSet().sources().values()).allSatisfy(source -> assertThat(
            Stream
                .concat(Stream.of(source.title()),
                    Stream.of(source.place(), source.link(), source.read()).flatMap(o -> o.stream()))
                .collect(Collectors.joining(" ")))
            .doesNotContain(".md", "docs/", "the project"));
    }

    private static Kind kind(String source) {
        return KNOWLEDGE.ruleSet().sources().get(source).kind();
    }
}
