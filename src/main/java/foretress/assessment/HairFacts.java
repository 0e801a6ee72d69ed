package foretress.assessment;

import foretress.assessment.Asking.Asked;
import foretress.assessment.HairTold.Done;
import foretress.assessment.HairTold.Sureness;
import foretress.hair.Lane;
import foretress.hair.SafeSide;
import foretress.hair.Treatment;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;

/** What earlier treatments left on the hair. "Left" means a chance of one per cent or more, at the slowest growth. */
final class HairFacts {
    private static final int NONE = 0;
    private static final int LEFT = 1;
    private static final int RECENT = 2;
    private static final int OLD = 1;
    private static final int TRACE = 1;
    private static final int SUSPECTED = 2;
    private static final int OVER = 1;
    private static final int IN_WINDOW = 2;

    private final Situation situation;
    private final Asking asking;
    private final HairTold told;
    /** Many possible treatments share one span of days, and no more than that matters here. */
    private final Map<Days, SafeSide> seen = new HashMap<>();

    private record Days(LocalDate earliest, LocalDate latest, boolean sure, boolean metalPossible,
        boolean slow) {}

    HairFacts(Situation situation, Asking asking, HairTold told) {
        this.situation = situation;
        this.asking = asking;
        this.told = told;
    }

    FactValue length(FactDef def) {
        List<String> questions = ids(Kind.HAIR_LENGTH);
        List<Asked> asked = asking.asked(questions);
        boolean known = told.length().cm().isPresent();
        int ordinal = told.length().measured() ? 0 : known ? 1 : 2;
        return new FactValue(def.id(), def.classes(), ordinal, ordinal, ordinal,
            questions,
            known ? List.of() : asking.notAsked(asked), known ? List.of() : asking.unanswered(asked), List.of(),
            Optional.empty());
    }

    FactValue left(FactDef def, FactDef.Computation how) {
        return value(def, how, done -> leftClass(done, how));
    }

    private int leftClass(Done done, FactDef.Computation how) {
        if (!isLeft(done)) {
            return NONE;
        }
        boolean recent = how.recentWeeks().isPresent()
            && done.treatment().latest().plusWeeks(how.recentWeeks().get().in(situation.policy()))
                .isAfter(situation.serviceDay());
        return recent ? RECENT : LEFT;
    }

    /** What was done long ago comes before the two classes of {@link #left}; the last day it can have been counts. */
    FactValue leftByAge(FactDef def, FactDef.Computation how) {
        return value(def, how, done -> {
            int left = leftClass(done, how);
            return left == NONE ? NONE : isOld(done, how) ? OLD : OLD + left;
        });
    }

    private boolean isOld(Done done, FactDef.Computation how) {
        return how.oldYears().filter(years -> !done.treatment().latest().plusYears(years.in(situation.policy()))
            .isAfter(situation.serviceDay())).isPresent();
    }

    /** The first kind named is the first class after "none", and so on. */
    FactValue kindLeft(FactDef def, FactDef.Computation how) {
        return value(def, how, done -> isLeft(done) ? how.of().indexOf(done.what()) + 1 : NONE);
    }

    FactValue metal(FactDef def, FactDef.Computation how) {
        Truth slow = told.slow();
        FactValue surely = metal(def, how, slow == Truth.TRUE);
        if (slow == Truth.FALSE) {
            return surely;
        }
        FactValue perhaps = slow == Truth.TRUE ? surely : metal(def, how, true);
        return perhaps.worst() == SUSPECTED ? surely.atWorst(perhaps, told.askedOfGrowth()) : surely;
    }

    private FactValue metal(FactDef def, FactDef.Computation how, boolean slow) {
        return value(def, how, done -> safe(done, slow).metalSuspected() ? SUSPECTED : TRACE);
    }

    /** Where the policy asks for so many cm of new hair after chemotherapy, hair that is shorter is still in its window. */
    FactValue notRegrown(FactDef def, FactValue chemotherapy) {
        int asked = situation.policy().figure("chemotherapy-regrown-cm");
        boolean regrown = told.length().cm().orElse(0) >= asked;
        return regrown ? chemotherapy : chemotherapy.raised(OVER, IN_WINDOW);
    }

    private boolean isLeft(Done done) {
        return safe(done, false).chance() >= Lane.SUSPECTED_FROM;
    }

    /** @param slow hair that grows more slowly than others' */
    private SafeSide safe(Done done, boolean slow) {
        Treatment t = done.treatment();
        return seen.computeIfAbsent(new Days(t.earliest(), t.latest(), t.sure(), t.metalPossible(), slow),
            days -> SafeSide.of(t, told.length(), situation.cuts(), situation.today(), slow));
    }

    private FactValue value(FactDef def, FactDef.Computation how, ToIntFunction<Done> classOf) {
        int best = NONE;
        int worst = NONE;
        int worstAsked = NONE;
        List<Done> all = told.done().stream().filter(done -> how.of().contains(done.what())).toList();
        int[] ordinals = all.stream().mapToInt(classOf).toArray();
        for (int i = 0; i < ordinals.length; i++) {
            Sureness sureness = all.get(i).sureness();
            best = sureness == Sureness.SURE ? Math.max(best, ordinals[i]) : best;
            worst = Math.max(worst, ordinals[i]);
            worstAsked = sureness == Sureness.NOT_ASKED ? worstAsked : Math.max(worstAsked, ordinals[i]);
        }
        Set<String> read = read(how);
        List<Asked> asked = asking.asked(read);
        return new FactValue(def.id(), def.classes(), best, worst, worstAsked,
            worst == NONE ? List.copyOf(read) : causes(all, ordinals, worst), asking.notAsked(asked),
            asking.unanswered(asked), List.of(), Optional.empty());
    }

    private List<String> causes(List<Done> all, int[] ordinals, int worst) {
        Set<String> causes = new LinkedHashSet<>();
        for (int i = 0; i < ordinals.length; i++) {
            if (ordinals[i] == worst) {
                causes.addAll(all.get(i).causes());
            }
        }
        asking.ofKind(Kind.HAIR_LENGTH).stream().filter(q -> asking.answer(q).isPresent())
            .forEach(q -> causes.add(q.id()));
        return List.copyOf(causes);
    }

    /** The list of treatments, and the cues for what is looked for. */
    private Set<String> read(FactDef.Computation how) {
        Set<String> read = new LinkedHashSet<>(ids(Kind.TREATMENTS));
        for (Cue cue : told.cues()) {
            if (how.of().contains(cue.what())) {
                read.addAll(cue.when().keySet());
            }
        }
        return read;
    }

    private List<String> ids(Kind kind) {
        return asking.ofKind(kind).stream().map(Question::id).toList();
    }
}
