package foretress.bench;

import foretress.assessment.TestFact;
import foretress.intake.Assessments;
import foretress.intake.Intake;
import foretress.intake.Plans;
import foretress.ledger.Ledger;
import foretress.picture.RedrawnPhoto;
import foretress.questionnaire.Answers;
import foretress.vault.SealedJson;
import foretress.vault.Vault;
import foretress.visit.Visit;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** Makes, times, keeps and reads the tests of the bench; every result goes into the visit's assessment at once. */
@ApplicationScoped
public class BenchRecords {
    public static final int MOST_PHOTOS = 3;

    private final SealedJson json;
    private final BenchReadings readings;
    private final BenchFacts facts;
    private final BenchTime time;
    private final Intake intake;
    private final Assessments assessments;
    private final Plans plans;
    private final Vault vault;
    private final Ledger ledger;
    private final Clock clock;

    BenchRecords(SealedJson json, BenchReadings readings, BenchFacts facts,
        BenchTime time, Intake intake,
        Assessments assessments, Plans plans, Vault vault, Ledger ledger, Clock clock) {
        this.json = json;
        this.readings = readings;
        this.facts = facts;
        this.time = time;
        this.intake = intake;
        this.assessments = assessments;
        this.plans = plans;
        this.vault = vault;
        this.ledger = ledger;
        this.clock = clock;
    }

    /** All tests of a client, newest first; those struck out are among them and say so. */
    public List<BenchRecord> of(UUID clientId) {
        return BenchRecord.ofClient(clientId);
    }

    public List<BenchRecord> ofVisit(UUID visitId) {
        return BenchRecord.ofVisit(visitId);
    }

    /** Every test in the house whose clock runs, the first begun in front. */
    public List<BenchRecord> running() {
        return BenchRecord.running();
    }

    public Optional<BenchRecord> find(UUID visitId, UUID testId, BenchKind kind) {
        return BenchRecord.one(visitId, testId).filter(test -> test.kind() == kind);
    }

    public Optional<BenchRecord> find(UUID visitId, UUID testId) {
        return BenchRecord.one(visitId, testId);
    }

    /** What it says, by the outcomes of {@link TestFact#OUTCOMES}; a strand test says good or poor; empty while it says nothing. */
    public Optional<String> outcome(BenchRecord test) {
        return readings.outcome(test);
    }

    /** The facts an assessment of this visit makes of it. */
    public List<TestFact> facts(Visit visit, BenchRecord test) {
        return facts.facts(visit, test);
    }

    /** The longest hair as staff measured it for this visit, in cm. */
    public Optional<Integer> measuredLengthCm(Visit visit) {
        return facts.measuredLengthCm(visit);
    }

    /** What it says shuts a service for certain: to strike it out opens that again. */
    public boolean shuts(BenchRecord test) {
        return readings.shuts(test);
    }

    /** It shuts a service, and would not without that one thing seen. */
    public boolean shutsBy(BenchRecord test, UUID sight) {
        return readings.shutsBy(test, sight);
    }

    public <T> T body(BenchRecord test, Class<T> type) {
        return json.open(test, type);
    }

    public MetalCheck metal(BenchRecord test) {
        return readings.metal(test);
    }

    public Run ran(BenchRecord test) {
        return readings.ran(test);
    }

    /** Seconds that are left of its time, never below 0. Only hair on a head also counts the time without a server, or asleep. */
    public long leftSeconds(BenchRecord test) {
        Run ran = readings.ran(test);
        long millis = test.kind().onTheHead() ? ran.steadyMillis() + BenchGap.asleepMillis(test) : ran.ranMillis();
        return Math.max(0, test.waitSeconds() - millis / 1000);
    }

