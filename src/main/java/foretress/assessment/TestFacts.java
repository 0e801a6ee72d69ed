package foretress.assessment;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What the tests say that were made. Only what staff read counts; what is not done, not valid or overtaken stays owed. */
final class TestFacts {
    private static final int CLEAR = 0;
    private static final int NOT_DONE = 1;
    private static final int SKIN_POSITIVE = 2;
    private static final int NOTHING_HAPPENED = 2;
    private static final int METAL_POSITIVE = 3;
    private static final int ADVISED_AGAINST = 2;
    /** What results of porosity said before there were four classes. */
    private static final Map<String, String> EARLIER = Map.of("even", "average");

    private final Situation situation;
    private final Asking asking;

    TestFacts(Situation situation, Asking asking) {
        this.situation = situation;
        this.asking = asking;
    }

    /**
     * @param maskingNow facts of today that hide a reaction, or may for all we know
     * @param how names the events that overtake a test
     */
    FactValue skinTest(FactDef def, FactDef.Computation how, List<String> maskingNow) {
        boolean positive = made(TestFact.SKIN_TEST).anyMatch(SkinTestOutcome::reacted);
        List<TestStanding> standings = made(TestFact.SKIN_TEST).map(t -> standing(t, how, maskingNow)).toList();
        boolean valid = standings.stream().anyMatch(TestStanding::stands);
        List<String> causes =
            standings.stream().flatMap(s -> s.by(TestStanding.Reason.OVERTAKEN).stream()).distinct().toList();
        return FactValue.known(def, positive ? SKIN_POSITIVE : valid ? CLEAR : NOT_DONE, valid ? List.of() : causes);
    }

    private TestStanding standing(TestFact test, FactDef.Computation how, List<String> maskingNow) {
        return TestStanding.of(test, situation.policy(), situation.serviceDay(), maskingNow,
            SkinTestDoubts.dated(how, test.started(), situation, asking));
    }

    /** A recorded letter that names the product now planned, unless the policy takes none or the test is positive; else the test. */
    FactValue letterOr(FactDef def, FactValue skinTest) {
        boolean named = situation.policy().figure("letter-counts") > 0
            && made("dermatologist-letter")
                .anyMatch(t -> t.outcome().equals("names-product") && t.read().isPresent() && t.thisProduct());
        boolean revoked = made("dermatologist-letter").anyMatch(t -> !t.outcome().equals("names-product"));
        boolean counts = named && !revoked && skinTest.worst() < SKIN_POSITIVE;
        return FactValue.known(def, counts ? CLEAR : skinTest.worst() + 1, skinTest.causes());
    }

    /** A positive one stands until that hair is cut off, whatever a later one says; so does one in which nothing happened. */
    FactValue metalTest(FactDef def) {
        int worst = made("incompatibility-test").mapToInt(TestFacts::metal).max().orElse(NOT_DONE);
        int newest =
            made("incompatibility-test").max(Comparator.comparing(TestFact::started).thenComparing(TestFacts::metal))
                .map(TestFacts::metal).orElse(NOT_DONE);
        return FactValue.known(def, worst >= NOTHING_HAPPENED ? worst : newest, List.of());
    }

    private static int metal(TestFact test) {
        return switch (test.outcome()) {
            case "slight-lightening" ->
                test.read().isPresent() && test.waitKept() && !test.overtaken() ? CLEAR : NOT_DONE;
            case "not-whole" -> NOT_DONE;
            case "nothing-happened" -> NOTHING_HAPPENED;
            default -> METAL_POSITIVE;
        };
    }

    /** The first of the tests must be made; another one can only make it worse. */
    FactValue chairTest(FactDef def, FactDef.Computation how) {
        FactDef.Outcomes outcomes = how.outcomes().orElseThrow();
        List<Integer> newest = how.of().stream().map(test -> newest(test, outcomes)).toList();
        int worst = Collections.max(newest);
        return FactValue.known(def, worst > outcomes.notDone() ? worst : newest.get(0), List.of());
    }

    /**
     * A doctor's word about one fact: of this visit's words the heaviest; without one, a "no" from an earlier visit stands as long
     * as it is the newest. A "yes" counts for its own visit, and while the answers it is about are the same.
     */
    FactValue medicalAdvice(FactDef def, List<String> about) {
        List<TestFact> words =
            made(TestFact.ADVICE).filter(t -> t.about().filter(about::contains).isPresent()).toList();
        List<TestFact> ours = words.stream().filter(TestFact::thisVisit).toList();
        boolean against = ours.isEmpty() ? newestIsAgainst(words) : ours.stream().anyMatch(TestFacts::against);
        boolean withCare = ours.stream().anyMatch(t -> !t.overtaken() && t.read().isPresent());
        return FactValue.known(def, against ? ADVISED_AGAINST : withCare ? CLEAR : NOT_DONE, List.of());
    }

    private static boolean newestIsAgainst(List<TestFact> words) {
        return words.stream().max(Comparator.comparing(TestFact::started).thenComparing(TestFacts::against))
            .filter(TestFacts::against).isPresent();
    }

    private static boolean against(TestFact word) {
        return !word.outcome().equals("with-care");
    }

    /** The newest result; the worse of two made on one day. A good one that was overtaken is owed again. */
    private int newest(String id, FactDef.Outcomes outcomes) {
        Comparator<TestFact> byDayThenClass =
            Comparator.comparing(TestFact::started).thenComparing(t -> ordinal(t, outcomes));
        return made(id).max(byDayThenClass).map(t -> ordinal(t, outcomes)).orElse(outcomes.notDone());
    }

    private static int ordinal(TestFact test, FactDef.Outcomes outcomes) {
        Integer ordinal = outcomes.ordinals().get(EARLIER.getOrDefault(test.outcome(), test.outcome()));
        if (ordinal == null) {
            throw new IllegalArgumentException("'%s' is no outcome of %s".formatted(test.outcome(), test.test()));
        }
        return ordinal == CLEAR && (test.overtaken() || test.read().isEmpty()) ? outcomes.notDone() : ordinal;
    }

    private Stream<TestFact> made(String id) {
        return situation.tests().stream().filter(t -> t.test().equals(id));
    }
}
