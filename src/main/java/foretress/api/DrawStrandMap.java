package foretress.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foretress.assessment.Situation;
import foretress.hair.Lane;
import foretress.hair.Range;
import foretress.hair.Residue;
import foretress.hair.StrandLayout;
import foretress.hair.StrandMap;
import foretress.hair.StrandSvg;
import foretress.hair.StrandWords;
import foretress.intake.StrandMaps;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.questionnaire.Answers;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What lies where on a client's hair, from the same coded answers; in numbers, or drawn. */
final class DrawStrandMap {
    private static final JsonNodeFactory NODE = JsonNodeFactory.instance;
    private static final Map<String, StrandLayout> LAYOUTS =
        Map.of("wide", StrandLayout.WIDE, "tablet", StrandLayout.TABLET, "phone", StrandLayout.PHONE);
    private static final double STEP_CM = 1;

    private final Knowledge knowledge;
    private final ClientBody client;
    private final CodedAnswers answers;
    private final StaffsHair hair;

    DrawStrandMap(Knowledge knowledge, ClientBody client, CodedAnswers answers, StaffsHair hair) {
        this.knowledge = knowledge;
        this.client = client;
        this.answers = answers;
        this.hair = hair;
    }

    private record Drawn(StrandMap map, Words words) {}

    Operation operation() {
        Shape.Fields asked =
            Shape.object().need("today", Times.day().saying("The day the hair is looked at; answers are read on it."))
                .need("jurisdiction", client.jurisdiction()).need("answers", answers.shape())
                .may("language", client.language())
                .may("layout", Shape.code(List.of("wide", "tablet", "phone"))
                    .saying("How wide the drawing is; wide when left out. For SVG only."));
        return new Operation("strand-map", "strand-map", Optional.of(Scope.ASSESS),
            "What earlier treatments left on the hair, and where",
            "The hair's length and its treatments in, as coded answers (all other answers but the cues of a darkening lotion change nothing); for each treatment the "
                + "chance that any is left, where it lies, what length of cut ends it and when it has grown out. Sent with 'Accept: image/svg+xml' it answers the drawing. "
                + "Chances are over the growth rates that were published; what decides is the safe side.",
            Optional.of(hair.shape(asked)), response(), List.of("restorer-two-summers-ago"), this::told);
    }

    private JsonNode told(JsonNode body) {
        Drawn drawn = drawn(body);
        StrandMap map = drawn.map();
        StrandWords words = StrandMaps.words(drawn.words());
        ObjectNode answer = NODE.objectNode().put("lengthCm", map.lengthCm()).put("lengthKnown", map.lengthKnown())
            .put("lengthMeasured", map.lengthMeasured())
            .put("metalSuspected", map.metalSuspected());
        map.metalFreeCutCm().ifPresent(cm -> answer.put("metalFreeCutCm", cm));
        ArrayNode lanes = answer.putArray("lanes");
        map.lanes().forEach(lane -> lanes.add(lane(lane, map)));
        ArrayNode list = answer.putArray("inWords");
        words.list(map).forEach(list::add);
        return answer;
    }

    /** @throws Refused as {@link Operation#answer} */
    String svg(JsonNode body) {
        Drawn drawn = drawn(body);
        return StrandSvg.draw(drawn.map(), StrandMaps.words(drawn.words()),
            LAYOUTS.get(body.path("layout").asText("wide")), "strand");
    }

    private Drawn drawn(JsonNode body) {
        Faults faults = new Faults();
        LocalDate today = LocalDate.parse(body.get("today").textValue());
        Answers said = answers.read(body.get("answers"), "/answers", today, faults);
        Set<String> all =
            knowledge.ruleSet().steps().stream().flatMap(step -> step.uses().stream()).collect(Collectors.toSet());
        Situation situation =
            hair.known(new Situation(today, today, Optional.empty(), all, knowledge.questionnaire(), said,
                knowledge.policy(body.get("jurisdiction").textValue()), List.of(), Optional.empty()), body, faults);
        faults.orThrow();
        Words words = client.words(body);
        return new Drawn(StrandMaps.map(situation, knowledge, words), words);
    }

    private static ObjectNode lane(Lane lane, StrandMap map) {
        ObjectNode node = NODE.objectNode().put("what", lane.treatment().id()).put("name", lane.treatment().label())
            .put("said", lane.treatment().said())
            .put("residue", code(lane.treatment().residue())).put("chanceLeft", rounded(lane.chanceLeft()))
            .put("safetyChance", rounded(lane.safetyChance()))
            .put("metalSuspected", lane.metalSuspected());
        range(node, "startsCm", lane.starts());
        range(node, "reachesCm", lane.reaches());
        lane.cutToCm().ifPresent(cm -> node.put("cutToCm", cm));
        node.put("grownOut", lane.grownOut().toString());
        ArrayNode hairs = node.putArray("hairsInTenAtEachCm");
        for (double cm = 0; cm <= map.lengthCm(); cm += STEP_CM) {
            hairs.add(lane.hairsAt(cm));
        }
        return node;
    }

    private static void range(ObjectNode node, String name, Optional<Range> range) {
        range.ifPresent(r -> node.putObject(name).put("from", rounded(r.fromCm())).put("to", rounded(r.toCm())));
    }

    /** Four places: nobody knows more, and the last digits of a double differ from machine to machine. */
    private static double rounded(double value) {
        return Math.round(value * 10_000) / 10_000.0;
    }

    private static String code(Residue residue) {
        return residue.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Shape response() {
        Shape range = Shape.object().need("from", Shape.number()).need("to", Shape.number())
            .saying("From a tenth to nine tenths of the chance, cm from the scalp.");
        Shape lane = Shape.object().need("what", Shape.text()).need("name", Shape.text()).need("said", Shape.text())
            .need("residue", Shape.code(Arrays.stream(Residue.values()).map(DrawStrandMap::code).toList()))
            .need("chanceLeft", Shape.number().saying("0 to 1; 1 when the length is not known."))
            .need("safetyChance", Shape.number().saying("The same on the safe side: what decides."))
            .need("metalSuspected", Shape.flag()).may("startsCm", range).may("reachesCm", range)
            .may("cutToCm", Shape.number().saying("Cut to this length, nothing of it is left."))
            .need("grownOut", Shape.text().saying("The month by which it has grown out, kept at today's length."))
            .need("hairsInTenAtEachCm", Shape.list(Shape.number(), 0, 500)
                .saying("Of ten treated hairs, how many carry it 0, 1, 2, ... cm from the scalp."))
            .named("Lane");
        return Shape.object().need("lengthCm", Shape.number()).need("lengthKnown", Shape.flag())
            .need("lengthMeasured", Shape.flag())
            .need("metalSuspected", Shape.flag()).may("metalFreeCutCm", Shape.number())
            .need("lanes", Shape.list(lane, 0, 1_000))
            .need("inWords", Shape.list(Shape.text(), 0, 1_000)).named("StrandMap");
    }
}
