package foretress.knowledge;

import foretress.assessment.Policy;
import foretress.assessment.Policy.Warning;
import foretress.questionnaire.SaidDate.Hemisphere;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads what a jurisdiction sets, one file each. */
final class PolicyReader {
    /** Every policy sets all of these; whole numbers, the unit in the name. */
    static final List<String> FIGURES =
        List.of("label-age", "minimum-age", "guardian-below-age", "skin-test-wait-hours", "skin-test-validity-months",
            "incompatibility-test-hours", "permed-hair-weeks", "relaxer-weeks", "keratin-weeks", "perm-allergen-months",
            "chemotherapy-months",
            "chemotherapy-regrown-cm", "radiotherapy-weeks", "retinoid-months", "steroid-low-dose-mg",
            "sting-is-a-reaction", "letter-counts",
            "lash-tint-allowed", "retention-years", "minor-retention-age");
    private static final int MOST = 1000;
    private static final Map<String, Hemisphere> HALVES = Map.of("north", Hemisphere.NORTH, "south", Hemisphere.SOUTH);

    private final Set<String> sources;
    private final Collection<String> chemistries;

    PolicyReader(Set<String> sources, Collection<String> chemistries) {
        this.sources = sources;
        this.chemistries = chemistries;
    }

    Policy read(Yaml file) {
        file.only(Stream
            .concat(FIGURES.stream(), Stream.of("jurisdiction", "emergency-number", "paper", "hemisphere", "warnings"))
            .toArray(String[]::new));
        Map<String, Integer> figures = new LinkedHashMap<>();
        Map<String, String> from = new LinkedHashMap<>();
        FIGURES.forEach(name -> {
            Yaml figure = file.at(name).only("is", "source");
            figures.put(name, figure.at("is").number(0, MOST));
            from.put(name, source(figure));
        });
        return new Policy(IdSyntax.read(file.at("jurisdiction")), figures, from, file.at("emergency-number").text(),
            file.at("paper").oneOf(Set.of("A4", "Letter"), "paper"),
            file.maybe("hemisphere").map(h -> h.oneOf(HALVES, "hemisphere")).orElse(Hemisphere.NORTH),
            file.maybe("warnings").map(w -> w.each(this::warning)).orElse(List.of()));
    }

    private Warning warning(Yaml entry) {
        entry.only("id", "on", "source");
        Set<String> on =
            entry.at("on").list().stream().map(c -> c.oneOf(chemistries, "chemistry")).collect(Collectors.toSet());
        return new Warning(IdSyntax.read(entry.at("id")), on, source(entry));
    }

    private String source(Yaml entry) {
        return entry.at("source").oneOf(sources, "source");
    }
}
