package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import foretress.assessment.Assessment;
import foretress.assessment.Assessor;
import foretress.assessment.FactValue;
import foretress.assessment.Finding;
import foretress.assessment.ReadAs;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("R18: what was read stands beside what was typed")
class ReadWordsTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final Words ENGLISH = KNOWLEDGE.words("en");
    private static final Words SPANISH = KNOWLEDGE.words("es");
    /** As the application reads what it keeps. */
    private static final ObjectMapper JSON = JsonMapper.builder().addModule(new Jdk8Module())
        .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES).build();

    private static Assessment colour(String rest) {
        Case one = Case
            .read(KNOWLEDGE,
                Map.of("one.yaml", "- name: one\n  given: { service: colour-whole" + rest + " }\n  expect: {}\n"))
            .get(0);
        return Assessor.assess(KNOWLEDGE.ruleSet(), KNOWLEDGE.factFinder().find(one.situation()),
            List.of(one.service()));
    }

    private static Assessment taking(String... names) {
        return colour(", medicines: ["
            + String.join(", ", List.of(names).stream().map(name -> "{ name: " + name + " }").toList()) + "]");
    }

    private static Assessment label(String text) {
        return colour(", last-colour-by: self, ingredient-list: \"" + text + "\"");
    }

    private static List<String> said(Assessment assessment, String rule) {
        return ReadWords.say(assessment.finding(rule).orElseThrow().read(), ENGLISH);
    }

    @Test
    @DisplayName("R18: a finding of a medicine names what was typed and what it was read as")
    void aMedicineIsNamed() {
        Assessment found = taking("MTX");
        assertThat(found.facts().get("immune-medicine").read())
            .containsExactly(new ReadAs("MTX", List.of("methotrexate"), true));
        Finding masked = found.finding("skin-test-masked-by-immune-medicine").orElseThrow();
        assertThat(ReadWords.say(masked.read(), ENGLISH)).containsExactly("“MTX” was read as methotrexate.");
        assertThat(ReadWords.say(masked.read(), SPANISH)).containsExactly("«MTX» se ha leído como methotrexate.");
        assertThat(ReadWords.after("Please.", masked.read(), ENGLISH))
            .isEqualTo("Please. “MTX” was read as methotrexate.");
    }

    @Test
    @DisplayName("R18: only the words that decided a finding stand with it")
    void whatDidNotDecideIsNotNamed() {
        Assessment found = taking("cetirizine", "methotrexate");
        assertThat(said(found, "skin-test-masked-by-immune-medicine"))
            .containsExactly("“methotrexate” was read as methotrexate.");
        assertThat(
            found.findings().stream().filter(finding -> finding.causes().stream().noneMatch("medicines"::equals)))
            .allSatisfy(
                finding -> assertThat(finding.read()).as(finding.ruleId()).isEmpty());
    }

    @Test
    @DisplayName("R18: a near miss counts, and is said to be one")
    void aNearMissIsSaidToBeOne() {
        Assessment found = taking("methotraxate");
        String miss = "We could not read every word: “methotraxate” (perhaps methotrexate).";
        assertThat(said(found, "skin-test-masked-by-immune-medicine")).containsExactly(miss);
        assertThat(said(found, "medicine-not-recognised")).containsExactly(miss);
        assertThat(ReadWords.say(found.finding("medicine-not-recognised").orElseThrow().read(), SPANISH))
            .containsExactly("No hemos podido leer todas las palabras: «methotraxate» (quizá methotrexate).");
    }

    @Test
    @DisplayName("R18: a name nobody knows is named")
    void anUnknownNameIsNamed() {
        assertThat(said(taking("zzyvqol"), "medicine-not-recognised"))
            .containsExactly("We could not read every word: “zzyvqol”.");
    }

    @Test
    @DisplayName("R18: lead acetate on a label is named by every finding it decides")
    void aMetalOnALabelIsNamed() {
        Assessment found = label("Aqua, Plumbi acetas, Sulfur");
        List<Finding> speaking =
            found.spoken().stream().filter(finding -> finding.facts().contains("label-metal")).toList();
        assertThat(speaking).isNotEmpty().allSatisfy(
            finding -> assertThat(ReadWords.say(finding.read(), ENGLISH)).as(finding.ruleId())
                .contains("“Plumbi acetas” was read as LEAD ACETATE."));
    }

    @Test
    @DisplayName("R18: words of a label that nobody knows are named, and not those that are known")
    void unknownWordsOfALabelAreNamed() {
        assertThat(said(label("Aqua, zzyvqol"), "label-word-not-recognised"))
            .containsExactly("We could not read every word: “zzyvqol”.");
    }

    @Test
    @DisplayName("R18: what was read is kept with the assessment; one kept before that reads as nothing read")
    void whatIsKeptBeforeReadsAsNothingRead() throws Exception {
        Assessment found = taking("MTX");
        JsonNode kept = JSON.readTree(JSON.writeValueAsString(found));
        assertThat(JSON.treeToValue(kept, Assessment.class)).isEqualTo(found);
        kept.findParents("read").forEach(parent -> ((ObjectNode) parent).remove("read"));
        Assessment before = JSON.treeToValue(kept, Assessment.class);
        assertThat(before.findings()).hasSameSizeAs(found.findings())
            .allSatisfy(finding -> assertThat(finding.read()).isEmpty());
        assertThat(before.facts().byId().values()).extracting(FactValue::read)
            .allSatisfy(read -> assertThat(read).isEmpty());
        assertThat(before.standings()).isEqualTo(found.standings());
    }

    @ParameterizedTest
    @ValueSource(ints = { 12, 13, 300 })
    @DisplayName("R18: a whole label of unknown words is named in part, and says how many more there are")
    void manyWordsAreCounted(int number) {
        List<ReadAs> unknown =
            IntStream.range(0, number).mapToObj(i -> new ReadAs("word" + i, List.of(), false)).toList();
        List<ReadAs> known =
            IntStream.range(0, number).mapToObj(i -> new ReadAs("word" + i, List.of("name"), true)).toList();
        String said = String.join(" ", ReadWords.say(unknown, ENGLISH));
        assertThat(said).contains("“word0”, “word1”", "“word11”").doesNotContain("“word12”");
        assertThat(said.contains("and " + (number - 12) + " more")).isEqualTo(number > 12);
        assertThat(ReadWords.say(known, ENGLISH)).hasSize(number > 12 ? 13 : 12);
    }

    @Test
    @DisplayName("R18: what was typed stays as typed, in one line, and is never taken for a place in our own sentence")
    void whatWasTypedIsNotReadAsAPlace() {
        assertThat(
            ReadWords.say(List.of(new ReadAs(" {names}\n\u202E{words} ", List.of("one", "other"), true)), ENGLISH))
            .containsExactly("“{names} {words}” was read as one or other.");
        assertThat(ReadWords.say(List.of(new ReadAs("{count} {words}", List.of(), false)), ENGLISH))
            .containsExactly("We could not read every word: “{count} {words}”.");
    }
}
