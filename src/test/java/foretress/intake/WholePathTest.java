package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.MovedClock;
import foretress.Walker;
import foretress.assessment.Assessment;
import foretress.assessment.Assessor;
import foretress.consent.Consents;
import foretress.invitation.Invitations;
import foretress.knowledge.Knowledge;
import foretress.questionnaire.Answer;
import foretress.salon.OpenSalon;
import foretress.seal.SealCheck;
import foretress.seal.Seals;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The main path through the real forms: link, birth date, notice, answers, reading back, signing, the copy, the stylist. */
@QuarkusTest
class WholePathTest {
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Invitations invitations;
    @Inject Consents consents;
    @Inject Seals seals;
    @Inject Assessments assessments;
    @Inject Knowledge knowledge;
    @Inject MovedClock clock;
    @Inject Intake intake;
    @Inject Knocking knocking;
    UUID visit;

    @BeforeEach
    void aClientIsInvited() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
    }

    @AfterEach
    void backToNow() {
        clock.reset();
    }

    private Answering client(Map<String, List<String>> told) {
        String link = invitations.issueLink(visit, "server").replaceAll("^https?://[^/]+", "");
        Walker walker = new Walker().open(link)
            .send(Map.of("day", "4", "month", "3", "year", "1965"));
        return new Answering(walker, told);
    }

    @Test
    @DisplayName("R52: what was ticked is told on a page of its own; changing it from reading back leads back there")
    void whatWasTickedIsToldAndChanged() {
        Answering client = client(Map.of("treatments.what", List.of("restorer"), "treatments.when.precision",
            List.of("year"), "treatments.when.year", List.of("2024"), "treatments.zone", List.of("whole"))).agree()
            .all();
        assertThat(client.pages()).contains("/answers/treatments").doesNotContain("/answers/home-colour");
        Walker page = client.walker().open("/answers/treatments?again=yes").expect(200);
        assertThat(page.page().select("input[name=treatments.tick][checked]").eachAttr("value"))
            .containsExactly("restorer");
        page.open(page.only("ul.lines a").attr("href")).expect(200);
        assertThat(page.only("input[name=treatments.when.year]").attr("value")).isEqualTo("2024");
        client.send(Map.of("treatments.zone", List.of("ends"))).walker().expect(200);
        assertThat(page.at()).isEqualTo("/answers/read-back");
        assertThat(page.text()).contains("2024, the ends, at home");
    }

    @DisplayName("A7, D10, D13: a client answers, reads back, signs by typing and gets the very bytes the salon keeps, under its seal")
    @Test
    void aClientAnswersSignsAndGetsACopy() throws Exception {
        Answering client = client(Map.of()).agree().all().readBack().sign("Ottilie Brandt");
        client.walker().expect(200);
        assertThat(client.walker().at()).isEqualTo("/answers/done");
        byte[] copy = client.walker().open("/answers/copy").expect(200).response().asByteArray();
        byte[] signed = consents.pdf(consents.latest(visit).orElseThrow());
        assertThat(Arrays.copyOf(copy, signed.length)).isEqualTo(signed);
        assertThat(SealCheck.of(copy, seals.certificates())).isEqualTo(SealCheck.Verdict.UNCHANGED);
        assertThat(client.walker().open("/answers/copy").response().asByteArray()).isEqualTo(copy);
        assertThat(salon.as("petra").open("/visits/" + visit + "/consent/1").response().asByteArray()).isEqualTo(copy);
        String text = new PDFTextStripper().getText(Loader.loadPDF(copy));
        assertThat(text).contains("Ottilie Brandt", "Alder & Wren", "How this was signed");
    }

    @Test
    void theStylistSeesTheLotionTheMapTheTestAndTheSignedPaper() {
        client(Map.of("darkening-lotion", List.of("some-time-ago"), "treatments.what", List.of("restorer"),
            "treatments.when.precision", List.of("years-ago"), "treatments.when.ago", List.of("1-2"), "treatments.zone",
            List.of("whole")))
            .agree().all().readBack().sign("Ottilie Brandt");
        Walker stylist = salon.as("petra").open("/visits/" + visit).expect(200);
        assertThat(stylist.only("h1").text()).startsWith("Test first");
        assertThat(stylist.text()).contains("Incompatibility test", "Darkening lotion", "Consent 1, signed");
        assertThat(stylist.page().select(".strand-svg")).isNotEmpty();
        assertThat(stylist.open("/day").expect(200).text()).contains("Ottilie Brandt");
        assertThat(stylist.open("/visits/" + visit + "/consent/1").response().contentType())
            .isEqualTo("application/pdf");
    }

    @DisplayName("F20: what was found can be found again from the stored facts, with the rules of that version")
    @Test
    void aKeptAssessmentIsExplainedByItsOwnFacts() {
        client(Map.of("darkening-lotion", List.of("some-time-ago"), "asthma", List.of("yes"))).agree().all().readBack()
            .sign("Ottilie Brandt");
        QuarkusTransaction.requiringNew().run(() -> {
            KeptAssessment kept = KeptAssessment.newest(visit).orElseThrow();
            Assessment then = assessments.read(kept);
            Assessment again =
                Assessor.assess(knowledge.ruleSet(), then.facts(), assessments.looked(Visit.findById(visit)));
            assertThat(kept.body()).doesNotContain("metal");
            assertThat(then.ruleSetHash()).isEqualTo(kept.ruleSetSha256()).isEqualTo(knowledge.ruleSet().hash());
            assertThat(again.findings()).isEqualTo(then.findings()).isNotEmpty();
            assertThat(again.standings()).isEqualTo(then.standings());
        });
    }

    @Test
    @DisplayName("R2: the ingredient list typed on a phone reaches the rules")
    void aLabelReachesTheRulesFromAPhone() {
        Map<String, List<String>> told =
            Map.of("last-colour-by", List.of("self"), "ingredient-list", List.of("Aqua, Lead Acetate, Sulfur"));
        assertThat(client(told).agree().all().pages()).contains("/answers/last-colour");
        assertThat(salon.as("petra").open("/visits/" + visit).expect(200).text()).contains("Lead Acetate");
    }

    @Test
    @DisplayName("R18: client and stylist are told what a word of the label was read as")
    void whatWasReadIsToldToBoth() {
        Map<String, List<String>> told =
            Map.of("last-colour-by", List.of("self"), "ingredient-list", List.of("Aqua, Plumbi acetas, Sulfur"));
        String read = "“Plumbi acetas” was read as LEAD ACETATE.";
        assertThat(client(told).agree().all().readBack().walker().expect(200).text()).contains(read);
        assertThat(salon.as("petra").open("/visits/" + visit).expect(200).text()).contains(read);
    }

    @Test
    @DisplayName("R7: what an answer opened comes alone, says why, and neither Back nor a reload nor a mistake loses anything")
    void whatAnAnswerOpenedStandsAlone() {
        Answering client = client(Map.of("extensions", List.of("yes"))).agree();
        while (!client.walker().at().equals("/answers/hair-now?opened=yes")) {
            client.page();
        }
        Walker page = client.walker();
        assertThat(page.page().select("[data-kind]")).hasSize(1);
        assertThat(page.text()).contains("You said", "Yes");
        client.send(Map.of());
        assertThat(page.expect(422).page().select("[data-kind]")).hasSize(1);
        page.open("/answers/hair-now?opened=yes").expect(200);
        client.page();
        assertThat(page.open("/answers/hair-now?opened=yes").only("input[name=extensions-kind][checked]").attr("value"))
            .isNotEmpty();
        assertThat(page.open(page.page().selectFirst(".links a").attr("href")).expect(200).page()
            .select("input[name=extensions][value=yes][checked]")).hasSize(1);
    }

    @Test
    @DisplayName("R6: who agreed once and comes back to the notice goes on from there, with nothing to tick")
    void theNoticeLeadsOnOnceItWasAgreedTo() {
        Walker walker = client(Map.of()).agree().page().walker();
        String reached = walker.at();
        assertThat(walker.open("/answers/notice").expect(200).page().select("input[name=agree]")).isEmpty();
        assertThat(walker.open(walker.only("a.main").attr("href")).expect(200).at()).isEqualTo(reached);
    }

    @Test
    @DisplayName("R2: an optional question left empty was asked, and is not asked again")
    void whatMayBeLeftEmptyIsAskedOnce() {
        Answering client = client(Map.of("last-colour-by", List.of("self"))).agree().all();
        assertThat(client.pages().stream().filter("/answers/last-colour"::equals)).hasSize(1);
        assertThat(client.readBack().walker().at()).isEqualTo("/answers/sign");
    }

    @Test
    void whoSaysItDifferentlyComesStraightBackToReading() {
        Map<String, List<String>> told = new HashMap<>();
        Answering client = client(told).agree().all();
        told.put("extensions", List.of("yes"));
        client.walker().open("/answers/hair-now?again=yes");
        client.page();
        assertThat(client.walker().at()).isEqualTo("/answers/hair-now?opened=yes&again=yes");
        client.page();
        assertThat(client.walker().at()).isEqualTo("/answers/read-back");
    }

    @Test
    @DisplayName("R6: an answer changed after signing is not called signed; it is read back and signed again")
    void anAnswerChangedAfterSigningWantsASignatureOfItsOwn() {
        Map<String, List<String>> told = new HashMap<>();
        Answering client = client(told).agree().all().readBack().sign("Ottilie Brandt");
        told.put("darkening-lotion", List.of("yes"));
        client.walker().open("/answers/treatments").expect(200);
        client.page().page().page();
        Walker done = client.walker().open("/answers/done").expect(200);
        assertThat(done.text()).contains("Not signed yet", "Signed before the change")
            .doesNotContain("Signed. Thank you");
        assertThat(done.open(done.only("a.main").attr("href")).at()).isEqualTo("/answers/read-back");
        assertThat(client.walker().open("/answers/sign").at()).isEqualTo("/answers/read-back");
        client.readBack().sign("Ottilie Brandt");
        assertThat(client.walker().at()).isEqualTo("/answers/done");
        assertThat(consents.all(visit)).extracting(c -> c.versionNo()).containsExactly(2, 1);
    }

    @Test
    @DisplayName("R47: a client who refuses a test says so, signs no consent to the service, and staff see that it does not go ahead")
    void aRefusedTestIsRecordedAndTheServiceDoesNotGoAhead() {
        Answering client = client(Map.of()).agree().all().readBack();
        Walker page = client.walker();
        page.open(page.only("a[href=/answers/tests]").attr("href")).expect(200).send(Map.of("refuse", "skin-test"));
        assertThat(page.expect(200).at()).isEqualTo("/answers/sign");
        assertThat(page.only("#statements").text())
            .contains("I do not want these tests: skin test", "cannot go ahead as booked")
            .doesNotContain("I agree to these", "I agree to permanent");
        client.sign("Ottilie Brandt");
        assertThat(page.expect(200).at()).isEqualTo("/answers/done");
        assertThat(page.text()).contains("cannot go ahead").doesNotContain("Skin test: please come in");
        Walker stylist = salon.as("petra").open("/visits/" + visit).expect(200);
        assertThat(stylist.text()).contains("The client does not want this test: Skin test");
        assertThat(stylist.open("/visits/" + visit + "/decision").expect(200).text())
            .contains("Nobody can go against this.");
    }

    @Test
    @DisplayName("R44: a client whose service is off reads what she could have instead, asks for it by a tap, and may take it back; staff see it")
    void whoseServiceIsOffAsksForAnother() {
        Walker client = client(Map.of("colour-reaction", List.of("yes"), "colour-reaction-what", List.of("swelling"),
            "colour-reaction-soon", List.of("two-days"), "colour-reaction-ago", List.of("longer"))).agree().all()
            .readBack().sign("Ottilie Brandt").walker();
        assertThat(client.at()).isEqualTo("/answers/done");
        client.open(client.only("a[href=/answers/instead]").attr("href")).expect(200);
        assertThat(client.page().select("ol.instead h2").eachText()).hasSizeBetween(2, 3)
            .doesNotContain("Permanent colour, whole hair").contains("Reconditioning treatment");
        assertThat(client.text()).contains("cannot go ahead as booked", "Lasts", "Earliest");
        String wish = client.page().select("ol.instead button[name=wish]").attr("value");
        String name = client.page().select("ol.instead h2").first().text();
        client.send(Map.of("wish", wish)).expect(200);
        client.send(Map.of("wish", wish)).expect(200);
        assertThat(client.at()).isEqualTo("/answers/instead");
        assertThat(client.text()).contains("We have told the salon that you would like: " + name);
        assertThat(client.page().select("ol.instead li").first().text()).as("said where the button was")
            .contains("You asked for this.");
        assertThat(client.page().select("ol.instead li").first().select("button")).isEmpty();
        assertThat(client.page().select("ol.instead button")).as("another may still be asked for").isNotEmpty();
        assertThat(rows("select count(*) from service_wish where visit_id = ?1")).as("tapped twice, kept once")
            .isEqualTo(1);
        assertThat(rows("select count(*) from service_wish where visit_id = ?1 and body like '%" + wish + "%'"))
            .as("sealed").isZero();
        assertThat(salon.as("sanna").open("/desk/visits/" + visit).expect(200).text())
            .contains("The client asks for another service: " + name);
        LocalDate on =
            QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).startsThere().toLocalDate());
        assertThat(salon.as("petra").open("/day?date=" + on).expect(200).text()).contains(name);
        Walker petra = salon.as("petra").open("/visits/" + visit + "?instead=open").expect(200);
        assertThat(petra.text()).contains("The client asks for: " + name, "gentlest first", "Other aims");
        assertThat(petra.page().select(".ways a[href*=plan]")).isNotEmpty();
        assertThat(petra.open(petra.page().select(".ways a[href*=plan]").attr("href")).expect(200).page()
            .select("#plan[open] option[selected]")).isNotEmpty();
        client.send(Map.of("wish", "colour-whole")).expect(200);
        assertThat(client.text()).as("only what is offered").contains("you would like: " + name);
        client.send(Map.of("wish", "")).expect(200);
        assertThat(client.text()).doesNotContain("you would like");
        assertThat(salon.as("sanna").open("/desk/visits/" + visit).expect(200).text())
            .doesNotContain("asks for another service");
    }

    private long rows(String sql) {
        return QuarkusTransaction.requiringNew().call(() -> ((Number) Visit.getEntityManager()
            .createNativeQuery(sql).setParameter(1, visit).getSingleResult()).longValue());
    }

    @Test
    @DisplayName("R44: a client whose service goes ahead is offered nothing else, and can ask for nothing")
    void whoseServiceGoesAheadIsOfferedNothingElse() {
        Walker client = client(Map.of()).agree().all().readBack().sign("Ottilie Brandt").walker();
        assertThat(client.page().select("a[href=/answers/instead]")).isEmpty();
        assertThat(client.open("/answers/instead").at()).isNotEqualTo("/answers/instead");
    }

    @Test
    @DisplayName("R47: who changes her mind about a test after signing signs again")
    void anotherMindAboutATestWantsASignatureOfItsOwn() {
        Answering client = client(Map.of()).agree().all().readBack();
        client.walker().open("/answers/tests").send(Map.of("refuse", "skin-test"));
        client.sign("Ottilie Brandt");
        Walker page = client.walker().open("/answers/tests");
        assertThat(page.page().select("input[name=refuse][value=skin-test][checked]")).hasSize(1);
        client.send(Map.of("refuse", List.of()));
        assertThat(page.at()).isEqualTo("/answers/sign");
        assertThat(page.open("/answers/done").text()).contains("Not signed yet");
        assertThat(salon.as("petra").open("/visits/" + visit + "/decision").expect(200).text())
            .contains("A test came in or fell away after the client signed");
        page.open("/answers/sign");
        client.sign("Ottilie Brandt");
        assertThat(page.text()).contains("Signed. Thank you");
    }

    private Answering signed(Map<String, List<String>> told) {
        return client(told).agree().all().readBack().sign("Ottilie Brandt");
    }

    private String state() {
        return QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).state.name());
    }

    @Test
    @DisplayName("R52: how the scalp is, is asked in the last two days, by the same link, and leaves signed what was signed")
    void whatOnlyTheLastDaysAskIsAskedThen() {
        Answering client = signed(Map.of());
        assertThat(client.pages()).doesNotContain("/answers/today");
        assertThat(client.walker().text()).contains("this link asks how your scalp is");
        assertThat(client.walker().page().select("a[href^=/answers/today]")).isEmpty();
        clock.move(Duration.ofDays(3));
        Walker phone = client.walker().open("/answers/done").expect(200);
        phone.open(phone.only("a[href^=/answers/today]").attr("href"));
        assertThat(phone.page().select("[name=scalp-today]")).isNotEmpty();
        assertThat(client.page().walker().at()).isEqualTo("/answers/done");
        assertThat(phone.text()).contains("Signed. Thank you").doesNotContain("your scalp");
        assertThat(state()).isEqualTo("SIGNED");
    }

    @Test
    @DisplayName("R52: until the skin of the day is asked, the client and the stylist read beside what was found that it is not")
    void whatIsShownBeforeTheDaySaysWhatItTakesForGranted() {
        Answering client = client(Map.of()).agree().all().readBack();
        assertThat(client.walker().only("section[data-part=found]").text()).contains("Not asked yet: your skin");
        client.sign("Ottilie Brandt");
        assertThat(beside()).contains("The skin of the day is not asked yet");
        clock.move(Duration.ofDays(3));
        client.walker().open("/answers/today?again=yes");
        client.page();
        assertThat(beside()).doesNotContain("The skin of the day is not asked yet");
    }

    private String beside() {
        return salon.as("petra").open("/visits/" + visit).expect(200).text();
    }

    @Test
    @DisplayName("R52: something found in the last two days wants a signature of its own")
    void whatIsFoundInTheLastDaysIsSignedAnew() {
        Map<String, List<String>> told = new HashMap<>();
        Answering client = signed(told);
        clock.move(Duration.ofDays(3));
        told.put("scalp-today", List.of("broken"));
        client.walker().open("/answers/today?again=yes");
        assertThat(client.page().walker().at()).isEqualTo("/answers/read-back");
        assertThat(state()).isEqualTo("ANSWERING");
    }

    @Test
    @DisplayName("R52: on the day itself what nobody asked about the scalp is not taken for a no")
    void onTheDayWhatWasNotAskedIsUnknown() {
        signed(Map.of());
        String before = standing();
        clock.move(Duration.ofDays(5));
        assertThat(standing()).isNotEqualTo(before);
    }

    private String standing() {
        return QuarkusTransaction.requiringNew().call(() -> {
            Visit one = Visit.findById(visit);
            return assessments.of(one, intake.said(one)).findings().toString();
        });
    }

    @Test
    @DisplayName("R16: consent is taken back on the client's own link, in two presses: kept, the visit stopped, the salon told")
    void consentIsTakenBackAsEasilyAsGiven() {
        Walker phone = signed(Map.of()).walker();
        phone.open(phone.only("a[href=/answers/take-back]").attr("href")).expect(200);
        assertThat(state()).isEqualTo("SIGNED");
        assertThat(phone.send(Map.of()).expect(200).text()).contains("You took your consent back",
            "Alder & Wren knows");
        assertThat(state()).isEqualTo("WITHDRAWN");
        assertThat(consents.latest(visit)).isPresent();
        assertThat(phone.open("/answers/done").expect(200).at()).as("nothing more to answer")
            .isEqualTo("/answers/after");
        Walker desk = salon.as("sanna").open("/desk");
        assertThat(desk.page().select("li:has(a[href=/desk/visits/" + visit + "])").text()).contains("Ottilie Brandt");
        visit = make.again(visit);
        phone.open(knocking.link(visit)).send(Map.of("day", "4", "month", "3", "year", "1965"));
        assertThat(phone.at()).as("neither answers nor the yes to the notice outlive it").isEqualTo("/answers/notice");
    }

    @Test
    @DisplayName("R52: the visit goes into a calendar: where and when, never what for")
    void theVisitGoesIntoACalendar() {
        Walker phone = signed(Map.of()).walker();
        String file = phone.open("/answers/visit.ics").expect(200).response().asString();
        assertThat(phone.response().contentType()).startsWith("text/calendar");
        assertThat(file).startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n").endsWith("END:VCALENDAR\r\n")
            .contains("LOCATION:3 Millrace Lane\\, Tarnbeck").containsPattern("DTSTART:\\d{8}T\\d{6}Z")
            .doesNotContainIgnoringCase("colour");
        assertThat(file.lines()).allMatch(line -> line.length() <= 75);
    }

    private Answering comesAgain(Answering before, Map<String, List<String>> told) {
        clock.move(Duration.ofDays(42));
        visit = make.again(visit);
        before.walker().open(invitations.issueLink(visit, "server").replaceAll("^https?://[^/]+", ""))
            .send(Map.of("day", "4", "month", "3", "year", "1965"));
        return new Answering(before.walker(), told);
    }

    @Test
    @DisplayName("R52: a client who comes again confirms what was said last time; only what changed is asked")
    void lastTimesAnswersAreConfirmed() {
        Map<String, List<String>> told = new HashMap<>();
        Answering again = comesAgain(signed(told), told);
        assertThat(again.walker().at()).isEqualTo("/answers/last-time");
        assertThat(QuarkusTransaction.requiringNew().call(() -> KeptTopic.sent(visit))).isEmpty();
        told.put("henna", List.of("yes"));
        again.send(Map.of("changed", List.of("treatments")));
        assertThat(again.walker().at()).isEqualTo("/answers/treatments");
        again.all().readBack().sign("Ottilie Brandt");
        assertThat(again.walker().at()).isEqualTo("/answers/done");
        assertThat(again.pages()).contains("/answers/treatments").doesNotContain("/answers/reactions");
    }

    @Test
    @DisplayName("R52: what was not known last time, and what has passed its time, is asked again")
    void whatWasNotKnownIsAskedAgain() {
        Map<String, List<String>> told = new HashMap<>(Map.of("skin-tested", List.of("dont-know")));
        Answering again = comesAgain(signed(told), told);
        told.clear();
        again.readBack();
        assertThat(again.walker().at()).startsWith("/answers/elsewhere");
        assertThat(again.walker().page().select("[name=skin-tested]")).isNotEmpty();
        assertThat(again.walker().page().select("[name=work-exposure]")).isEmpty();
    }

    @Test
    @DisplayName("R52: a browser that never answered for the client shows nothing of last time")
    void anotherBrowserShowsNothingOfLastTime() {
        signed(Map.of("henna", List.of("yes"), "henna-powder", List.of("indigo")));
        Answering other = comesAgain(new Answering(new Walker(), Map.of()), Map.of());
        assertThat(other.walker().at()).isEqualTo("/answers/notice");
        other.send(Map.of("agree", List.of("yes"), "act", List.of("agree")));
        assertThat(other.walker().at()).isEqualTo("/answers/last-time");
        assertThat(other.walker().text()).doesNotContain("Henna", "indigo");
        other.walker().post("/answers/last-time", List.of());
        assertThat(QuarkusTransaction.requiringNew().call(() -> KeptTopic.sent(visit))).isEmpty();
    }

    @Test
    @DisplayName("R52: a borrowed phone that was made to forget shows nothing of last time")
    void aBrowserThatForgotShowsNothingOfLastTime() {
        Answering borrowed = signed(Map.of());
        borrowed.walker().open("/answers/stop").send("form[action$=forget]", Map.of());
        assertThat(comesAgain(borrowed, Map.of()).walker().at()).isEqualTo("/answers/notice");
    }

    @Test
    @DisplayName("R35: whoever knows nothing reads a few lines by topic, not one finding after the other")
    void whatIsNotKnownIsGatheredByTopic() {
        Answering client = client(knocking.knowsNothing()).agree().all();
        assertThat(client.walker().page().select(".read summary").eachText())
            .contains("Past reactions Don't know");
        client.readBack();
        assertThat(client.walker().text()).contains("You were not sure about: Past reactions, ");
        assertThat(client.walker().page().select("p.found")).hasSizeLessThan(8);
    }

    @Test
    @DisplayName("R35: whoever knows nothing signs four pages at most; every question they did not know the answer to stands on them, and every statement")
    void whatIsNotKnownFitsOnFourPages() throws Exception {
        Answering client = client(knocking.knowsNothing()).agree().all().readBack();
        List<String> agreed = client.walker().page().select("#statements label").eachText();
        byte[] copy = client.sign("Ottilie Brandt").walker().expect(200).open("/answers/copy").expect(200).response()
            .asByteArray();
        Files.createDirectories(Path.of("target/paper"));
        Files.write(Path.of("target/paper/knows-nothing.pdf"), copy);
        try (PDDocument paper = Loader.loadPDF(copy)) {
            assertThat(paper.getNumberOfPages()).isLessThanOrEqualTo(4);
            String text = flat(new PDFTextStripper().getText(paper));
            List<String> unknown = unknown();
            assertThat(unknown).hasSizeGreaterThan(40);
            String listed = text.substring(text.indexOf(flat("Don't know Past reactions:")), text.indexOf("Signature"));
            assertThat(unknown)
                .allSatisfy(question -> assertThat(listed).containsPattern("[:;] " + Pattern.quote(flat(question))));
            assertThat(agreed).isNotEmpty().allSatisfy(statement -> assertThat(text).contains(flat(statement)));
        }
    }

    /** What the client did not know, as the questions are called. */
    private List<String> unknown() {
        return QuarkusTransaction.requiringNew().call(() -> intake.said(Visit.findById(visit))).byQuestion().entrySet()
            .stream()
            .filter(e -> e.getValue().equals(Answer.DONT_KNOW))
            .map(e -> knowledge.words("en").question(e.getKey()).short_()).toList();
    }

    private static String flat(String text) {
        return text.replace('’', '\'').replaceAll("\\s+", " ");
    }

    @Test
    void aSevereReactionIsAnsweredAtOnceWithUrgentSignsAndANamedCall() {
        Answering client =
            client(Map.of("colour-reaction", List.of("yes"), "colour-reaction-what", List.of("swelling", "breathing")))
                .agree();
        client.page();
        client.page();
        assertThat(client.walker().at()).isEqualTo("/answers/care");
        assertThat(client.walker().text()).contains("Unwell now?", "Call 999", "Petra Lind telephones you");
        client.all().readBack();
        assertThat(client.walker().only(".lead").text()).as("R15").startsWith("My answers before")
            .doesNotContain("Consent");
        client.sign("Ottilie Brandt");
        assertThat(client.walker().expect(200).text()).as("R15")
            .contains("use no hair colour", "Petra Lind telephones you", "Call 999", "has your answers")
            .doesNotContain("your consent");
        Walker stylist = salon.as("petra").open("/visits/" + visit).expect(200);
        assertThat(stylist.only("h1").text()).startsWith("Prevents");
        assertThat(stylist.text()).doesNotContain("Skin testbegun");
    }
}
