package foretress.assessment;

import foretress.hair.Growth;
import foretress.hair.HairHistory;
import foretress.hair.HairLength;
import foretress.hair.Range;
import foretress.hair.Series;
import foretress.hair.Treatment;
import foretress.hair.Zone;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.SaidDate;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What has been done to this client's hair, from the list of treatments and from the cues that betray one the list lacks. A
 * date, place or kind that is not known is read as the worst.
 */
public final class HairTold {
    private static final Map<String, Zone> ZONES = Map.of("whole", Zone.WHOLE, "regrowth", Zone.REGROWTH,
        "lengths-ends", Zone.LENGTHS_ENDS, "ends", Zone.ENDS, "strands", Zone.STRANDS);
    /** The longest pause each saying allows, in months; one not known is the longest of all. */
    private static final Map<String, Double> MONTHS_APART =
        Map.of("weekly", weeks(1), "4-weeks", weeks(5), "6-weeks", weeks(7),
            "8-weeks", weeks(10), "12-weeks", weeks(16), "4-months", 5.0, "6-months", 8.0, "few-a-year", 6.0, "yearly",
            18.0);
    private static final double LONGEST_APART = 18;
    /** What "about so many cm" can mean: halfway to what else one could have said. */
    private static final Map<String, Range> EXTENTS = Map.of("1-cm", new Range(0.5, 1.5), "2-cm", new Range(1.5, 2.5),
        "3-cm", new Range(2.5, 4), "5-cm", new Range(4, 7.5), "10-cm", new Range(7.5, 12.5), "15-cm",
        new Range(12.5, 17.5), "20-cm", new Range(17.5, 25), "30-cm", new Range(25, 40));
    /** The shortest length the hair model takes; a shaved head is no more than that. */
    private static final double SHORTEST_CM = 0.5;

    private final Situation situation;
    private final Asking asking;
    private final KnownTreatments kinds;
    private final LabelFacts labels;
    private final List<Done> done = new ArrayList<>();

    /** How sure it is that a treatment happened. */
    enum Sureness { SURE, PERHAPS, NOT_ASKED }

    /**
     * A treatment, certain or possible.
     *
     * @param what the client's or the cue's code
     * @param causes questions it comes from
     */
    record Done(String what, Treatment treatment, Sureness sureness, List<String> causes) {}

    HairTold(Situation situation, Asking asking, KnownTreatments kinds, LabelFacts labels) {
        this.situation = situation;
        this.asking = asking;
        this.kinds = kinds;
        this.labels = labels;
        situation.known().forEach(this::known);
        asking.ofKind(Kind.TREATMENTS).forEach(this::listed);
        kinds.cues().forEach(this::betrayed);
    }

    /** @param lexicon reads the lists of ingredients that bear out what was said */
    public static HairTold of(Situation situation, KnownTreatments kinds, Lexicon lexicon) {
        Asking asking = new Asking(situation);
        return new HairTold(situation, asking, kinds, new LabelFacts(asking, lexicon));
    }

    List<Cue> cues() {
        return kinds.cues();
    }

    List<Done> done() {
        return done;
    }

    /** The treatments that certainly happened, for drawing; their labels are codes. */
    public HairHistory history() {
        List<Treatment> sure = done.stream().filter(d -> d.sureness() == Sureness.SURE).map(Done::treatment).toList();
        return new HairHistory(length(), sure, situation.cuts(), situation.growth(), slow() != Truth.FALSE);
    }

    /** Hair loss, or what else slows growth, is said or not ruled out; where it was not asked nobody suspects it. */
    Truth slow() {
        Truth slow = Truth.FALSE;
        for (Map<String, List<String>> when : kinds.slowing()) {
            slow = slow.or(asking.holds(when, true));
        }
        return slow;
    }

    /** The questions that tell of it. */
    List<String> askedOfGrowth() {
        return kinds.slowing().stream().flatMap(when -> when.keySet().stream()).toList();
    }

    /** A measurement by staff outranks what the client said; a length not drawn straight is not known. */
    public HairLength length() {
        Optional<HairLength> measured =
            situation.measuredLengthCm().map(cm -> HairLength.measured(Math.max(SHORTEST_CM, cm)));
        return measured.or(this::saidLength).orElse(HairLength.notKnown());
    }

    private Optional<HairLength> saidLength() {
        return asking.ofKind(Kind.HAIR_LENGTH).stream().flatMap(q -> asking.answer(q).stream())
            .filter(a -> a instanceof Answer.Length length && length.drawnStraight())
            .map(a -> HairLength.said(Math.max(SHORTEST_CM, ((Answer.Length) a).lengthCm()))).findFirst();
    }

    /** Done in this salon: it is certain, and comes first. It never explains away a cue, which may speak of something done at home. */
    private void known(foretress.questionnaire.SaidTreatment t) {
        List<String> causes = asking.ofKind(Kind.TREATMENTS).stream().map(Question::id).toList();
        done.add(new Done(t.what(), treatment(t, t.what()), Sureness.SURE, causes));
    }

