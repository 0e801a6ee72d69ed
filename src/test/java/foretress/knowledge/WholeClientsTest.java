package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Assessment;
import foretress.assessment.Assessor;
import foretress.assessment.FactDef;
import foretress.assessment.FactFinder;
import foretress.assessment.FactValue;
import foretress.assessment.Facts;
import foretress.assessment.RecentReadings;
import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.Standing;
import foretress.assessment.TestFact;
import foretress.assessment.Weight;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.Question.Status;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.LongAdder;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * Laws that hold for every client, tried on random whole ones: from answers over facts to standings. The laws of each rule are
 * tried exhaustively elsewhere; this is whether it all fits together. {@code -Dclients=1000000} tries more.
 */
@Execution(ExecutionMode.CONCURRENT)
class WholeClientsTest {
    private static final int CLIENTS = Integer.getInteger("clients", 5_000);
    private static final LocalDate TODAY = RandomClients.TODAY;
    private static final Set<String> METAL_MUST_NOT_MEET = Set.of("peroxide", "thio", "hydroxide", "remover");
    private static final TestFact POSITIVE =
        TestFact.sound("incompatibility-test", "positive", TODAY.minusDays(3), TODAY.minusDays(2));

    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final FactFinder FACTS =
        new FactFinder(KNOWLEDGE.ruleSet(),
            new RecentReadings(new KnownWords(KNOWLEDGE.labels(), KNOWLEDGE.medicines())));
    private static final BaseClient BASE = new BaseClient(KNOWLEDGE);
    private static final List<Question> UNSURE =
        KNOWLEDGE.questionnaire().questions().stream().filter(Question::unsure).toList();
    private static final List<String> NOES = List.of("no", "never", "none");
    private static final Map<Kind, Answer> LISTS =
        Map.of(Kind.HAIR_LENGTH, new Answer.Length(BaseClient.LENGTH_CM, true),
            Kind.TREATMENTS, new Answer.Treatments(List.of()), Kind.MEDICINES, new Answer.Medicines(List.of()));
    private static final LongAdder ASSESSED = new LongAdder();

    @Test
    void notKnowingIsNeverLighterThanNo() {
        var telling = new LongAdder();
        everyClient(number -> {
            var invented = new RandomClients(number);
            WholeClient client = invented.almostWell();
            Question question = invented.pick(UNSURE);
            Weight no = standing(client, complete(client.answers().without(question.id()), client.service()));
            Weight unsure =
                standing(client, complete(client.answers().with(question.id(), Answer.DONT_KNOW), client.service()));
            telling.add(no.compareTo(unsure) < 0 ? 1 : 0);
            holds(!hasANo(question) || unsure.atLeast(no), question.id() + " not known", client);
        });
        assertThat(telling.sum()).as("clients for whom it makes a difference").isGreaterThan(CLIENTS / 50);
    }

    @Test
    void notAnsweringIsNeverLighterThanNoAndNeverNothingFound() {
        everyClient(number -> {
            var invented = new RandomClients(number);
            WholeClient client = invented.almostWell();
            Answers whole = complete(client.answers(), client.service());
            List<Question> put = put(whole, client.service()).stream().filter(Question::required).toList();
            if (!put.isEmpty()) {
                Question question = invented.pick(put);
                Answers no = complete(whole.without(question.id()), client.service());
                Standing silent = booked(client, no.without(question.id()));
                holds(!hasANo(question) || silent.weight().atLeast(standing(client, no)),
                    question.id() + " not answered", client);
                holds(!(silent.nothingFound() && read(question)),
                    question.id() + " not answered reads as nothing found", client);
            }
        });
    }

    /** Laid down in the EU's label warning: whoever reacted to hair colour or a black tattoo is not to be coloured, so nor tested. */
    @Test
    void nobodyWhoSurelyReactedIsSentToASkinTest() {
        var reacted = new LongAdder();
        everyClient(number -> {
            WholeClient client = new RandomClients(number).client();
            Assessment assessment = assess(client, client.answers());
            boolean surely = surely(assessment, "colour-reaction", "delayed") || surely(assessment, "tattoo", "reacted")
                || surely(assessment, "dye-allergy", "confirmed");
            reacted.add(surely ? 1 : 0);
            holds(!(surely && demands(assessment, client.service()).contains("skin-test")), "sent to a skin test",
                client);
        });
        assertThat(reacted.sum()).as("clients who reacted").isGreaterThan(CLIENTS / 10);
    }

    @Test
    void metalThatMayBeThereAndWhatItMustNotMeetAlwaysDemandATestAndAPositiveOnePrevents() {
        var met = new LongAdder();
        everyClient(number -> {
            WholeClient client = new RandomClients(number).client();
            if (client.service().chemistries().stream().noneMatch(METAL_MUST_NOT_MEET::contains)) {
                return;
            }
            Assessment assessment = assess(client, client.answers());
            FactValue metal = assessment.facts().get("metal");
            if (assessment.facts().get("metal-test").worstClass().equals("not-done")
                && metal.worst() == metal.classes().size() - 1) {
                met.increment();
                holds(demands(assessment, client.service()).contains("incompatibility-test"),
                    "no metal test is asked for", client);
                holds(assessment.standings().get(0).weight().atLeast(Weight.TEST_FIRST), "lighter than a test first",
                    client);
            }
            holds(standing(client.tested(POSITIVE), client.answers()) == Weight.PREVENTS,
                "a positive metal test does not prevent", client);
        });
        assertThat(met.sum()).as("clients with metal").isGreaterThan(CLIENTS / 10);
    }

