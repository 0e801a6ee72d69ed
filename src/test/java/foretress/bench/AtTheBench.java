package foretress.bench;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** A member of staff who tries things at the bench of one visit, by the forms that are on its pages. */
final class AtTheBench {
    private final Walker walker;
    private final UUID visit;
    private final String bench;

    AtTheBench(Walker walker, UUID visit) {
        this.walker = walker;
        this.visit = visit;
        this.bench = "/visits/" + visit + "/bench";
    }

    Walker walker() {
        return walker;
    }

    AtTheBench overview() {
        walker.open(bench).expect(200);
        return this;
    }

    /** Cuts every tuft that is proposed, mixes 40 ml from 20 volumes, and puts them in. */
    AtTheBench metalRunning() {
        walker.open(bench + "/incompatibility-test").expect(200);
        walker.send("form[action$=/incompatibility-test]", Map.of()).expect(200);
        walker.send("form[action$=/mix]", Map.of("strength", "20")).expect(200);
        walker.send("form[action$=/start]", Map.of()).expect(200);
        return this;
    }

    /** Letters of the tufts on the page, the control last. */
    List<String> tufts() {
        return walker.page().select(".seen .tuft strong:first-child").eachText().stream().map(t -> t.substring(0, 1))
            .toList();
    }

    AtTheBench sees(String tuft, String sign) {
        List<Map.Entry<String, String>> fields = new ArrayList<>(walker.fields("form[action$=/seen]"));
        fields.removeIf(f -> f.getKey().equals("seen"));
        fields.add(Map.entry("seen", tuft + ":" + sign));
        walker.post(walker.page().selectFirst("form[action$=/seen]").attr("action"), fields).expect(200);
        return this;
    }

    AtTheBench again() {
        walker.open(walker.at()).expect(200);
        return this;
    }

    /** The same page on another device, or after signing in again. */
    AtTheBench on(Walker other) {
        var there = new AtTheBench(other, visit);
        other.open(walker.at()).expect(200);
        return there;
    }

    /** A metal test that was made before. */
    AtTheBench metalOf(UUID test) {
        walker.open(bench + "/incompatibility-test/" + test).expect(200);
        return this;
    }

    AtTheBench out() {
        walker.send("form[action$=/end]", Map.of()).expect(200);
        return this;
    }

    /** Seconds that the clock on the page has left. */
    long left() {
        return Long.parseLong(walker.only("[data-left]").attr("data-left"));
    }

    AtTheBench says(String... parts) {
        assertThat(walker.text()).contains(parts);
        return this;
    }
}
