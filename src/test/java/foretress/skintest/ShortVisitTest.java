package foretress.skintest;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.MovedClock;
import foretress.Walker;
import foretress.intake.Knocking;
import foretress.post.Sender;
import foretress.salon.OpenSalon;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.mailer.Mail;
import io.quarkus.mailer.MockMailbox;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.smallrye.mutiny.Multi;
import jakarta.inject.Inject;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
@DisplayName("The short visit: offered, booked, mailed, moved, called off")
class ShortVisitTest {
    @Inject OpenSalon salon;
    @Inject Chair chair;
    @Inject Sender sender;
    @Inject MockMailbox mails;
    @Inject MovedClock clock;
    @Inject Knocking knocking;
    @Inject VisitMaker make;

    @BeforeEach
    void open() {
        salon.open();
        sender.sendDue();
        mails.clear();
    }

    @AfterEach
    void now() {
        clock.reset();
    }

    private Mail mail() {
        sender.sendDue();
        List<Mail> sent = mails.getMailsSentTo("ottilie@post.example");
        return sent.get(sent.size() - 1);
    }

    private static Calendar calendar(Mail mail) throws Exception {
        List<Byte> bytes = Multi.createFrom().publisher(mail.getAttachments().get(0).getData()).collect().asList()
            .await().indefinitely();
        byte[] file = new byte[bytes.size()];
        for (int i = 0; i < file.length; i++) {
            file[i] = bytes.get(i);
        }
        Calendar calendar = new CalendarBuilder().build(new StringReader(new String(file, StandardCharsets.UTF_8)));
        calendar.validate();
        return calendar;
    }

    private static String value(VEvent event, String property) {
        return event.<Property>getRequiredProperty(property).getValue();
    }

    private static VEvent event(Calendar calendar) {
        return calendar.<VEvent>getComponents("VEVENT").get(0);
    }

    private static String method(Calendar calendar) {
        return calendar.<Property>getRequiredProperty("METHOD").getValue();
    }

    private Instant booked(UUID visit) {
        return QuarkusTransaction.requiringNew().call(() -> TestVisit.standing(visit).orElseThrow().startsAt());
    }