    @Test
    void theSameClientIsAlwaysAssessedAlikeAndEveryFactIsFound() {
        List<FactDef> known = KNOWLEDGE.ruleSet().facts().stream().filter(WholeClientsTest::alwaysKnown).toList();
        everyClient(number -> {
            WholeClient client = new RandomClients(number).client();
            Assessment assessment = assess(client, client.answers());
            holds(number % 10 > 0 || assess(client, client.answers()).equals(assessment), "not assessed alike", client);
            holds(assessment.facts().byId().values().stream().allMatch(value -> value.fault().isEmpty()),
                "a fact could not be found", client);
            holds(known.stream().allMatch(def -> assessment.facts().get(def.id()).isKnown()),
                "what staff recorded is not known", client);
            holds(assessment.findings().stream().noneMatch(f -> f.weight() == Weight.COULD_NOT_BE_ASSESSED),
                "could not be assessed", client);
        });
    }

    @AfterAll
    static void coverage() {
        System.out.printf("whole clients: %,d for each of 5 laws, %,d assessments from answers to standing%n", CLIENTS,
            ASSESSED.sum());
    }

    private static void everyClient(IntConsumer law) {
        IntStream.range(0, CLIENTS).parallel().forEach(law);
    }

    private static void holds(boolean law, String otherwise, WholeClient client) {
        if (!law) {
            throw new AssertionError(otherwise + ": " + client);
        }
    }

    /** As the base client completes answers; where a plain no is offered, without asking what weighs least. */
    private static Answers complete(Answers given, Service service) {
        Answers answers = given;
        for (Question question : KNOWLEDGE.questionnaire().questions()) {
            boolean put = answers.to(question.id()).isEmpty()
                && KNOWLEDGE.questionnaire().status(question, service.chemistries(), answers) == Status.ASKED;
            if (put && question.options().stream().noneMatch(NOES::contains) && choice(question)) {
                return BASE.complete(answers, service.chemistries(), Set.of());
            }
            if (put && LISTS.containsKey(question.kind())) {
                answers = answers.with(question.id(), LISTS.get(question.kind()));
            }
            Optional<String> no =
                put ? question.options().stream().filter(NOES::contains).findFirst() : Optional.empty();
            answers = no.isPresent() ? answers.with(question.id(), Answer.Chosen.of(no.get())) : answers;
        }
        return answers;
    }

    /** A question that asks what it was, once something was or may have been, can be answered with nothing that means no. */
    private static boolean hasANo(Question question) {
        return LISTS.containsKey(question.kind()) || question.options().stream().anyMatch(NOES::contains);
    }

    private static boolean choice(Question question) {
        return question.kind() == Kind.ONE_OF || question.kind() == Kind.SEVERAL_OF;
    }

    private static List<Question> put(Answers answers, Service service) {
        return KNOWLEDGE.questionnaire().topics().stream()
            .flatMap(topic -> KNOWLEDGE.questionnaire().put(topic, service.chemistries(), answers).stream()).toList();
    }

    /** Whether a fact of any rule hangs on it; what only the record keeps cannot hide a finding. */
    private static boolean read(Question question) {
        return !question.recordOnly() && question.kind() != Kind.HAIR_LENGTH;
    }

    private static Assessment assess(WholeClient client, Answers answers) {
        ASSESSED.increment();
        Optional<Integer> length = answers.byQuestion().values().stream().filter(Answer.Length.class::isInstance)
            .map(a -> ((Answer.Length) a).lengthCm()).findFirst().filter(cm -> client.measured());
        var situation = new Situation(TODAY, TODAY, client.born(), client.service().chemistries(),
            KNOWLEDGE.questionnaire(), answers,
            KNOWLEDGE.policy("uk"), client.tests(), length);
        Facts facts = FACTS.find(situation);
        return Assessor.assess(KNOWLEDGE.ruleSet(), facts, List.of(client.service()));
    }

    private static Standing booked(WholeClient client, Answers answers) {
        return assess(client, answers).standings().get(0);
    }

    static Weight standing(WholeClient client, Answers answers) {
        return booked(client, answers).weight();
    }

    private static Set<String> demands(Assessment assessment, Service service) {
        Set<String> demands = new HashSet<>();
        assessment.on(service).forEach(finding -> demands.addAll(finding.demands()));
        return demands;
    }

    /** The laws are proved for single classes of these, so a range must never come out. */
    private static boolean alwaysKnown(FactDef def) {
        return def.rows().isEmpty()
            && def.isAlwaysKnown();
    }

    private static boolean surely(Assessment assessment, String fact, String atLeast) {
        FactValue value = assessment.facts().get(fact);
        return value.best() >= value.classes().indexOf(atLeast);
    }
}
