package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.consent.Consents;
import foretress.consent.SignedConsent;
import foretress.knowledge.Knowledge;
import foretress.salon.OpenSalon;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
@DisplayName("F1, F7, E10: whatever is typed, forged or sent twice gets a clear word or the right status, and nothing is lost")
class BadInputTest {
    /** A herb, a person of a joined emoji, and words read from right to left in two scripts. */
    private static final String ANY_WORDS =
        "Danke \uD83C\uDF3F \uD83E\uDDD1\uD83C\uDFFD\u200D\uD83E\uDDB1 \u05E9\u05DC\u05D5\u05DD \u0645\u0631\u062D\u0628\u0627";

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject Consents consents;
    @Inject Intake intake;
    @Inject Knowledge knowledge;
    UUID visit;
    Answering client;

    @BeforeEach
    void aClientHasAgreed() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
        client = knocking.come(visit, Map.of("anything-else", List.of(ANY_WORDS))).agree();
    }

    private Walker open(String path) {
        return client.walker().open(path);
    }

    /** Sends the form of the page with these fields changed, and sees that the answer is no accident. */
    private Walker send(Map<String, List<String>> changed) {
        client.send(changed);
        return decent(client.walker());
    }

    /** The last page filled in, with these words on it. */
    private static Map<String, List<String>> note(String words) {
        return Map.of("whole-list", List.of("none"), "cancer-care", List.of("no"), "medicines", List.of("none"),
            "anything-else", List.of(words));
    }

    private ArrayList<Map.Entry<String, String>> nothingToTell() {
        ArrayList<Map.Entry<String, String>> fields = new ArrayList<>(client.walker().fields("main form"));
        fields.add(Map.entry("whole-list", "none"));
        fields.add(Map.entry("cancer-care", "no"));
        fields.add(Map.entry("medicines", "none"));
        return fields;
    }

    private static Walker decent(Walker walker) {
        assertThat(walker.response().statusCode()).as(walker.at()).isLessThan(500);
        assertThat(walker.response().asString()).doesNotContain("Exception", "\tat ", "java.");
        return walker;
    }

    private int kept(String topic) {
        return QuarkusTransaction.requiringNew()
            .call(() -> intake.version(Visit.findById(visit), knowledge.questionnaire().topic(topic).orElseThrow()));
    }

    private int documents() {
        return consents.all(visit).size();
    }

    private static Map<String, List<String>> treatment(String... more) {
        Map<String, List<String>> fields = new HashMap<>();
        fields.put("treatments.zone", List.of("whole"));
        for (int i = 0; i < more.length; i += 2) {
            fields.put(more[i], List.of(more[i + 1]));
        }
        return fields;
    }

    @ParameterizedTest
    @CsvSource({ "month, 13, 2020, month", "month, 0, 2020, month", "month, 5, 2999, year", "month, 5, 20, year",
        "month, 5, twenty, year",
        "month, 5, 1312, year", "season, '', 2020, season", "year, '', '', year", "month, '', 2020, month" })
    void anImpossibleDateIsAskedForAgainAndWhatWasTypedStays(String precision, String month, String year,
        String wrong) {
        open("/answers/treatments");
        send(Map.of("treatments.tick", List.of("box-dye"))).expect(200);
        Walker page = send(treatment("treatments.when.precision", precision, "treatments.when.month", month,
            "treatments.when.year", year)).expect(422);
        assertThat(page.page().title()).startsWith("Please look again");
        assertThat(page.page().select(".mistakes a[href='#treatments.when." + wrong + "']")).hasSize(1);
        assertThat(page.only("input[name=treatments.when.year]").val()).isEqualTo(year);
        assertThat(page.only("input[name=treatments.zone][checked]").val()).isEqualTo("whole");
        assertThat(kept("treatments")).as("the tick alone").isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({ "31, 2, 1965", "29, 2, 1965", "0, 3, 1965", "4, 13, 1965", "4, 3, 65", "4, 3, 2999", "four, 3, 1965",
        "'', '', ''" })
    void anImpossibleBirthDateOpensNothing(String day, String month, String year) {
        Walker walker = new Walker().open(knocking.link(visit));
        decent(walker.send(Map.of("day", day, "month", month, "year", year))).expect(422);
        assertThat(walker.page().select(".mistake")).isNotEmpty();
        assertThat(walker.cookies()).doesNotContainKey("door");
    }

    @Test
    void tenThousandCharactersAreTooManyAndStayOnThePage() {
        open("/answers/health");
        Walker page = send(note("x".repeat(10_000))).expect(422);
        assertThat(page.only(".mistakes li").text()).contains("1000", "10000");
        assertThat(page.only("textarea").val()).hasSize(10_000);
        assertThat(kept("health")).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = { "colour-reaction", "submission", "version" })
    void tenThousandCharactersWhereACodeBelongsAreRefused(String field) {
        open("/answers/reactions");
        send(Map.of(field, List.of("y".repeat(10_000)))).expect(422);
        assertThat(kept("reactions")).isZero();
    }

    @Test
    @DisplayName("F1, F3, D10: emoji and words from right to left are kept, shown, read back, signed and printed")
    void anyWordsAreKeptShownAndSigned() {
        client.all();
        assertThat(client.walker().text()).contains(ANY_WORDS);
        assertThat(open("/answers/health").only("textarea").val()).isEqualTo(ANY_WORDS);
        assertThat(client.walker().only("textarea").attr("dir")).isEqualTo("auto");
        open("/answers/read-back");
        client.readBack().sign("Ottilie \u05E9\u05DC\u05D5\u05DD \uD83C\uDF3F");
        assertThat(decent(client.walker()).at()).isEqualTo("/answers/done");
        assertThat(consents.text(consents.latest(visit).orElseThrow())).contains(ANY_WORDS);
        assertThat(open("/answers/copy").expect(200).response().contentType()).isEqualTo("application/pdf");
    }

    @ParameterizedTest
    @ValueSource(strings = { "no-such-topic", "Reactions", "..%2Fdesk", "%00", "%F0%9F%8C%BF", "reactions%20" })
    void aForgedTopicIsNotThere(String topic) {
        List<Map.Entry<String, String>> fields = open("/answers/reactions").fields("main form");
        assertThat(decent(open("/answers/" + topic)).response().statusCode()).isIn(400, 404);
        if (!topic.contains("%")) {
            assertThat(decent(client.walker().post("/answers/" + topic, fields)).response().statusCode())
                .isEqualTo(404);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = { "", "x", "AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA", "%00" })
    @DisplayName("B9: without the right cookie there are no answers, no copy, no signing")
    void aForgedCookieOpensNothing(String cookie) {
        for (String path : List.of("/answers", "/answers/reactions", "/answers/read-back", "/answers/sign",
            "/answers/copy", "/answers/done")) {
            var stranger = new Walker();
            stranger.cookies().put("door", cookie);
            decent(stranger.open(path)).expect(403);
        }
    }

    @Test
    @DisplayName("B9: another visit's cookie shows that visit and changes nothing in this one")
    void anotherVisitsCookieReachesItsOwnVisitOnly() {
        UUID others = make.visit(LocalDate.of(1965, 3, 4));
        Answering other = knocking.come(others, Map.of()).agree();
        client.all();
        List<Map.Entry<String, String>> mine = open("/answers/reactions").fields("main form");
        decent(other.walker().post("/answers/reactions", mine)).expect(422);
        assertThat(other.walker().page().select("form[data-kept]")).as("shown again, not taken").hasSize(1);
        decent(other.walker().open("/answers/copy")).expect(200);
        assertThat(other.walker().response().contentType()).startsWith("text/html");
        assertThat(kept("reactions")).isEqualTo(1);
    }

    @Test
    @DisplayName("B9: a client's cookie opens no staff page")
    void aClientIsNoStaff() {
        for (String path : List.of("/day", "/desk", "/staff", "/visits/" + visit, "/desk/visits/" + visit)) {
            assertThat(decent(open(path)).at()).startsWith("/sign-in");
        }
    }

    @Test
    @DisplayName("F7: a page sent again by Back or a slow network is kept once")
    void aReplayedPageIsKeptOnce() {
        open("/answers/reactions");
        client.page();
        int saved = kept("reactions");
        open("/answers/reactions");
        List<Map.Entry<String, String>> fields = client.walker().fields("main form");
        client.walker().post("/answers/reactions", fields).expect(200).post("/answers/reactions", fields).expect(200);
        assertThat(kept("reactions")).isEqualTo(saved + 1);
    }

    @Test
    @DisplayName("F7: the same page sent twice at once is kept once")
    void aPageSentTwiceAtOnceIsKeptOnce() {
        open("/answers/health");
        atOnce(nothingToTell(), "/answers/health");
        assertThat(kept("health")).isEqualTo(1);
    }

    @Test
    @DisplayName("F7, D13: two taps on Sign make one document")
    void aDoubleTapOnSignMakesOneDocument() {
        client.all().readBack();
        atOnce(signed(client.walker()), "/answers/sign");
        assertThat(documents()).isEqualTo(1);
        client.walker().post("/answers/sign", signed(open("/answers/sign"))).expect(200);
        assertThat(documents()).isEqualTo(2);
    }

    /** The fields of the sign page, filled in. */
    private static List<Map.Entry<String, String>> signed(Walker walker) {
        ArrayList<Map.Entry<String, String>> fields = new ArrayList<>(walker.fields("main form"));
        fields.removeIf(f -> List.of("typed", "mark", "strokes", "agree").contains(f.getKey()));
        walker.page().select("input[name=agree]").eachAttr("value").forEach(id -> fields.add(Map.entry("agree", id)));
        fields.add(Map.entry("mark", "typed"));
        fields.add(Map.entry("typed", "Ottilie Brandt"));
        return fields;
    }

    private void atOnce(List<Map.Entry<String, String>> fields, String path) {
        List<CompletableFuture<Walker>> sent =
            java.util.stream.IntStream.range(0, 3).mapToObj(i -> CompletableFuture.supplyAsync(() -> {
                var tab = new Walker();
                tab.cookies().putAll(client.walker().cookies());
                return tab.post(path, fields);
            })).toList();
        sent.forEach(tab -> decent(tab.join()).expect(200));
    }

    @Test
    void unknownFieldsAreNotLookedAt() {
        open("/answers/reactions");
        ArrayList<Map.Entry<String, String>> fields = new ArrayList<>(client.walker().fields("main form"));
        List.of("state", "visit", "id", "skin-test.result", "__proto__", "")
            .forEach(name -> fields.add(Map.entry(name, "SIGNED")));
        client.walker().page().select("[data-kind]")
            .forEach(q -> fields.add(Map.entry(q.selectFirst("input").attr("name"), "no")));
        decent(client.walker().post("/answers/reactions", fields)).expect(200);
        assertThat(kept("reactions")).isEqualTo(1);
    }

    @Test
    void anAnswerGivenTwiceIsAskedForAgain() {
        open("/answers/reactions");
        Walker page = send(Map.of("colour-reaction", List.of("yes", "no"))).expect(422);
        assertThat(page.page().select(".mistakes a[href='#colour-reaction']")).hasSize(1);
        assertThat(kept("reactions")).isZero();
    }

    @Test
    void anAnswerThatIsNotOfferedIsAskedForAgain() {
        open("/answers/reactions");
        Walker page = send(Map.of("colour-reaction", List.of("<script>alert(1)</script>"))).expect(422);
        assertThat(page.page().select("main script")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = { "typed", "text", "submission", "mark", "agree" })
    @DisplayName("D13: a doubled field signs nothing")
    void aDoubledFieldSignsNothing(String field) {
        client.all().readBack();
        List<Map.Entry<String, String>> fields = signed(client.walker());
        fields.add(Map.entry(field, "x"));
        fields.add(Map.entry(field, "y"));
        assertThat(decent(client.walker().post("/answers/sign", fields)).response().statusCode()).isIn(400, 422);
        assertThat(documents()).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = { "nonsense", "[", "[]", "[[]]", "[1,2]", "{}", "null", "[[[0.1]]]", "[[[-1,2]]]",
        "[[[\"a\",\"b\"]]]", "[[[1e999,0]]]", "[[[0.1,0.1,0.1]]]" })
    @DisplayName("D13: what is no drawing signs nothing")
    void aForgedDrawingSignsNothing(String strokes) {
        client.all().readBack();
        List<Map.Entry<String, String>> fields = signed(client.walker());
        fields.removeIf(f -> f.getKey().equals("mark"));
        fields.add(Map.entry("mark", "drawn"));
        fields.add(Map.entry("strokes", strokes));
        decent(client.walker().post("/answers/sign", fields)).expect(422);
        assertThat(documents()).isZero();
    }

    @Test
    @DisplayName("D10: nothing is signed that was not read back")
    void withoutReadingBackThereIsNothingToSign() {
        client.all();
        assertThat(open("/answers/sign").at()).isEqualTo("/answers/read-back");
        ArrayList<Map.Entry<String, String>> fields = new ArrayList<>(client.walker().fields("main form"));
        fields.addAll(List.of(Map.entry("mark", "typed"), Map.entry("typed", "Ottilie Brandt"),
            Map.entry("submission", UUID.randomUUID().toString())));
        assertThat(decent(client.walker().post("/answers/sign", fields)).at()).isEqualTo("/answers/read-back");
        assertThat(documents()).isZero();
    }

    @Test
    @DisplayName("D9: a statement left unticked signs nothing and keeps the rest of the page")
    void everyStatementNeedsItsTick() {
        client.all().readBack();
        List<String> ids = client.walker().page().select("input[name=agree]").eachAttr("value");
        Walker page = send(
            Map.of("agree", ids.subList(1, ids.size()), "mark", List.of("typed"), "typed", List.of("Ottilie Brandt")))
            .expect(422);
        assertThat(page.only("input[name=typed]").val()).isEqualTo("Ottilie Brandt");
        assertThat(page.page().select("input[name=agree][checked]").eachAttr("value"))
            .isEqualTo(ids.subList(1, ids.size()));
        assertThat(page.page().select(".mistakes a[href='#statements']")).hasSize(1);
        assertThat(documents()).isZero();
    }

    @Test
    @DisplayName("D10: a page that shows another text than the one to be signed signs nothing")
    void anotherTextIsNotSigned() {
        client.all().readBack();
        List<Map.Entry<String, String>> fields = signed(client.walker());
        fields.removeIf(f -> f.getKey().equals("text"));
        fields.add(Map.entry("text", "0".repeat(64)));
        decent(client.walker().post("/answers/sign", fields)).expect(422);
        assertThat(documents()).isZero();
    }

    @Test
    @DisplayName("D13: another visit's submission signs nothing here")
    void anotherVisitsSubmissionIsNotTaken() {
        client.all().readBack();
        List<Map.Entry<String, String>> mine = signed(client.walker());
        client.walker().post("/answers/sign", mine).expect(200);
        String submission =
            mine.stream().filter(f -> f.getKey().equals("submission")).findFirst().orElseThrow().getValue();
        Answering other = knocking.come(make.visit(LocalDate.of(1965, 3, 4)), Map.of()).agree().all().readBack();
        List<Map.Entry<String, String>> theirs = signed(other.walker());
        theirs.removeIf(f -> f.getKey().equals("submission"));
        theirs.add(Map.entry("submission", submission));
        assertThat(decent(other.walker().post("/answers/sign", theirs)).response().statusCode()).isIn(400, 422);
        assertThat(documents()).isEqualTo(1);
    }

    @Test
    @DisplayName("D14: an answer changed after signing wants reading and signing again; version 2 supersedes version 1")
    void aChangeAfterSigningIsSignedAnew() {
        client.all().readBack().sign("Ottilie Brandt");
        open("/answers/reactions");
        send(Map.of("colour-reaction", List.of("dont-know"))).expect(200);
        client.all();
        assertThat(open("/answers/sign").at()).isEqualTo("/answers/read-back");
        client.readBack().sign("Ottilie Brandt");
        List<SignedConsent> all = consents.all(visit);
        assertThat(all).extracting(c -> c.versionNo()).containsExactly(2, 1);
        assertThat(all.get(0).supersedes()).contains(all.get(1).id());
        assertThat(consents.pdf(all.get(1))).isNotEqualTo(consents.pdf(all.get(0)));
    }

    @Test
    @DisplayName("F7: a page overtaken in a second window keeps its words, says so, and can be sent again")
    void twoWindowsDoNotOverwriteEachOther() {
        open("/answers/health");
        ArrayList<Map.Entry<String, String>> first = nothingToTell();
        open("/answers/health");
        send(note("from the second window")).expect(200);
        first.removeIf(f -> f.getKey().equals("anything-else"));
        first.add(Map.entry("anything-else", "from the first window"));
        Walker page = decent(client.walker().post("/answers/health", first)).expect(422);
        assertThat(page.only(".mistakes li").text()).contains("in another window");
        assertThat(page.only("textarea").val()).isEqualTo("from the first window");
        send(Map.of()).expect(200);
        assertThat(kept("health")).isEqualTo(2);
    }

    @Test
    @DisplayName("F7: going back to a page and saying something else on it is not taken for the same page sent again")
    void otherWordsFromTheSamePageAreNotLost() {
        open("/answers/health");
        ArrayList<Map.Entry<String, String>> page = nothingToTell();
        send(note("at first")).expect(200);
        page.removeIf(f -> f.getKey().equals("anything-else"));
        page.add(Map.entry("anything-else", "on second thoughts"));
        decent(client.walker().post("/answers/health", page)).expect(422);
        assertThat(client.walker().only("textarea").val()).isEqualTo("on second thoughts");
        send(Map.of()).expect(200);
        assertThat(open("/answers/health").only("textarea").val()).isEqualTo("on second thoughts");
    }

    @Test
    @DisplayName("F1: a NUL or half a letter in any field is no accident of ours")
    void whatNoHandTypesDoesNoHarm() {
        open("/answers/health");
        send(Map.of("anything-else", List.of("a\0b\uFFFE"), "submission", List.of("\0")));
        send(Map.of());
        assertThat(kept("health")).isLessThanOrEqualTo(2);
    }
}
