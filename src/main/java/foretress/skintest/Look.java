package foretress.skintest;

import java.util.List;

/**
 * One look at the skin, as told by the client or read by staff.
 *
 * @param signs codes of {@link Sign}, at least one; none stands alone
 * @param began when it began, as a code of {@link Began}; empty when there was nothing
 * @param words what was added, as typed
 * @param masking facts that may have hidden a reaction at this moment, for a reading by staff
 * @param mixing it was read on the day, right before mixing
 */
public record Look(List<String> signs, String began, String words, List<String> masking, boolean mixing) {
    public Look {
        signs = List.copyOf(signs);
        masking = List.copyOf(masking);
    }

    /**
     * What it comes to: {@code negative}, {@code doubtful} or {@code positive}. Any sign but a faint redness is positive (a trade
     * federation's and insurers' rule: any redness, swelling, itch, burning, rash or blister, at the spot or elsewhere).
     */
    public String result() {
        if (signs.stream().allMatch(Sign.NONE.code()::equals)) return "negative";
        return signs.stream().allMatch(sign -> sign.equals(Sign.NONE.code()) || sign.equals(Sign.FAINT.code())) ? "doubtful" : "positive";
    }

    public boolean nothing() {
        return result().equals("negative");
    }

    public boolean urgent() {
        return signs.stream().flatMap(code -> Sign.of(code).stream()).anyMatch(Sign::isUrgent);
    }
}
