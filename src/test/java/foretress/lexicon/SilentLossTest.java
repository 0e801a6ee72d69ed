package foretress.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.knowledge.ShippedLexicon;
import foretress.lexicon.Substance.Risk;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Whatever one slip does to a name or number of a risky substance, somebody is told: it is found, or something is unknown. */
class SilentLossTest {
    private static final long SEED = 20261130;
    private static final int SLIPS_EACH = Integer.getInteger("slips", 1);
    private static final List<String> LISTS = List.of("aqua, %s, glycerin", "Aqua; Parfum; %s",
        "%s, Aqua, Cetearyl Alcohol", "Aqua (Water), %s (2 %%), Parfum", "Ingredients: Aqua\n%s\nGlycerin",
        "Agua, Alcohol cetílico, %s.", "Składniki: Woda, %s, Gliceryna", "Wasser • %s • Parfüm",
        "Acqua / %s / Profumo");
    private static final String LOOKS = "5S8B0O1lmnoiszg2";
    private static final Set<String> KNOWN = ShippedLexicon.SUBSTANCES.stream().flatMap(SilentLossTest::names)
        .map(SilentLossTest::key).collect(Collectors.toSet());

    private static Stream<String> names(Substance substance) {
        return Stream.of(Stream.of(substance.name()), substance.otherNames().stream(),
            substance.cas().stream().map(Cas::number)).flatMap(names -> names);
    }

    private static String key(String name) {
        return LabelToken.of(name).stream().map(LabelToken::folded).collect(Collectors.joining());
    }

    private static String slip(String name, Random lot) {
        int at = lot.nextInt(name.length());
        String before = name.substring(0, at);
        String after = name.substring(at + 1);
        String letter = "" + (char) ('a' + lot.nextInt(26));
        return switch (lot.nextInt(7)) {
            case 0 -> before + after;
            case 1 -> before + letter + name.substring(at);
            case 2 -> before + letter + after;
            case 3 -> after.isEmpty() ? name + letter : before + after.charAt(0) + name.charAt(at) + after.substring(1);
            case 4 -> name.replaceFirst("-", "");
            case 5 -> before + LOOKS.charAt(lot.nextInt(LOOKS.length())) + after;
            default -> name.replaceFirst("d", "cl").replaceFirst("m", "rn");
        };
    }

    private static boolean told(String label, Risk risk) {
        LabelReading reading = ShippedLexicon.LABELS.read(label);
        return !reading.allSure() || reading.found().stream().anyMatch(f -> f.substance().risk().compareTo(risk) >= 0);
    }

    @Test
    @DisplayName("R51: no risky substance is lost silently by one slip, in whatever language it is named")
    void noRiskySubstanceIsLostSilently() {
        var lot = new Random(SEED);
        List<String> lost = new ArrayList<>();
        int tried = 0;
        for (Substance substance : ShippedLexicon.SUBSTANCES) {
            if (substance.risk() == Risk.NONE) {
                continue;
            }
            for (String name : names(substance).toList()) {
                for (int i = 0; i < SLIPS_EACH; i++) {
                    String slipped = slip(name, lot);
                    tried++;
                    // A slip that makes another name that is known ("E214", "E124") cannot be told from that name.
                    boolean another = !key(slipped).equals(key(name)) && KNOWN.contains(key(slipped));
                    if (!another && !slipped.isBlank()
                        && !told(LISTS.get(lot.nextInt(LISTS.size())).formatted(slipped), substance.risk())) {
                        lost.add(name + " -> " + slipped);
                    }
                }
            }
        }
        assertThat(lost).as("%d tried", tried).isEmpty();
        assertThat(tried).isGreaterThan(2_000);
    }
}