    private void listed(Question question) {
        if (asking.closed(question)) {
            return;
        }
        Optional<Answer> answer = asking.answer(question);
        if (answer.isPresent() && answer.get() instanceof Answer.Treatments treatments) {
            treatments.list().forEach(t -> said(t, question));
        } else if (answer.isPresent()) {
            add(Question.DONT_KNOW, Sureness.SURE, question.id());
            anything(question, Sureness.PERHAPS);
        } else {
            anything(question, asking.put(question) ? Sureness.PERHAPS : Sureness.NOT_ASKED);
        }
    }

    private void said(foretress.questionnaire.SaidTreatment t, Question question) {
        String what = counted(t.what());
        done.add(new Done(what, treatment(t, what), Sureness.SURE, List.of(question.id())));
        if (!what.equals(t.what())) {
            done.add(new Done(t.what(), treatment(t, t.what()), Sureness.PERHAPS, List.of(question.id())));
        }
        if (t.what().equals(Question.DONT_KNOW)) {
            question.options().stream().filter(code -> !code.equals(Question.DONT_KNOW))
                .forEach(
                    code -> done.add(new Done(code, treatment(t, code), Sureness.PERHAPS, List.of(question.id()))));
        }
    }

    private void anything(Question question, Sureness sureness) {
        question.options().forEach(code -> add(code, sureness, question.id()));
    }

    private void betrayed(Cue cue) {
        Truth truth = asking.holds(cue.when(), cue.atLeast(), false);
        if (truth == Truth.FALSE || surelyListed().stream().anyMatch(cue.listedAs()::contains)) {
            return;
        }
        boolean onlyNotAsked = asking.holds(cue.when(), cue.atLeast(), true) == Truth.FALSE;
        Sureness sureness = truth == Truth.TRUE ? Sureness.SURE : onlyNotAsked ? Sureness.NOT_ASKED : Sureness.PERHAPS;
        String[] asked = cue.when().keySet().toArray(String[]::new);
        String what = counted(cue.what());
        add(what, sureness, asked);
        if (!what.equals(cue.what())) {
            add(cue.what(), sureness == Sureness.SURE ? Sureness.PERHAPS : sureness, asked);
        }
    }

    /** Somebody's word that it held nothing else counts only with the list; without one it is the worse thing, and may be what was said. */
    private String counted(String what) {
        return kinds.kind(what).flatMap(TreatmentKind::proof).filter(proof -> !labels.prove(proof.dyes()))
            .map(TreatmentKind.Proof::without).orElse(what);
    }

    private Set<String> surelyListed() {
        Set<String> listed = new HashSet<>();
        asking.ofKind(Kind.TREATMENTS).stream().flatMap(q -> asking.answer(q).stream())
            .filter(Answer.Treatments.class::isInstance)
            .forEach(a -> ((Answer.Treatments) a).list().forEach(t -> listed.add(t.what())));
        return listed;
    }

    private void add(String what, Sureness sureness, String... causes) {
        SaidDate.Span ever = new SaidDate.NotKnown().span(situation.today(), situation.policy().hemisphere());
        done.add(new Done(what,
            new Treatment(what, kinds.leaves(what), ever.earliest(), ever.latest(), Zone.NOT_KNOWN, true, false,
                kinds.mayHoldMetal(what), what, ""),
            sureness, List.of(causes)));
    }

    private Treatment treatment(foretress.questionnaire.SaidTreatment t, String what) {
        SaidDate.Span span = t.when().span(situation.today(), situation.policy().hemisphere());
        boolean sure = !(t.when() instanceof SaidDate.NotKnown);
        return new Treatment(what, kinds.leaves(what), span.earliest(), span.latest(),
            ZONES.getOrDefault(t.zone(), Zone.NOT_KNOWN),
            t.repeated(), series(t, span), sure, kinds.mayHoldMetal(what), what, "",
            Optional.ofNullable(EXTENTS.get(t.extent())));
    }

    /** None when nobody knows the first time, or when it cannot be before the last: then all that was further out counts as treated. */
    private Optional<Series> series(foretress.questionnaire.SaidTreatment t, SaidDate.Span last) {
        SaidDate.Span first = t.since().span(situation.today(), situation.policy().hemisphere());
        if (!t.repeated() || t.since() instanceof SaidDate.NotKnown || first.earliest().isAfter(last.latest())) {
            return Optional.empty();
        }
        LocalDate firstLatest = first.latest().isAfter(last.latest()) ? last.latest() : first.latest();
        return Optional
            .of(new Series(first.earliest(), firstLatest, MONTHS_APART.getOrDefault(t.every(), LONGEST_APART)));
    }

    private static double weeks(int weeks) {
        return weeks * 7 / Growth.DAYS_A_MONTH;
    }
}
