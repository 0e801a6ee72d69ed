package foretress.bench;

/**
 * Where to cut one tuft.
 *
 * @param letter A, B, C …
 * @param stretch what that stretch is, in words; empty for the ends and the control, which have words of their own
 * @param possible there is such a stretch: new growth can be too short to cut
 */
public record BenchCut(String letter, Tuft.Kind kind, String stretch, double fromCm, double toCm, boolean possible) {}
