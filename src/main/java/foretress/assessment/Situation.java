package foretress.assessment;

import foretress.hair.Cut;
import foretress.hair.Growth;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Questionnaire;
import foretress.questionnaire.SaidTreatment;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * All that is known about one client before one visit.
 *
 * @param today the day the answers are read, in the salon's zone
 * @param serviceDay the day of the visit, in the salon's zone
 * @param bookedChemistries of the booked steps
 * @param hair what the salon itself knows of it
 * @param lookedUp medicines that staff have looked up, for every client
 */
public record Situation(LocalDate today, LocalDate serviceDay, Optional<LocalDate> birthDate,
    Set<String> bookedChemistries,
    Questionnaire questionnaire, Answers answers, Policy policy, List<TestFact> tests,
    OnFile hair, List<LookedUp> lookedUp) {
    public Situation {
        bookedChemistries = Set.copyOf(bookedChemistries);
        tests = List.copyOf(tests);
        lookedUp = List.copyOf(lookedUp);
    }

    /**
     * What the salon itself knows of the hair.
     *
     * @param measuredLengthCm the longest hair as staff measured it, drawn straight, in cm
     * @param cuts cuts to a length that staff recorded; what a client remembers of one shortens nothing
     * @param growth how fast this client's hair grows; {@link Growth#PUBLISHED} unless staff measured the band under a dated colour
     * @param known treatments the salon did itself and has on the record card, whatever the client lists
     */
    public record OnFile(Optional<Integer> measuredLengthCm, List<Cut> cuts, Growth growth,
        List<SaidTreatment> known) {
        public OnFile {
            cuts = List.copyOf(cuts);
            known = List.copyOf(known);
        }

        /** Nothing was done here before, no cut is on record and nobody measured how fast the hair grows. */
        public static OnFile measured(Optional<Integer> lengthCm) {
            return new OnFile(lengthCm, List.of(), Growth.PUBLISHED, List.of());
        }
    }

    public Optional<Integer> measuredLengthCm() {
        return hair.measuredLengthCm();
    }

    public List<Cut> cuts() {
        return hair.cuts();
    }

    public Growth growth() {
        return hair.growth();
    }

    public List<SaidTreatment> known() {
        return hair.known();
    }

    /** Nothing was done here before, no cut is on record and nobody measured how fast the hair grows. */
    public Situation(LocalDate today, LocalDate serviceDay, Optional<LocalDate> birthDate,
        Set<String> bookedChemistries,
        Questionnaire questionnaire, Answers answers, Policy policy, List<TestFact> tests,
        Optional<Integer> measuredLengthCm) {
        this(today, serviceDay, birthDate, bookedChemistries, questionnaire, answers, policy, tests,
            OnFile.measured(measuredLengthCm), List.of());
    }

    /** The visit is today and staff have not measured the hair. */
    public Situation(LocalDate today, Optional<LocalDate> birthDate, Set<String> bookedChemistries,
        Questionnaire questionnaire,
        Answers answers, Policy policy, List<TestFact> tests) {
        this(today, today, birthDate, bookedChemistries, questionnaire, answers, policy, tests, Optional.empty());
    }

    /**
     * The same seen from another day.
     *
     * @param said the day the answers were given, from which "two years ago" counts
     * @param seen the day for which the hair is looked at
     */
    public Situation seenOn(LocalDate said, LocalDate seen) {
        return new Situation(said, seen, birthDate, bookedChemistries, questionnaire, answers, policy, tests,
            hair, lookedUp);
    }

    /** The same with these treatments known to the salon. */
    public Situation knowing(List<SaidTreatment> done) {
        return new Situation(today, serviceDay, birthDate, bookedChemistries, questionnaire, answers, policy, tests,
            new OnFile(hair.measuredLengthCm(), hair.cuts(), hair.growth(), done), lookedUp);
    }

    /** The same with other answers. */
    public Situation saying(Answers other) {
        return new Situation(today, serviceDay, birthDate, bookedChemistries, questionnaire, other, policy, tests,
            hair, lookedUp);
    }

    /** The same with these tests beside those that were made. */
    public Situation tested(List<TestFact> more) {
        return tested(Stream.concat(tests.stream(), more.stream()).toList(), measuredLengthCm());
    }

    /** The same with other tests and another measured length. */
    public Situation tested(List<TestFact> other, Optional<Integer> lengthCm) {
        return new Situation(today, serviceDay, birthDate, bookedChemistries, questionnaire, answers, policy, other,
            new OnFile(lengthCm, hair.cuts(), hair.growth(), hair.known()), lookedUp);
    }

    /** The same with cuts that staff recorded. */
    public Situation cut(List<Cut> recorded) {
        return new Situation(today, serviceDay, birthDate, bookedChemistries, questionnaire, answers, policy, tests,
            new OnFile(hair.measuredLengthCm(), recorded, hair.growth(), hair.known()), lookedUp);
    }

    /** The same with a measured growth. */
    public Situation growing(Growth measured) {
        return new Situation(today, serviceDay, birthDate, bookedChemistries, questionnaire, answers, policy, tests,
            new OnFile(hair.measuredLengthCm(), hair.cuts(), measured, hair.known()), lookedUp);
    }

    /** The same with medicines that staff have looked up. */
    public Situation lookingUp(List<LookedUp> names) {
        return new Situation(today, serviceDay, birthDate, bookedChemistries, questionnaire, answers, policy, tests,
            hair, names);
    }
}
