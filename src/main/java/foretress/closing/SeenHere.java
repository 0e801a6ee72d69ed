package foretress.closing;

import foretress.assessment.Afterwards.Reaction;
import foretress.assessment.RuleSet;
import foretress.assessment.Step;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Questionnaire;
import foretress.questionnaire.SaidDate;
import foretress.questionnaire.SaidTreatment;
import foretress.told.Showed;
import foretress.visit.Booked;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What staff saw go wrong at a service, or the client told of it later, in the codes of the questionnaire: so every rule about a reaction
 * weighs it, and none has to be written twice. Where it could be one product or another, it is both.
 */
final class SeenHere {
    private final Questionnaire questionnaire;
    private final RuleSet rules;

    SeenHere(Questionnaire questionnaire, RuleSet rules) {
        this.questionnaire = questionnaire;
        this.rules = rules;
    }

    /**
     * @param day of the service
     * @param today when it is looked back at
     * @return one for each reaction as it could be told
     */
    List<Answers> reactions(Closing closing, LocalDate day, LocalDate today) {
        List<String> signs = closing.wrong().kinds().stream().flatMap(mishap -> mishap.asTold().stream()).toList();
        return signs.isEmpty() ? List.of() : reactions(steps(closing), signs, closing.wrong().when(), day, today);
    }

    /**
     * The same of what was told otherwise.
     *
     * @param steps what may have caused it
     * @param signs in the codes of the questionnaire
     * @param when empty where it is not known
     */
    List<Answers> reactions(List<Step> steps, List<String> signs, Optional<Showed> when, LocalDate day,
        LocalDate today) {
        return steps.stream().flatMap(step -> step.afterwards().reaction().stream())
            .map(how -> told(how, signs, when, day, today)).distinct().toList();
    }

    List<Step> steps(Closing closing) {
        return closing.done().stream().map(Booked::stepIds).flatMap(List::stream).distinct()
            .flatMap(step -> rules.step(step).stream()).toList();
    }

    /** Hair that broke, as it is told of hair that breaks. It stays so until somebody has looked again: the visit after decides. */
    static Optional<Answers> breakage(Closing closing) {
        return happened(closing, Mishap.BREAKAGE)
            ? Optional.of(Answers.NONE.with("hair-state", Answer.Chosen.of("breaks"))) : Optional.empty();
    }

    /** Heat or smoke where peroxide met the hair: something is in it that nobody had told of. */
    static Optional<Answers> heat(Closing closing, LocalDate day) {
        var unknown = new SaidTreatment(SaidTreatment.DONT_KNOW, new SaidDate.OnDay(day), "whole",
            SaidTreatment.DONT_KNOW, SaidTreatment.ONCE);
        return happened(closing, Mishap.HEAT)
            ? Optional.of(Answers.NONE.with("treatments", new Answer.Treatments(List.of(unknown)))) : Optional.empty();
    }

    private static boolean happened(Closing closing, Mishap what) {
        return closing.wrong().kinds().stream().anyMatch(what::equals);
    }

    private Answers told(Reaction how, List<String> signs, Optional<Showed> when, LocalDate day,
        LocalDate today) {
        String gate = how.question();
        Answers told = Answers.NONE.with(gate, Answer.Chosen.of("yes"))
            .with(gate + "-what", new Answer.Chosen(offered(gate + "-what", signs)))
            .with(gate + "-soon",
                when.<Answer>map(at -> Answer.Chosen.of(at.code())).orElse(Answer.DONT_KNOW));
        Answers which = how.which().map(answer -> told.with(gate + "-which", Answer.Chosen.of(answer))).orElse(told);
        String ago =
            today.isAfter(day.plusMonths(3)) ? today.isAfter(day.plusYears(1)) ? "longer" : "year" : "three-months";
        return questionnaire.question(gate + "-ago").isPresent() ? which.with(gate + "-ago", Answer.Chosen.of(ago))
            : which;
    }

    /** A sign the question does not offer is "something else" there, which weighs as a reaction. */
    private List<String> offered(String question, List<String> signs) {
        Set<String> options = Set.copyOf(questionnaire.question(question).map(Question::options).orElse(List.of()));
        List<String> codes = new ArrayList<>();
        signs.forEach(sign -> codes.add(options.contains(sign) ? sign : "other"));
        return codes.stream().distinct().toList();
    }
}
