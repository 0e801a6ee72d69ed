package foretress.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foretress.knowledge.Knowledge;
import foretress.lexicon.MedicineReading.Said;
import foretress.lexicon.MedicineReading.Sureness;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Typed medicines into classes. */
final class ReadMedicines {
    static final String CAUTION =
        "Medicines stay as they are: whether one may be changed is for the client's doctor or pharmacist alone. "
            + "What is not recognised has to be asked about.";
    private static final int LONGEST = 4_000;
    private static final JsonNodeFactory NODE = JsonNodeFactory.instance;

    private final Knowledge knowledge;

    ReadMedicines(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    Operation operation() {
        return new Operation("read-medicines", "read-medicines", Optional.of(Scope.READ),
            "What typed medicines mean at the chair",
            "A line or a list as somebody typed it in; every name with its classes and how it was recognised out. A name that is not recognised is listed "
                + "as such, never dropped. " + CAUTION,
            Optional.of(Shape.object().need("text", Shape.text(1, LONGEST).saying("The medicines as typed."))),
            response(),
            List.of("a-list-with-a-slip"), body -> told(body.get("text").textValue()));
    }

    ObjectNode told(String text) {
        ObjectNode answer = NODE.objectNode();
        ArrayNode names = answer.putArray("names");
        knowledge.medicines().read(text).names().forEach(name -> {
            ObjectNode node = names.addObject().put("typed", name.typed()).put("sureness", code(name.sureness()))
                .put("said", code(name.said()));
            ArrayNode classes = node.putArray("classes");
            name.rows().forEach(row -> classes.addObject().put("name", row.name()).put("class", row.kind())
                .put("effect", row.effect()).put("why", row.why()));
        });
        return answer.put("caution", CAUTION);
    }

    private static String code(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Shape response() {
        Shape.Fields row = Shape.object().need("name", Shape.text()).need("class", Shape.text())
            .need("effect", Shape.text()).need("why", Shape.text());
        Shape.Fields name = Shape.object().need("typed", Shape.text())
            .need("sureness", Shape.code(Arrays.stream(Sureness.values()).map(ReadMedicines::code).toList())
                .saying("A spelling slip wants a second look: another medicine may be meant."))
            .need("said", Shape.code(Arrays.stream(Said.values()).map(ReadMedicines::code).toList())
                .saying(
                    "What the words around it say. One that is stopped or denied is kept and counts: ask when it was last taken."))
            .need("classes", Shape.list(row, 0, 1_000));
        return Shape.object().need("names", Shape.list(name, 0, 10_000)).need("caution", Shape.text())
            .named("MedicineReading");
    }
}
