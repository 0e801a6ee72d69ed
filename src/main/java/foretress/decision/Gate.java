package foretress.decision;

import foretress.assessment.Assessment;
import foretress.assessment.Finding;
import foretress.assessment.Rule;
import foretress.assessment.RuleSet;
import foretress.assessment.Service;
import foretress.assessment.Weight;
import foretress.intake.BookedChemistry;
import foretress.intake.EarlierFindings;
import foretress.intake.EarlierFindings.Earlier;
import foretress.intake.Intake;
import foretress.intake.Refusals;
import foretress.intake.ShelfLife;
import foretress.knowledge.Knowledge;
import foretress.questionnaire.Question;
import foretress.skintest.SkinTestHistory;
import foretress.visit.Visit;
import jakarta.inject.Singleton;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What stands between a visit and a decision that lets a service go ahead. */
@Singleton
public class Gate {
    private final Intake intake;
    private final ShelfLife shelfLife;
    private final Signature signature;
    private final EarlierFindings earlier;
    private final SkinTestHistory skinTests;
    private final BookedChemistry chemistry;
    private final Knowledge knowledge;
    private final Refusals refusals;

    Gate(Intake intake, ShelfLife shelfLife, Signature signature, EarlierFindings earlier, SkinTestHistory skinTests,
        BookedChemistry chemistry,
        Knowledge knowledge, Refusals refusals) {
        this.intake = intake;
        this.shelfLife = shelfLife;
        this.signature = signature;
        this.earlier = earlier;
        this.skinTests = skinTests;
        this.chemistry = chemistry;
        this.knowledge = knowledge;
        this.refusals = refusals;
    }

    /**
     * A finding that weighs on a service.
     *
     * @param lasting nobody can go against it
     * @param foundOn the day of the earlier visit it was found at; empty when today's answers or tests make it
     */
    public record Weighing(Finding finding, Weight weight, boolean lasting, Optional<LocalDate> foundOn) {
        /** It must be met, or gone against by the owner, before the service can go ahead. */
        public boolean inTheWay() {
            return weight.compareTo(Weight.TEST_FIRST) >= 0;
        }
    }

    /**
     * What holds for the whole visit.
     *
     * @param missing required questions without an answer
     * @param due questions to ask again on the day
     * @param look a negative skin test counts, and nobody has looked at the spot once more before mixing
     */
    public record Open(List<Question> missing, List<Question> due, Signature.Holds signature, boolean look) {
        Set<Refusal> refusals() {
            Set<Refusal> refusals = EnumSet.noneOf(Refusal.class);
            if (!missing.isEmpty()) {
                refusals.add(Refusal.NOT_ANSWERED);
            }
            if (!due.isEmpty()) {
                refusals.add(Refusal.NOT_ON_THE_DAY);
            }
            if (!signature.holds()) {
                refusals.add(Refusal.NOT_SIGNED);
            }
            if (look) {
                refusals.add(Refusal.SPOT_NOT_SEEN);
            }
            return refusals;
        }
    }

    public Open open(Visit visit, CurrentAssessment.Now now) {
        return new Open(intake.missing(visit, now.said()), shelfLife.due(visit, now.said()), signature.of(visit, now),
            look(visit));
    }

    private boolean look(Visit visit) {
        return knowledge.chemistries().needSkinTest(chemistry.of(visit)) && !skinTests.readBeforeMixing(visit.id)
            && skinTests.of(visit.client.id).stream().anyMatch(test -> test.voidReasons().isEmpty());
    }

    /** Every finding that speaks on this service, the heaviest first: today's and those of earlier visits that still stand. */
    public List<Weighing> on(Visit visit, CurrentAssessment.Now now, Service service) {
        return weighed(now.assessment(), earlier.of(visit, now.assessment()), service, refusals.of(visit),
            knowledge.ruleSet());
    }

    /** @param refused ids of the tests the client does not want */
    static List<Weighing> weighed(Assessment now, List<Earlier> earlier, Service service, Set<String> refused,
        RuleSet rules) {
        Stream<Weighing> today =
            now.findings().stream().filter(f -> f.speaksOn(List.of(service)) || asksFor(f, refused))
                .map(f -> refused(weighing(f, service, Optional.empty(), rules), refused));
        Stream<Weighing> before = earlier.stream().map(
            e -> weighing(e.finding(), service, Optional.of(e.visit().startsThere().toLocalDate()), rules));
        return Stream.concat(today, before).filter(w -> w.weight() != Weight.NOTHING_FOUND)
            .sorted(Comparator.comparing(Weighing::weight).reversed()).toList();
    }

    /** Nobody goes ahead without a test that the client refused: not the owner either. */
    private static Weighing refused(Weighing weighing, Set<String> tests) {
        boolean meant = weighing.inTheWay() && asksFor(weighing.finding(), tests);
        return meant ? new Weighing(weighing.finding(), weighing.weight(), true, weighing.foundOn()) : weighing;
    }

    private static boolean asksFor(Finding finding, Set<String> tests) {
        return finding.demands().stream().anyMatch(tests::contains);
    }

    private static Weighing weighing(Finding finding, Service service, Optional<LocalDate> foundOn, RuleSet rules) {
        Weight weight = finding.on(service);
        // A rule that knowledge no longer has cannot be asked; the safe side is that it lasts.
        boolean lasting = rules.rule(finding.ruleId()).map(Rule::lasting).orElse(true);
        return new Weighing(finding, weight, lasting && weight.compareTo(Weight.TEST_FIRST) >= 0, foundOn);
    }

    public static Weight standing(List<Weighing> on) {
        return Weight.heaviest(on.stream().map(Weighing::weight).toList());
    }
}
