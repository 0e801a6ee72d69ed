package foretress.intake;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Medicine;
import foretress.questionnaire.SaidDate;
import foretress.questionnaire.SaidDate.Season;
import foretress.questionnaire.SaidTreatment;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Answers as codes in JSON, the form in which they are sealed, hashed and compared. Questions stand in the
 * order of their ids, so equal answers give equal bytes.
 */
public final class AnswerJson {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final JsonNodeFactory NODE = JsonNodeFactory.instance;

    private AnswerJson() {}

    public static byte[] write(Answers answers) {
        ObjectNode root = NODE.objectNode();
        new TreeMap<>(answers.byQuestion()).forEach((id, answer) -> root.set(id, node(answer)));
        return root.toString().getBytes(StandardCharsets.UTF_8);
    }

    public static Answers read(byte[] bytes) {
        try {
            Map<String, Answer> byQuestion = new TreeMap<>();
            JSON.readTree(new String(bytes, StandardCharsets.UTF_8)).properties()
                .forEach(f -> byQuestion.put(f.getKey(), answer(f.getValue())));
            return new Answers(byQuestion);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("stored answers cannot be read", e);
        }
    }

    private static ObjectNode node(Answer answer) {
        ObjectNode node = NODE.objectNode();
        if (answer instanceof Answer.Chosen chosen) {
            chosen.codes().forEach(node.putArray("chosen")::add);
        } else if (answer instanceof Answer.Said said) {
            node.set("date", date(said.date()));
        } else if (answer instanceof Answer.Length length) {
            node.put("lengthCm", length.lengthCm()).put("drawnStraight", length.drawnStraight());
        } else if (answer instanceof Answer.Treatments treatments) {
            ArrayNode list = node.putArray("treatments");
            treatments.list().forEach(t -> list.add(treatment(t)));
        } else if (answer instanceof Answer.Medicines medicines) {
            ArrayNode list = node.putArray("medicines");
            medicines.list().forEach(m -> list.add(medicine(m)));
        } else if (answer instanceof Answer.Text text) {
            node.put("text", text.text());
        } else {
            node.put("not", answer instanceof Answer.DontKnow ? "known" : "said");
        }
        return node;
    }

    private static Answer answer(JsonNode node) {
        if (node.has("chosen")) {
            List<String> codes = new ArrayList<>();
            node.get("chosen").forEach(c -> codes.add(c.asText()));
            return new Answer.Chosen(codes);
        }
        if (node.has("date")) {
            return new Answer.Said(date(node.get("date")));
        }
        if (node.has("lengthCm")) {
            return new Answer.Length(node.get("lengthCm").asInt(), node.get("drawnStraight").asBoolean());
        }
        if (node.has("treatments")) {
            List<SaidTreatment> list = new ArrayList<>();
            node.get("treatments").forEach(t -> list.add(treatment(t)));
            return new Answer.Treatments(list);
        }
        if (node.has("medicines")) {
            List<Medicine> list = new ArrayList<>();
            node.get("medicines").forEach(m -> list.add(medicine(m)));
            return new Answer.Medicines(list);
        }
        if (node.has("text")) {
            return new Answer.Text(node.get("text").asText());
        }
        return switch (node.path("not").asText()) {
            case "known" -> Answer.DONT_KNOW;
            case "said" -> Answer.RATHER_NOT_SAY;
            default -> throw new IllegalStateException("not an answer: " + node.fieldNames().next());
        };
    }

    private static ObjectNode treatment(SaidTreatment t) {
        ObjectNode node = NODE.objectNode();
        node.put("what", t.what()).set("when", date(t.when()));
        node.put("zone", t.zone()).put("by", t.by()).put("often", t.often());
        // Answers from before these three were asked keep their bytes, and with them their hash.
        if (!t.every().equals(SaidTreatment.DONT_KNOW)) {
            node.put("every", t.every());
        }
        if (!(t.since() instanceof SaidDate.NotKnown)) {
            node.set("since", date(t.since()));
        }
        if (!t.extent().equals(SaidTreatment.DONT_KNOW)) {
            node.put("extent", t.extent());
        }
        return node;
    }

    private static SaidTreatment treatment(JsonNode n) {
        return new SaidTreatment(n.get("what").asText(), date(n.get("when")), n.get("zone").asText(),
            n.get("by").asText(),
            n.get("often").asText(), n.path("every").asText(SaidTreatment.DONT_KNOW),
            n.has("since") ? date(n.get("since")) : new SaidDate.NotKnown(),
            n.path("extent").asText(SaidTreatment.DONT_KNOW));
    }

    private static ObjectNode medicine(Medicine m) {
        return NODE.objectNode().put("name", m.name()).put("dose", m.dose().code())
            .put("route", m.route().code()).put("lastTaken", m.lastTaken().code());
    }

    private static Medicine medicine(JsonNode n) {
        return new Medicine(n.get("name").asText(), n.get("dose").asText(), n.get("route").asText(),
            n.get("lastTaken").asText());
    }

    private static ObjectNode date(SaidDate date) {
        ObjectNode node = NODE.objectNode();
        if (date instanceof SaidDate.OnDay d) {
            return node.put("day", d.day().toString());
        }
        if (date instanceof SaidDate.InMonth m) {
            return node.put("month", m.month().toString());
        }
        if (date instanceof SaidDate.InSeason s) {
            return node.put("season", s.season().name()).put("year", s.year().getValue());
        }
        if (date instanceof SaidDate.InYear y) {
            return node.put("year", y.year().getValue());
        }
        if (date instanceof SaidDate.LatelyAgo a) {
            return node.put("from", a.from()).put("to", a.to()).put("unit", a.unit().name());
        }
        if (date instanceof SaidDate.YearsAgo a) {
            return node.put("from", a.from()).put("to", a.to());
        }
        if (date instanceof SaidDate.LongerThan l) {
            return node.put("longerThan", l.years());
        }
        return node.put("not", "known");
    }

    private static SaidDate date(JsonNode n) {
        if (n.has("day")) {
            return new SaidDate.OnDay(LocalDate.parse(n.get("day").asText()));
        }
        if (n.has("month")) {
            return new SaidDate.InMonth(YearMonth.parse(n.get("month").asText()));
        }
        if (n.has("season")) {
            return new SaidDate.InSeason(Season.valueOf(n.get("season").asText()), Year.of(n.get("year").asInt()));
        }
        if (n.has("year")) {
            return new SaidDate.InYear(Year.of(n.get("year").asInt()));
        }
        if (n.has("unit")) {
            return new SaidDate.LatelyAgo(n.get("from").asInt(), n.get("to").asInt(),
                SaidDate.LatelyAgo.Unit.valueOf(n.get("unit").asText()));
        }
        if (n.has("from")) {
            return new SaidDate.YearsAgo(n.get("from").asInt(), n.get("to").asInt());
        }
        return n.has("longerThan") ? new SaidDate.LongerThan(n.get("longerThan").asInt()) : new SaidDate.NotKnown();
    }
}
