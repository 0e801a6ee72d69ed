package foretress.knowledge;

import foretress.assessment.Service;
import foretress.assessment.TestFact;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Medicine;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Status;
import foretress.questionnaire.SaidDate;
import foretress.questionnaire.SaidTreatment;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Clients at random; the same number always gives the same client, whichever thread asks. */
final class RandomClients {
    static final LocalDate TODAY = LocalDate.of(2026, 6, 10);
    private static final long SEED = 20261124L;
    private static final List<String> TYPED =
        List.of("prednisolone", "cetirizine", "methotrexate", "isotretinoin", "sulfamethoxazole", "nothing I know");
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;

    private final Random random;

    RandomClients(int number) {
        random = new Random(SEED * 31 + number * 0x9E3779B97F4A7C15L);
    }

    /** Somebody with little to say: heavy findings of other answers would hide what one answer does. */
    WholeClient almostWell() {
        WholeClient any = client();
        Answers few = Answers.NONE;
        for (String question : any.answers().byQuestion().keySet().stream().sorted().toList()) {
            few = random.nextInt(12) == 0 ? few.with(question, any.answers().to(question).orElseThrow()) : few;
        }
        return new WholeClient(any.service(), few, any.tests(), true, Optional.of(TODAY.minusYears(40)));
    }

    WholeClient client() {
        Service service = pick(KNOWLEDGE.ruleSet().services());
        Answers answers = Answers.NONE;
        for (Question question : KNOWLEDGE.questionnaire().questions()) {
            boolean put = KNOWLEDGE.questionnaire().status(question, service.chemistries(), answers) == Status.ASKED;
            Optional<Answer> said = put && random.nextInt(20) > 0 ? answer(question) : Optional.empty();
            answers = said.isPresent() ? answers.with(question.id(), said.get()) : answers;
        }
        Optional<LocalDate> born =
            random.nextInt(10) == 0 ? Optional.empty() : Optional.of(TODAY.minusYears(12 + random.nextInt(60)));
        return new WholeClient(service, answers, tests(), random.nextBoolean(), born);
    }

    Optional<Answer> answer(Question question) {
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
            case INGREDIENTS -> Optional.of(new Answer.Text(
                pick(List.of("aqua, glycerin", "p-phenylenediamine", "lead acetate, aqua", "gibberish"))));
            case NOTE -> Optional.empty();
        };
    }

    private List<String> several(List<String> options) {
        List<String> chosen =
            options.stream().filter(code -> !code.equals(Question.NONE) && random.nextInt(4) == 0).toList();
        return chosen.isEmpty() ? List.of(options.contains(Question.NONE) ? Question.NONE : options.get(0)) : chosen;
    }

    private List<SaidTreatment> treatments(Question question) {
        List<SaidTreatment> list = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            list.add(new SaidTreatment(pick(question.options()), date(),
                pick(List.of("whole", "regrowth", "ends", "dont-know")), "home",
                pick(List.of("once", "regularly")), pick(SaidTreatment.EVERY), date()));
        }
        return list;
    }

    private List<Medicine> medicines() {
        return random.nextInt(3) > 0 ? List.of()
            : List.of(new Medicine(pick(TYPED), pick(List.of("low", "high", "dont-know")),
                pick(List.of("mouth", "skin")), pick(List.of("now", "longer"))));
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
            TestFact.sound("incompatibility-test", pick(List.of("slight-lightening", "nothing-happened", "not-whole")),
                TODAY.minusDays(5), TODAY.minusDays(4)));
    }

    /** Once in so many times. */
    boolean chance(int in) {
        return random.nextInt(in) == 0;
    }

    <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }
}