    private Instant starts(UUID visit) {
        return QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).startsAt);
    }

    @Test
    @DisplayName("R4: a visit nobody has answered yet owes its skin test at least, on the short visit, at the bench and at the decision")
    void notAnsweredIsNotNothingOwed() {
        UUID visit = make.visit(LocalDate.of(1965, 3, 4));
        Walker sanna = salon.as("sanna").open("/desk/visits/" + visit + "/test-visit").expect(200);
        assertThat(sanna.text()).contains("has not answered yet", "This much is due in any case")
            .doesNotContain("Nothing is due");
        assertThat(sanna.page().select("#book [name=start]")).isNotEmpty();
        Walker petra = salon.as("petra").open("/visits/" + visit + "/bench").expect(200);
        assertThat(petra.text()).contains("Nobody has answered yet: at least this", "Skin test")
            .doesNotContain("No test is owed");
        petra.open("/visits/" + visit + "/decision").expect(200);
        assertThat(petra.text()).contains("Nobody has answered for this visit yet", "Skin test")
            .doesNotContain("This visit is over");
    }

    @Test
    @DisplayName("R25: who has the label's age only the day before the visit is offered no start before, and nothing is put on today")
    void nobodyIsTestedBeforeTheLabelsAge() {
        LocalDate born = clock.instant().atZone(ZoneOffset.UTC).toLocalDate().plusDays(4).minusYears(16);
        UUID visit = chair.signed(born, Map.of());
        Walker sanna = salon.as("sanna").open("/desk/visits/" + visit + "/test-visit").expect(200);
        assertThat(sanna.text()).contains("cannot be put on yet");
        assertThat(sanna.page().select("#book [name=start]")).isEmpty();
        Walker petra = salon.as("petra").open("/visits/" + visit + "/skin-test").expect(200);
        assertThat(petra.text()).contains("No skin test is made in the salon", "Under the age on the label");
    }

    @Test
    void theLatestMomentIsMarkedAndLeavesTheWholeWait() {
        UUID visit = chair.planned(Map.of());
        Walker sanna = salon.as("sanna").open("/desk/visits/" + visit + "/test-visit").expect(200);
        assertThat(sanna.page().select("#book .slips label").get(0).text()).contains("latest");
        chair.shortVisit(visit);
        assertThat(Duration.between(booked(visit), starts(visit))).isGreaterThanOrEqualTo(Duration.ofHours(48));
    }

    @Test
    void theMailSaysOnlyThatAShortVisitIsNeededAndCarriesAValidCalendarFile() throws Exception {
        UUID visit = chair.planned(Map.of());
        mails.clear();
        chair.shortVisit(visit);
        Mail mail = mail();
        assertThat(mail.getText()).contains("a short visit", "/i/").doesNotContainIgnoringCase("skin")
            .doesNotContainIgnoringCase("test")
            .doesNotContainIgnoringCase("allerg").doesNotContain("Larkmoss");
        assertThat(mail.getSubject()).doesNotContainIgnoringCase("test");
        Calendar calendar = calendar(mail);
        VEvent event = event(calendar);
        assertThat(method(calendar)).isEqualTo("REQUEST");
        assertThat(value(event, "SEQUENCE")).isEqualTo("0");
        assertThat(value(event, "DTSTART")).isEqualTo(booked(visit).toString().replaceAll("[-:]", ""));
        assertThat(calendar.toString()).doesNotContainIgnoringCase("skin").doesNotContainIgnoringCase("allerg");
        assertThat(value(event, "UID")).endsWith("@alderandwren.example");
    }

    @Test
    void movedAndCalledOffKeepTheirUidWithARisingSequence() throws Exception {
        UUID visit = chair.planned(Map.of());
        chair.shortVisit(visit);
        String uid = value(event(calendar(mail())), "UID");
        Walker sanna = salon.as("sanna").open("/desk/visits/" + visit + "/test-visit");
        sanna.send("#book", Map.of("start", sanna.page().select("#book [name=start]").get(3).val())).expect(200);
        VEvent moved = event(calendar(mail()));
        assertThat(List.of(value(moved, "UID"), value(moved, "SEQUENCE"))).containsExactly(uid, "1");
        assertThat(value(moved, "DTSTART")).isEqualTo(booked(visit).toString().replaceAll("[-:]", ""));
        salon.as("sanna").open("/desk/visits/" + visit + "/test-visit").send("form[action$=/cancel]", Map.of())
            .expect(200);
        Calendar off = calendar(mail());
        assertThat(
            List.of(method(off), value(event(off), "UID"), value(event(off), "SEQUENCE"), value(event(off), "STATUS")))
            .containsExactly("CANCEL", uid, "2", "CANCELLED");
        assertThat(mail().getText()).doesNotContain("/i/");
    }

    @Test
    void aVisitCalledOffTakesItsShortVisitWithIt() throws Exception {
        UUID visit = chair.planned(Map.of());
        chair.shortVisit(visit);
        String uid = value(event(calendar(mail())), "UID");
        salon.as("sanna").open("/desk/visits/" + visit).send("form[action$=" + visit + "/cancel]", Map.of());
        Calendar off = calendar(mail());
        assertThat(List.of(method(off), value(event(off), "UID"))).containsExactly("CANCEL", uid);
    }

    @Test
    void aShortVisitThatTookPlaceIsNotCalledOffAfterwards() {
        UUID visit = chair.planned(Map.of());
        chair.shortVisit(visit);
        mail();
        clock.move(Duration.between(clock.instant(), booked(visit)).plusMinutes(30));
        int before = mails.getMailsSentTo("ottilie@post.example").size();
        salon.as("sanna").open("/desk/visits/" + visit).send("form[action$=" + visit + "/cancel]", Map.of());
        sender.sendDue();
        assertThat(mails.getMailsSentTo("ottilie@post.example").subList(before,
            mails.getMailsSentTo("ottilie@post.example").size())).noneMatch(mail -> !mail.getAttachments().isEmpty());
        assertThat(booked(visit)).isBefore(clock.instant());
    }

    @Test
    void theSameMomentTwiceIsOneBookingAndOneMail() {
        UUID visit = chair.planned(Map.of());
        Walker sanna = salon.as("sanna").open("/desk/visits/" + visit + "/test-visit");
        String start = sanna.page().selectFirst("#book [name=start]").val();
        sanna.send("#book", Map.of("start", start));
        sender.sendDue();
        int before = mails.getMailsSentTo("ottilie@post.example").size();
        salon.as("sanna").open("/desk/visits/" + visit + "/test-visit").send("#book", Map.of("start", start))
            .expect(200);
        sender.sendDue();
        assertThat(mails.getMailsSentTo("ottilie@post.example")).hasSize(before);
    }

    @Test
    void aMomentNobodyOfferedIsRefused() {
        UUID visit = chair.planned(Map.of());
        Walker sanna = salon.as("sanna").open("/desk/visits/" + visit + "/test-visit");
        ArrayList<Map.Entry<String, String>> fields = new java.util.ArrayList<>(sanna.fields("#book"));
        fields.add(Map.entry("start", starts(visit).minus(Duration.ofHours(47)).toString()));
        sanna.post("/desk/visits/" + visit + "/test-visit", fields).expect(422);
        assertThat(QuarkusTransaction.requiringNew().call(() -> TestVisit.standing(visit))).isEmpty();
    }

    @Test
    void whenThereIsNoTimeLeftTheConflictIsNamed() {
        UUID visit = chair.planned(Map.of());
        clock.move(Duration.between(clock.instant(), starts(visit).minus(Duration.ofHours(30))));
        assertThat(salon.as("sanna").open("/desk/visits/" + visit + "/test-visit").text()).contains("no time left",
            "48 are needed");
    }

    @Test
    void withMetalSuspectedTheHairIsCutAtTheSameVisit() {
        UUID visit = chair.signed(
            Map.of("darkening-lotion", List.of("yes"), "darkening-lotion-when.precision", List.of("dont-know")));
        chair.name(visit, "4-0");
        chair.shortVisit(visit);
        assertThat(salon.as("petra").open("/visits/" + visit + "/skin-test").text())
            .contains("Hair for the metal test is cut at the same visit");
    }

    @Test
    void whatAndWhyStandBehindTheLinkAndTheDoor() {
        UUID visit = chair.planned(Map.of());
        chair.shortVisit(visit);
        String link = mail().getText().replaceAll("(?s).*(/i/[A-Za-z0-9_-]{43}).*", "$1");
        Walker client = new Walker().open(link);
        assertThat(client.text()).doesNotContain("skin");
        client.send(Map.of("day", "4", "month", "3", "year", "1965"));
        client.open("/code");
        assertThat(client.response().statusCode()).isEqualTo(200);
    }

    @Test
    @DisplayName("R47: no short visit is offered for a test that the client does not want")
    void aRefusedTestIsNotBooked() {
        UUID visit = chair.refused();
        Walker sanna = salon.as("sanna").open("/desk/visits/" + visit + "/test-visit").expect(200);
        assertThat(sanna.text()).contains("The client does not want this test, so no time is offered.");
        assertThat(sanna.page().select("#book")).isEmpty();
    }
}
