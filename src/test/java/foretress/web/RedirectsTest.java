package foretress.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RedirectsTest {
    @ParameterizedTest
    @CsvSource({ "http://elsewhere.example/day?x=1#y, /day?x=1#y", "https://elsewhere.example:8443, /",
        "/answers, /answers", "http://a//b.example/c, /b.example/c",
        "//b.example/c, /b.example/c", "HTTP://A/x, /x" })
    @DisplayName("R68: whatever host a request claims, a redirect stays here")
    void onlyThePathIsLeft(String location, String here) {
        assertThat(Redirects.here(location)).isEqualTo(here);
    }
}
