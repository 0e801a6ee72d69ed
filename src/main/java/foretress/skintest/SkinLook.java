package foretress.skintest;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonProperty;
import foretress.assessment.SkinTestOutcome;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One look at the skin, as told by the client or read by staff.
 *
 * @param signs at least one; {@link SkinSign#NONE} stands alone
 * @param began when it began; empty when there was nothing, and for what staff see
 * @param words what was added, as typed
 * @param masking facts that may have hidden a reaction at this moment, for a reading by staff
 * @param mixing it was read on the day, right before mixing
 */
public record SkinLook(List<SkinSign> signs, Optional<Onset> began, String words, List<String> masking,
    boolean mixing) {
    private static final Set<SkinSign> HARDLY_ANYTHING = Set.of(SkinSign.NONE, SkinSign.FAINT);

    public SkinLook {
        signs = List.copyOf(signs);
        masking = List.copyOf(masking);
        if (signs.isEmpty() || signs.size() > 1 && signs.contains(SkinSign.NONE)) {
            throw new IllegalArgumentException("nothing, or something: " + signs);
        }
    }

    /** As the store has it: no time is nothing there, or an empty text in what was kept before 2026-11-30. */
    @JsonCreator
    static SkinLook kept(@JsonProperty("signs") List<SkinSign> signs, @JsonProperty("began") String began,
        @JsonProperty("words") String words,
        @JsonProperty("masking") List<String> masking, @JsonProperty("mixing") boolean mixing) {
        return new SkinLook(signs, Onset.of(began), words, masking, mixing);
    }

    /**
     * What it comes to. Any sign but a faint redness is positive (a trade federation's and insurers' rule: any redness, swelling, itch,
     * burning, rash or blister, at the spot or elsewhere).
     */
    public SkinTestOutcome result() {
        if (nothing()) {
            return SkinTestOutcome.NEGATIVE;
        }
        return HARDLY_ANYTHING.containsAll(signs) ? SkinTestOutcome.DOUBTFUL : SkinTestOutcome.POSITIVE;
    }

    public boolean nothing() {
        return signs.equals(List.of(SkinSign.NONE));
    }

    public boolean urgent() {
        return signs.stream().anyMatch(SkinSign::isUrgent);
    }
}
