package foretress.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RedirectsTest {
    @ParameterizedTest
    @CsvSource({ "http://elsewhere.example/day?x=1#y, /day?x=1#y", "https://elsewhere.example:8443, /",
        "/answers, /answers", "http://a//b.example/c, /b.example/c",
        "//b.example/c, /b.example/c", "HTTP://A/x, /x" })
    @DisplayName("R68: whatever host a request claims, a redirect stays here")
    void onlyThePathIsLeft(String location, String here) {
        assertThat(Redirects.here(location)).isEqualTo(here);
    }

    @ParameterizedTest
    @CsvSource({ "/answers/treatments?opened=yes&entry=0, /answers/treatments?opened=yes&entry=0", "/day, /day",
        "/day?a=%41, /day?a=%41", "/day?a=%4, /day", "/day?to=//b.example, /day", "/day?a=<b>, /day" })
    @DisplayName("a page is come back to with its plain query, never with anything else")
    void aPlainQueryIsKept(String address, String kept) {
        assertThat(LocalPath.withQuery(address)).contains(kept);
    }

    @ParameterizedTest
    @ValueSource(strings = { "", "?a=b", "//b.example/?a=b", "https://b.example/", "/\\b.example" })
    void whatIsNoPathOfOursIsNone(String address) {
        assertThat(LocalPath.withQuery(address)).isEmpty();
    }
}
