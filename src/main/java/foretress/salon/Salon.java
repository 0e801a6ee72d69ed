package foretress.salon;

import foretress.plan.ClosedDays;
import foretress.plan.OpeningHours;
import foretress.plan.Week;
import foretress.running.Held;
import foretress.running.Stored;
import foretress.web.DateWords;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** The one salon this installation is for. */
@Entity
@Table(name = "salon")
public class Salon extends Stored {
    public enum PaperSize { A4, LETTER }

    private static final Held<Optional<Salon>> HELD = Held.of(List.of("salon"), Salon::stored);

    @Column(columnDefinition = "text") public String name;
    @Column(columnDefinition = "text") public String address;
    @Column(columnDefinition = "text") public String town;
    @Column(columnDefinition = "text") public String phone;
    @Column(columnDefinition = "text") public String email;
    /** An IANA zone: wall times of visits and opening hours are read in it. */
    @Column(columnDefinition = "text") public String zone;
    /** Names the policy that holds here. */
    @Column(columnDefinition = "text") public String jurisdiction;
    /** Whom to call when breathing or fainting is at stake. */
    @Column(name = "urgent_number", columnDefinition = "text") public String urgentNumber;
    @Enumerated(EnumType.STRING)
    @Column(name = "paper_size", length = 16) public PaperSize paperSize;
    /** Language tags offered to clients, separated by commas, the salon's own first. */
    @Column(columnDefinition = "text") private String languages;
    /** As {@link Week} writes it. */
    @Column(name = "opening_hours", columnDefinition = "text") private String openingHours;
    /** As {@link ClosedDays} writes them; blank when there is none. */
    @Column(name = "closed_days", columnDefinition = "text") public String closedDays = "";
    @Version public int version;

    protected Salon() {}

    /** A salon as its owner sets it up. */
    public Salon(Contact contact, Custom custom) {
        super(contact, custom);
        is(contact, custom);
    }

    /**
     * Who it is and how it is reached.
     *
     * @param urgentNumber whom to call when breathing or fainting is at stake
     */
    public record Contact(String name, String address, String town, String phone, String email, String urgentNumber) {
        public Contact {
            named("name", name);
            named("number for emergencies", urgentNumber);
            Stream.of(address, town, phone, email).forEach(Objects::requireNonNull);
        }
    }

    /**
     * Where, under which law and in which languages it works, and when it is open.
     *
     * @param jurisdiction names the policy that holds
     * @param languages tags offered to clients, the salon's own first
     */
    public record Custom(ZoneId zone, String jurisdiction, PaperSize paperSize, List<String> languages, Week week,
        ClosedDays closed) {
        public Custom {
            named("law that holds", jurisdiction);
            needed(zone, paperSize, week, closed);
            languages = List.copyOf(languages);
            if (languages.isEmpty()) {
                throw new IllegalArgumentException("A salon speaks at least one language.");
            }
        }
    }

    /** From now on these particulars hold. */
    void is(Contact contact, Custom custom) {
        name = contact.name();
        address = contact.address();
        town = contact.town();
        phone = contact.phone();
        email = contact.email();
        urgentNumber = contact.urgentNumber();
        zone = custom.zone().getId();
        jurisdiction = custom.jurisdiction();
        paperSize = custom.paperSize();
        languages = String.join(",", custom.languages());
        openingHours = custom.week().toString();
        closedDays = custom.closed().toString();
    }

    /** The salon, once the owner has set it up; to be read, and not to be changed. */
    public static Optional<Salon> found() {
        return HELD.get();
    }

    private static Optional<Salon> stored() {
        Optional<Salon> stored = Salon.<Salon>findAll().firstResultOptional();
        stored.filter(any -> !HELD.isChangedHere()).ifPresent(getEntityManager()::detach);
        return stored;
    }

    /** The same in the transaction that changes it. */
    static Salon toChange() {
        HELD.changes();
        return the();
    }

    /** The salon, where nothing can be reached before it is set up. */
    public static Salon the() {
        return found().orElseThrow(() -> new IllegalStateException("the salon is not set up yet"));
    }

    /** How dates are said to a client who reads this language; English has them as the salon's country writes them. */
    public DateWords dates(String language) {
        return new DateWords(!language.equals("en") ? Locale.forLanguageTag(language)
            : jurisdiction.equals("us") ? Locale.US : Locale.UK);
    }

    public ZoneId zoneId() {
        return ZoneId.of(zone);
    }

    public List<String> languageTags() {
        return List.of(languages.split(","));
    }

    /** The hours of an ordinary week. */
    public Week week() {
        return Week.parse(openingHours);
    }

    public ClosedDays closed() {
        return ClosedDays.parse(closedDays);
    }

    /** When it is open, days on which it is shut left out. */
    public OpeningHours hours() {
        return new OpeningHours(week(), closed().days(), zoneId());
    }
}
