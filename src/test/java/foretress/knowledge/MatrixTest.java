package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import foretress.assessment.Assessment;
import foretress.assessment.Assessor;
import foretress.assessment.ComputedAs;
import foretress.assessment.FactDef;
import foretress.assessment.FactValue;
import foretress.assessment.Facts;
import foretress.assessment.Service;
import foretress.assessment.Standing;
import foretress.assessment.Step;
import foretress.assessment.Weight;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * What each result means for each service, held against the table the trade and the labels give: an outside check, row by row
 * and column by column. Sources: the label rows (reaction, scalp, under 16) follow the warnings of Annex III to Regulation (EC)
 * 1223/2009; hydroxide against thio a textbook; what stays in permed hair Morrison and Storrs 1988; metal, henna, elasticity and
 * overlap common practice, no source.
 *
 * <p>S the service stops; R stops and refers; T a test comes first; C a test cutting comes first, then with restrictions;
 * c with restrictions at once, for where the doubt is the skin's, a tuft of hair tells nothing; A medical advice comes first;
 * ok nothing heavier than a note; p the salon's policy or the maker's test decides, so we do not prevent; - does not apply.
 *
 * <p>Where we are heavier than the table, it says so: after an immediate reaction to lightener the table lets dyes go on. Since
 * whoever reacted at once is given no skin test in a salon, and every dye owes one, we ask for medical advice first. After a rash from
 * an acid perm the table restricts the other lotion; nobody at a counter knows which it was, so a doctor is asked about that one too.
 */
class MatrixTest {
    private static final String TABLE = """
        row                                                 | colour | tone | demi | direct | lighten | thio | gmtg | relax | remove | correct
        metal test positive                                 | S      | S    | S    | C      | S       | S    | S    | S     | S      | S
        nothing at all happened in the metal test           | S      | S    | S    | C      | S       | S    | S    | S     | S      | S
        metal in the history, not tested                    | T      | T    | T    | C      | T       | T    | T    | T     | T      | T
        unknown henna, metal test negative                  | C      | C    | C    | ok     | C       | C    | C    | C     | C      | C
        ever reacted to hair colour                         | R      | R    | R    | R      | c       | ok   | ok   | ok    | c      | R
        reacted to hair colour, a letter names the product  | R      | R    | R    | c      | c       | ok   | ok   | ok    | c      | R
        ever reacted to a black tattoo                      | R      | R    | R    | R      | c       | ok   | ok   | ok    | c      | R
        allergy to the dye confirmed                        | R      | R    | R    | R      | c       | ok   | ok   | ok    | c      | R
        skin test positive                                  | R      | R    | R    | R      | c       | ok   | ok   | ok    | c      | R
        skin test not valid                                 | T      | T    | T    | T      | ok      | p    | p    | -     | ok     | T
        hives, wheeze or faint after lightener              | A      | A    | A    | A      | R       | ok   | ok   | ok    | R      | R
        rash from a perm, which lotion is not known         | c      | c    | c    | c      | c       | A    | R    | c     | c      | c
        scalp sore                                          | S      | S    | S    | S      | S       | S    | S    | S     | S      | S
        scalp broken, sunburnt or infected                  | S      | S    | S    | S      | S       | S    | S    | S     | S      | S
        elasticity fail                                     | S      | C    | C    | ok     | S       | S    | S    | S     | C      | S
        relaxed with hydroxide                              | C      | C    | C    | ok     | S       | S    | S    | S     | C      | C
        lightened, any age                                  | C      | C    | C    | ok     | S       | S    | C    | S     | C      | C
        permed                                              | C      | C    | C    | ok     | S       | S    | C    | S     | C      | C
        permed within the policy's weeks                    | C      | C    | C    | c      | S       | S    | S    | S     | C      | C
        metal in the history, slight lightening only        | C      | C    | C    | ok     | C       | C    | C    | C     | C      | C
        under 16                                            | S      | S    | S    | S      | S       | p    | p    | S     | S      | S
        """;

    /** What each row means in facts, over a client about whom everything else is well and nothing but the skin tested. */
    private static final Map<String, Map<String, String>> ROWS = Map.ofEntries(
        Map.entry("metal test positive", Map.of("metal-test", "positive")),
        Map.entry("nothing at all happened in the metal test", Map.of("metal-test", "nothing")),
        Map.entry("metal in the history, not tested", Map.of("metal", "suspected")),
        Map.entry("unknown henna, metal test negative",
            Map.of("metal", "suspected", "henna-left", "unknown", "metal-test", "negative")),
        Map.entry("ever reacted to hair colour", Map.of("colour-reaction", "delayed")),
        Map.entry("reacted to hair colour, a letter names the product",
            Map.of("colour-reaction", "delayed", "direct-dye-cleared", "by-letter")),
        Map.entry("ever reacted to a black tattoo", Map.of("tattoo", "reacted")),
        Map.entry("allergy to the dye confirmed", Map.of("dye-allergy", "confirmed")),
        Map.entry("skin test positive", Map.of("skin-test", "positive", "direct-dye-cleared", "refused")),
        Map.entry("skin test not valid", Map.of("skin-test", "not-done", "direct-dye-cleared", "not-yet")),
        Map.entry("hives, wheeze or faint after lightener", Map.of("bleach-reaction", "immediate")),
        Map.entry("rash from a perm, which lotion is not known", Map.of("perm-reaction", "reacted")),
        Map.entry("scalp sore", Map.of("scalp", "irritated")),
        Map.entry("scalp broken, sunburnt or infected", Map.of("scalp", "broken")),
        Map.entry("elasticity fail", Map.of("elasticity", "fail")),
        Map.entry("relaxed with hydroxide", Map.of("relaxed-left", "present")),
        Map.entry("lightened, any age", Map.of("lightened-left", "present")),
        Map.entry("permed", Map.of("permed-left", "present")),
        Map.entry("permed within the policy's weeks", Map.of("permed-left", "recent")),
        Map.entry("metal in the history, slight lightening only",
            Map.of("metal", "suspected", "metal-test", "negative")),
        Map.entry("under 16", Map.of("age", "below-label-age")));

