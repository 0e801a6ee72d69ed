package foretress.consent;

import static foretress.consent.Consenting.aConsent;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ConsentPaperTest {

    @Test
    @DisplayName("D17: same input and clock, same bytes")
    void theSameConsentIsTheSameBytes() throws IOException {
        var once = aConsent().paper();
        assertThat(aConsent().paper()).isEqualTo(once);
        Files.createDirectories(Path.of("target/paper"));
        Files.write(Path.of("target/paper/plain.pdf"), once);
    }
}
