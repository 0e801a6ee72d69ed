package foretress.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Loaded;
import foretress.questionnaire.Question;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The operations themselves, without a server. */
@Execution(ExecutionMode.CONCURRENT)
class OperationsTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    static final Operations OPERATIONS = new Operations(KNOWLEDGE);
    private static final ObjectNode DOCUMENT = new OpenApi(OPERATIONS).document();
    private static final Schemas SCHEMAS = new Schemas(DOCUMENT);
    private static final Path EXAMPLES = Path.of("src/main/resources/foretress/api/examples");

    static Stream<Operation> operations() {
        return OPERATIONS.all().stream();
    }

    private static JsonNode json(String text) {
        return JsonBodies.read(text.replace('\'', '"').getBytes(StandardCharsets.UTF_8));
    }

    private static JsonNode answer(String operation, String example) {
        return OPERATIONS.operation(operation).answer(OpenApi.example(example));
    }

    /** The example with the value at a pointer replaced; a parent that is not there is an error of the test. */
    private static JsonNode changed(String example, String pointer, String value) {
        ObjectNode body = OpenApi.example(example).deepCopy();
        int last = pointer.lastIndexOf('/');
        JsonNode parent = body.at(pointer.substring(0, last));
        if (parent.isArray()) {
            ((ArrayNode) parent).set(Integer.parseInt(pointer.substring(last + 1)), json(value));
        } else {
            ((ObjectNode) parent).set(pointer.substring(last + 1), json(value));
        }
        return body;
    }

    private static List<Faults.Fault> faults(String operation, JsonNode body) {
        List<Faults.Fault> faults = new ArrayList<>();
        assertThatExceptionOfType(Refused.class).isThrownBy(() -> OPERATIONS.operation(operation).answer(body))
            .satisfies(refused -> {
                assertThat(refused.status).isEqualTo(422);
                faults.addAll(refused.faults);
            });
        return faults;
    }

    @ParameterizedTest
    @MethodSource("operations")
    @DisplayName("B26: an independent reader of JSON Schema agrees that every example and every answer is as documented")
    void examplesAndAnswersAreAsDocumented(Operation operation) {
        if (operation.examples().isEmpty()) {
            assertThat(SCHEMAS.response(operation, operation.answer(json("{}")))).isEmpty();
        }
        for (String name : operation.examples()) {
            assertThat(SCHEMAS.request(operation, OpenApi.example(name))).as(name).isEmpty();
            assertThat(SCHEMAS.response(operation, operation.answer(OpenApi.example(name)))).as(name).isEmpty();
        }
    }

    @Test
    void everyFileOfExamplesIsSomeOperationsExample() throws IOException {
        List<String> used = operations().flatMap(o -> o.examples().stream()).toList();
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            assertThat(files.map(f -> f.getFileName().toString().replace(".json", "")))
                .containsExactlyInAnyOrderElementsOf(used);
        }
    }

    @Test
    void everyOperationIsInTheDocumentAndEveryReferenceLeadsSomewhere() {
        assertThat(DOCUMENT.get("openapi").asText()).startsWith("3.1.");
        assertThat(DOCUMENT.get("paths").size()).isEqualTo(OPERATIONS.all().size() + 1);
        DOCUMENT.findValuesAsText("$ref")
            .forEach(ref -> assertThat(DOCUMENT.at(ref.substring(1)).isMissingNode()).as(ref).isFalse());
    }

    @Test
    void theDocumentIsTheSameInYaml() throws JsonProcessingException {
        Object yaml = new org.snakeyaml.engine.v2.api.Load(
            org.snakeyaml.engine.v2.api.LoadSettings.builder().setCodePointLimit(10_000_000).build())
            .loadFromString(new OpenApi(OPERATIONS).yaml());
        assertThat(again(JsonBodies.JSON.valueToTree(yaml)).equals(again(DOCUMENT))).isTrue();
    }

    /** Numbers as they come back from text. */
    private static JsonNode again(JsonNode node) throws JsonProcessingException {
        return JsonBodies.JSON.readTree(node.toString());
    }

    @Test
    void theLotionBeforeHighlightsOwesAnIncompatibilityTestInsideOpeningHours() {
        JsonNode answer = answer("assess", "restorer-before-highlights");
        JsonNode metal = finding(answer, "metal-meets-peroxide");
        assertThat(metal.at("/services/highlights").asText()).isEqualTo("test first");
        assertThat(metal.get("demands").toString()).contains("incompatibility-test");
        assertThat(metal.at("/sources/0/title").asText()).isNotBlank();
        assertThat(answer.at("/standings/0/service").asText()).isEqualTo("highlights");
        assertThat(answer.at("/standings/0/nothingFound").asBoolean()).isFalse();
        assertThat(answer.get("standings").size()).isEqualTo(KNOWLEDGE.ruleSet().services().size());
        assertThat(answer.get("ruleSet").asText()).isEqualTo(KNOWLEDGE.ruleSet().hash());
    }

    private static JsonNode finding(JsonNode answer, String rule) {
        for (JsonNode finding : answer.get("findings")) {
            if (finding.get("rule").asText().equals(rule)) {
                return finding;
            }
        }
        throw new AssertionError("no finding " + rule);
    }

    /** Clocks in London go back at 01:00 UTC on 25 October 2026 (IANA tz database). */
    @Test
    void aWaitOverTheChangeOfTheClocksIsCountedInHoursAndEndsBeforeAClosedDay() {
        JsonNode plan = answer("assess", "skin-test-over-the-clock-change").get("plan");
        JsonNode skin = plan.at("/owed/0");
        assertThat(skin.get("test").asText()).isEqualTo("skin-test");
        assertThat(skin.get("takesHours").asInt()).isEqualTo(48);
        assertThat(skin.get("latestRead").asText()).isEqualTo("2026-10-26T10:00:00Z");
        assertThat(skin.get("lastOpenStart").asText())
            .as("Friday 17:45 summer time, a quarter before closing, since Saturday is closed")
            .isEqualTo("2026-10-23T16:45:00Z");
        assertThat(skin.get("latestStart")).isEqualTo(skin.get("lastOpenStart"));
        assertThat(plan.get("visitWhileShut").asBoolean()).isFalse();
    }

    @Test
    void aLeafletThatAsksForLongerMovesTheLastStart() {
        JsonNode body =
            changed("skin-test-over-the-clock-change", "/leaflet", "{'waitHours': 72, 'valid': {'unsaid': 'yes'}}");
        assertThat(OPERATIONS.operation("assess").answer(body).at("/plan/owed/0/takesHours").asInt()).isEqualTo(72);
    }

    @Test
    void nothingFoundIsSaidOnlyWhereEverythingWasAskedAndAnswered() {
        assertThat(answer("assess", "nothing-to-report").at("/standings/0/nothingFound").asBoolean()).isTrue();
        JsonNode unanswered = OPERATIONS.operation("assess").answer(changed("nothing-to-report", "/answers", "{}"));
        assertThat(unanswered.at("/standings/0/nothingFound").asBoolean()).isFalse();
        assertThat(unanswered.get("unanswered").toString()).contains("scalp-today");
    }

    @Test
    void aFaultySkinTestLiftsNothing() {
        String sound =
            "{'test':'skin-test','outcome':'negative','started':'2026-10-18','read':'2026-10-20','waitKept':true,'thisProduct':true,"
                + "'thisVisit':true,'masked':false,'overtaken':false}";
        assertThat(owes(sound)).isFalse();
        for (String wrong : List.of("'waitKept':false", "'thisProduct':false", "'masked':true", "'overtaken':true")) {
            String field = wrong.split(":")[0];
            assertThat(owes(sound.replaceAll(field + ":(true|false)", wrong))).as(wrong).isTrue();
        }
        assertThat(owes(sound.replace("'read':'2026-10-20',", ""))).as("nobody read it").isTrue();
    }

    /** The weights are an own decision, in docs/why: yes with care leaves restricts, no prevents, and a word is about one thing. */
    @ParameterizedTest
    @CsvSource({ "g6pd, with-care, true, restricts", "g6pd, with-care, false, test first",
        "g6pd, advised-against, true, prevents",
        "g6pd, advised-against, false, prevents", "scalp-wound, with-care, true, test first" })
    void aDoctorsWordWeighsAsItDoesAtTheChair(String about, String outcome, boolean thisVisit, String weight) {
        JsonNode body = changed("a-doctors-word", "/tests/0/about", "'" + about + "'");
        ((ObjectNode) body.at("/tests/0")).put("outcome", outcome).put("thisVisit", thisVisit);
        ((ObjectNode) body).set("answers", ((ObjectNode) noToEverything()).set("g6pd", json("{'chosen':['yes']}")));
        // Plant colour owes a skin test of its own, whatever a doctor said.
        ((ArrayNode) body.at("/tests")).add(json("{'test':'skin-test','outcome':'negative','started':'2026-06-06',"
            + "'read':'2026-06-08','waitKept':true,'thisProduct':true,'thisVisit':true,'masked':false,'overtaken':false}"));
        JsonNode finding = OPERATIONS.operation("assess").answer(body);
        assertThat(finding.at("/findings").findValuesAsText("rule")).contains(switch (weight) {
            case "restricts" -> "plant-colour-with-g6pd";
            case "prevents" -> "doctor-against-plant-colour";
            default -> "plant-colour-and-g6pd";
        });
        assertThat(finding.at("/standings/0/weight").asText()).isEqualTo(weight);
    }

    @Test
    void everyWordOfALabelStandsSomewhere() {
        JsonNode read = OPERATIONS.operation("read-label")
            .answer(json("{'text':'Ingredients: Aqua, Glycerin 5 %, free from ammonia'}"));
        assertThat(read.get("beside").findValuesAsText("reason")).isNotEmpty();
        assertThat(read.get("beside").findValuesAsText("written").toString()).contains("5");
    }

    /** With no to every reaction, so that only the test decides. */
    private static boolean owes(String test) {
        ObjectNode body = (ObjectNode) changed("skin-test-over-the-clock-change", "/tests", "[" + test + "]");
        body.set("answers", noToEverything());
        return OPERATIONS.operation("assess").answer(body).get("findings").findValuesAsText("rule")
            .contains("colour-owes-a-skin-test");
    }

    private static JsonNode noToEverything() {
        ObjectNode answers = JsonBodies.JSON.createObjectNode();
        for (Question question : KNOWLEDGE.questionnaire().questions()) {
            question.options().stream().filter(List.of("no", "never", "none")::contains).findFirst()
                .ifPresent(no -> answers.set(question.id(), json("{'chosen':['" + no + "']}")));
        }
        answers.set("medicines", json("{'medicines':[]}"));
        answers.set("treatments", json("{'treatments':[]}"));
        return answers;
    }

    /** Toluene-2,5-diamine has CAS 95-70-5, p-phenylenediamine 106-50-3, lead acetate 301-04-2 (the CAS registry's own numbers). */
    @Test
    void aLabelIsReadWithItsSlipsItsClaimsAndItsUnknownWords() {
        assertThat(answer("read-label", "a-slip-and-a-claim").get("found").findValuesAsText("cas")).contains("95-70-5",
            "106-50-3");
        assertThat(answer("read-label", "a-slip-and-a-claim").get("claimedAbsent").findValuesAsText("name"))
            .containsExactly("AMMONIA");
        JsonNode lotion = answer("read-label", "restorer-lotion");
        assertThat(lotion.get("found").findValuesAsText("cas")).contains("301-04-2");
        assertThat(lotion.get("unknown").findValuesAsText("written")).containsExactly("Zorbelium Extract");
    }

    @Test
    void aMedicineNobodyKnowsIsToldAsSuch() {
        JsonNode names = answer("read-medicines", "a-list-with-a-slip").get("names");
        assertThat(names.findValuesAsText("sureness")).containsExactly("name", "spelling-slip", "not-recognised");
        assertThat(names.at("/0/classes/0/class").asText()).isEqualTo("systemic-corticosteroid");
    }

    @Test
    void theStrandMapIsToldAndDrawn() {
        JsonNode map = answer("strand-map", "restorer-two-summers-ago");
        assertThat(map.get("metalSuspected").asBoolean()).isTrue();
        assertThat(map.get("lanes").findValuesAsText("what")).containsExactly("box-dye", "restorer");
        String svg = OPERATIONS.strandMapSvg(OpenApi.example("restorer-two-summers-ago"));
        assertThat(svg).startsWith("<svg").endsWith("</svg>").contains("Darkening lotion").doesNotContain("<script",
            "style=");
    }

    @Test
    void whatStaffKnowOfTheHairCounts() {
        JsonNode cut = OPERATIONS.operation("strand-map")
            .answer(changed("restorer-two-summers-ago", "/cuts", "[{'day':'2026-06-09','toCm':5}]"));
        assertThat(cut.at("/lanes/1/chanceLeft").asDouble()).as("two summers of growth lie beyond 5 cm").isZero();
        JsonNode done = OPERATIONS.operation("strand-map")
            .answer(changed("restorer-two-summers-ago", "/doneHere", "[{'what':'perm','when':{'day':'2026-01-15'}}]"));
        assertThat(done.get("lanes").findValuesAsText("what")).contains("perm", "box-dye", "restorer");
    }

    /** 40 volumes are 12 % (Regulation 1223/2009, Annex III entry 12, counts so): half of each makes 6 %. */
    @Test
    void theBenchAnswers() {
        JsonNode bath = answer("bench-dilution", "twenty-volumes-from-forty");
        assertThat(bath.at("/stock/percent").asDouble()).isEqualTo(12);
        assertThat(bath.get("stockMl").asDouble()).isEqualTo(20);
        assertThat(bath.get("waterMl").asDouble()).isEqualTo(20);
        assertThat(answer("bench-elasticity", "a-wet-hair-stays-long").get("result").asText()).isEqualTo("fail");
        assertThat(answer("bench-porosity", "dull-ends").get("result").asText()).isEqualTo("porous");
        assertThat(answer("bench-incompatibility", "nothing-at-all-happened").get("result").asText())
            .isEqualTo("nothing-happened");
        assertThat(answer("bench-incompatibility", "bubbles").get("stopsNow").asBoolean()).isTrue();
    }

    @ParameterizedTest(name = "{1} = {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
        "restorer-before-highlights | /now | '2026-02-30T09:00:00Z' | /now",
        "restorer-before-highlights | /now | '2026-06-10T09:00:00' | /now",
        "restorer-before-highlights | /now | 12 | /now",
        "restorer-before-highlights | /visit | '2026-06-09T09:00:00Z' | /visit",
        "restorer-before-highlights | /visit | '2029-06-09T09:00:00Z' | /visit",
        "restorer-before-highlights | /zone | 'Europe/Atlantis' | /zone",
        "restorer-before-highlights | /jurisdiction | 'mars' | /jurisdiction",
        "restorer-before-highlights | /booked | [] | /booked",
        "restorer-before-highlights | /booked/0/service | 'shave' | /booked/0/service",
        "restorer-before-highlights | /booked/0/without | ['cut'] | /booked/0/without/0",
        "restorer-before-highlights | /booked/0/without | ['lighten','tone'] | /booked/0/without",
        "restorer-before-highlights | /born | '2026-06-11' | /born",
        "restorer-before-highlights | /born | null | /born",
        "restorer-before-highlights | /measuredLengthCm | 40.5 | /measuredLengthCm",
        "restorer-before-highlights | /measuredLengthCm | 201 | /measuredLengthCm",
        "restorer-before-highlights | /surprise | 1 | /surprise",
        "restorer-before-highlights | /openingHours/monday | [{'opens':'18:00','closes':'09:00'}] | /openingHours/monday/0",
        "restorer-before-highlights | /openingHours/someday | [] | /openingHours/someday",
        "restorer-before-highlights | /answers/no~1such | {'chosen':['yes']} | /answers/no~01such",
        "restorer-before-highlights | /answers/darkening-lotion | {'chosen':['maybe']} | /answers/darkening-lotion/chosen/0",
        "restorer-before-highlights | /answers/darkening-lotion | {'chosen':['yes','no']} | /answers/darkening-lotion/chosen",
        "restorer-before-highlights | /answers/darkening-lotion | {'text':'yes'} | /answers/darkening-lotion",
        "restorer-before-highlights | /answers/darkening-lotion | 'yes' | /answers/darkening-lotion",
        "restorer-before-highlights | /answers/scalp-today | {'chosen':['none','sore']} | /answers/scalp-today/chosen",
        "restorer-before-highlights | /answers/hair-length | {'lengthCm':201,'drawnStraight':true} | /answers/hair-length/lengthCm",
        "restorer-before-highlights | /answers/hair-length | {'lengthCm':20} | /answers/hair-length/drawnStraight",
        "restorer-before-highlights | /answers/treatments/treatments/0/what | 'magic' | /answers/treatments/treatments/0/what",
        "restorer-before-highlights | /answers/treatments/treatments/0/when | {'year':2027} | /answers/treatments/treatments/0/when",
        "restorer-before-highlights | /answers/treatments/treatments/0/when | {'from':3,'to':2} | /answers/treatments/treatments/0/when",
        "restorer-before-highlights | /answers/treatments/treatments/0/when | {'day':'2025-02-29'} | /answers/treatments/treatments/0/when/day",
        "restorer-before-highlights | /answers/treatments/treatments/0/since | {'year':2026} | /answers/treatments/treatments/0/since",
        "restorer-before-highlights | /answers/medicines | {'medicines':[{'name':' '}]} | /answers/medicines/medicines/0/name",
        "restorer-before-highlights | /language | 'tlh' | /language",
        "skin-test-over-the-clock-change | /tests | [{'test':'skin-test'}] | /tests/0/outcome",
        "restorer-lotion | /text | '' | /text",
        "restorer-lotion | /text | ['a'] | /text",
        "restorer-two-summers-ago | /today | '2026-13-01' | /today",
        "restorer-two-summers-ago | /cuts | [{'day':'2026-06-11','toCm':20}] | /cuts/0/day",
        "restorer-two-summers-ago | /growth | {'newGrowthCm':3,'coloured':'2026-05-01','read':'2026-04-01'} | /growth/read",
        "restorer-two-summers-ago | /growth | {'newGrowthCm':12,'coloured':'2026-02-01','read':'2026-05-01'} | /growth/newGrowthCm",
        "a-doctors-word | /tests/0/about | 'scalp' | /tests/0/about",
        "a-doctors-word | /tests/0/test | 'skin-test' | /tests/0/about",
        "restorer-two-summers-ago | /doneHere | [{'what':'bleach','when':{'year':2027}}] | /doneHere/0/when",
        "restorer-two-summers-ago | /layout | 'poster' | /layout",
        "twenty-volumes-from-forty | /wanted | {'percent': 30} | /wanted",
        "twenty-volumes-from-forty | /wantedMl | 0 | /wantedMl",
        "a-wet-hair-stays-long | /pulls/0/stretchedMm | 94 | /pulls/0/stretchedMm",
        "a-wet-hair-stays-long | /pulls/0/restMm | 2 | /pulls/0/restMm",
        "bubbles | /seen/0/tuft | 'Z' | /seen/0/tuft",
        "bubbles | /tufts/1/letter | 'A' | /tufts/1/letter" })
    @DisplayName("E8: what is wrong is named by a pointer to the very value")
    void whatIsWrongIsPointedAt(String example, String pointer, String value, String expected) {
        Operation operation = operations().filter(o -> o.examples().contains(example)).findFirst().orElseThrow();
        JsonNode body = changed(example, pointer, value);
        assertThat(faults(operation.id(), body)).extracting(Faults.Fault::pointer).contains(expected);
    }

    @Test
    void anOutcomeBelongsToItsTest() {
        JsonNode body = changed("skin-test-over-the-clock-change", "/tests",
            "[{'test':'skin-test','outcome':'pass','started':'2026-10-21','read':'2026-10-19',"
                + "'waitKept':true,'thisProduct':true,'thisVisit':true,'masked':false,'overtaken':false}]");
        assertThat(faults("assess", body)).extracting(Faults.Fault::pointer).containsExactly("/tests/0/outcome",
            "/tests/0/started", "/tests/0/read");
    }

    @Test
    void aBodyWrongAllOverIsAnsweredWithItsFirstFaults() {
        var wrong = new StringBuilder("{");
        for (int i = 0; i < 500; i++) {
            wrong.append(i == 0 ? "" : ",").append("'x").append(i).append("':1");
        }
        assertThat(faults("read-label", json(wrong + "}"))).hasSize(Faults.MOST);
    }

    @Test
    void tooManyEntriesAreRefusedBeforeTheyAreLookedAt() {
        String many = "[" + "{'what':'bleach','when':{'not':'known'}},".repeat(61).replaceAll(",$", "") + "]";
        JsonNode body = changed("restorer-before-highlights", "/answers/treatments/treatments", many);
        assertThat(faults("assess", body)).extracting(Faults.Fault::pointer)
            .containsExactly("/answers/treatments/treatments");
    }

    /** Every kind of answer a question offers is taken; a question may be left out, and "don't know" said where it may be. */
    @Test
    void everyOptionOfEveryQuestionIsTaken() {
        for (Question question : KNOWLEDGE.questionnaire().questions()) {
            List<String> answers = switch (question.kind()) {
                case ONE_OF, SEVERAL_OF ->
                    question.options().stream().map(code -> "{'chosen':['%s']}".formatted(code)).toList();
                case SAID_DATE -> List.of("{'date':{'month':'2026-05'}}", "{'date':{'not':'known'}}",
                    "{'date':{'longerThan':5}}", "{'date':{'from':0,'to':1}}",
                    "{'date':{'season':'WINTER','year':2025}}", "{'date':{'day':'2026-06-10'}}",
                    "{'date':{'year':2020}}");
                case HAIR_LENGTH -> List.of("{'lengthCm':1,'drawnStraight':false}");
                case TREATMENTS -> question.options().stream()
                    .map(code -> ("{'treatments':[{'what':'%s','when':{'year':2024},'often':'regularly',"
                        + "'every':'6-weeks','since':{'year':2022}}]}").formatted(code))
                    .toList();
                case MEDICINES -> List.of("{'medicines':[]}", "{'medicines':[{'name':'ibuprofen','lastTaken':'now'}]}");
                case INGREDIENTS, NOTE -> List.of("{'text':'words'}");
            };
            List<String> all = new ArrayList<>(answers);
            if (question.unsure()) {
                all.add("{'not':'known'}");
            }
            if (question.personal()) {
                all.add("{'not':'said'}");
            }
            for (String answer : all) {
                JsonNode body =
                    changed("restorer-before-highlights", "/answers", "{'%s':%s}".formatted(question.id(), answer));
                assertThat(OPERATIONS.operation("assess").answer(body).has("standings"))
                    .as(question.id() + " " + answer).isTrue();
            }
        }
    }

    @Test
    void theQuestionnaireListsEveryQuestionWithItsCodes() {
        JsonNode answer = OPERATIONS.operation("questionnaire").answer(json("{}"));
        assertThat(answer.get("topics").findValuesAsText("question"))
            .containsExactlyElementsOf(KNOWLEDGE.questionnaire().questions().stream().map(Question::id).toList());
    }
}
