package foretress.bench;

import foretress.hair.Lane;
import foretress.hair.Residue;
import foretress.hair.StrandMap;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Where on the strand map to cut: a tuft from every suspect stretch, where it is likeliest to be; one from the oldest ends; and
 * one of the client's own new growth for control, as far as nothing reaches on the slowest growth.
 */
final class BenchCuts {
    static final double TUFT_CM = 6;
    static final double CONTROL_CM = 2;
    static final double SHORTEST_CM = 0.5;
    private static final double STEP_CM = 0.5;
    private static final double NEARLY = 0.95;
    /** Two suspect stretches whose tufts would be half of the same hair share one, which then reaches over both. */
    private static final double SAME_CM = TUFT_CM / 2;
    private static final String LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    private BenchCuts() {}

    static List<BenchCut> of(StrandMap map) {
        List<BenchCut> cuts = new ArrayList<>();
        for (Lane lane : map.lanes()) {
            if (suspect(map, lane)) {
                add(cuts, lane, likeliest(map, lane));
            }
        }
        double from = Math.max(map.lengthCm() / 2, map.lengthCm() - TUFT_CM);
        cuts.add(new BenchCut(letter(cuts), Tuft.Kind.OLDEST_ENDS, "", round(from), round(map.lengthCm()), true));
        double free = Math.min(CONTROL_CM,
            map.lanes().stream().filter(BenchCuts::left).mapToDouble(Lane::nearCm).min().orElse(CONTROL_CM));
        boolean possible = free >= SHORTEST_CM && free <= map.lengthCm();
        cuts.add(new BenchCut(letter(cuts), Tuft.Kind.CONTROL, "", 0, possible ? down(free) : 1, possible));
        return List.copyOf(cuts);
    }

    /** Suspected of metal; where none is, whatever nobody can name. */
    private static boolean suspect(StrandMap map, Lane lane) {
        return left(lane)
            && (lane.metalSuspected() || !map.metalSuspected() && lane.treatment().residue() == Residue.UNKNOWN);
    }

    private static boolean left(Lane lane) {
        return lane.safetyChance() >= Lane.SUSPECTED_FROM;
    }

    private static void add(List<BenchCut> cuts, Lane lane, double from) {
        double to = Math.min(lane.farCm(), from + TUFT_CM);
        String label = lane.treatment().label();
        for (int i = 0; i < cuts.size(); i++) {
            BenchCut other = cuts.get(i);
            if (Math.abs(other.fromCm() - from) < SAME_CM) {
                cuts.set(i, new BenchCut(other.letter(), other.kind(), other.stretch() + ", " + label,
                    round(Math.min(other.fromCm(), from)), round(Math.max(other.toCm(), to)), true));
                return;
            }
        }
        cuts.add(new BenchCut(letter(cuts), Tuft.Kind.SUSPECT, label, round(from),
            round(Math.max(to, from + SHORTEST_CM)), true));
    }

    /** The nearest place that is nearly as likely to carry it as the likeliest: the ends have a tuft of their own. */
    private static double likeliest(StrandMap map, Lane lane) {
        double near = Math.min(lane.nearCm(), Math.max(0, map.lengthCm() - SHORTEST_CM));
        double last = Math.max(near, Math.min(lane.farCm(), map.lengthCm()) - TUFT_CM);
        double most = DoubleStream.iterate(near, from -> from <= last, from -> from + STEP_CM)
            .map(from -> chance(lane, from)).max().orElse(0);
        return DoubleStream.iterate(near, from -> from <= last, from -> from + STEP_CM)
            .filter(from -> chance(lane, from) >= NEARLY * most).findFirst().orElse(near);
    }

    private static double chance(Lane lane, double from) {
        return lane.chanceAt(from) + lane.chanceAt(from + TUFT_CM / 2) + lane.chanceAt(from + TUFT_CM);
    }

    private static String letter(List<BenchCut> cuts) {
        int at = cuts.size() % LETTERS.length();
        int round = cuts.size() / LETTERS.length();
        return LETTERS.charAt(at) + (round == 0 ? "" : Integer.toString(round + 1));
    }

    /** To half a centimetre, and never beyond: a control that reaches into treated hair is none. */
    private static double down(double cm) {
        return Math.floor(cm * 2) / 2;
    }

    /** To half a centimetre. */
    private static double round(double cm) {
        return Math.round(cm * 2) / 2.0;
    }
}
