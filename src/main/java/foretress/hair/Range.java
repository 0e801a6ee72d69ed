package foretress.hair;

/** From a tenth to nine tenths of the chance, in cm from the scalp. */
public record Range(double fromCm, double toCm) {
    public Range {
        if (!(0 <= fromCm && fromCm <= toCm)) {
            throw new IllegalArgumentException("not a range: %s to %s cm".formatted(fromCm, toCm));
        }
    }
}
