package foretress.skintest;

import foretress.intake.Intake;
import foretress.intake.Plans;
import foretress.intake.Refusals;
import foretress.ledger.Ledger;
import foretress.plan.Offers;
import foretress.plan.Owed;
import foretress.plan.TestPlan;
import foretress.questionnaire.Answers;
import foretress.visit.Visit;
import foretress.visit.Visits;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import jakarta.persistence.LockModeType;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** Books the short visit at which tests are put on. Whoever has to be tested for metal too has it all in one. */
@Singleton
class TestVisits {
    private static final int MOST_OFFERED = 60;

    private final Plans plans;
    private final Intake intake;
    private final Refusals refusals;
    private final TestMails letters;
    private final Ledger ledger;
    private final Clock clock;

    TestVisits(Plans plans, Intake intake, Refusals refusals, TestMails letters, Ledger ledger, Clock clock) {
        this.plans = plans;
        this.intake = intake;
        this.refusals = refusals;
        this.letters = letters;
        this.ledger = ledger;
        this.clock = clock;
    }

    /**
     * What can be offered.
     *
     * @param answered somebody has begun to answer; before, what is needed is what comes first at least
     * @param needed something that needs time is owed
     * @param refused the client does not want a test that would be put on
     * @param conflict a test that cannot be kept before the visit
     */
    record Offered(boolean answered, boolean needed, boolean refused, Optional<Owed> conflict, Offers offers) {}

    Offered offered(Visit visit) {
        Answers said = intake.said(visit);
        boolean answered = !said.byQuestion().isEmpty();
        if (!visit.state.isAhead()) {
            return new Offered(answered, false, false, Optional.empty(), Offers.NONE);
        }
        List<Owed> owed = plans.of(visit, said).owed();
        Set<String> refused = refusals.of(visit);
        if (owed.stream().map(Owed::test).anyMatch(refused::contains)) {
            return new Offered(answered, true, true, Optional.empty(), Offers.NONE);
        }
        List<Owed> possible = owed.stream().filter(test -> test.conflict().isEmpty()).toList();
        return new Offered(answered, !owed.isEmpty(), false,
            owed.stream().filter(test -> test.conflict().isPresent()).findFirst(),
            Offers.of(possible, MOST_OFFERED));
    }

    /** Hair for the metal test is cut at the same visit. Nothing of it is kept beside the booking: it would tell what was answered. */
    boolean tufts(Visit visit) {
        return plans.owed(visit, intake.said(visit)).contains(TestPlan.INCOMPATIBILITY_TEST)
            && !refusals.of(visit).contains(TestPlan.INCOMPATIBILITY_TEST);
    }

    /**
     * Books, or moves what is booked; the same moment again changes nothing and mails nothing.
     *
     * @return false when that moment is not offered
     */
    boolean book(UUID visitId, Instant start, UUID staff) {
        return QuarkusTransaction.requiringNew().call(() -> {
            Visit visit = Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE);
            Offered offered = offered(visit);
            Optional<TestVisit> standing = TestVisit.standing(visitId);
            if (standing.filter(one -> one.startsAt().equals(start)).isPresent()) {
                return true;
            }
            if (!offered.offers().offer(start)) {
                return false;
            }
            standing.ifPresent(one -> one.move(start, staff, clock.instant()));
            TestVisit planned = standing.orElseGet(() -> new TestVisit(visit, start, staff, clock.instant()));
            planned.persist();
            ledger.note(staff.toString(), "short visit booked", visitId.toString());
            letters.visit(planned, CalendarFile.What.BOOKED, staff.toString());
            return true;
        });
    }

    void cancel(UUID visitId, UUID staff) {
        QuarkusTransaction.requiringNew().run(() -> {
            Visit.<Visit>findById(visitId, LockModeType.PESSIMISTIC_WRITE);
            callOff(visitId, staff.toString());
        });
    }

    /** Without the visit there is nothing to be tested for; what took place already stays as it was. */
    void withTheVisit(@Observes Visits.CalledOff gone) {
        if (TestVisit.standing(gone.visitId()).filter(planned -> planned.startsAt().isAfter(clock.instant()))
            .isPresent()) {
            callOff(gone.visitId(), "server");
        }
    }

    private void callOff(UUID visitId, String actor) {
        TestVisit.standing(visitId).ifPresent(planned -> {
            planned.callOff(clock.instant());
            ledger.note(actor, "short visit called off", visitId.toString());
            letters.visit(planned, CalendarFile.What.CANCELLED, actor);
        });
    }
}
