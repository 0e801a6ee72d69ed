package foretress.api;

import com.fasterxml.jackson.databind.JsonNode;
import foretress.api.Shape.Fields;
import foretress.assessment.Situation;
import foretress.hair.Cut;
import foretress.hair.Growth;
import foretress.questionnaire.SaidTreatment;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What staff know of the hair beyond what the client says: how long it is, cuts, how fast it grows, what was done here. */
final class StaffsHair {
    private static final int MOST_CUTS = 60;
    private static final int LONGEST_CM = 200;

    private final CodedAnswers answers;

    StaffsHair(CodedAnswers answers) {
        this.answers = answers;
    }

    Fields shape(Fields others) {
        Shape cut = Shape.object().need("day", Times.day()).need("toCm", Shape.number(0, LONGEST_CM)).named("Cut");
        Shape growth = Shape.object().need("newGrowthCm", Shape.number(0, LONGEST_CM)).need("coloured", Times.day())
            .need("read", Times.day()).named("MeasuredGrowth");
        return others
            .may("measuredLengthCm",
                Shape.whole(0, LONGEST_CM)
                    .saying("The longest hair as staff measured it, drawn straight. It outranks what the client said."))
            .may("cuts",
                Shape.list(cut, 0, MOST_CUTS)
                    .saying("Cuts to a length that staff recorded. What a client remembers of one shortens nothing."))
            .may("growth", growth.saying(
                "The band of new growth under a colour whose day is known, as staff measured it; under eight weeks it tells nothing."))
            .may("doneHere", answers.treatments()
                .saying("Treatments the salon did itself, in the form of a client's, whatever the client lists."));
    }

    Situation known(Situation said, JsonNode body, Faults faults) {
        LocalDate today = said.today();
        List<SaidTreatment> done =
            body.has("doneHere") ? answers.treatments(body.get("doneHere"), "/doneHere", today, faults) : List.of();
        return new Situation(today, said.serviceDay(), said.birthDate(), said.bookedChemistries(), said.questionnaire(),
            said.answers(), said.policy(),
            said.tests(), length(body), cuts(body.path("cuts"), today, faults),
            growth(body.path("growth"), today, faults), done);
    }

    private static Optional<Integer> length(JsonNode body) {
        return body.has("measuredLengthCm") ? Optional.of(body.get("measuredLengthCm").intValue()) : Optional.empty();
    }

    private static List<Cut> cuts(JsonNode list, LocalDate today, Faults faults) {
        List<Cut> cuts = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            LocalDate day = LocalDate.parse(list.get(i).get("day").textValue());
            faults.expect(!day.isAfter(today), "/cuts/%d/day".formatted(i),
                "this lies after the day on which the answers are read, %s", today);
            cuts.add(new Cut(day, list.get(i).get("toCm").doubleValue()));
        }
        return cuts;
    }

    private static Growth growth(JsonNode measured, LocalDate today, Faults faults) {
        if (!measured.isObject()) {
            return Growth.PUBLISHED;
        }
        LocalDate coloured = LocalDate.parse(measured.get("coloured").textValue());
        LocalDate read = LocalDate.parse(measured.get("read").textValue());
        boolean inOrder = coloured.isBefore(read) && !read.isAfter(today);
        faults.expect(inOrder, "/growth/read", "it is read after the colour and not after %s", today);
        double cm = measured.get("newGrowthCm").doubleValue();
        faults.expect(!inOrder || Growth.plausible(cm, coloured, read), "/growth/newGrowthCm",
            "no hair grows so fast or so slowly: published are %s to %s cm a month",
            Growth.SLOW, Growth.FAST);
        return inOrder ? Growth.measured(cm, coloured, read) : Growth.PUBLISHED;
    }
}