    /** Makes a test once a submission; the same form sent again gives the test it made the first time. */
    @Transactional
    public BenchRecord make(UUID visitId, BenchKind kind, String submission, Object body, UUID by) {
        Visit visit = Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE);
        return BenchRecord.sent(visitId, submission).orElseGet(() -> made(visit, kind, submission, body, by));
    }

    private BenchRecord made(Visit visit, BenchKind kind, String submission, Object body, UUID by) {
        List<String> told = BenchFacts.treatments(intake.said(visit)).map(BenchFacts::told).toList();
        var test = new BenchRecord(visit, kind, submission, by, clock.instant(),
            json.sealing(visit.client.id, body), json.sealing(visit.client.id, told));
        test.persistAndFlush();
        ledger.note(by.toString(), "bench test made: " + kind.code(), test.id().toString());
        if (kind == BenchKind.LENGTH || !facts(test).isEmpty()) {
            renew(visit);
        }
        return test;
    }

    /** Starts its clock; a second tap leaves the first start. */
    @Transactional
    public void start(BenchRecord found, int seconds, UUID by) {
        BenchRecord test = locked(found);
        if (test.state() != BenchRecord.State.MADE || test.struck()) {
            return;
        }
        test.start(time.begin(), clock.instant(), seconds);
        ledger.note(by.toString(), "bench test started", test.id().toString());
    }

    /** Changes what was measured. */
    @Transactional
    public <T> void change(BenchRecord found, Class<T> type, UnaryOperator<T> change, UUID by) {
        BenchRecord test = locked(found);
        List<TestFact> before = facts(test);
        test.measured(json.sealing(test.clientId(), change.apply(json.open(test, type))));
        ledger.note(by.toString(), "bench test changed", test.id().toString());
        flushed(test, before);
    }

    /**
     * Keeps what was seen on a tuft, once: the same sign on the same tuft says nothing new, except at the end. What was tapped
     * while the test ran counts, however late it arrives.
     *
     * @param agoMillis how long ago it was tapped, by the device's own counter; 0 or more
     * @return false when the test did not run at that moment, so that it cannot be kept
     */
    @Transactional
    public boolean see(BenchRecord found, String tuft, TuftSign sign, String submission, long agoMillis, UUID by) {
        BenchRecord test = locked(found);
        if (BenchSeen.of(test.id()).stream().anyMatch(row -> row.submission().equals(submission))) {
            return true;
        }
        Optional<Long> millis = tapped(test, agoMillis);
        millis.map(at -> new Seen(tuft, sign, at / 1000))
            .filter(seen -> readings.seen(test).stream().noneMatch(s -> same(s, seen)))
            .ifPresent(seen -> keep(test, seen, millis.get(), submission, by));
        return millis.isPresent();
    }

    /** When after the start that was, in ms; empty outside the time in which the tufts lay in the dish. */
    private Optional<Long> tapped(BenchRecord test, long agoMillis) {
        Optional<Long> at = test.struck() ? Optional.empty()
            : test.started().map(start -> time.reading().since(start).ranMillis() - agoMillis);
        return at
            .filter(millis -> millis >= 0 && test.lasted().map(lasted -> millis <= lasted.ranMillis()).orElse(true));
    }

    private static boolean same(Seen one, Seen other) {
        boolean bothLate = one.second() >= MetalCheck.FULL_SECONDS == other.second() >= MetalCheck.FULL_SECONDS;
        return one.tuft().equals(other.tuft()) && one.sign() == other.sign()
            && (one.sign() != TuftSign.NOTHING || bothLate);
    }

    private void keep(BenchRecord test, Seen seen, long ranMillis, String submission, UUID by) {
        List<TestFact> said = facts(test);
        new BenchSeen(test, submission, ranMillis, by, clock.instant(),
            json.sealing(test.clientId(), seen)).persistAndFlush();
        ledger.note(by.toString(), "bench test: something seen", test.id().toString());
        flushed(test, said);
    }

    /** Everything that was seen, those tapped in error included. */
    public List<BenchSight> sights(BenchRecord test) {
        return BenchSeen.of(test.id()).stream()
            .map(row -> new BenchSight(row.id(), json.open(row, Seen.class), row.seenBy(), row.seenAt(),
                !row.struck() ? "" : json.open(row.clientId(), row.place("struck_why"), row.struckWhy(), String.class)))
            .toList();
    }

    /** Tapped in error: it stays to be read with the reason, and says nothing any more. */
    @Transactional
    public void strike(BenchRecord found, UUID sight, String why, UUID by) {
        BenchRecord test = locked(found);
        BenchSeen row = BenchSeen.findById(sight);
        if (row != null && row.testId().equals(test.id()) && !row.struck()) {
            List<TestFact> before = facts(test);
            row.strike(by, clock.instant(), json.sealing(test.clientId(), why));
            ledger.note(by.toString(), "bench test: tapped in error", test.id().toString());
            flushed(test, before);
        }
    }

    /** Takes it down: its clock stands still from here on. */
    @Transactional
    public void end(BenchRecord found, UUID by) {
        BenchRecord test = locked(found);
        if (test.state() == BenchRecord.State.RUNNING) {
            List<TestFact> before = facts(test);
            test.end(time.keep(), clock.instant(), by);
            ledger.note(by.toString(), "bench test ended", test.id().toString());
            flushed(test, before);
        }
    }

    /** The times in which the server was away while this test ran: nobody watched its clock. In order. */
    public List<BenchGap> gaps(BenchRecord test) {
        return BenchGap.during(test);
    }

    /** How long ago it was begun, the nights between included: what a look on the next day goes by. */
    public long sinceBegunMillis(BenchRecord test) {
        return test.started().map(start -> time.reading().since(start).steadyMillis()).orElse(0L);
    }

    /** Entered in error: it stays to be read, struck out with the reason, and says nothing any more. */
    @Transactional
    public void strike(BenchRecord found, String why, UUID by) {
        BenchRecord test = locked(found);
        if (!test.struck()) {
            List<TestFact> before = facts(test);
            test.strike(by, clock.instant(), json.sealing(test.clientId(), why));
            ledger.note(by.toString(), "bench test entered in error", test.id().toString());
            flushed(test, before);
        }
    }

    public String struckWhy(BenchRecord test) {
        return test.struck() ? json.open(test.clientId(), test.place("struck_why"), test.struckWhy(), String.class)
            : "";
    }

    public List<BenchPhoto> photos(BenchRecord test) {
        return BenchPhoto.of(test.id());
    }

    public Optional<BenchPhoto> photo(BenchRecord test, UUID photoId) {
        return BenchPhoto.one(test.id(), photoId);
    }

    public byte[] bytes(BenchPhoto photo) {
        return vault.open(photo);
    }

    /** @return false when the test has as many as it may have */
    @Transactional
    public boolean add(BenchRecord found, RedrawnPhoto drawn, UUID by) {
        BenchRecord test = locked(found);
        if (BenchPhoto.of(test.id()).size() >= MOST_PHOTOS) {
            return false;
        }
        new BenchPhoto(test, by, clock.instant(), vault.sealing(test.clientId(), drawn.jpeg()))
            .persist();
        ledger.note(by.toString(), "bench test photo added", test.id().toString());
        return true;
    }

    private static BenchRecord locked(BenchRecord found) {
        return BenchRecord.findById(found.id(), LockModeType.PESSIMISTIC_WRITE);
    }

    private List<TestFact> facts(BenchRecord test) {
        return facts.facts(Visit.findById(test.visitId()), test);
    }

    /** Only what says something else than before makes a new assessment: each one puts a decision in question. */
    private void flushed(BenchRecord test, List<TestFact> before) {
        test.persistAndFlush();
        if (test.kind() == BenchKind.LENGTH || !facts(test).equals(before)) {
            renew(Visit.findById(test.visitId()));
        }
    }

    /** Before the client has said anything there is nothing to assess. */
    private void renew(Visit visit) {
        Answers said = intake.said(visit);
        if (!said.byQuestion().isEmpty()) {
            assessments.renew(visit, said);
            if (visit.signed().isPresent()) {
                visit.owes(plans.first(visit, said));
            }
        }
    }
}
