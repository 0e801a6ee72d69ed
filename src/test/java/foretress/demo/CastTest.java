package foretress.demo;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.knowledge.Knowledge;
import foretress.knowledge.Loaded;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Contradiction;
import foretress.questionnaire.Question;
import foretress.questionnaire.Walk;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CastTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;

    @ParameterizedTest
    @MethodSource
    @DisplayName("what an invented client says is not contradicted by their own \"no\" to everything else")
    void nobodyContradictsThemselves(Invented client) {
        Answers said = answeredOnEveryPage(client);
        assertThat(KNOWLEDGE.contradictions()).filteredOn(contradiction -> contradiction.holds(said))
            .extracting(Contradiction::id).as(client.name()).isEmpty();
    }

    private static Answers answeredOnEveryPage(Invented client) {
        var walk = new Walk(KNOWLEDGE.questionnaire(), chemistries(client), Answers.NONE, Set.of());
        for (Optional<Walk.Step> step = walk.next(); step.isPresent(); step = walk.next()) {
            Answers said = walk.said();
            HashSet<String> put = new HashSet<>(walk.put());
            for (Question question : step.get().questions()) {
                put.add(question.id());
                Answers before = said;
                said = Sayings.answer(question, client).map(answer -> before.with(question.id(), answer))
                    .orElse(before);
            }
            walk = new Walk(walk.questionnaire(), walk.chemistries(), said, put);
        }
        return walk.said();
    }

    private static Set<String> chemistries(Invented client) {
        return KNOWLEDGE.ruleSet().services().stream().filter(service -> service.id().equals(client.service()))
            .findFirst().orElseThrow().chemistries();
    }

    static List<Invented> nobodyContradictsThemselves() {
        return Cast.of(LocalDate.of(2026, 6, 8));
    }
}
