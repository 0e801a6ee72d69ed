package foretress.assessment;

import foretress.assessment.FactDef.Computation;
import foretress.assessment.FactDef.Event;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.SaidDate;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What makes a negative skin test worthless, as knowledge names it beside the skin test: facts that hide a reaction, and events
 * that may have taught the skin to react since. Not known counts as yes.
 *
 * <p>Whoever keeps a test asks {@link #masking} of the answers as they stood when it was begun, and again when it was read, and
 * {@link #since} of the answers then and now; the results are the test's {@code masked} and {@code overtaken}.
 */
public final class SkinTestDoubts {
    private final FactFinder finder;
    private final Computation skinTest;
    private final Masks masks;

    public SkinTestDoubts(RuleSet rules, Lexicon lexicon) {
        finder = new FactFinder(rules, lexicon);
        skinTest = rules.facts().stream().flatMap(def -> def.computation().stream())
            .filter(how -> how.as() == ComputedAs.SKIN_TEST)
            .findFirst().orElseThrow(() -> new IllegalArgumentException("no fact is computed as a skin test"));
        masks = Masks.of(rules, skinTest);
    }

    /** Facts that hide a reaction at this moment, or may for all that was said. */
    public List<String> masking(Situation moment) {
        return masking(finder.find(moment));
    }

    /** The same of facts already found. */
    public List<String> masking(Facts facts) {
        return masks.now(facts.byId()::get);
    }

    /**
     * Questions whose answers tell of something since the test, or may: a temporary tattoo, a reaction elsewhere; also what the
     * client has been saying only since then.
     *
     * @param started the day the test was begun; an event of that very day counts
     * @param then the answers as they stood when the test was begun
     */
    public List<String> since(LocalDate started, Answers then, Situation now) {
        Set<String> since = new LinkedHashSet<>(dated(skinTest, started, now, new Asking(now)));
        var said = new Asking(now);
        var saidThen = new Asking(now.saying(then));
        for (Event event : skinTest.overtakenBy()) {
            if (said.holds(event.when(), false).compareTo(saidThen.holds(event.when(), false)) > 0) {
                since.addAll(event.when().keySet());
            }
        }
        return List.copyOf(since);
    }

    /** Everything that speaks against a test for the visit that is planned now. */
    public TestStanding standing(TestFact test, Situation now) {
        return TestStanding.of(test, now.policy(), now.serviceDay(), masking(now),
            dated(skinTest, test.started(), now, new Asking(now)));
    }

    /** Questions of the events that have a date, and may have happened on the day a test was begun or later. */
    static List<String> dated(Computation skinTest, LocalDate started, Situation now, Asking asking) {
        return skinTest.overtakenBy().stream()
            .filter(event -> event.dated().isPresent() && asking.holds(event.when(), false) != Truth.FALSE)
            .filter(event -> mayBeSince(started, asking.question(event.dated().get()), now, asking))
            .flatMap(event -> event.when().keySet().stream()).distinct().toList();
    }

    private static boolean mayBeSince(LocalDate started, Question dated, Situation now, Asking asking) {
        return asking.answer(dated).filter(Answer.Said.class::isInstance).map(answer -> ((Answer.Said) answer).date())
            .map(date -> latest(date, now)).map(latest -> !latest.isBefore(started)).orElse(true);
    }

    private static LocalDate latest(SaidDate date, Situation now) {
        return date.span(now.today(), now.policy().hemisphere()).latest();
    }
}
