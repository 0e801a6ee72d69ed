package foretress.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What was typed is read once while it is looked at, and is not kept. */
class RecentReadingsTest {
    private final List<String> read = new ArrayList<>();
    private final RecentReadings readings = new RecentReadings(new Counting(""));

    /** Tells what it was asked to read, and as what. */
    private final class Counting implements Lexicon {
        private final String as;

        Counting(String as) {
            this.as = as;
        }

        @Override
        public Line line(String typed) {
            read.add(typed + as);
            return new Line(List.of(Named.of(typed + as, Set.of())), false);
        }

        @Override
        public Set<String> medicine(String typed) {
            return Set.of();
        }

        @Override
        public Label label(String text) {
            read.add(text + as);
            return new Label(Set.of(), Set.of(), true, List.of());
        }

        @Override
        public Lexicon with(List<LookedUp> lookedUp) {
            return new Counting(" with " + lookedUp.get(0).name());
        }
    }

    private static List<LookedUp> lookedUp(String name) {
        return List
            .of(new LookedUp(name, LookedUp.NO_DIFFERENCE, Set.of(), "Ana", LocalDate.of(2026, 6, 10), "a book"));
    }

    @Test
    void aLineAndALabelAreReadOnce() {
        for (int i = 0; i < 3; i++) {
            assertThat(readings.line("cetirizine").names()).extracting(name -> name.read().typed())
                .containsExactly("cetirizine");
            readings.label("aqua");
        }
        assertThat(read).containsExactly("cetirizine", "aqua");
    }

    @Test
    void whatWasForgottenIsReadAnew() {
        readings.line("cetirizine");
        readings.label("aqua");
        readings.with(lookedUp("gibberol")).line("gibberol");
        readings.forget();
        readings.line("cetirizine");
        readings.label("aqua");
        readings.with(lookedUp("gibberol")).line("gibberol");
        assertThat(read).containsExactly("cetirizine", "aqua", "gibberol with gibberol", "cetirizine", "aqua",
            "gibberol with gibberol");
    }

    @Test
    void ofManyOnlyTheNewestAreKept() {
        IntStream.range(0, 1000).forEach(i -> readings.line("medicine " + i));
        IntStream.range(0, 1000).forEach(i -> readings.label("label " + i));
        read.clear();
        readings.line("medicine 999");
        readings.label("label 999");
        assertThat(read).isEmpty();
        readings.line("medicine 0");
        readings.label("label 0");
        assertThat(read).containsExactly("medicine 0", "label 0");
    }

    @Test
    void withOtherNamesLookedUpALineIsReadAnewAndALabelIsNot() {
        readings.label("aqua");
        readings.with(lookedUp("one")).line("cetirizine");
        readings.with(lookedUp("one")).line("cetirizine");
        readings.with(lookedUp("other")).line("cetirizine");
        readings.with(lookedUp("other")).label("aqua");
        readings.with(List.of()).line("cetirizine");
        assertThat(read).containsExactly("aqua", "cetirizine with one", "cetirizine with other", "cetirizine");
    }
}
