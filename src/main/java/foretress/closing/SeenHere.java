package foretress.closing;

import foretress.closing.Closing.Wrong;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Questionnaire;
import foretress.questionnaire.SaidDate;
import foretress.questionnaire.Treatment;
import foretress.visit.Booked;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What staff saw go wrong at a service, in the codes in which a client would tell it: so every rule about a reaction weighs it, and none
 * has to be written twice. Where it could be one product or another, it is both.
 */
final class SeenHere {
    private static final Map<String, String> SKIN = Map.of("sting", "sting-rinsed", "sore", "sore", "itch", "itch-after", "swelling", "swelling",
        "blisters", "blisters", "hives", "hives", "breathing", "breathing", "unwell", "faint", "skin", "other");
    private static final Map<String, String> GATES = Map.ofEntries(
        Map.entry("lighten", "bleach-reaction"), Map.entry("lighten-regrowth", "bleach-reaction"), Map.entry("remove-colour", "bleach-reaction"),
        Map.entry("tone", "colour-reaction"), Map.entry("colour", "colour-reaction"), Map.entry("colour-demi", "colour-reaction"),
        Map.entry("colour-direct", "colour-reaction"), Map.entry("colour-wash-out", "colour-reaction"), Map.entry("plant-colour", "colour-reaction"),
        Map.entry("tint-lash", "tint-reaction"), Map.entry("perm-alkaline", "perm-reaction"), Map.entry("perm-acid", "perm-reaction"),
        Map.entry("straighten-thio", "perm-reaction"), Map.entry("relax", "perm-reaction"), Map.entry("relax-regrowth", "perm-reaction"),
        Map.entry("straighten-keratin", "perm-reaction"));
    private static final Map<String, String> WHICH = Map.of("relax", "relaxer", "relax-regrowth", "relaxer", "straighten-keratin", "smoothing");

    private final Questionnaire questionnaire;

    SeenHere(Questionnaire questionnaire) {
        this.questionnaire = questionnaire;
    }

    /**
     * @param day of the service
     * @param today when it is looked back at
     * @return one for each reaction as it could be told
     */
    List<Answers> reactions(Closing closing, LocalDate day, LocalDate today) {
        List<String> signs = closing.wrong().kinds().stream().filter(SKIN::containsKey).map(SKIN::get).toList();
        return signs.isEmpty() ? List.of() : steps(closing).filter(GATES::containsKey).map(step -> told(step, signs, closing.wrong(), day, today)).distinct().toList();
    }

    /** Hair that broke, as it is told of hair that breaks. It stays so until somebody has looked again: the visit after decides. */
    static Optional<Answers> breakage(Closing closing) {
        return closing.wrong().kinds().contains("breakage") ? Optional.of(Answers.NONE.with("hair-state", Answer.Chosen.of("breaks"))) : Optional.empty();
    }

    /** Heat or smoke where peroxide met the hair: something is in it that nobody had told of. */
    static Optional<Answers> heat(Closing closing, LocalDate day) {
        Treatment unknown = new Treatment(Treatment.DONT_KNOW, new SaidDate.OnDay(day), "whole", Treatment.DONT_KNOW, Treatment.ONCE);
        return closing.wrong().kinds().contains("heat") ? Optional.of(Answers.NONE.with("treatments", new Answer.Treatments(List.of(unknown)))) : Optional.empty();
    }

    private static Stream<String> steps(Closing closing) {
        return closing.done().stream().map(Booked::stepIds).flatMap(List::stream).distinct();
    }

    private Answers told(String step, List<String> signs, Wrong wrong, LocalDate day, LocalDate today) {
        String gate = GATES.get(step);
        Answers told = Answers.NONE.with(gate, Answer.Chosen.of("yes")).with(gate + "-what", new Answer.Chosen(offered(gate + "-what", signs)))
            .with(gate + "-soon", Wrong.WHEN.contains(wrong.when()) ? Answer.Chosen.of(wrong.when()) : Answer.DONT_KNOW);
        if (gate.equals("perm-reaction")) {
            told = told.with("perm-reaction-which", Answer.Chosen.of(WHICH.getOrDefault(step, "perm")));
        }
        String ago = today.isAfter(day.plusMonths(3)) ? today.isAfter(day.plusYears(1)) ? "longer" : "year" : "three-months";
        return questionnaire.question(gate + "-ago").isPresent() ? told.with(gate + "-ago", Answer.Chosen.of(ago)) : told;
    }

    /** A sign the question does not offer is "something else" there, which weighs as a reaction. */
    private List<String> offered(String question, List<String> signs) {
        Set<String> options = Set.copyOf(questionnaire.question(question).map(Question::options).orElse(List.of()));
        List<String> codes = new ArrayList<>();
        signs.forEach(sign -> codes.add(options.contains(sign) ? sign : "other"));
        return codes.stream().distinct().toList();
    }
}
