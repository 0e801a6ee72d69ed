package foretress.closing;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.RuleSet;
import foretress.assessment.Service;
import foretress.knowledge.Loaded;
import foretress.visit.Booked;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What was done here is found in the history of the hair, and where")
class DoneHereTest {
    private static final RuleSet RULES = Loaded.KNOWLEDGE.ruleSet();
    private static final LocalDate DAY = LocalDate.of(2026, 6, 10);

    private static String found(Booked done) {
        return DoneHere.of(done, DAY, RULES).stream().map(one -> one.what() + " " + one.zone())
            .collect(Collectors.joining(", "));
    }

    @ParameterizedTest(name = "{0}: {1}; a product goes on {2}")
    @CsvSource({
        "colour-whole,        salon-colour whole,                      whole",
        "colour-roots,        salon-colour regrowth,                   regrowth",
        "colour-demi,         salon-colour whole,                      whole",
        "colour-direct,       semi-colour whole,                       whole",
        "colour-wash-out,     wash-out-colour whole,                   whole",
        "plant-colour,        henna-pure whole,                        whole",
        "highlights,          'highlights strands, toner strands',     strands",
        "highlights-regrowth, 'highlights strands, toner strands',     regrowth",
        "freehand-lights,     'bleach whole, toner whole',             strands",
        "lighten-whole,       'bleach whole, toner whole',             whole",
        "lighten-roots,       'bleach regrowth, toner whole',          regrowth",
        "fashion-colour,      'bleach whole, semi-colour whole',       whole",
        "colour-removal,      colour-remover whole,                    whole",
        "colour-correction,   'colour-remover whole, salon-colour whole', whole",
        "perm-alkaline,       perm whole,                              whole",
        "perm-acid,           perm whole,                              whole",
        "relaxer,             relaxer whole,                           whole",
        "relaxer-roots,       relaxer regrowth,                        regrowth",
        "straighten-thio,     thio-straightening whole,                whole",
        "straighten-keratin,  keratin whole,                           whole",
        "lash-brow-tint,      '',                                      brows-lashes",
        "cut-and-dry,         '',                                      whole",
        "heat-styling,        '',                                      whole" })
    void ofEachService(String id, String found, String appliedTo) {
        Service service = RULES.service(id).orElseThrow();
        assertThat(found(new Booked(id, service.stepIds()))).isEqualTo(found);
        assertThat(service.placing().appliedTo()).isEqualTo(appliedTo);
        assertThat(AppliedTo.of(appliedTo)).isPresent();
    }

    @Test
    void aServiceWithoutItsTonerLeavesNone() {
        assertThat(found(new Booked("lighten-roots", List.of("lighten-regrowth")))).isEqualTo("bleach regrowth");
    }

    @Test
    @DisplayName("of a service of the salon's own, a step that goes over all of the hair is found in all of it")
    void anOwnService() {
        assertThat(found(new Booked("own", List.of("lighten-regrowth", "colour"))))
            .isEqualTo("bleach regrowth, salon-colour whole");
    }
}
