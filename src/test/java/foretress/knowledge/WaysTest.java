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
import foretress.assessment.Ways;
import foretress.assessment.Weight;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * What is offered instead, in which order, held against what the trade teaches of each result (common practice, no source): the table
 * of results and services, and the substitutions taught with porosity. A service marked with an asterisk needs a test or a change first.
 */
class WaysTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;

    /** What is found, what was booked, and the gentler ways that are then open, in the order in which they are offered. */
    private static final String TABLE = """
        nothing                              | colour-whole  | colour-wash-out colour-direct colour-roots colour-demi plant-colour
        nothing                              | highlights    | high-lift-tint highlights-regrowth highlights-no-toner freehand-lights
        metal-test=positive                  | colour-whole  | colour-wash-out* colour-direct* plant-colour*
        metal=suspected                      | colour-whole  | colour-wash-out* colour-direct* colour-roots* colour-demi* plant-colour*
        colour-reaction=delayed              | colour-whole  | plant-colour*
        colour-reaction=delayed              | highlights    | highlights-no-toner*
        tattoo=reacted                       | colour-whole  | plant-colour*
        skin-test=positive direct-dye-cleared=refused | colour-whole |
        bleach-reaction=immediate            | highlights    | high-lift-tint*
        scalp=broken                         | colour-whole  |
        elasticity=fail                      | perm-alkaline | heat-styling*
        elasticity=fail root-elasticity=pass | colour-whole  | colour-wash-out colour-direct colour-roots* colour-demi* plant-colour
        relaxed-left=present                 | colour-whole  | colour-wash-out colour-direct colour-roots* colour-demi* plant-colour
        lightened-left=present               | perm-alkaline | heat-styling perm-acid*
        lightened-left=present               | relaxer       | heat-styling smooth-other* straighten-keratin*
        porosity=porous                      | colour-whole  | colour-wash-out* colour-direct* colour-roots colour-demi* plant-colour*
        porosity=porous                      | lighten-whole | high-lift-tint* highlights-regrowth* highlights-no-toner* freehand-lights* highlights* lighten-roots*
        porosity=porous                      | perm-alkaline | heat-styling perm-acid*
        porosity=over-porous                 | colour-whole  | colour-wash-out* colour-direct* colour-roots* plant-colour*
        porosity=over-porous                 | perm-alkaline | heat-styling*
        resistant-hair=yes                   | perm-acid     | heat-styling perm-alkaline
        resistant-hair=yes                   | perm-alkaline | heat-styling
        perm-reaction=reacted                | perm-alkaline | heat-styling
        age=below-label-age                  | colour-whole  |
        """;

    @TestFactory
    @DisplayName("R44, R43: the gentler ways to the booked aim, in the order a colourist would offer them")
    Stream<DynamicTest> whatIsOpenIsOfferedGentlestFirst() {
        return TABLE.lines().map(line -> Arrays.stream(line.split("\\|", -1)).map(String::strip).toList())
            .map(row -> dynamicTest(row.get(0) + ", " + row.get(1) + " booked",
                () -> assertThat(offered(facts(row.get(0)), service(row.get(1)))).isEqualTo(row.get(2))));
    }

    private static String offered(Facts facts, Service booked) {
        List<String> order = KNOWLEDGE.ways().to(booked.aims(), facts);
        List<String> open = new ArrayList<>();
        for (String id : order.subList(0, order.indexOf(booked.id()))) {
            Weight weight = standing(facts, service(id));
            if (weight.compareTo(Weight.PREVENTS) < 0) {
                open.add(id + (weight.compareTo(Weight.NOTE) > 0 ? "*" : ""));
            }
        }
        return String.join(" ", open);
    }

    private static Weight standing(Facts facts, Service service) {
        Assessment assessment = Assessor.assess(KNOWLEDGE.ruleSet(), facts, List.of(service));
        return assessment.standings().get(0).weight();
    }

    @Test
    @DisplayName("R44: levels of lift are promised only where hair, residue and porosity are known to allow them")
    void whatMayHoldItBackHoldsItBack() {
        assertThat(lift("nothing", "high-lift-tint").by()).isEmpty();
        assertThat(lift("nothing", "high-lift-tint").levels()).isEqualTo(4);
        assertThat(held("oxidative-left=present", "high-lift-tint")).contains("tint-lifts-no-colour true");
        assertThat(held("oxidative-left=present", "highlights")).contains("colour-in-the-hair false");
        assertThat(held("henna-left=pure", "highlights")).contains("plant-hardly-lifts true");
        assertThat(held("metal=suspected", "highlights")).contains("residue-in-the-hair false");
        assertThat(held("porosity=porous", "lighten-whole")).contains("porous-lifts-less false");
        assertThat(KNOWLEDGE.ways().lift(service("colour-wash-out"), facts("nothing"))).isEmpty();
    }

    @Test
    @DisplayName("R44: a level that is promised when less is known is promised when more is known, never the other way")
    void notKnowingNeverLiftsALevel() {
        Facts well = facts("nothing");
        for (FactDef def : KNOWLEDGE.ruleSet().facts()) {
            Facts unknown = well.with(FactValue.between(def, 0, def.worst(), List.of()));
            for (Service service : KNOWLEDGE.ruleSet().services()) {
                boolean promised = KNOWLEDGE.ways().lift(service, unknown).filter(l -> l.by().isEmpty()).isPresent();
                for (int ordinal = 0; promised && ordinal <= def.worst(); ordinal++) {
                    Facts known = well.with(FactValue.between(def, ordinal, ordinal, List.of()));
                    assertThat(KNOWLEDGE.ways().lift(service, known).orElseThrow().by()).isEmpty();
                }
            }
        }
    }

    private static Ways.Lift lift(String row, String service) {
        return KNOWLEDGE.ways().lift(service(service), facts(row)).orElseThrow();
    }

    private static Optional<String> held(String row, String service) {
        return lift(row, service).by().map(by -> by.id() + " " + by.none());
    }

    private static Service service(String id) {
        return KNOWLEDGE.ruleSet().service(id).orElseThrow();
    }

    /** A client about whom everything is well and every test was read, but for what the row says. */
    private static Facts facts(String row) {
        List<String> said = row.equals("nothing") ? List.of() : List.of(row.split(" "));
        List<FactValue> values = new ArrayList<>();
        for (FactDef def : KNOWLEDGE.ruleSet().facts()) {
            boolean advice = def.computation().filter(how -> how.as() == ComputedAs.MEDICAL_ADVICE).isPresent();
            boolean untested = advice || List.of("metal-test", "test-cutting", "direct-dye-cleared").contains(def.id());
            String usual = def.id().equals("direct-dye-cleared") ? "by-test" : def.classes().get(untested ? 1 : 0);
            String is = said.stream().filter(part -> part.startsWith(def.id() + "=")).findFirst()
                .map(part -> part.substring(def.id().length() + 1)).orElse(usual);
            values.add(FactValue.known(def, is, List.of()));
        }
        return Sums.settled(Facts.of(values));
    }
}
