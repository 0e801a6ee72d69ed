package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.salon.OpenSalon;
import foretress.salon.RulesChanged;
import foretress.visit.BookedService;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.Session;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
@DisplayName("R4: what lists show as owed is what is owed under what holds now")
class RenewalTest {
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject Plans plans;
    @Inject Intake intake;
    @Inject Clock clock;
    @Inject Event<RulesChanged> changed;
    UUID unanswered;
    UUID signed;

    @BeforeEach
    void twoVisits() {
        salon.open();
        unanswered = make.visit(LocalDate.of(1965, 3, 4));
        signed = make.visit(LocalDate.of(1965, 3, 4));
        knocking.come(signed, Map.of()).agree().all().readBack().sign("Ottilie Brandt");
    }

    @AfterEach
    void asItWas() {
        change("/policy", Map.of("skin-test-wait-hours", ""));
        shut("");
    }

    private void change(String page, Map<String, String> fields) {
        Walker owner = salon.as("edda").open(page).expect(200).send(fields).expect(200);
        assertThat(owner.at()).isEqualTo(page + "?kept");
    }

    private void shut(String days) {
        change("/salon", Map.of("closed-days", days, "zone", "Europe/London"));
    }

    private Optional<Instant> latest(UUID visit) {
        return QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).owed().orElseThrow().by());
    }

    private long assessments() {
        return QuarkusTransaction.requiringNew().call(() -> KeptAssessment.count("visitId", signed));
    }

    private void isWhatIsOwedNow(UUID visit) {
        QuarkusTransaction.requiringNew().run(() -> {
            Visit stored = Visit.findById(visit);
            assertThat(stored.owed()).isPresent().isEqualTo(plans.first(stored, intake.said(stored)));
        });
    }

    @Test
    @DisplayName("a policy made stricter moves the latest start of every visit ahead, answered or not, and the desk's list says so")
    void aStricterPolicy() {
        Optional<Instant> before = latest(signed);
        String listed = row();
        change("/policy", Map.of("skin-test-wait-hours", "96"));
        assertThat(latest(signed)).isNotEqualTo(before);
        assertThat(row()).contains("Skin test").isNotEqualTo(listed);
        isWhatIsOwedNow(signed);
        isWhatIsOwedNow(unanswered);
    }

    @Test
    @DisplayName("days on which the salon is shut move it too, and make no assessment anew that comes out the same")
    void closedDays() {
        Optional<Instant> before = latest(unanswered);
        long kept = assessments();
        LocalDate today = LocalDate.ofInstant(clock.instant(), clock.getZone());
        shut(today.plusDays(1) + " to " + today.plusDays(4));
        assertThat(latest(unanswered)).isNotEqualTo(before);
        isWhatIsOwedNow(unanswered);
        isWhatIsOwedNow(signed);
        assertThat(assessments()).isEqualTo(kept);
    }

    @Test
    @DisplayName("what was kept unchanged renews nothing")
    void nothingChanged() {
        QuarkusTransaction.requiringNew().run(() -> Visit.<Visit>findById(unanswered).owes(Optional.empty()));
        change("/policy", Map.of("skin-test-wait-hours", ""));
        assertThat(QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(unanswered).owed())).isEmpty();
    }

    @Test
    @DisplayName("a visit that nobody can read any more holds up neither the owner nor the other visits")
    void aVisitNobodyCanRead() {
        UUID lost = make.visit(LocalDate.of(1965, 3, 4));
        String booked = booked(lost, "gone-from-the-menu");
        try {
            Optional<Instant> before = latest(signed), kept = latest(lost);
            change("/policy", Map.of("skin-test-wait-hours", "120"));
            assertThat(latest(signed)).isNotEqualTo(before);
            assertThat(latest(lost)).isEqualTo(kept);
            assertThat(salon.as("edda").open("/owner").expect(200).text()).as("the owner is told")
                .contains("visit not assessed anew, it keeps what it owed before");
        } finally {
            booked(lost, booked);
        }
    }

    /** Every query looks through all that a session holds: one that kept each visit would take the square of their number. */
    @Test
    @DisplayName("the session holds none of the visits once they are done, however many there are")
    void nothingIsHeld() {
        QuarkusTransaction.requiringNew().run(() -> {
            LocalDate today = LocalDate.ofInstant(clock.instant(), clock.getZone());
            changed.fire(new RulesChanged(today, clock.getZone()));
            assertThat(Visit.getEntityManager().unwrap(Session.class).getStatistics().getEntityCount()).isZero();
        });
    }

    /** Books another service behind everybody's back, and says which it was. */
    private static String booked(UUID visit, String service) {
        return QuarkusTransaction.requiringNew().call(() -> {
            String before = Visit.<Visit>findById(visit).services.get(0).serviceId;
            BookedService.update("serviceId = ?1 where visit.id = ?2", service, visit);
            return before;
        });
    }

    private String row() {
        return salon.as("sanna").open("/desk").only("tr:has(a[href$=" + signed + "])").text();
    }
}
