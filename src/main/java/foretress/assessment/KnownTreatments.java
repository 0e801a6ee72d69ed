package foretress.assessment;

import foretress.hair.Residue;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What can have been done to hair, by its code, and the cues that betray it. A code nobody knows may have left anything, metal too. */
public final class KnownTreatments {
    public static final KnownTreatments NONE = new KnownTreatments(List.of(), List.of());

    private final List<TreatmentKind> all;
    private final Map<String, TreatmentKind> kinds;
    private final List<Cue> cues;
    private final List<Map<String, List<String>>> slowing;

    public KnownTreatments(List<TreatmentKind> kinds, List<Cue> cues) {
        this(kinds, cues, List.of());
    }

    /** @param slowing answers, by question, that mean the hair may grow more slowly than any published bound */
    public KnownTreatments(List<TreatmentKind> kinds, List<Cue> cues, List<Map<String, List<String>>> slowing) {
        this.slowing = List.copyOf(slowing);
        this.all = List.copyOf(kinds);
        this.kinds = kinds.stream().collect(Collectors.toUnmodifiableMap(TreatmentKind::id, Function.identity()));
        this.cues = List.copyOf(cues);
    }

    public List<TreatmentKind> kinds() {
        return all;
    }

    public List<Cue> cues() {
        return cues;
    }

    List<Map<String, List<String>>> slowing() {
        return slowing;
    }

    /** Empty for a code nobody knows. */
    public Optional<TreatmentKind> kind(String code) {
        return Optional.ofNullable(kinds.get(code));
    }

    Residue leaves(String code) {
        return kind(code).map(TreatmentKind::leaves).orElse(Residue.UNKNOWN);
    }

    boolean mayHoldMetal(String code) {
        return kind(code).map(TreatmentKind::mayHoldMetal).orElse(true);
    }
}
