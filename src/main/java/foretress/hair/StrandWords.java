package foretress.hair;

import java.text.NumberFormat;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The map's words in one language. In a text {@code #} stands for the number or month, {@code #1} and {@code #2} for two.
 *
 * @param locale for months and numbers; also tells whether the map is mirrored
 */
public record StrandWords(Locale locale, UnaryOperator<String> word) {
    /** Every key {@code word} is asked for. */
    public static final List<String> KEYS =
        List.of("strand-title", "strand-cm", "strand-scalp", "strand-ends", "strand-chance",
            "strand-certain", "strand-in-hundred", "strand-less-than-one", "strand-none", "strand-not-known",
            "strand-counts",
            "strand-until-measured", "strand-until-sure", "strand-gone-if-cut", "strand-grown-out",
            "strand-never-quite", "strand-cut-metal",
            "strand-no-treatment", "strand-length", "strand-length-measured", "strand-length-assumed",
            "strand-lies-to-ends",
            "strand-lies-between", "strand-lies-to-ends-if", "strand-lies-between-if", "strand-slow-growth",
            "strand-measured-cut", "strand-measured-grown-out", "strand-list");

    private static final List<String> RIGHT_TO_LEFT = List.of("ar", "fa", "he", "iw", "ur");
    private static final int SHORTEST_CUT_WORTH_SAYING_CM = 3;

    String say(String key) {
        return word.apply(key);
    }

    private String say(String key, String value) {
        return say(key).replace("#", value);
    }

    boolean rightToLeft() {
        return RIGHT_TO_LEFT.contains(locale.getLanguage());
    }

    String centimetres(double cm) {
        return number(cm) + "\u00a0" + say("strand-cm");
    }

    /** With the language's own decimal sign, in Western digits like every other number on the page. */
    String number(double cm) {
        NumberFormat format = NumberFormat.getNumberInstance(
            new Locale.Builder().setLocale(locale).setUnicodeLocaleKeyword("nu", "latn").build());
        format.setMaximumFractionDigits(1);
        return format.format(cm);
    }

    private String whole(double cm) {
        return number(Math.round(cm));
    }

    /** How likely any of it is left, in words. */
    public String chance(StrandMap map, Lane lane) {
        if (!map.lengthKnown()) {
            return say("strand-not-known");
        }
        if (unsure(lane)) {
            return say("strand-not-known");
        }
        double chance = lane.chanceLeft();
        if (chance >= 0.9995) {
            return say("strand-certain");
        }
        if (!lane.treatment().sure() && chance > 0) {
            // Of a time nobody knows every day would count alike: a figure of ours, not of the client's.
            return say("strand-not-known");
        }
        if (chance >= 0.005) {
            return say("strand-in-hundred", number(Math.min(99, Math.round(100 * chance))));
        }
        return say(lane.safetyChance() > 0 || chance > 0 ? "strand-less-than-one" : "strand-none");
    }

    /** What ends it, in words; empty when it has ended. */
    public String end(StrandMap map, Lane lane) {
        if (!map.lengthKnown()) {
            return say("strand-counts");
        }
        if (unsure(lane)) {
            return say(lane.slowed() ? "strand-slow-growth"
                : map.lengthMeasured() ? "strand-until-sure" : "strand-until-measured");
        }
        if (lane.safetyChance() == 0) {
            return "";
        }
        if (lane.treatment().residue() == Residue.WASHES_OUT) {
            return say("strand-never-quite");
        }
        return lane.cutToCm().filter(cm -> cm >= SHORTEST_CUT_WORTH_SAYING_CM)
            .map(cm -> say("strand-gone-if-cut", number(cm)))
            .orElseGet(() -> say("strand-grown-out", month(lane.grownOut())));
    }

    /** What a growth measured on this client says beside it; the safe figure decides. Empty where it says no more. */
    public String measured(StrandMap map, Lane lane) {
        boolean asked = map.lengthKnown() && lane.safetyChance() > 0 && !lane.slowed()
            && lane.treatment().residue() != Residue.WASHES_OUT;
        Optional<String> cut = lane.measuredCutToCm().filter(cm -> cm >= SHORTEST_CUT_WORTH_SAYING_CM)
            .map(cm -> say("strand-measured-cut", number(cm)));
        return !asked ? "" : cut.or(() -> lane.measuredGrownOut()
            .map(month -> say("strand-measured-grown-out", month(month)))).orElse("");
    }

    /** Metal stays suspected although the figures say it has grown out, because one of them is not to be relied on. */
    private static boolean unsure(Lane lane) {
        return lane.metalSuspected() && (lane.slowed() || lane.safetyChance() == 0);
    }

    private String month(YearMonth month) {
        return DateTimeFormatter.ofPattern("LLL uuuu", locale).format(month);
    }

    /** The words on the cut line. */
    String cut(int cm) {
        return say("strand-cut-metal", number(cm));
    }

    /** How long the hair is, and whether measured, said or assumed. */
    public String length(StrandMap map) {
        String key = !map.lengthKnown() ? "strand-length-assumed"
            : map.lengthMeasured() ? "strand-length-measured" : "strand-length";
        return say(key, number(map.lengthCm()));
    }

    /** The whole map as a list of sentences, one a treatment, for those who do not see it. */
    public List<String> list(StrandMap map) {
        List<String> lines = new ArrayList<>(List.of(length(map)));
        map.metalFreeCutCm().ifPresent(cm -> lines.add(cut(cm)));
        if (map.lanes().isEmpty()) {
            lines.add(say("strand-no-treatment"));
        }
        map.lanes().forEach(lane -> lines.add(line(map, lane)));
        return lines;
    }

    private String line(StrandMap map, Lane lane) {
        List<String> parts = new ArrayList<>();
        parts.add(named(lane.treatment()));
        parts.add(say("strand-chance") + ": " + chance(map, lane));
        lane.starts().ifPresent(starts -> parts.add(lies(map, lane, starts)));
        parts.add(end(map, lane));
        parts.add(measured(map, lane));
        return String.join("; ", parts.stream().filter(p -> !p.isEmpty()).toList());
    }

    private static String named(Treatment t) {
        return t.said().isEmpty() ? t.label() : t.label() + ", " + t.said();
    }

    private String lies(StrandMap map, Lane lane, Range starts) {
        // Where some may be gone already the places are those of what would be left.
        String kind = lane.chanceLeft() >= 0.9995 ? "" : "-if";
        if (lane.farCm() >= map.lengthCm()) {
            return say("strand-lies-to-ends" + kind).replace("#1", whole(starts.fromCm())).replace("#2",
                whole(starts.toCm()));
        }
        double far = lane.reaches().map(Range::toCm).orElse(lane.farCm());
        return say("strand-lies-between" + kind).replace("#1", whole(starts.fromCm())).replace("#2", whole(far));
    }
}
