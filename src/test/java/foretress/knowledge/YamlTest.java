package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class YamlTest {
    private final Complaints complaints = new Complaints();

    /** YAML 1.1 readers turn these into truth values, dates and numbers; that would lose what was written. */
    @Test
    void everyScalarStaysAsWritten() {
        Yaml yaml = read("[no, yes, on, off, 2026-06-10, 0123, 1e3, ~, null, true, 12:30]");
        assertThat(yaml.texts()).containsExactly("no", "yes", "on", "off", "2026-06-10", "0123", "1e3", "~", "null",
            "true", "12:30");
    }

    @Test
    void fieldsKeepTheirOrder() {
        assertThat(read("{ z: 1, a: 2, m: 3 }").fields().keySet()).containsExactly("z", "a", "m");
    }

    @Test
    void anEmptyValueIsMissingAndNotAnEmptyText() {
        Yaml yaml = read("title:\nnext: x");
        assertThatThrownBy(() -> yaml.at("title").text()).isInstanceOf(Yaml.Refused.class);
        assertThat(complaints.all()).extracting(Complaint::message).containsExactly("something is missing here");
    }

    @Test
    void oneBadEntryDoesNotHideTheFaultsOfTheNext() {
        List<Integer> read = read("[1, two, 3, four]").each(entry -> entry.number(0, 9));
        assertThat(read).containsExactly(1, 3);
        assertThat(complaints.all()).extracting(Complaint::column).containsExactly(5, 13);
    }

    @Test
    void aComplaintPointsAtTheLetters() {
        read("# first line\nweight: { peroxyde: note }").at("weight").only("peroxide");
        assertThat(complaints.all()).hasToString("""
            [tried.yaml:2:11  there is no field 'peroxyde'; did you mean 'peroxide'?
                weight: { peroxyde: note }
                          ^^^^^^^^]""");
    }

    @Test
    void aHintIsGivenOnlyWhereASlipIsLikely() {
        List<String> known = List.of("peroxide", "persulfate");
        assertThat(Nearest.hint("peroxyde", known)).isEqualTo("; did you mean 'peroxide'?");
        assertThat(Nearest.hint("henna", known)).isEmpty();
        assertThat(Map.of("kitten", 3, "sitting", 0, "sittin", 1))
            .allSatisfy((word, slips) -> assertThat(Nearest.distance(word, "sitting")).isEqualTo(slips)); // a textbook pair: kitten to sitting is 3
    }

    private Yaml read(String text) {
        return Yaml.read("tried.yaml", text, complaints).orElseThrow();
    }
}
