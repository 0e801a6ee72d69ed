package foretress.visit;

import foretress.running.Stored;
import jakarta.persistence.CascadeType;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OneToMany;
import jakarta.persistence.OrderBy;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** One booked appointment of one client. */
@Entity
@Table(name = "visit")
public class Visit extends Stored {
    /** Names the form that made it, so that a form sent twice makes one visit. */
    private String submission;
    @ManyToOne(fetch = FetchType.EAGER, optional = false)
    @JoinColumn(name = "client_id") public Client client;
    /** Whose key seals what hangs on this visit: the client it was booked for, also after records of one person were merged. */
    @Column(name = "key_of") public UUID keyOf;
    /** The member of staff who does the hair. */
    @Column(name = "stylist_id") public UUID stylistId;
    /** What was agreed, as read off the salon's clock; {@link #startsAt} is what it means under today's zone rules. */
    @Column(name = "wall_time") LocalDateTime wallTime;
    String zone;
    @Column(name = "starts_at") public Instant startsAt;
    @Enumerated(EnumType.STRING) public State state;
    @Column(name = "created_at") private Instant createdAt;
    /** The standing of the booked services and what is owed, sealed: see {@link VisitSummary}. Absent until something was answered. */
    @Column(columnDefinition = "text") private String told;
    @Column(name = "answered_at") public Instant answeredAt;
    @Column(name = "signed_at") public Instant signedAt;
    /** It does not take place as booked; desk and client see this and no reason. */
    public boolean postponed;
    @Column(name = "postponed_until") private LocalDate postponedUntil;
    @Version private int version;

    @OneToMany(mappedBy = "visit", cascade = CascadeType.ALL, orphanRemoval = true, fetch = FetchType.EAGER)
    @OrderBy("place") public List<BookedService> services = new ArrayList<>();

    protected Visit() {}

    private Visit(Client client, LocalDateTime wallTime, ZoneId zone, Instant startsAt, List<Booked> booked) {
        super(named("client", client), wallTime, zone, startsAt);
        if (booked.isEmpty()) {
            throw new IllegalArgumentException("A visit needs a service.");
        }
        this.client = client;
        this.keyOf = client.id;
        this.wallTime = wallTime;
        this.zone = zone.getId();
        this.startsAt = startsAt;
        this.state = State.BOOKED;
        book(booked);
    }

    /** @param client the one the booking names */
    Visit(Booking booking, Client client, Instant now) {
        this(client, booking.wallTime(), booking.zone(), booking.startsAt(), booking.services());
        if (!client.id.equals(booking.clientId())) {
            throw new IllegalArgumentException("The booking is not this client's: " + client.id);
        }
        this.submission = booking.submission();
        this.stylistId = booking.stylistId();
        needed(now);
        this.createdAt = now;
    }

    /** One that is not booked yet and never stored: for saying what it would owe. */
    static Visit foreseen(Client client, LocalDateTime wallTime, ZoneId zone, Instant startsAt, List<Booked> booked) {
        return new Visit(client, wallTime, zone, startsAt, booked);
    }

    /** Goes one step on; a step that does not exist is refused. */
    public void moveTo(State next) {
        if (!state.mayBecome(next)) {
            throw new IllegalStateException("A visit that is %s cannot become %s".formatted(state, next));
        }
        state = next;
    }

    /**
     * Reads the agreed wall time by today's zone rules again; of a time that comes twice the same turn is kept, and one
     * that no longer exists moves on by the length of the gap.
     *
     * @return whether the visit moved
     */
    boolean reread() {
        Instant now = ZonedDateTime.ofLocal(wallTime, zone(), zone().getRules().getOffset(startsAt)).toInstant();
        boolean moved = !now.equals(startsAt);
        startsAt = now;
        return moved;
    }

    public ZoneId zone() {
        return ZoneId.of(zone);
    }

    /** When it starts, as the salon's clock shows it. */
    public ZonedDateTime startsThere() {
        return startsAt.atZone(zone());
    }

    /** Code of the booked services' standing once assessed; never shown to the desk. */
    public Optional<String> standing() {
        return told().standing();
    }

    /** Sealed anew each time, so that nobody sees from outside whether it changed. */
    public void stands(String code) {
        tell(told().standing(code));
    }

    public Optional<Instant> answered() {
        return Optional.ofNullable(answeredAt);
    }

    public Optional<Instant> signed() {
        return Optional.ofNullable(signedAt);
    }

    /** What the client must come in for and the latest moment it can begin; empty when nothing is owed. */
    public Optional<Owed> owed() {
        return told().owed();
    }

    /** Sets, or with an empty value clears, what the client must come in for. */
    public void owes(Optional<Owed> owed) {
        if (told != null || owed.isPresent()) {
            tell(told().owing(owed));
        }
    }

    private VisitSummary told() {
        return told == null ? VisitSummary.NOTHING
            : VisitSummary.read(VaultAccess.vault().openWord(keyOf, place("told"), told));
    }

    private void tell(VisitSummary now) {
        told = VaultAccess.vault().sealWord(keyOf, place("told"), now.write());
    }

    /** Whether the client took consent back: what was said and made under it serves no other visit. */
    public static boolean isTakenBack(UUID id) {
        return Visit.<Visit>findById(id).state == State.WITHDRAWN;
    }

    /** What was answered is signed from this instant on; the step of the visit is the caller's. */
    public void signed(Instant at) {
        answeredAt = at;
        signedAt = at;
    }

    /** An answer changed since: what was signed stays on file, and the visit waits for a signature of its own. */
    public void unsign() {
        answeredAt = null;
        signedAt = null;
    }

    /** Puts it off, with or without a day before which it cannot be; whatever was owed for it is owed no more. */
    public void postpone(Optional<LocalDate> until) {
        postponed = true;
        postponedUntil = until.orElse(null);
        owes(Optional.empty());
    }

    /** It takes place after all. */
    public void keepDate() {
        postponed = false;
        postponedUntil = null;
    }

    public Optional<LocalDate> postponedUntil() {
        return Optional.ofNullable(postponedUntil);
    }

    /** Plans other services, or the same with other steps, in place of those booked; the keeper of what was booked is the caller. */
    public void plan(List<Booked> planned) {
        book(planned);
    }

    void book(List<Booked> booked) {
        services.clear();
        for (Booked one : booked) {
            services.add(new BookedService(this, services.size(), one));
        }
    }

    /** Something owed before the visit: its code and, where there is one, its latest start. */
    public record Owed(String what, Optional<Instant> by) {}
}
