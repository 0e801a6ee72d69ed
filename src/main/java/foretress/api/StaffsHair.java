package foretress.api;

import foretress.assessment.Situation;
import foretress.hair.Cut;
import foretress.hair.Growth;
import foretress.questionnaire.SaidTreatment;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What staff know of the hair beyond what the client says: how long it is, cuts, how fast it grows, what was done here. */
record StaffsHair(
    @Json(most = LONGEST_CM,
        says = "The longest hair as staff measured it, drawn straight. It outranks what the client said.") Optional<Integer> measuredLengthCm,
    @Json(most = 60,
        says = "Cuts to a length that staff recorded. What a client remembers of one shortens nothing.") Optional<List<CutTo>> cuts,
    @Json(
        says = "The band of new growth under a colour whose day is known, as staff measured it; under eight weeks it tells nothing.") Optional<Band> growth,
    @Json(most = CodedAnswers.MOST_ENTRIES,
        says = "Treatments the salon did itself, in the form of a client's, whatever the client lists.") Optional<List<CodedTreatment>> doneHere) {
    private static final int LONGEST_CM = 200;

    @Json(name = "Cut")
    record CutTo(LocalDate day, @Json(most = LONGEST_CM) double toCm) {}

    @Json(name = "MeasuredGrowth")
    record Band(@Json(most = LONGEST_CM) double newGrowthCm, LocalDate coloured, LocalDate read) {}

    Situation known(Situation said, Faults faults) {
        LocalDate today = said.today();
        List<SaidTreatment> done =
            doneHere.map(list -> CodedAnswers.treatments(list, "/doneHere", today, faults)).orElse(List.of());
        return new Situation(today, said.serviceDay(), said.birthDate(), said.bookedChemistries(), said.questionnaire(),
            said.answers(), said.policy(), said.tests(), new Situation.OnFile(measuredLengthCm, cuts(today, faults),
                growth.map(band -> growth(band, today, faults)).orElse(Growth.PUBLISHED), done),
            List.of());
    }

    private List<Cut> cuts(LocalDate today, Faults faults) {
        List<CutTo> list = cuts.orElse(List.of());
        for (int i = 0; i < list.size(); i++) {
            faults.expect(!list.get(i).day().isAfter(today), "/cuts/%d/day".formatted(i),
                "this lies after the day on which the answers are read, %s", today);
        }
        return list.stream().map(cut -> new Cut(cut.day(), cut.toCm())).toList();
    }

    private static Growth growth(Band band, LocalDate today, Faults faults) {
        boolean inOrder = band.coloured().isBefore(band.read()) && !band.read().isAfter(today);
        faults.expect(inOrder, "/growth/read", "it is read after the colour and not after %s", today);
        faults.expect(!inOrder || Growth.plausible(band.newGrowthCm(), band.coloured(), band.read()),
            "/growth/newGrowthCm", "no hair grows so fast or so slowly: published are %s to %s cm a month",
            Growth.SLOW, Growth.FAST);
        return inOrder ? Growth.measured(band.newGrowthCm(), band.coloured(), band.read()) : Growth.PUBLISHED;
    }
}
