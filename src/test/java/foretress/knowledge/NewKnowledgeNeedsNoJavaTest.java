package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Assessment;
import foretress.assessment.Assessor;
import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.Weight;
import foretress.closing.DoneHere;
import foretress.hair.Residue;
import foretress.hair.StrandMap;
import foretress.intake.StrandMaps;
import foretress.plan.Owing;
import foretress.questionnaire.Question;
import foretress.visit.Booked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

@DisplayName("A new treatment, a new chemistry and a new service are knowledge alone")
@Execution(ExecutionMode.CONCURRENT)
class NewKnowledgeNeedsNoJavaTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 10);

    @TempDir private Path folder;
    private KnowledgeFiles files;

    /** The shipped knowledge, and to it an invented rub-in mousse, an invented dye and a service with it. */
    @BeforeEach
    void add() throws IOException {
        for (Map.Entry<String, String> file : KnowledgeFiles.ofFolder(Path.of("src/main/knowledge")).byPath()
            .entrySet()) {
            Path to = folder.resolve(file.getKey());
            Files.createDirectories(to.getParent());
            Files.writeString(to, file.getValue());
        }
        put("questionnaire/35-treatments.yaml", "what: [", "what: [metal-mousse, ");
        put("treatments.yaml", "- { id: box-dye,", "- { id: metal-mousse, leaves: metal }\n- { id: box-dye,");
        put("facts.yaml", "of: [restorer, henna-unknown,", "of: [metal-mousse, restorer, henna-unknown,");
        put("services.yaml", "chemistries:\n",
            "chemistries:\n  - { id: root-dye, needs-skin-test: yes, product-line: yes }\n  - mould-acid\n");
        put("services.yaml", "  perms: [", "  perms: [mould-acid, ");
        put("services.yaml", "steps:\n", """
            steps:
              - { id: root-colour, uses: [root-dye], counts-as: salon-colour, reaction: colour-reaction }
              - { id: mould, uses: [mould-acid], found-in: ends, counts-as: perm, reaction: perm-reaction, which: perm }
              - { id: glaze, uses: [direct-dye], removable: yes, counts-as: wash-out-colour, reaction: colour-reaction }
            """);
        put("services.yaml", "services:\n", """
            services:
              - { id: root-colour, aim: cover-grey, steps: [root-colour], applied-to: regrowth }
              - { id: mould-and-glaze, aim: [curl, change-tone], steps: [mould, glaze], counts-as: { glaze: semi-colour } }
            """);
        put("ways.yaml", "cover-grey: [", "cover-grey: [root-colour, ");
        put("ways.yaml", "curl: [", "curl: [mould-and-glaze, ");
        put("ways.yaml", "change-tone: [", "change-tone: [mould-and-glaze, ");
        put("ways.yaml", "does:\n", """
            does:
              root-colour: { grey: covers, lasts: for-good, source: ways-from-memory }
              mould-and-glaze: { lasts: some-months, source: ways-from-memory }
            """);
        for (String language : Loaded.KNOWLEDGE.languages()) {
            boolean forStaff = List.of("en", "es").contains(language);
            for (String part : forStaff ? List.of("can", "cannot", "client") : List.of("client")) {
                put("words/" + language + "/ways.yaml", "\n" + part + ":\n",
                    "\n" + part + ":\n  root-colour: This.\n  mould-and-glaze: That.\n");
            }
            if (forStaff) {
                put("words/" + language + "/services.yaml", "chemistries:\n",
                    "chemistries:\n  root-dye: root dye\n  mould-acid: mould acid\n");
            }
            put("words/" + language + "/answers.yaml", "  treatment:\n",
                "  treatment:\n    metal-mousse: mousse with metal\n");
            Files.writeString(folder.resolve("words/" + language + "/more.yaml"), """
                questions: { treatments: { options: { metal-mousse: Mousse with metal } } }
                services: { root-colour: Root colour, mould-and-glaze: Mould and glaze }
                """ + (forStaff ? "steps: { root-colour: root colour, mould: mould, glaze: glaze }\n" : ""));
        }
        files = KnowledgeFiles.ofFolder(folder);
    }

    private void put(String file, String where, String with) throws IOException {
        String text = Files.readString(folder.resolve(file));
        assertThat(text).contains(where);
        int at = text.indexOf(where);
        Files.writeString(folder.resolve(file), text.substring(0, at) + with + text.substring(at + where.length()));
    }

    private Knowledge known() {
        return Knowledge.of(files);
    }

    private static Case given(Knowledge knowledge, String given) {
        return Case.read(knowledge, Map.of("one.yaml", "- name: one\n  given: " + given + "\n  expect: {}\n")).get(0);
    }

    private static Assessment assess(Knowledge knowledge, Case one) {
        return Assessor.assess(knowledge.ruleSet(), knowledge.factFinder().find(one.situation()),
            List.of(one.service()));
    }

    private static Weight standing(Knowledge knowledge, String given) {
        Case one = given(knowledge, given);
        return assess(knowledge, one).standing(one.service().id()).orElseThrow().weight();
    }

    private static Set<String> found(Knowledge knowledge, String given) {
        return assess(knowledge, given(knowledge, given)).findings().stream().map(Finding::ruleId)
            .collect(Collectors.toSet());
    }

    private static List<String> owed(Knowledge knowledge, String given) {
        Case one = given(knowledge, given);
        Situation hoped =
            one.situation().saying(knowledge.answeredWell(one.situation().answers(), one.service().chemistries()));
        return Owing
            .of(knowledge.ruleSet(), knowledge.factFinder()::find, one.situation(), hoped, List.of(one.service()))
            .tests();
    }

    private static Set<String> asked(Knowledge knowledge, String service) {
        Set<String> chemistries = service(knowledge, service).chemistries();
        return knowledge.questionnaire().questions().stream().filter(
            question -> question.askedFor().isEmpty() || question.askedFor().stream().anyMatch(chemistries::contains))
            .map(Question::id).collect(Collectors.toSet());
    }

    private static Service service(Knowledge knowledge, String id) {
        return knowledge.ruleSet().service(id).orElseThrow();
    }

    @Test
    void theyAreReadWithoutAFaultAndNoWordIsMissing() {
        assertThat(WordsCheck.missing(known())).isEmpty();
        assertThat(known().ruleSet().hash()).isNotEqualTo(Loaded.KNOWLEDGE.ruleSet().hash());
    }

    @Test
    void aTreatmentIsAskedDrawnAndWeighedByTheRulesOfWhatItLeaves() {
        Knowledge knowledge = known();
        Case mousse = given(knowledge,
            "{ service: highlights, hair-length: 40, treatments: [{ what: metal-mousse, when: 2026-03 }] }");
        assertThat(knowledge.questionnaire().question("treatments").orElseThrow().options()).contains("metal-mousse");
        StrandMap map = StrandMaps.map(mousse.situation(), knowledge, knowledge.words("en"));
        assertThat(map.lanes()).anySatisfy(lane -> {
            assertThat(lane.treatment().residue()).isEqualTo(Residue.METAL);
            assertThat(lane.treatment().metalPossible()).isTrue();
            assertThat(lane.treatment().label()).isEqualTo("Mousse with metal");
        });
        assertThat(assess(knowledge, mousse).findings()).extracting(Finding::ruleId).contains("metal-meets-peroxide");
        assertThat(owed(knowledge,
            "{ service: highlights, hair-length: 40, treatments: [{ what: metal-mousse, when: 2026-03 }] }"))
            .contains("incompatibility-test");
    }

    @Test
    void aDyeThatNeedsASkinTestIsAskedForAndOwesItAsEveryOther() {
        Knowledge knowledge = known();
        assertThat(asked(knowledge, "root-colour")).isEqualTo(asked(knowledge, "colour-whole"));
        assertThat(owed(knowledge, "{ service: root-colour }")).isEqualTo(owed(knowledge, "{ service: colour-whole }"))
            .containsExactly("skin-test");
        assertThat(standing(knowledge, "{ service: root-colour }")).isEqualTo(Weight.TEST_FIRST);
        assertThat(knowledge.chemistries().needSkinTest(Set.of("root-dye"))).isTrue();
        assertThat(knowledge.chemistries().needingSkinTest()).contains("root-dye", "oxidative-dye");
        assertThat(knowledge.chemistries().ofProductLines()).contains("root-dye");
    }

    /** The worst that could happen to a new dye: a client who reacted to hair colour finds nothing against it. */
    @Test
    void whoReactedToHairColourIsRefusedTheNewDyeToo() {
        Knowledge knowledge = known();
        String reacted =
            "{ service: %s, colour-reaction: yes, colour-reaction-what: [blisters], colour-reaction-soon: two-days, colour-reaction-ago: longer }";
        assertThat(standing(knowledge, reacted.formatted("root-colour"))).isEqualTo(Weight.PREVENTS);
        assertThat(found(knowledge, reacted.formatted("root-colour"))).contains("reacted-to-colour");
    }

    @Test
    void withoutThePropertyItOwesNone() throws IOException {
        put("services.yaml", "{ id: root-dye, needs-skin-test: yes,", "{ id: root-dye,");
        files = KnowledgeFiles.ofFolder(folder);
        Knowledge knowledge = known();
        assertThat(owed(knowledge, "{ service: root-colour }")).isEmpty();
        assertThat(knowledge.chemistries().needSkinTest(Set.of("root-dye"))).isFalse();
    }

    @Test
    void aDyeThatALetterOpensOwesTheTestOfADirectDye() throws IOException {
        put("services.yaml", "{ id: root-dye, needs-skin-test: yes,", "{ id: root-dye, needs-skin-test: or a letter,");
        files = KnowledgeFiles.ofFolder(folder);
        Knowledge knowledge = known();
        assertThat(found(knowledge, "{ service: root-colour }")).contains("direct-dye-owes-a-skin-test")
            .doesNotContain("colour-owes-a-skin-test");
        assertThat(knowledge.chemistries().openedByLetter("root-dye")).isTrue();
        assertThat(knowledge.chemistries().needingSkinTest()).doesNotContain("root-dye");
    }

    @Test
    void aChemistryIsWeighedAndAskedForByTheGroupsItEnters() {
        Knowledge knowledge = known();
        assertThat(asked(knowledge, "mould-and-glaze")).containsAll(asked(knowledge, "perm-acid"));
        assertThat(
            found(knowledge, "{ steps: [mould], hair-length: 40, treatments: [{ what: restorer, when: 2026-03 }] }"))
            .contains("metal-meets-peroxide");
        assertThat(found(knowledge, "{ steps: [mould], scalp-today: [broken] }")).isNotEmpty();
    }

    @Test
    @DisplayName("a fact of a test at the chair: its outcomes, and what stands while nobody tested, are knowledge alone")
    void aFactOfATestAtTheChair() throws IOException {
        put("facts.yaml", "- id: test-cutting\n", """
            - id: swollen-roots
              classes: [no, unfelt, maybe, yes]
              computed: chair-test
              of: [porosity-of-roots]
              outcomes: { average: no, resistant: no, porous: maybe, over-porous: yes }
              not-done: unfelt
            - id: test-cutting
            """);
        files = KnowledgeFiles.ofFolder(folder);
        assertThat(swollen("")).isEqualTo("unfelt");
        assertThat(swollen("{ test: porosity-of-roots, outcome: resistant }")).isEqualTo("no");
        assertThat(swollen("{ test: porosity-of-roots, outcome: porous }")).isEqualTo("maybe");
        assertThat(known().ruleSet().fact("swollen-roots").orElseThrow().notDone()).isEqualTo(1);
    }

    private String swollen(String test) {
        Knowledge knowledge = known();
        Case one = given(knowledge, "{ service: colour-roots, tests: [" + test + "] }");
        return knowledge.factFinder().find(one.situation()).get("swollen-roots").worstClass();
    }

    @Test
    void aServiceSaysWhatItLeavesWhereAndWhatCanBeTakenOut() {
        Knowledge knowledge = known();
        Service both = service(knowledge, "mould-and-glaze");
        assertThat(both.removable().orElseThrow().id()).isEqualTo("glaze");
        assertThat(both.plain().stepIds()).containsExactly("mould");
        assertThat(service(knowledge, "root-colour").placing().appliedTo()).isEqualTo("regrowth");
        assertThat(DoneHere.of(new Booked(both.id(), both.stepIds()), DAY, knowledge.ruleSet()))
            .extracting(t -> t.what() + " " + t.zone())
            .containsExactly("perm ends", "semi-colour whole");
    }

    @Test
    @DisplayName("R44: a service says what it is for; one that the salon made of known steps is for what those steps are for")
    void aServiceSaysWhatItIsFor() {
        Knowledge knowledge = known();
        assertThat(service(knowledge, "mould-and-glaze").aims()).containsExactly("curl", "change-tone");
        assertThat(knowledge.ruleSet().services()).allSatisfy(service -> assertThat(service.aims()).isNotEmpty()
            .isSubsetOf(knowledge.aims()));
        assertThat(knowledge.ruleSet().aims(service(knowledge, "highlights").steps())).containsExactly("go-lighter");
        assertThat(knowledge.ruleSet().aims(List.of(knowledge.ruleSet().step("neutralise").orElseThrow())))
            .containsExactly("curl", "straighten");
    }
}
