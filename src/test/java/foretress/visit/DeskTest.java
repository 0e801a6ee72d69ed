package foretress.visit;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.MovedClock;
import foretress.Walker;
import foretress.consent.Consents;
import foretress.consent.Evidence;
import foretress.intake.Answering;
import foretress.intake.Knocking;
import foretress.intake.Refusals;
import foretress.salon.OpenSalon;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The desk books, sees who has answered and what is owed by when, and never why. */
@QuarkusTest
class DeskTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Tasks tasks;
    @Inject MovedClock clock;
    @Inject Consents consents;
    @Inject Knocking knocking;
    @Inject Refusals refusals;

    @BeforeEach
    void open() {
        salon.open();
    }

    @AfterEach
    void backToNow() {
        clock.reset();
    }

    private Map<String, String> filled(String family, String date, String time) {
        var fields = new HashMap<String, String>();
        fields.put("given", "Wanda");
        fields.put("family", family);
        fields.put("email", "wanda@post.example");
        fields.put("phone", "+44 1632 960 221");
        fields.put("birth-day", "9");
        fields.put("birth-month", "8");
        fields.put("birth-year", "1971");
        fields.put("date", date);
        fields.put("time", time);
        fields.put("stylist", salon.stylist().id.toString());
        fields.put("service", "highlights");
        return fields;
    }

    private LocalDate inDays(int days) {
        return LocalDate.ofInstant(clock.instant(), LONDON).plusDays(days);
    }

    private static String someName() {
        return "Kubik" + UUID.randomUUID().toString().substring(0, 8);
    }

    private static long visitsOf(String family) {
        return QuarkusTransaction.requiringNew().call(() -> Visit.count("client.familyName", family));
    }

    @Test
    void aBookedVisitStandsInTheListAndOnItsOwnPage() {
        String name = someName();
        Walker desk =
            salon.as("sanna").open("/desk/new-visit").send(filled(name, inDays(3).toString(), "13:00")).expect(200);
        assertThat(desk.at()).matches("/desk/visits/[0-9a-f-]{36}");
        assertThat(desk.text()).contains("Wanda " + name, "13:00", "with Petra Lind", "No link was made yet");
        assertThat(desk.open("/desk").only("tr:contains(" + name + ")").text()).contains("13:00", "No link sent yet");
    }

    @Test
    @DisplayName("R4: at booking the desk sees what the service owes at least, that it is too soon, and from when on it could be; never an answer")
    void theDeskSeesAtBookingWhatIsOwedAtLeast() {
        String name = someName();
        Map<String, String> tomorrow = filled(name, inDays(1).toString(), "13:00");
        tomorrow.put("act", "look");
        Walker desk = salon.as("sanna").open("/desk/new-visit").send(tomorrow).expect(200);
        assertThat(desk.only("#foreseen").text()).contains("Skin test needs 48 hours", "too soon",
            "The earliest visit is");
        assertThat(desk.only("#family").val()).as("everything typed stays").isEqualTo(name);
        assertThat(visitsOf(name)).as("looking books nothing").isZero();
        desk.send(filled(name, inDays(1).toString(), "13:00")).expect(200);
        assertThat(desk.at()).matches("/desk/visits/[0-9a-f-]{36}");
        assertThat(desk.only("#foreseen").text()).contains("Skin test needs 48 hours", "more may follow");
        desk.open("/desk");
        assertThat(desk.only("tr:contains(" + name + ")").text()).contains("at least: Skin test");
    }

    @Test
    void theSameFormTwiceIsOneVisitAndOneClient() {
        String name = someName();
        Walker desk = salon.as("sanna").open("/desk/new-visit");
        ArrayList<Map.Entry<String, String>> sent = new ArrayList<>(desk.fields("main form"));
        sent.removeIf(f -> filled(name, "", "").containsKey(f.getKey()));
        filled(name, inDays(3).toString(), "13:00").forEach((k, v) -> sent.add(Map.entry(k, v)));
        String first = desk.post("/desk/new-visit", sent).expect(200).at();
        String second = desk.post("/desk/new-visit", sent).expect(200).at();
        assertThat(second).isEqualTo(first);
        assertThat(visitsOf(name)).isOne();
        assertThat(QuarkusTransaction.requiringNew().call(() -> Client.count("familyName", name))).isOne();
    }

    @Test
    void theSameFormEightTimesAtOnceIsOneVisitAndOneClient() throws Exception {
        String name = someName();
        Walker desk = salon.as("sanna").open("/desk/new-visit");
        ArrayList<Map.Entry<String, String>> sent = new ArrayList<>(desk.fields("main form"));
        sent.removeIf(f -> filled(name, "", "").containsKey(f.getKey()));
        filled(name, inDays(3).toString(), "13:00").forEach((k, v) -> sent.add(Map.entry(k, v)));
        ExecutorService threads = Executors.newFixedThreadPool(8);
        try {
            List<Callable<Integer>> posts = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                posts.add(() -> {
                    var walker = new Walker();
                    walker.cookies().putAll(desk.cookies());
                    return walker.post("/desk/new-visit", sent).response().statusCode();
                });
            }
            for (Future<Integer> one : threads.invokeAll(posts)) {
                assertThat(one.get()).isEqualTo(200);
            }
        } finally {
            threads.shutdown();
        }
        assertThat(visitsOf(name)).isOne();
        assertThat(QuarkusTransaction.requiringNew().call(() -> Client.count("familyName", name))).isOne();
    }

    @Test
    void everythingTypedStaysWhenSomethingIsWrong() {
        Map<String, String> wrong = filled("Kubik", "", "25:00");
        wrong.put("email", "wanda.example");
        wrong.put("given", "");
        wrong.put("birth-day", "31");
        wrong.put("birth-month", "2");
        Walker desk = salon.as("sanna").open("/desk/new-visit").send(wrong).expect(422);
        assertThat(desk.page().title()).startsWith("Please look again");
        assertThat(desk.only("#family").val()).isEqualTo("Kubik");
        assertThat(desk.only("#email").val()).isEqualTo("wanda.example");
        assertThat(desk.only("#birth-day").val()).isEqualTo("31");
        assertThat(desk.only("#birth-month option[selected]").text()).isEqualTo("February");
        assertThat(desk.only("#stylist option[selected]").text()).isEqualTo("Petra Lind");
        assertThat(desk.page().select("input[name=service][value=highlights]").hasAttr("checked")).isTrue();
    }

    /** A6: the summary's link leads to the field, and says the same words as stand beside it. */
    @Test
    void eachMistakeStandsInTheSummaryAndBesideItsField() {
        Map<String, String> wrong = filled("", "2001-01-01", "");
        wrong.put("given", "");
        wrong.put("email", "wanda@");
        wrong.put("phone", "ring me");
        wrong.put("birth-year", "71");
        wrong.put("stylist", "");
        wrong.remove("service");
        Walker desk = salon.as("sanna").open("/desk/new-visit").send(wrong).expect(422);
        Elements links = desk.page().select(".mistakes a");
        assertThat(links.eachAttr("href")).containsExactlyInAnyOrder("#given", "#family", "#birth-day", "#email",
            "#phone",
            "#date", "#time", "#stylist", "#services");
        for (Element link : links) {
            String id = link.attr("href").substring(1);
            assertThat(desk.only("#" + id)).isNotNull();
            assertThat(desk.only("#" + id + "-mistake").text()).isEqualTo(link.text());
        }
    }

    /** E13: the clocks go forward at 01:00 on the last Sunday of March (IANA time zone database, Europe/London). */
    @Test
    void aTimeTheClockSkipsIsRefusedWithTheReason() {
        LocalDate spring = lastSundayAhead(3);
        Walker desk =
            salon.as("sanna").open("/desk/new-visit").send(filled(someName(), spring.toString(), "01:30")).expect(422);
        assertThat(desk.only("#time-mistake").text()).contains("from 01:00 straight to 02:00", "01:30 does not exist");
    }

    @Test
    void ofATimeThatComesTwiceThePersonSaysWhich() {
        LocalDate autumn = lastSundayAhead(10);
        String name = someName();
        Walker desk =
            salon.as("sanna").open("/desk/new-visit").send(filled(name, autumn.toString(), "01:30")).expect(422);
        assertThat(desk.page().select("input[name=turn]")).hasSize(2);
        desk.send(Map.of("turn", "second")).expect(200);
        Visit visit =
            QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>find("client.familyName", name).firstResult());
        assertThat(visit.startsAt).isEqualTo(autumn.atTime(1, 30).atZone(java.time.ZoneOffset.UTC).toInstant());
    }

    private LocalDate lastSundayAhead(int month) {
        LocalDate today = inDays(0);
        LocalDate last = lastSunday(today.getYear(), month);
        return last.isAfter(today) ? last : lastSunday(today.getYear() + 1, month);
    }

    private static LocalDate lastSunday(int year, int month) {
        return java.time.YearMonth.of(year, month).atEndOfMonth()
            .with(java.time.temporal.TemporalAdjusters.previousOrSame(java.time.DayOfWeek.SUNDAY));
    }

    @Test
    void aTonerIsTakenOutByNameAndOnlyThere() {
        String name = someName();
        Map<String, String> form = filled(name, inDays(4).toString(), "09:00");
        form.put("without-toner", "highlights");
        salon.as("sanna").open("/desk/new-visit").send(form).expect(200);
        assertThat(stepsOf(name)).containsExactly("lighten");
        String other = someName();
        Map<String, String> forged = filled(other, inDays(4).toString(), "10:00");
        forged.put("service", "colour-whole");
        forged.put("without-toner", "colour-whole");
        Walker desk = salon.as("sanna").open("/desk/new-visit");
        ArrayList<Map.Entry<String, String>> fields = new ArrayList<>(desk.fields("main form"));
        fields.removeIf(f -> forged.containsKey(f.getKey()));
        forged.forEach((k, v) -> fields.add(Map.entry(k, v)));
        desk.post("/desk/new-visit", fields).expect(200);
        assertThat(stepsOf(other)).containsExactly("colour");
    }

    private static List<String> stepsOf(String family) {
        return QuarkusTransaction.requiringNew()
            .call(() -> Visit.<Visit>find("client.familyName", family).firstResult().services.get(0).stepIds());
    }

    /** B24: names of stored fields do not bind. */
    @Test
    void fieldsThatAreNotOnTheFormChangeNothing() {
        String name = someName();
        Walker desk = salon.as("sanna").open("/desk/new-visit");
        ArrayList<Map.Entry<String, String>> fields = new ArrayList<>(desk.fields("main form"));
        Map<String, String> form = filled(name, inDays(3).toString(), "13:00");
        fields.removeIf(f -> form.containsKey(f.getKey()));
        form.forEach((k, v) -> fields.add(Map.entry(k, v)));
        for (String stored : List.of("id", "state", "standingCode", "standing_code", "answeredAt", "signedAt",
            "owedWhat",
            "birthDateConfirmed", "version", "createdAt")) {
            fields.add(Map.entry(stored, "CLOSED"));
        }
        desk.post("/desk/new-visit", fields).expect(200);
        Visit visit =
            QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>find("client.familyName", name).firstResult());
        assertThat(visit.state).isEqualTo(State.BOOKED);
        assertThat(visit.standing()).isEmpty();
        assertThat(visit.owed()).map(Visit.Owed::what).as("what the booking itself owes, never what was sent")
            .contains("skin-test");
    }

    @Test
    void theDeskSeesWhatIsOwedByWhenAndNeverWhy() {
        UUID id = make.visit(LocalDate.of(1990, 4, 3));
        Instant latest = clock.instant().plus(Duration.ofDays(2));
        QuarkusTransaction.requiringNew().run(() -> {
            Visit visit = Visit.findById(id);
            visit.state = State.SIGNED;
            visit.answeredAt = clock.instant();
            visit.stands("test first");
            visit.owes(Optional.of(new Visit.Owed("skin-test", Optional.of(latest))));
        });
        Walker desk = salon.as("sanna");
        for (String path : List.of("/desk", "/desk/visits/" + id)) {
            String text = desk.open(path).expect(200).page().html().toLowerCase();
            assertThat(text).contains("skin test").doesNotContain("allerg", "reaction", "medicine", "metal", "henna",
                "test first", "prevents", "restricts", "standing", "finding", "pregnan", "asthma", "data-weight");
        }
        assertThat(desk.open("/desk").only("tr:has(a[href$=" + id + "])").text()).contains("Answered",
            "Skin test latest");
    }

    @Test
    @DisplayName("R47: nobody is called in for a test they do not want: the desk reads that somebody talks with them first, never why; wanted again, it is owed again")
    void aRefusedTestIsNoReasonToComeIn() {
        UUID id = make.visit(LocalDate.of(1965, 3, 4));
        Answering client = knocking.come(id, Map.of()).agree().all().readBack();
        client.walker().open("/answers/tests").send(Map.of("refuse", "skin-test"));
        client.sign("Ottilie Brandt");
        assertThat(mustComeIn(id)).contains("Does not want a test: talk with them first").doesNotContain("Skin test",
            "at least");
        assertThat(salon.as("petra").open("/day").text()).contains("Does not want a test: talk with them first");
        QuarkusTransaction.requiringNew().run(() -> refusals.say(id, Set.of()));
        assertThat(mustComeIn(id)).contains("Skin test").doesNotContain("talk with them");
    }

    @Test
    @DisplayName("R47: who must come in before everything is answered must come in for that at least")
    void beforeEverythingIsAnsweredItIsWhatIsOwedAtLeast() {
        UUID id = make.visit(LocalDate.of(1965, 3, 4));
        assertThat(mustComeIn(id)).contains("at least: Skin test");
        knocking.come(id, Map.of()).agree().all().readBack().sign("Ottilie Brandt");
        assertThat(mustComeIn(id)).contains("Skin test").doesNotContain("at least");
    }

    private String mustComeIn(UUID visit) {
        return salon.as("sanna").open("/desk").expect(200).page()
            .select("h2:contains(Must come in) + ul li:has(a[href$=" + visit + "])").text();
    }

    @Test
    void aPromisedCallStaysOpenUntilSomebodySaysTheyHaveCalled() {
        UUID id = make.visit(LocalDate.of(1990, 4, 3));
        QuarkusTransaction.requiringNew().run(() -> {
            Visit visit = Visit.findById(id);
            tasks.promise(visit, Task.Kind.CALL, Optional.of(salon.stylist().id),
                clock.instant().plus(Duration.ofHours(20)));
            tasks.promise(visit, Task.Kind.CALL, Optional.of(salon.stylist().id),
                clock.instant().plus(Duration.ofHours(20)));
        });
        Walker desk = salon.as("sanna").open("/desk");
        String here = "li:has(a[href=/desk/visits/" + id + "]):has(form)";
        assertThat(desk.only(here).text()).contains("Petra Lind promised a call", "01632 960 333", "by ");
        desk.send(here + " form", Map.of()).expect(200);
        assertThat(desk.page().select(here)).isEmpty();
        Task kept = QuarkusTransaction.requiringNew().call(() -> Task.<Task>find("visit.id", id).firstResult());
        assertThat(kept.acknowledged()).isPresent();
    }

    @Test
    @DisplayName("R8: where a call is promised and no number is on file, the desk is asked for one there")
    void aCallWithoutANumberAsksForOne() {
        UUID id = make.visit(LocalDate.of(1990, 4, 3));
        UUID client = QuarkusTransaction.requiringNew().call(() -> {
            Visit visit = Visit.findById(id);
            visit.client.reachedAt(visit.client.email(), Optional.empty());
            tasks.promise(visit, Task.Kind.CALL, Optional.of(salon.stylist().id),
                clock.instant().plus(Duration.ofHours(20)));
            return visit.client.id;
        });
        Walker desk = salon.as("sanna").open("/desk");
        String here = "li:has(a[href=/desk/visits/" + id + "]):has(form)";
        assertThat(desk.only(here).text()).contains("No number on file");
        assertThat(desk.page().select(here + " a").eachAttr("href")).contains("/desk/clients/" + client + "#phone");
    }

    @Test
    @DisplayName("R57: a walk-in is booked, answers and signs on the salon's tablet in one go; the tablet is locked, and forgets")
    void aWalkInAnswersOnTheTablet() {
        String name = someName();
        Map<String, String> filled = new HashMap<>(filled(name, inDays(6).toString(), "13:00"));
        filled.putAll(Map.of("birth-day", "4", "birth-month", "3", "birth-year", "1965", "then", "tablet"));
        Walker tablet = salon.as("sanna").open("/desk/new-visit").send(filled).expect(200);
        assertThat(tablet.at()).as("no birth date is asked again").startsWith("/answers");
        assertThat(tablet.open("/desk").at()).as("the desk is signed out").startsWith("/sign-in");
        Answering.on(tablet.open("/answers"), Map.of()).agree().all().readBack().sign("Wanda " + name);
        assertThat(tablet.at()).isEqualTo("/answers/done");
        tablet.send("form[action$=give-back]", Map.of());
        assertThat(tablet.at()).startsWith("/sign-in");
        assertThat(tablet.open("/answers/read-back").response().statusCode()).isEqualTo(403);
        UUID visit =
            QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>find("client.familyName", name).firstResult().id);
        assertThat(salon.as("sanna").open("/desk/visits/" + visit).text()).contains("Answered");
        assertThat(QuarkusTransaction.requiringNew()
            .call(() -> consents.evidence(consents.latest(visit).orElseThrow()).how().evidence()))
            .satisfies(how -> assertThat(how.invited().way()).isEqualTo(Evidence.Way.TABLET))
            .satisfies(how -> assertThat(how.birthDate().result()).isEqualTo(Evidence.BirthDateResult.ASKED));
    }

    @Test
    @DisplayName("R57: a client on file is asked for the birth date on the tablet, and keeps the link they have")
    void aKnownClientGivesTheBirthDateOnTheTablet() {
        UUID id = make.visit(LocalDate.of(1990, 4, 3));
        String link = knocking.link(id);
        Walker tablet =
            salon.as("sanna").open("/desk/visits/" + id).send("form[action$=hand-over]", Map.of()).expect(200);
        assertThat(tablet.at()).startsWith("/i/");
        assertThat(tablet.open("/answers").response().statusCode()).isEqualTo(403);
        new Walker().open(link).expect(200);
    }

    @Test
    @DisplayName("R55: what takes one statement more for one visit more is read for all at once; the desk's list shows no standing")
    void thePagesCostDoesNotGrowWithTheVisits() {
        UUID one = make.visit(LocalDate.of(1990, 4, 3));
        LocalDate on =
            QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(one).startsThere().toLocalDate());
        long few = statements("sanna", "/desk");
        for (int i = 0; i < 12; i++) {
            make.visit(LocalDate.of(1990, 4, 3));
        }
        assertThat(statements("sanna", "/desk")).isLessThanOrEqualTo(few);
        long day = statements("petra", "/day?date=" + on);
        for (int i = 0; i < 6; i++) {
            make.visit(LocalDate.of(1990, 4, 3));
        }
        assertThat(statements("petra", "/day?date=" + on)).isLessThanOrEqualTo(day);
        statements("edda", "/owner");
        long owner = statements("edda", "/owner");
        for (int i = 0; i < 3; i++) {
            UUID more = make.visit(LocalDate.of(1990, 4, 3));
            make.is(more, State.CLOSED);
            QuarkusTransaction.requiringNew()
                .run(() -> tasks.promise(Visit.findById(more), Task.Kind.CALL, Optional.empty(), clock.instant()));
        }
        assertThat(statements("edda", "/owner")).as("the owner's page").isLessThanOrEqualTo(owner);
    }

    /** The least of three: what a clockwork does meanwhile is counted with it. */
    private long statements(String login, String path) {
        return java.util.stream.LongStream.generate(() -> counted(login, path)).limit(3).min().orElseThrow();
    }

    private long counted(String login, String path) {
        Walker walker = salon.as(login);
        Statistics statistics =
            Visit.getEntityManager().getEntityManagerFactory().unwrap(SessionFactory.class).getStatistics();
        statistics.setStatisticsEnabled(true);
        statistics.clear();
        walker.open(path).expect(200);
        long count = statistics.getPrepareStatementCount();
        statistics.setStatisticsEnabled(false);
        return count;
    }

    @Test
    @DisplayName("R8: a client without a number on file is asked for one; what cannot be dialled is asked again, one on file is not changed")
    void aClientWithoutANumberIsAskedForOne() {
        UUID id = make.visit(LocalDate.of(1990, 4, 3));
        QuarkusTransaction.requiringNew().run(() -> {
            Visit visit = Visit.findById(id);
            visit.client.reachedAt(visit.client.email(), Optional.empty());
        });
        Walker client = knocking.come(id, LocalDate.of(1990, 4, 3), Map.of()).agree().all().readBack()
            .sign("Ottilie Brandt").walker();
        assertThat(client.at()).isEqualTo("/answers/done");
        client.send("form[action$=/answers/phone]", Map.of("phone", "home")).expect(422);
        client.send("form[action$=/answers/phone]", Map.of("phone", "01632 960 777")).expect(200);
        assertThat(client.at()).isEqualTo("/answers/done");
        assertThat(client.page().select("form[action$=/answers/phone]")).isEmpty();
        assertThat(salon.as("sanna").open("/desk/visits/" + id).text()).contains("01632 960 777");
        assertThat(client.open("/answers/phone").at()).isEqualTo("/answers/done");
    }

    @Test
    void clientsAreFoundByAnyPartWithoutAccentsAndPercentIsALetter() {
        String name = "Núñez" + UUID.randomUUID().toString().substring(0, 6);
        salon.as("sanna").open("/desk/new-visit").send(filled(name, inDays(3).toString(), "13:00"));
        Walker desk = salon.as("petra").open("/desk/clients");
        assertThat(
            desk.send("form[role=search]", Map.of("q", name.toLowerCase().replace('ú', 'u').replace('ñ', 'n') + " wan"))
                .text())
            .contains("Wanda " + name);
        assertThat(desk.send("form[role=search]", Map.of("q", "%")).text()).contains("Nobody on file has “%”");
    }

    @Test
    void aClientsAddressIsCorrectedOnceAndAStaleFormIsTold() {
        String name = someName();
        Walker desk = salon.as("sanna").open("/desk/new-visit").send(filled(name, inDays(3).toString(), "13:00"));
        String card = desk.only("a[href^=/desk/clients/]:contains(Change)").attr("href");
        Walker other = salon.as("edda").open(card);
        desk.open(card).send("form.form", Map.of("email", "new@post.example")).expect(200);
        assertThat(desk.text()).contains("Saved");
        other.send("form.form", Map.of("phone", "01632 960 555")).expect(422);
        assertThat(other.text()).contains("Somebody changed this client meanwhile");
        assertThat(other.only("#phone").val()).isEqualTo("01632 960 555");
    }

    @Test
    void aVisitCalledOffLeavesTheListAndTakesNoLink() {
        UUID id = make.visit(LocalDate.of(1990, 4, 3));
        Walker desk = salon.as("sanna").open("/desk/visits/" + id).send("form[action$=cancel]", Map.of()).expect(200);
        assertThat(desk.text()).contains("called off");
        assertThat(desk.page().select("form[action$=/link], form[action$=/mail]")).isEmpty();
        assertThat(desk.page().select("a[href$=/test-visit], a[href$=/product]")).isEmpty();
        assertThat(desk.open("/desk").page().select("a[href$=" + id + "]")).isEmpty();
    }

    @Test
    void foreignIdsAnswerLikeMissingOnes() {
        Walker desk = salon.as("sanna");
        for (String id : List.of("x", UUID.randomUUID().toString(), "1%27%20or%201=1")) {
            desk.open("/desk/visits/" + id).expect(404);
        }
        desk.open("/desk/clients/" + UUID.randomUUID()).expect(404);
    }

    @Test
    void nobodySeesTheDeskWithoutSigningIn() {
        assertThat(new Walker().open("/desk").at()).startsWith("/sign-in");
        assertThat(new Walker().open("/desk/clients").at()).startsWith("/sign-in");
    }
}
