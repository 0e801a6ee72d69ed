package foretress.assessment;

import foretress.questionnaire.Answers;
import foretress.questionnaire.Questionnaire;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * All that is known about one client before one visit.
 *
 * @param today the day the answers are read, in the salon's zone
 * @param serviceDay the day of the visit, in the salon's zone
 * @param bookedChemistries of the booked steps
 * @param measuredLengthCm the longest hair as staff measured it, drawn straight, in cm
 */
public record Situation(LocalDate today, LocalDate serviceDay, Optional<LocalDate> birthDate, Set<String> bookedChemistries,
                        Questionnaire questionnaire, Answers answers, Policy policy, List<TestFact> tests,
                        Optional<Integer> measuredLengthCm) {
    public Situation {
        bookedChemistries = Set.copyOf(bookedChemistries);
        tests = List.copyOf(tests);
    }

    /** The visit is today and staff have not measured the hair. */
    public Situation(LocalDate today, Optional<LocalDate> birthDate, Set<String> bookedChemistries, Questionnaire questionnaire,
                     Answers answers, Policy policy, List<TestFact> tests) {
        this(today, today, birthDate, bookedChemistries, questionnaire, answers, policy, tests, Optional.empty());
    }

    /** The same with other answers. */
    public Situation saying(Answers other) {
        return new Situation(today, serviceDay, birthDate, bookedChemistries, questionnaire, other, policy, tests, measuredLengthCm);
    }
}
