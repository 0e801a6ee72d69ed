package foretress.api;

import com.fasterxml.jackson.databind.JsonNode;
import foretress.knowledge.Knowledge;
import java.util.ArrayList;
import java.util.List;

/** Everything a program can ask for, made of one version of the knowledge. */
final class Operations {
    private final List<Operation> all;
    private final DrawStrandMap strandMap;
    private final Assess assess;
    private final Knowledge knowledge;

    Operations(Knowledge knowledge) {
        var answers = new CodedAnswers(knowledge.questionnaire());
        var client = new ClientBody(knowledge, answers);
        this.knowledge = knowledge;
        this.assess = new Assess(knowledge, client);
        this.strandMap = new DrawStrandMap(knowledge, client, answers);
        List<Operation> made =
            new ArrayList<>(List.of(assess.operation(), strandMap.operation(), new ReadLabel(knowledge).operation(),
                new ReadMedicines(knowledge).operation()));
        made.addAll(AtTheBench.operations());
        made.add(new AskQuestionnaire(knowledge).operation());
        this.all = List.copyOf(made);
    }

    Knowledge knowledge() {
        return knowledge;
    }

    List<Operation> all() {
        return all;
    }

    Operation operation(String id) {
        return all.stream().filter(o -> o.id().equals(id)).findFirst()
            .orElseThrow(() -> new IllegalArgumentException("no operation " + id));
    }

    /** The same words and fields as {@code assess} answers, for an assessment made elsewhere. */
    Assess assess() {
        return assess;
    }

    /** @throws Refused as the operation does */
    String strandMapSvg(JsonNode body) {
        operation("strand-map").check(body);
        return strandMap.svg(body);
    }
}