    private static final Map<String, List<String>> COLUMNS =
        Map.of("colour", List.of("colour"), "tone", List.of("tone"), "demi", List.of("colour-demi"),
            "direct", List.of("colour-direct"), "lighten", List.of("lighten"), "thio",
            List.of("perm-alkaline", "neutralise"),
            "gmtg", List.of("perm-acid", "neutralise"), "relax", List.of("relax"), "remove", List.of("remove-colour"),
            "correct", List.of("remove-colour", "colour"));

    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final List<String> HEADS = cells(TABLE.lines().findFirst().orElseThrow());

    @TestFactory
    Stream<DynamicTest> everyCellStandsAsTheTableSays() {
        return TABLE.lines().skip(1).map(MatrixTest::cells)
            .flatMap(row -> columns().map(column -> dynamicTest(row.get(0) + ": " + HEADS.get(column),
                () -> holds(row.get(0), HEADS.get(column), row.get(column)))));
    }

    /** Relaxed hair: a relaxer on new growth only is what the table leaves open. */
    @Test
    void aRelaxerOnNewGrowthIsOpenToRelaxedHair() {
        assertThat(standing(Map.of("relaxed-left", "present"), service("relax-regrowth"), false).weight())
            .isEqualTo(Weight.RESTRICTS);
    }

    @Test
    void theWholeTableIsHeld() {
        assertThat(TABLE.lines().skip(1).map(line -> cells(line).get(0)))
            .containsExactlyInAnyOrderElementsOf(ROWS.keySet());
        System.out.printf("matrix: %d results x %d services, each from facts to standing%n", ROWS.size(),
            COLUMNS.size());
    }

    private static Stream<Integer> columns() {
        return java.util.stream.IntStream.range(1, HEADS.size()).boxed();
    }

    private static void holds(String row, String column, String mark) {
        Service service = service(COLUMNS.get(column).toArray(String[]::new));
        Assessment before = assess(ROWS.get(row), service, false);
        Weight weight = before.standings().get(0).weight();
        List<String> demands = before.on(service).stream().flatMap(finding -> finding.demands().stream()).toList();
        Weight after = standing(ROWS.get(row), service, true).weight();
        switch (mark) {
            case "S", "R" -> assertThat(weight).isEqualTo(Weight.PREVENTS);
            case "T" -> assertThat(weight).isEqualTo(Weight.TEST_FIRST);
            case "A" -> {
                assertThat(weight).isEqualTo(Weight.TEST_FIRST);
                assertThat(demands).contains("medical-advice").doesNotContain("skin-test");
            }
            case "C" -> {
                assertThat(weight).isEqualTo(Weight.TEST_FIRST);
                assertThat(demands).contains("test-cutting");
                assertThat(after).as("after a good test cutting").isEqualTo(Weight.RESTRICTS);
            }
            case "c" -> assertThat(weight).isEqualTo(Weight.RESTRICTS);
            case "ok" -> assertThat(weight).isLessThanOrEqualTo(Weight.NOTE);
            case "p" -> assertThat(weight).isLessThanOrEqualTo(Weight.RESTRICTS);
            case "-" -> {}
            default -> throw new IllegalArgumentException(mark);
        }
    }

    private static Standing standing(Map<String, String> row, Service service, boolean cuttingGood) {
        return assess(row, service, cuttingGood).standings().get(0);
    }

    private static Assessment assess(Map<String, String> row, Service service, boolean cuttingGood) {
        List<FactValue> values = new ArrayList<>();
        for (FactDef def : KNOWLEDGE.ruleSet().facts()) {
            boolean advice = def.computation().filter(how -> how.as() == ComputedAs.MEDICAL_ADVICE).isPresent();
            String untested =
                advice || List
                    .of("metal-test", "elasticity", "root-elasticity", "porosity", "root-porosity", "resistant-hair",
                        "direct-dye-cleared")
                    .contains(def.id())
                        ? def.classes().get(1) : def.classes().get(0);
            String cutting = cuttingGood ? "good" : "not-done";
            String usual = def.id().equals("test-cutting") ? cutting : untested;
            values.add(FactValue.known(def, row.getOrDefault(def.id(), usual), List.of()));
        }
        return Assessor.assess(KNOWLEDGE.ruleSet(), Facts.of(values), List.of(service));
    }

    private static Service service(String... steps) {
        return new Service("tried",
            Arrays.stream(steps).map(id -> KNOWLEDGE.ruleSet().step(id).orElseThrow()).map(Step.class::cast).toList());
    }

    private static List<String> cells(String line) {
        return Arrays.stream(line.split("\\|")).map(String::strip).toList();
    }
}
