package foretress.intake;

import foretress.assessment.Assessment;
import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Step;
import foretress.assessment.Weight;
import foretress.knowledge.Knowledge;
import foretress.ledger.Ledger;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.vault.SealedJson;
import foretress.visit.Visit;
import foretress.visit.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * When consent to one visit is taken back, no rule uses it any more; but a visit still to come that was answered before must not get lighter
 * in silence. What weighed there goes on weighing, without saying what it was, until the client was asked those questions anew and has signed.
 */
@ApplicationScoped
public class TakenBackElsewhere {
    /**
     * What is lighter without what was taken back.
     *
     * @param byStep what weighed before, by step
     * @param questions whose answers decided it
     */
    record Lost(Map<String, Weight> byStep, Set<String> questions) {
        Lost {
            byStep = Map.copyOf(byStep);
            questions = Set.copyOf(questions);
        }
    }

    private record Mark(Instant at, Lost lost) {}

    private final Visits visits;
    private final Intake intake;
    private final Assessments assessments;
    private final EarlierFindings earlier;
    private final Renewal renewal;
    private final Knowledge knowledge;
    private final SealedJson sealed;
    private final Ledger ledger;
    private final Clock clock;

    TakenBackElsewhere(Visits visits, Intake intake, Assessments assessments, EarlierFindings earlier, Renewal renewal,
        Knowledge knowledge, SealedJson sealed, Ledger ledger, Clock clock) {
        this.visits = visits;
        this.intake = intake;
        this.assessments = assessments;
        this.earlier = earlier;
        this.renewal = renewal;
        this.knowledge = knowledge;
        this.sealed = sealed;
        this.ledger = ledger;
        this.clock = clock;
    }

    /**
     * Takes back, and notes for every other visit of the client that is still to come what weighs less there now.
     *
     * @param takeBack after it the visit counts no more
     */
    @Transactional
    public void around(Visit takenBack, Runnable takeBack) {
        Map<Visit, Map<String, Finding>> before = new LinkedHashMap<>();
        visits.of(takenBack.client.id).stream().filter(v -> v.state.isAhead() && !v.id.equals(takenBack.id))
            .filter(v -> !intake.said(v).byQuestion().isEmpty()).forEach(v -> before.put(v, found(v)));
        takeBack.run();
        Visit.getEntityManager().flush();
        before.forEach((visit, then) -> note(visit, lost(then, found(visit))));
        visits.undecide(takenBack.client.id);
        renewal.ofClient(takenBack.client.id);
    }

    /** By rule, the heavier of what the visit's own answers make and what stands from other visits. */
    private Map<String, Finding> found(Visit visit) {
        Assessment now = assessments.of(visit, intake.said(visit));
        return Stream
            .concat(now.findings().stream(),
                earlier.of(visit, now).stream().map(EarlierFindings.Earlier::finding))
            .collect(Collectors.toMap(Finding::ruleId, finding -> finding,
                (a, b) -> a.weight().compareTo(b.weight()) >= 0 ? a : b, LinkedHashMap::new));
    }

    static Lost lost(Map<String, Finding> before, Map<String, Finding> after) {
        Map<String, Weight> byStep = new LinkedHashMap<>();
        Set<String> questions = new TreeSet<>();
        before.forEach((rule, then) -> {
            Map<String, Weight> now = Optional.ofNullable(after.get(rule)).map(Finding::byStep).orElse(Map.of());
            then.byStep().forEach((step, weight) -> {
                if (weight.compareTo(now.getOrDefault(step, Weight.NOTHING_FOUND)) > 0) {
                    byStep.merge(step, weight, Weight::heavier);
                    questions.addAll(then.causes());
                }
            });
        });
        return new Lost(byStep, questions);
    }

    private void note(Visit visit, Lost lost) {
        if (!lost.byStep().isEmpty()) {
            var whole = new Lost(lost.byStep(), withOpeners(lost.questions()));
            new StoodBefore(visit, clock.instant(), sealed.sealing(visit.client.id, whole)).persist();
            ledger.note("server", "to be asked anew", visit.id.toString());
        }
    }

    /** With the questions that open them: today's "no" there may be why they are not put. */
    private Set<String> withOpeners(Set<String> questions) {
        Set<String> all = new TreeSet<>();
        Deque<String> open = new ArrayDeque<>(questions);
        while (!open.isEmpty()) {
            String id = open.remove();
            if (all.add(id)) {
                knowledge.questionnaire().question(id).ifPresent(question -> {
                    open.addAll(question.when().keySet());
                    open.addAll(question.put().orWhen().keySet());
                });
            }
        }
        return all;
    }

    /** What still weighs so on these services; nothing found once the client was asked anew and has signed. */
    public Weight on(Visit visit, Collection<Service> services) {
        List<Mark> open = open(visit);
        return Weight.heaviest(services.stream().flatMap(service -> service.steps().stream()).map(Step::id)
            .flatMap(step -> open.stream()
                .map(mark -> mark.lost().byStep().getOrDefault(step, Weight.NOTHING_FOUND)))
            .toList());
    }

    /** Whether something still weighs that the client has to be asked about anew. */
    public boolean isOpen(Visit visit) {
        return !open(visit).isEmpty();
    }

    /** Whether something was taken back at this moment or later: what was signed then has to be signed anew. */
    public boolean since(Visit visit, Instant signed) {
        return StoodBefore.of(visit).stream().anyMatch(mark -> !mark.takenBackAt().isBefore(signed));
    }

    /** Whether that question was last asked before something it decided was taken back. */
    boolean isOvertaken(Visit visit, String question, Instant asked) {
        return marks(visit).anyMatch(mark -> overtaken(mark, question, asked));
    }

    private static boolean overtaken(Mark mark, String question, Instant asked) {
        return mark.lost().questions().contains(question) && !asked.isAfter(mark.at());
    }

    private List<Mark> open(Visit visit) {
        return StoodBefore.of(visit).isEmpty() ? List.of() : open(visit, intake.askedAt(visit), put(visit));
    }

    private List<Mark> open(Visit visit, Map<String, Instant> asked, Set<String> put) {
        return marks(visit).filter(mark -> visit.signed().filter(mark.at()::isBefore).isEmpty()
            || put.stream().anyMatch(question -> overtaken(mark, question, asked.getOrDefault(question, Instant.MIN))))
            .toList();
    }

    private Set<String> put(Visit visit) {
        Answers said = intake.said(visit);
        return intake.topics(visit, said).stream().flatMap(topic -> intake.put(visit, topic, said).stream())
            .map(Question::id).collect(Collectors.toSet());
    }

    private Stream<Mark> marks(Visit visit) {
        return StoodBefore.of(visit).stream()
            .map(row -> new Mark(row.takenBackAt(), sealed.open(row, Lost.class)));
    }
}
