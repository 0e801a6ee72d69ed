package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Assessment;
import foretress.assessment.Assessor;
import foretress.assessment.Computations;
import foretress.assessment.FactDef;
import foretress.assessment.FactFinder;
import foretress.assessment.FactValue;
import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.Standing;
import foretress.assessment.TestFact;
import foretress.assessment.Weight;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Medicine;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.Question.Status;
import foretress.questionnaire.SaidDate;
import foretress.questionnaire.Treatment;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Laws that hold for every client, tried on random whole ones: from answers over facts to standings. The laws of each rule are
 * tried exhaustively elsewhere; this is whether it all fits together. {@code -Dclients=1000000} tries more.
 */
class WholeClientsTest {
    private static final int CLIENTS = Integer.getInteger("clients", 1_000);
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);
    private static final Set<String> METAL_MUST_NOT_MEET = Set.of("peroxide", "thio", "hydroxide", "remover");
    private static final List<String> TYPED = List.of("prednisolone", "cetirizine", "methotrexate", "isotretinoin", "sulfamethoxazole", "nothing I know");

    private static final Knowledge KNOWLEDGE = Knowledge.load();
    private static final FactFinder FACTS = KNOWLEDGE.factFinder();
    private static final BaseClient BASE = new BaseClient(KNOWLEDGE);

    private final Random random = new Random(20261124);

    @Test
    void notKnowingIsNeverLighterThanNo() {
        int telling = 0;
        for (int i = 0; i < CLIENTS; i++) {
            Client client = almostWell();
            Question question = pick(KNOWLEDGE.questionnaire().questions().stream().filter(Question::unsure).toList());
            Answers no = BASE.complete(client.answers.without(question.id()), client.service.chemistries(), Set.of());
            Answers unsure = BASE.complete(client.answers.with(question.id(), Answer.DONT_KNOW), client.service.chemistries(), Set.of());
            telling += standing(client, no).compareTo(standing(client, unsure)) < 0 ? 1 : 0;
            assertThat(standing(client, unsure)).as("%s not known, %s", question.id(), client).isGreaterThanOrEqualTo(standing(client, no));
        }
        assertThat(telling).as("clients for whom it makes a difference").isGreaterThan(CLIENTS / 50);
    }

    @Test
    void notAnsweringIsNeverLighterThanNoAndNeverNothingFound() {
        for (int i = 0; i < CLIENTS; i++) {
            Client client = almostWell();
            Answers whole = BASE.complete(client.answers, client.service.chemistries(), Set.of());
            List<Question> put = put(whole, client.service).stream().filter(Question::required).toList();
            if (put.isEmpty()) {
                continue;
            }
            Question question = pick(put);
            Answers no = BASE.complete(whole.without(question.id()), client.service.chemistries(), Set.of());
            Answers silent = no.without(question.id());
            assertThat(standing(client, silent)).as("%s not answered, %s", question.id(), client).isGreaterThanOrEqualTo(standing(client, no));
            assertThat(booked(client, silent).nothingFound() && read(question)).as("%s not answered, %s", question.id(), client).isFalse();
        }
    }

    /** Laid down in the EU's label warning: whoever reacted to hair colour or a black tattoo is not to be coloured, so nor tested. */
    @Test
    void nobodyWhoSurelyReactedIsSentToASkinTest() {
        int reacted = 0;
        for (int i = 0; i < CLIENTS; i++) {
            Client client = client();
            Assessment assessment = assess(client, client.answers);
            boolean surely = surely(assessment, "colour-reaction", "delayed") || surely(assessment, "tattoo", "reacted")
                || surely(assessment, "dye-allergy", "confirmed");
            reacted += surely ? 1 : 0;
            assertThat(surely && demands(assessment, client.service).contains("skin-test")).as(client.toString()).isFalse();
        }
        assertThat(reacted).as("clients who reacted").isGreaterThan(CLIENTS / 10);
    }

    @Test
    void metalThatMayBeThereAndWhatItMustNotMeetAlwaysDemandATest() {
        int met = 0;
        for (int i = 0; i < CLIENTS; i++) {
            Client client = client();
            Assessment assessment = assess(client, client.answers);
            FactValue metal = assessment.facts().get("metal");
            boolean meets = client.service.chemistries().stream().anyMatch(METAL_MUST_NOT_MEET::contains);
            boolean untested = assessment.facts().get("metal-test").worstClass().equals("not-done");
            if (meets && untested && metal.worst() == metal.classes().size() - 1) {
                met++;
                assertThat(demands(assessment, client.service)).as(client.toString()).contains("incompatibility-test");
                assertThat(booked(client, client.answers).weight()).as(client.toString()).isGreaterThanOrEqualTo(Weight.TEST_FIRST);
            }
        }
        assertThat(met).as("clients with metal").isGreaterThan(CLIENTS / 10);
    }

    @Test
    void aPositiveTestPreventsWhateverElseIsSaid() {
        for (int i = 0; i < CLIENTS; i++) {
            Client client = client();
            TestFact positive = TestFact.sound("incompatibility-test", "positive", TODAY.minusDays(3), TODAY.minusDays(2));
            Client tested = new Client(client.service, client.answers, List.of(positive), client.measured, client.born);
            if (client.service.chemistries().stream().anyMatch(METAL_MUST_NOT_MEET::contains)) {
                assertThat(booked(tested, tested.answers).weight()).as(tested.toString()).isEqualTo(Weight.PREVENTS);
            }
        }
    }

    @Test
    void theSameClientIsAlwaysAssessedAlikeAndEveryFactIsFound() {
        for (int i = 0; i < CLIENTS / 10; i++) {
            Client client = client();
            Assessment assessment = assess(client, client.answers);
            assertThat(assess(client, client.answers)).isEqualTo(assessment);
            assertThat(assessment.facts().byId().values()).as(client.toString()).allMatch(value -> value.fault().isEmpty());
            assertThat(KNOWLEDGE.ruleSet().facts()).filteredOn(WholeClientsTest::alwaysKnown)
                .allMatch(def -> assessment.facts().get(def.id()).isKnown());
            assertThat(assessment.findings()).extracting(Finding::weight).doesNotContain(Weight.COULD_NOT_BE_ASSESSED);
        }
    }

    private record Client(Service service, Answers answers, List<TestFact> tests, boolean measured, Optional<LocalDate> born) {}

    /** Somebody with little to say: heavy findings of other answers would hide what one answer does. */
    private Client almostWell() {
        Client any = client();
        Answers few = Answers.NONE;
        for (String question : any.answers.byQuestion().keySet().stream().sorted().toList()) {
            few = random.nextInt(12) == 0 ? few.with(question, any.answers.to(question).orElseThrow()) : few;
        }
        return new Client(any.service, few, any.tests, true, Optional.of(TODAY.minusYears(40)));
    }

    private Client client() {
        Service service = pick(KNOWLEDGE.ruleSet().services());
        Answers answers = Answers.NONE;
        for (Question question : KNOWLEDGE.questionnaire().questions()) {
            boolean put = KNOWLEDGE.questionnaire().status(question, service.chemistries(), answers) == Status.ASKED;
            Optional<Answer> said = put && random.nextInt(20) > 0 ? answer(question) : Optional.empty();
            answers = said.isPresent() ? answers.with(question.id(), said.get()) : answers;
        }
        Optional<LocalDate> born = random.nextInt(10) == 0 ? Optional.empty() : Optional.of(TODAY.minusYears(12 + random.nextInt(60)));
        return new Client(service, answers, tests(), random.nextBoolean(), born);
    }

    private Optional<Answer> answer(Question question) {
        if (question.unsure() && random.nextInt(8) == 0) {
            return Optional.of(Answer.DONT_KNOW);
        }
        return switch (question.kind()) {
            case ONE_OF -> Optional.of(Answer.Chosen.of(pick(question.options())));
            case SEVERAL_OF -> Optional.of(new Answer.Chosen(several(question.options())));
            case HAIR_LENGTH -> Optional.of(new Answer.Length(1 + random.nextInt(90), random.nextInt(4) > 0));
            case TREATMENTS -> Optional.of(new Answer.Treatments(treatments(question)));
            case MEDICINES -> Optional.of(new Answer.Medicines(medicines()));
            case SAID_DATE -> Optional.of(new Answer.Said(date()));
            case INGREDIENTS -> Optional.of(new Answer.Text(pick(List.of("aqua, glycerin", "p-phenylenediamine", "lead acetate, aqua", "gibberish"))));
            case NOTE -> Optional.empty();
        };
    }

    private List<String> several(List<String> options) {
        List<String> chosen = options.stream().filter(code -> !code.equals(Question.NONE) && random.nextInt(4) == 0).toList();
        return chosen.isEmpty() ? List.of(options.contains(Question.NONE) ? Question.NONE : options.get(0)) : chosen;
    }

    private List<Treatment> treatments(Question question) {
        List<Treatment> list = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            list.add(new Treatment(pick(question.options()), date(), pick(List.of("whole", "regrowth", "ends", "dont-know")), "home",
                pick(List.of("once", "regularly"))));
        }
        return list;
    }

    private List<Medicine> medicines() {
        return random.nextInt(3) > 0 ? List.of()
            : List.of(new Medicine(pick(TYPED), pick(List.of("low", "high", "dont-know")), pick(List.of("mouth", "skin")), pick(List.of("now", "longer"))));
    }

    private SaidDate date() {
        return switch (random.nextInt(3)) {
            case 0 -> new SaidDate.OnDay(TODAY.minusDays(random.nextInt(4000)));
            case 1 -> new SaidDate.YearsAgo(1, 3);
            default -> new SaidDate.NotKnown();
        };
    }

    private List<TestFact> tests() {
        return random.nextInt(3) > 0 ? List.of() : List.of(
            TestFact.sound("skin-test", pick(List.of("negative", "positive")), TODAY.minusDays(5), TODAY.minusDays(3)),
            TestFact.sound("incompatibility-test", pick(List.of("slight-lightening", "nothing-happened", "not-whole")), TODAY.minusDays(5), TODAY.minusDays(4)));
    }

    private <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    private static List<Question> put(Answers answers, Service service) {
        return KNOWLEDGE.questionnaire().topics().stream()
            .flatMap(topic -> KNOWLEDGE.questionnaire().put(topic, service.chemistries(), answers).stream()).toList();
    }

    /** Whether a fact of any rule hangs on it; what only the record keeps cannot hide a finding. */
    private static boolean read(Question question) {
        return !question.recordOnly() && question.kind() != Kind.HAIR_LENGTH;
    }

    private static Assessment assess(Client client, Answers answers) {
        Optional<Integer> length = answers.byQuestion().values().stream().filter(Answer.Length.class::isInstance)
            .map(a -> ((Answer.Length) a).lengthCm()).findFirst().filter(cm -> client.measured);
        Situation situation = new Situation(TODAY, TODAY, client.born, client.service.chemistries(), KNOWLEDGE.questionnaire(), answers,
            KNOWLEDGE.policy("uk"), client.tests, length);
        return Assessor.assess(KNOWLEDGE.ruleSet(), FACTS.find(situation), List.of(client.service));
    }

    private static Standing booked(Client client, Answers answers) {
        return assess(client, answers).standings().get(0);
    }

    private static Weight standing(Client client, Answers answers) {
        return booked(client, answers).weight();
    }

    private static List<String> demands(Assessment assessment, Service service) {
        return assessment.on(service).stream().flatMap(finding -> finding.demands().stream()).toList();
    }

    /** The laws are proved for single classes of these, so a range must never come out. */
    private static boolean alwaysKnown(FactDef def) {
        return def.rows().isEmpty() && def.computation().filter(how -> Computations.ALWAYS_KNOWN.contains(how.name())).isPresent();
    }

    private static boolean surely(Assessment assessment, String fact, String atLeast) {
        FactValue value = assessment.facts().get(fact);
        return value.best() >= value.classes().indexOf(atLeast);
    }
}
