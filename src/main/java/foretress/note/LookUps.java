package foretress.note;

import foretress.assessment.LookedUp;
import foretress.bench.BenchDoor;
import foretress.intake.ChairRecord;
import foretress.knowledge.Knowledge;
import foretress.ledger.Ledger;
import foretress.running.Held;
import foretress.salon.RulesChanged;
import foretress.salon.Salon;
import foretress.vault.SealedJson;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.event.Event;
import jakarta.inject.Singleton;
import jakarta.persistence.LockModeType;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * Medicines that staff have looked up: the salon's own data, sealed with a key of its own because a name alone tells that some client
 * takes it. Each holds in every assessment of a visit still to come, until it is taken back. Call it outside a transaction.
 */
@Singleton
public class LookUps implements ChairRecord {
    /** The salon's own key; no client has this id. */
    private static final UUID SALON = new UUID(0, 1);

    private final SealedJson sealed;
    private final Knowledge knowledge;
    private final Event<RulesChanged> changed;
    private final Ledger ledger;
    private final Clock clock;
    private final Held<List<LookedUp>> standing = Held.of(List.of("look_up", "staff", "salon"), this::stored);

    /**
     * What is sealed of a look-up.
     *
     * @param means one of {@link LookedUp#OWN} or the fact the name counts towards
     * @param source where it was found, in the words of whoever looked
     */
    public record Body(String name, String means, String source) {}

    LookUps(SealedJson sealed, Knowledge knowledge, Event<RulesChanged> changed, Ledger ledger, Clock clock) {
        this.sealed = sealed;
        this.knowledge = knowledge;
        this.changed = changed;
        this.ledger = ledger;
        this.clock = clock;
    }

    /** The newest first; those taken back are among them. */
    public List<LookUp> all() {
        return LookUp.everyOne();
    }

    public Body body(LookUp one) {
        return sealed.open(SALON, one.place("body"), one.body(), Body.class);
    }

    String withdrawnWhy(LookUp one) {
        return one.stands() ? "" : sealed.open(SALON, one.place("withdrawn_why"), one.withdrawnWhy(), String.class);
    }

    @Override
    public List<LookedUp> lookedUp() {
        return standing.get();
    }

    private List<LookedUp> stored() {
        ZoneId zone = Salon.the().zoneId();
        return LookUp.standing().stream().map(one -> said(one, body(one), zone)).toList();
    }

    private LookedUp said(LookUp one, Body body, ZoneId zone) {
        return new LookedUp(body.name(), body.means(), LookedUp.classes(body.means(), knowledge.ruleSet()),
            BenchDoor.name(one.madeBy()), LocalDate.ofInstant(one.madeAt(), zone), body.source());
    }

    /** Keeps it once a submission; every visit still to come is assessed with it before this returns. */
    public LookUp keep(String submission, Body body, UUID by) {
        return QuarkusTransaction.requiringNew()
            .call(() -> LookUp.sent(submission).orElseGet(() -> made(submission, body, by)));
    }

    private LookUp made(String submission, Body body, UUID by) {
        var one = new LookUp(submission, by, clock.instant(), place -> sealed.seal(SALON, place, body));
        one.persistAndFlush();
        ledger.note(by.toString(), "medicine looked up", one.id().toString());
        tell();
        return one;
    }

    /** It says nothing any more; what it said, and why it was taken back, stays to be read. */
    public void withdraw(UUID id, String why, UUID by) {
        QuarkusTransaction.requiringNew().run(() -> {
            LookUp one = LookUp.findById(id, LockModeType.PESSIMISTIC_WRITE);
            if (one.stands()) {
                one.withdraw(by, clock.instant(), place -> sealed.seal(SALON, place, why));
                one.persistAndFlush();
                ledger.note(by.toString(), "look-up taken back", one.id().toString());
                tell();
            }
        });
    }

    public Optional<LookUp> find(UUID id) {
        return LookUp.findByIdOptional(id);
    }

    private void tell() {
        ZoneId zone = Salon.the().zoneId();
        Instant now = clock.instant();
        changed.fire(new RulesChanged(LocalDate.ofInstant(now, zone), zone));
    }
}
