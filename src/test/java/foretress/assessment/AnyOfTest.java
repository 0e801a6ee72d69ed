package foretress.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.FactDef.Computation;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A fact that sums up others")
class AnyOfTest {
    private static final FactDef COLOUR = fact("colour", "none", "sting", "late");
    private static final FactDef TATTOO = fact("tattoo", "never", "reacted");
    private static final FactDef SUM = new FactDef("reactor", List.of("none", "reacted"), List.of(),
        Optional.of(Computation.anyOf(parts())));

    private static FactDef fact(String id, String... classes) {
        return new FactDef(id, List.of(classes), List.of(), Optional.empty());
    }

    private static Map<String, String> parts() {
        Map<String, String> from = new LinkedHashMap<>();
        from.put("colour", "late");
        from.put("tattoo", "reacted");
        return from;
    }

    private static FactValue sum(FactValue colour, FactValue tattoo) {
        Map<String, FactDef> defs = Map.of("colour", COLOUR, "tattoo", TATTOO);
        return AnyOf.find(SUM, defs::get, part -> part == COLOUR ? colour : tattoo);
    }

    private static FactValue colour(int best, int worst) {
        return FactValue.between(COLOUR, best, worst, List.of("colour?"));
    }

    private static FactValue tattoo(int best, int worst) {
        return FactValue.between(TATTOO, best, worst, List.of("tattoo?"));
    }

    @Test
    void isBadAsSoonAsOnePartIsAsBadAsItCounts() {
        assertThat(sum(colour(2, 2), tattoo(0, 0)).toString()).isEqualTo("reactor = reacted");
        assertThat(sum(colour(0, 0), tattoo(1, 1)).toString()).isEqualTo("reactor = reacted");
        assertThat(sum(colour(1, 1), tattoo(0, 0)).toString()).as("one class short of it").isEqualTo("reactor = none");
    }

    @Test
    void isOpenWhileAPartMayBeSoBadAndNoneSurelyIs() {
        assertThat(sum(colour(0, 2), tattoo(0, 0)).toString()).isEqualTo("reactor = none..reacted");
        assertThat(sum(colour(0, 2), tattoo(1, 1)).toString()).isEqualTo("reactor = reacted");
    }

    @Test
    void namesTheQuestionsThatDecideIt() {
        assertThat(sum(colour(2, 2), tattoo(0, 0)).causes()).containsExactly("colour?");
        assertThat(sum(colour(0, 0), tattoo(0, 0)).causes()).containsExactly("colour?", "tattoo?");
    }

    @Test
    void isAFaultWhereAPartIsOne() {
        assertThat(sum(FactValue.faulty(COLOUR, "broken"), tattoo(0, 0)).fault()).contains("broken");
    }
}
