package foretress.bench;

import java.util.Optional;

/**
 * Hair tried in the very mix that is planned: a test cutting beforehand, or the strand test while the product develops.
 *
 * @param product as the label names it
 * @param percent peroxide in the mix's developer; 0 without peroxide
 * @param minutes it was left, from 1 to 180
 */
public record Trial(String product, double percent, int minutes, Colour colour, Condition condition, Bounce bounce) {
    public enum Colour { AS_PLANNED, OTHERWISE }

    public enum Condition { AS_BEFORE, ROUGHER, GUMMY_OR_BREAKING }

    /** A wet pull of the rinsed, tried hair. */
    public enum Bounce { SPRANG_BACK, STAYED_LONG, BROKE, NOT_PULLED }

    public enum Result { GOOD, POOR }

    public Trial {
        Impossible.within(Impossible.Reason.STRENGTH_OUT_OF_RANGE, percent, 0, Peroxide.STRONGEST);
        Impossible.within(Impossible.Reason.TIME_OUT_OF_RANGE, minutes, 1, 180);
    }

    /**
     * Poor when anything is: colour, condition or pull (our proposal; the steps are common practice). Good only when all three
     * were tried and are; a trial that was never pulled says nothing yet.
     */
    public Optional<Result> result() {
        boolean fine = colour == Colour.AS_PLANNED && condition == Condition.AS_BEFORE;
        if (!fine || bounce == Bounce.STAYED_LONG || bounce == Bounce.BROKE) {
            return Optional.of(Result.POOR);
        }
        return bounce == Bounce.SPRANG_BACK ? Optional.of(Result.GOOD) : Optional.empty();
    }
}
