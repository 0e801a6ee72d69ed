package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Chemistry;
import foretress.assessment.Chemistry.SkinTest;
import foretress.assessment.ComputedAs;
import foretress.assessment.FactDef;
import foretress.assessment.Rule;
import foretress.assessment.RuleSet;
import foretress.assessment.TreatmentKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Reads the real knowledge: anything wrong in it fails the build, with its place. */
class KnowledgeTest {

    @Test
    void theKnowledgeHasNoFault() {
        var reader = new KnowledgeReader(KnowledgeFiles.ofClassPath());
        reader.read();
        assertThat(reader.complaints().all()).as("faults in src/main/knowledge").isEmpty();
    }

    @Test
    void everyIdHasWordsInEveryLanguage() {
        Knowledge knowledge = new KnowledgeReader(KnowledgeFiles.ofClassPath()).read();
        assertThat(WordsCheck.missing(knowledge)).as("words to write").isEmpty();
    }

    /** What no fact looks for would never be found on the hair. */
    @Test
    void everyTreatmentIsLookedForAndEveryOneThatMayHoldMetalAsMetal() {
        RuleSet rules = Knowledge.load().ruleSet();
        assertThat(rules.treatments().kinds()).isNotEmpty()
            .allSatisfy(
                kind -> assertThat(lookedFor(rules, ComputedAs.LEFT, ComputedAs.LEFT_BY_AGE, ComputedAs.KIND_LEFT,
                    ComputedAs.METAL)).contains(kind.id()));
        assertThat(lookedFor(rules, ComputedAs.METAL)).containsExactlyInAnyOrderElementsOf(
            rules.treatments().kinds().stream().filter(TreatmentKind::mayHoldMetal).map(TreatmentKind::id).toList());
    }

    private static Set<String> lookedFor(RuleSet rules, ComputedAs... computations) {
        return rules.facts().stream().flatMap(def -> def.computation().stream())
            .filter(how -> List.of(computations).contains(how.as()))
            .flatMap(how -> how.of().stream()).collect(Collectors.toSet());
    }

    @Test
    @DisplayName("every fact that only staff's tests and a doctor's word can better says which class means that nobody did")
    void whatNobodyTestedOrWroteDownHasItsClass() {
        List<FactDef> told = Knowledge.load().ruleSet().facts().stream().filter(def -> def.isAlwaysKnown()
            && !def.isComputedAs(ComputedAs.HAIR_LENGTH) && !def.isComputedAs(ComputedAs.POLICY_ALLOWS)
            && !def.isComputedAs(ComputedAs.LOOKED_UP_MEDICINE)).toList();
        assertThat(told).hasSizeGreaterThan(20).allSatisfy(
            def -> assertThat(def.classes().get(def.notDone())).as(def.id()).isIn("not-done", "not-asked", "not-yet"));
    }

    @Test
    void everyTreatmentHasItsWordsBesideTheStrandMap() {
        Knowledge knowledge = Knowledge.load();
        for (String language : knowledge.languages()) {
            assertThat(knowledge.ruleSet().treatments().kinds()).allSatisfy(
                kind -> assertThat(knowledge.words(language).own()).contains("answers.treatment." + kind.id()));
        }
    }

    @Test
    void everyChemistryThatIsPutOnIsWeighedAndEveryDyeOwesItsTest() {
        Knowledge knowledge = Knowledge.load();
        for (Chemistry chemistry : knowledge.chemistries().all()) {
            List<Rule> weighing = knowledge.ruleSet().rules().stream()
                .filter(rule -> rule.weights().containsKey(chemistry.id())).toList();
            assertThat(chemistry.dry() || chemistry.id().equals("alkali") || !weighing.isEmpty()).as(chemistry.id())
                .isTrue();
            assertThat(chemistry.skinTest() == SkinTest.NO
                || weighing.stream().anyMatch(rule -> rule.demands().contains("skin-test"))).as(chemistry.id())
                .isTrue();
        }
    }

    @Test
    void theHashIsTheSameForTheSameFilesAndOtherForAnyChange() {
        KnowledgeFiles files = KnowledgeFiles.ofClassPath();
        assertThat(KnowledgeFiles.ofClassPath().hash()).isEqualTo(files.hash()).matches("[0-9a-f]{64}");
        List<String> hashes = new ArrayList<>();
        files.byPath().forEach((path, text) -> hashes.add(files.with(path, text + " ").hash()));
        assertThat(new TreeSet<>(hashes)).hasSameSizeAs(hashes).doesNotContain(files.hash());
    }
}
