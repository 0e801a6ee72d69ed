package foretress.bench;

/**
 * A few hairs, cut and tied.
 *
 * @param letter on its label: A, B, C
 * @param fromCm where it was cut, in cm from the scalp
 * @param couldLighten it has pigment to lose; white and pre-lightened hair has not
 */
public record Tuft(String letter, Kind kind, double fromCm, double toCm, boolean couldLighten) {
    public enum Kind { SUSPECT, OLDEST_ENDS, CONTROL }

    public Tuft {
        if (!(fromCm >= 0 && toCm > fromCm)) {
            throw new Impossible(Impossible.Reason.NOT_A_STRETCH, fromCm, toCm);
        }
    }

    public boolean control() {
        return kind == Kind.CONTROL;
    }

    public Tuft lightens(boolean could) {
        return new Tuft(letter, kind, fromCm, toCm, could);
    }
}
