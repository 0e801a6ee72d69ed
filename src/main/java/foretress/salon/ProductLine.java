package foretress.salon;

import foretress.assessment.Leaflet;
import foretress.assessment.Validity;
import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/** One version of a product line as its maker's leaflet describes it. Never changed: another leaflet is another version. */
@Entity
@Table(name = "product_line")
public class ProductLine extends Stored {
    /** How long the leaflet lets a negative test stand. */
    public enum Stands { UNSAID, EACH_APPLICATION, DAYS, MONTHS }

    /** With what the test is made, as the leaflet says. */
    public enum Mixing { MIXED, NEAT }

    public enum Site { BEHIND_EAR, INNER_ELBOW, OTHER }

    /** Whether there is any dye of the para group in it (PPD, PTD, ME-PPD, aminophenols); not known counts as yes. */
    public enum ParaGroup {
        YES, NO, UNKNOWN
    }

    /** The same through all versions. */
    @Column(name = "line_id") public UUID lineId;
    @Column(name = "version_no") public int versionNo;
    public String name;
    /** The chemistry it is for, as knowledge names it. */
    @Column(length = 32) public String kind;
    /** Hours from applying to reading; 0 when the leaflet names none. */
    @Column(name = "wait_hours") public int waitHours;
    @Enumerated(EnumType.STRING)
    @Column(length = 16) public Stands validity;
    @Column(name = "validity_count") public int validityCount;
    @Enumerated(EnumType.STRING)
    @Column(length = 16) public Mixing mixing;
    @Enumerated(EnumType.STRING)
    @Column(length = 16) public Site site;
    /** Minutes until it is wiped off; 0 when it stays on until it is read. */
    @Column(name = "leave_on_minutes") public int leaveOnMinutes;
    @Column(name = "leaflet_date") private LocalDate leafletDate;
    @Enumerated(EnumType.STRING)
    @Column(name = "para_group", length = 16) public ParaGroup paraGroup;
    @Column(name = "other_dyes", columnDefinition = "text") public String otherDyes;
    @Column(columnDefinition = "text") String shades;
    public boolean retired;
    @Column(name = "made_at") public Instant madeAt;
    @Column(name = "made_by") private UUID madeBy;

    protected ProductLine() {}

    private ProductLine(UUID lineId, int versionNo, Described is, boolean retired, UUID madeBy, Instant madeAt) {
        super(lineId, is, madeBy, madeAt);
        this.lineId = lineId;
        this.versionNo = versionNo;
        this.name = is.name();
        this.kind = is.kind();
        this.waitHours = is.waitHours();
        this.validity = is.validity();
        this.validityCount = is.validityCount();
        this.mixing = is.mixing();
        this.site = is.site();
        this.leaveOnMinutes = is.leaveOnMinutes();
        this.leafletDate = is.leafletDate().orElse(null);
        this.paraGroup = is.paraGroup();
        this.otherDyes = is.otherDyes();
        this.shades = is.shades();
        this.retired = retired;
        this.madeBy = madeBy;
        this.madeAt = madeAt;
    }

    /** The first version of a new line. */
    static ProductLine first(Described is, UUID madeBy, Instant madeAt) {
        return new ProductLine(UUID.randomUUID(), 1, is, false, madeBy, madeAt);
    }

    /** The version after this one, in use: what its leaflet says now. */
    ProductLine next(Described is, UUID madeBy, Instant now) {
        return new ProductLine(lineId, versionNo + 1, is, false, madeBy, now);
    }

    /** The version after this one, with the same leaflet, taken out of use or put back. */
    ProductLine turned(boolean retire, UUID madeBy, Instant now) {
        return new ProductLine(lineId, versionNo + 1, described(), retire, madeBy, now);
    }

    /**
     * What a leaflet says.
     *
     * @param kind the chemistry it is for, as knowledge names it
     * @param waitHours from applying to reading; 0 when the leaflet names none
     * @param validityCount how many days or months, above 0; 0 where the leaflet counts neither
     * @param leaveOnMinutes until it is wiped off; 0 when it stays on until it is read
     * @param shades one a line, the darkest first; blank where the salon has not listed them
     */
    public record Described(String name, String kind, int waitHours, Stands validity, int validityCount, Mixing mixing,
        Site site, int leaveOnMinutes,
        Optional<LocalDate> leafletDate, ParaGroup paraGroup, String otherDyes, String shades) {
        public Described {
            named("name", name);
            needed(kind, validity, mixing, site, leafletDate, paraGroup);
            Stream.of(otherDyes, shades).forEach(Objects::requireNonNull);
            if (waitHours < 0 || leaveOnMinutes < 0 || validityCount < 0) {
                throw new IllegalArgumentException(
                    "A leaflet counts hours, minutes, days and months from nothing upwards: " + name);
            }
        }
    }

    private Described described() {
        return new Described(name, kind, waitHours, validity, validityCount, mixing, site, leaveOnMinutes,
            leafletDate(), paraGroup, otherDyes, shades);
    }

    public Optional<LocalDate> leafletDate() {
        return Optional.ofNullable(leafletDate);
    }

    /** The shades of the line, the darkest first; empty where the salon has not listed them. */
    public List<String> shades() {
        return shades.lines().map(String::strip).filter(shade -> !shade.isEmpty()).toList();
    }

    public Leaflet leaflet() {
        return new Leaflet(waitHours, switch (validity) {
            case UNSAID -> new Validity.Unsaid();
            case EACH_APPLICATION -> new Validity.EachApplication();
            case DAYS -> new Validity.Days(validityCount);
            case MONTHS -> new Validity.Months(validityCount);
        });
    }
}
