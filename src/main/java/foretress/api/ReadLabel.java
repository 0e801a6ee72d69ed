package foretress.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foretress.knowledge.Knowledge;
import foretress.lexicon.LabelReading;
import foretress.lexicon.LabelReading.Sureness;
import foretress.lexicon.Substance;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** An ingredient list into known substances and unknown words. */
final class ReadLabel {
    private static final JsonNodeFactory NODE = JsonNodeFactory.instance;

    private final Knowledge knowledge;

    ReadLabel(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    Operation operation() {
        return new Operation("read-label", "read-label", Optional.of(Scope.READ), "What an ingredient list holds",
            "A pasted or typed list in; known substances with their place, class and how they were recognised out. Words that are not recognised are listed, "
                + "never dropped. A list can be out of date or incomplete: what is not found in it is not thereby absent from the product. Places are UTF-16 code units.",
            Optional.of(
                Shape.object().need("text", Shape.text(1, CodedAnswers.LONGEST_TEXT).saying("The list as pasted."))),
            response(),
            List.of("restorer-lotion", "a-slip-and-a-claim"), body -> told(body.get("text").textValue()));
    }

    ObjectNode told(String text) {
        LabelReading reading = knowledge.labels().read(text);
        ObjectNode answer = NODE.objectNode();
        ArrayNode found = answer.putArray("found");
        reading.found().forEach(
            f -> found.add(substance(f.substance(), f.from(), f.to(), f.written()).put("sureness", code(f.sureness()))
                .put("mayContain", f.mayContain())));
        ArrayNode unknown = answer.putArray("unknown");
        reading.unknown().forEach(u -> {
            ObjectNode word = placed(u.from(), u.to(), u.written());
            ArrayNode near = word.putArray("mightBe");
            unknown.add(word);
            u.near().forEach(
                s -> near.addObject().put("name", s.name()).put("class", s.kind()).put("risk", s.risk().code()));
        });
        ArrayNode claims = answer.putArray("claimedAbsent");
        reading.claims().forEach(c -> claims.add(substance(c.substance(), c.from(), c.to(), c.written())));
        ArrayNode beside = answer.putArray("beside");
        reading.beside().forEach(b -> beside
            .add(placed(b.from(), b.to(), b.written()).put("reason", b.reason().name().toLowerCase(Locale.ROOT))));
        return answer;
    }

    private static ObjectNode substance(Substance substance, int from, int to, String written) {
        ObjectNode node = placed(from, to, written).put("name", substance.name()).put("class", substance.kind())
            .put("risk", substance.risk().code());
        substance.cas().ifPresent(cas -> node.put("cas", cas.number()));
        return node;
    }

    private static ObjectNode placed(int from, int to, String written) {
        return NODE.objectNode().put("from", from).put("to", to).put("written", written);
    }

    private static String code(Sureness sureness) {
        return sureness.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Shape response() {
        Shape.Fields placed =
            Shape.object().need("from", Shape.number()).need("to", Shape.number()).need("written", Shape.text());
        Shape.Fields named = placed.need("name", Shape.text()).may("cas", Shape.text()).need("class", Shape.text())
            .need("risk", Shape.code(Arrays.stream(Substance.Risk.values()).map(Substance.Risk::code).toList()));
        Shape near = Shape.object().need("name", Shape.text()).need("class", Shape.text())
            .need("risk", Shape.code(Arrays.stream(Substance.Risk.values()).map(Substance.Risk::code).toList()));
        Shape unknown = placed.need("mightBe", Shape.list(near, 0, 10_000)
            .saying("Where a damaged word could be several substances: each is to be reckoned with."));
        Shape found = named.need("sureness", Shape.code(Arrays.stream(Sureness.values()).map(ReadLabel::code).toList()))
            .need("mayContain", Shape.flag());
        Shape beside = placed.need("reason", Shape
            .code(Arrays.stream(LabelReading.Reason.values()).map(r -> r.name().toLowerCase(Locale.ROOT)).toList()));
        return Shape.object().need("found", Shape.list(found, 0, 10_000))
            .need("unknown", Shape.list(unknown, 0, 10_000))
            .need("claimedAbsent",
                Shape.list(named, 0, 10_000)
                    .saying("Named only to say that it is not in there: no substance of the product."))
            .need("beside", Shape.list(beside, 0, 10_000).saying(
                "Words that name nothing in the product, so that every word of the text stands in one of the four."))
            .named("LabelReading");
    }
}
