package foretress.api;

import com.fasterxml.jackson.databind.JsonNode;
import foretress.assessment.Situation;
import foretress.hair.Lane;
import foretress.hair.Range;
import foretress.hair.Residue;
import foretress.hair.StrandLayout;
import foretress.hair.StrandMap;
import foretress.hair.StrandSvg;
import foretress.intake.StrandMaps;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.questionnaire.Answers;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/** What lies where on a client's hair, from the same coded answers; in numbers, or drawn. */
final class DrawStrandMap {
    private static final double STEP_CM = 1;

    private final Knowledge knowledge;
    private final ClientBody client;
    private final CodedAnswers answers;

    DrawStrandMap(Knowledge knowledge, ClientBody client, CodedAnswers answers) {
        this.knowledge = knowledge;
        this.client = client;
        this.answers = answers;
    }

    private record Drawn(StrandMap map, Words words) {}

    Operation operation() {
        return Operation.of(client.known(), "strand-map", "strand-map", Scope.ASSESS,
            "What earlier treatments left on the hair, and where",
            "The hair's length and its treatments in, as coded answers (all other answers but the cues of a darkening lotion change nothing); for each treatment the "
                + "chance that any is left, where it lies, what length of cut ends it and when it has grown out. Sent with 'Accept: image/svg+xml' it answers the drawing. "
                + "Chances are over the growth rates that were published; what decides is the safe side.",
            Asked.class, Mapped.class, List.of("restorer-two-summers-ago"), this::told);
    }

    record Asked(@Json(says = "The day the hair is looked at; answers are read on it.") LocalDate today,
        @Json(as = "jurisdictions") String jurisdiction, @Json(as = "answers") JsonNode answers,
        @Json(as = "languages") Optional<String> language,
        @Json(says = "How wide the drawing is; wide when left out. For SVG only.") Optional<Layout> layout,
        @Json(flat = true) StaffsHair hair) {}

    enum Layout {
        WIDE(StrandLayout.WIDE), TABLET(StrandLayout.TABLET), PHONE(StrandLayout.PHONE);

        private final StrandLayout drawn;

        Layout(StrandLayout drawn) {
            this.drawn = drawn;
        }
    }

    @Json(name = "StrandMap")
    record Mapped(double lengthCm, boolean lengthKnown, boolean lengthMeasured, boolean metalSuspected,
        Optional<Integer> metalFreeCutCm, @Json(most = 1_000) List<OneLane> lanes,
        @Json(most = 1_000) List<String> inWords) {}

    @Json(name = "Lane")
    record OneLane(String what, String name, String said, Residue residue,
        @Json(says = "0 to 1; 1 when the length is not known.") double chanceLeft,
        @Json(says = "The same on the safe side: what decides.") double safetyChance, boolean metalSuspected,
        Optional<FromTo> startsCm, Optional<FromTo> reachesCm,
        @Json(says = "Cut to this length, nothing of it is left.") Optional<Integer> cutToCm,
        @Json(says = "The month by which it has grown out, kept at today's length.") YearMonth grownOut,
        @Json(most = 500,
            says = "Of ten treated hairs, how many carry it 0, 1, 2, ... cm from the scalp.") List<Integer> hairsInTenAtEachCm) {}

    @Json(says = "From a tenth to nine tenths of the chance, cm from the scalp.")
    record FromTo(double from, double to) {}

    private Mapped told(Asked body) {
        Drawn drawn = drawn(body);
        StrandMap map = drawn.map();
        return new Mapped(map.lengthCm(), map.lengthKnown(), map.lengthMeasured(), map.metalSuspected(),
            map.metalFreeCutCm(), map.lanes().stream().map(lane -> lane(lane, map)).toList(),
            StrandMaps.words(drawn.words()).list(map));
    }

    /** @throws Refused as {@link Operation#answer} */
    String svg(JsonNode sent) {
        Asked body = RecordShape.read(sent, Asked.class);
        Drawn drawn = drawn(body);
        return StrandSvg.draw(drawn.map(), StrandMaps.words(drawn.words()),
            body.layout().orElse(Layout.WIDE).drawn, "strand");
    }

    private Drawn drawn(Asked body) {
        var faults = new Faults();
        Answers said = answers.read(body.answers(), "/answers", body.today(), faults);
        Set<String> all =
            knowledge.ruleSet().steps().stream().flatMap(step -> step.uses().stream()).collect(Collectors.toSet());
        Situation situation =
            body.hair().known(new Situation(body.today(), body.today(), Optional.empty(), all,
                knowledge.questionnaire(), said, knowledge.policy(body.jurisdiction()), List.of(), Optional.empty()),
                faults);
        faults.orThrow();
        Words words = client.words(body.language());
        return new Drawn(StrandMaps.map(situation, knowledge, words), words);
    }

    private static OneLane lane(Lane lane, StrandMap map) {
        return new OneLane(lane.treatment().id(), lane.treatment().label(), lane.treatment().said(),
            lane.treatment().residue(), rounded(lane.chanceLeft()), rounded(lane.safetyChance()),
            lane.metalSuspected(), lane.starts().map(DrawStrandMap::fromTo), lane.reaches().map(DrawStrandMap::fromTo),
            lane.cutToCm(), lane.grownOut(),
            DoubleStream.iterate(0, cm -> cm <= map.lengthCm(), cm -> cm + STEP_CM).mapToObj(lane::hairsAt).toList());
    }

    private static FromTo fromTo(Range range) {
        return new FromTo(rounded(range.fromCm()), rounded(range.toCm()));
    }

    /** Four places: nobody knows more, and the last digits of a double differ from machine to machine. */
    private static double rounded(double value) {
        return Math.round(value * 10_000) / 10_000.0;
    }
}
