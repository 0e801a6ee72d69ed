package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.intake.Intake.Page;
import foretress.knowledge.Knowledge;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Topic;
import foretress.salon.OpenSalon;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What was told behind a gate that nobody answered: the page about it can be sent, and what it says is kept. */
@QuarkusTest
class BehindGateTest {
    private static final String TOLD = "clinic-patch-test";
    private static final String GATE = "skin-tested";
    private static final String BESIDE = "skin-test-before";

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Intake intake;
    @Inject Knowledge knowledge;
    UUID visit;

    @BeforeEach
    void oneAnswerStandsBehindAnOpenGate() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
        Question told = knowledge.questionnaire().question(TOLD).orElseThrow();
        intake.askAgain(visit, topic(), page(Map.of(TOLD, List.of("clear")), 0), List.of(told), List.of(),
            UUID.randomUUID());
        assertThat(said().to(GATE)).contains(Answer.Chosen.of("yes"));
    }

    private Topic topic() {
        return knowledge.questionnaire().topic("elsewhere-more").orElseThrow();
    }

    private static Page page(Map<String, List<String>> fields, int version) {
        return new Page(fields, UUID.randomUUID().toString(), version, "en");
    }

    private Answers said() {
        return QuarkusTransaction.requiringNew().call(() -> intake.said(Visit.findById(visit)));
    }

    @Test
    @DisplayName("the page behind the gate keeps what is sent, also where it says something else than before")
    void thePageIsKept() {
        intake.keep(visit, topic(), page(Map.of(TOLD, List.of("dye-allergy"), BESIDE, List.of("no")), 1));
        assertThat(said().to(TOLD)).contains(Answer.Chosen.of("dye-allergy"));
        assertThat(said().to(BESIDE)).contains(Answer.Chosen.of("no"));
    }
}
