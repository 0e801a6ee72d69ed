package foretress.knowledge;

import foretress.assessment.Service;
import foretress.assessment.TestFact;
import foretress.questionnaire.Answers;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** An invented client before a visit, whole: from answers to tests. */
record WholeClient(Service service, Answers answers, List<TestFact> tests, boolean measured, Optional<LocalDate> born) {
    WholeClient tested(TestFact... made) {
        return new WholeClient(service, answers, List.of(made), measured, born);
    }
}
