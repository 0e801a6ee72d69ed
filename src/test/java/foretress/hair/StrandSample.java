package foretress.hair;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Maps and words to draw with; the words are the shipped ones. */
final class StrandSample {
    static final LocalDate TODAY = LocalDate.of(2026, 6, 10);

    private StrandSample() {}

    static StrandWords words(String language) throws IOException {
        Map<String, String> texts = new HashMap<>();
        Path file = Path.of("src/main/knowledge/words", language, "strand.yaml");
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
            int colon = line.indexOf(": ");
            if (line.startsWith("  ") && colon > 0) {
                texts.put(line.substring(2, colon), line.substring(colon + 2).strip().replaceAll("^\"|\"$", ""));
            }
        }
        return new StrandWords(Locale.forLanguageTag(language),
            key -> Optional.ofNullable(texts.get(key)).orElseThrow());
    }

    static StrandWords mirrored() throws IOException {
        return new StrandWords(Locale.forLanguageTag("ar"), words("en").word());
    }

    static Treatment ago(Residue residue, int months, Zone zone) {
        LocalDate day = TODAY.minusMonths(months);
        return Treatment.once(residue, day.minusDays(20), day, zone, residue + " " + months)
            .said("said <b>&\"so\"</b>");
    }

    static StrandMap map(HairLength length, Treatment... treatments) {
        return StrandMap.of(HairHistory.of(length, List.of(treatments)), TODAY);
    }

    static StrandMap many(double cm, int count) {
        Treatment[] all = new Treatment[count];
        for (int i = 0; i < count; i++) {
            all[i] = ago(Residue.values()[i % Residue.values().length], 3 * i, Zone.values()[i % Zone.values().length]);
        }
        return map(HairLength.measured(cm), all);
    }
}
