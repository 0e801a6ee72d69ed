package foretress.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

@Execution(ExecutionMode.CONCURRENT)
class ApiReferenceTest {
    private static final Path PAGE = Path.of("docs/reference/api.md");

    @Test
    void theReferenceSaysWhatTheOperationsAnswer() throws IOException {
        String made = new ApiReference(OperationsTest.OPERATIONS).write();
        if (Boolean.getBoolean("reference.rewrite")) {
            Files.createDirectories(PAGE.getParent());
            Files.writeString(PAGE, made);
        }
        assertThat(PAGE).as("make it anew: mvn test -Dtest=ApiReferenceTest -Dreference.rewrite=true").hasContent(made);
    }
}
