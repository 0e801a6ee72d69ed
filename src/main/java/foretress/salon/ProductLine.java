package foretress.salon;

import foretress.assessment.Leaflet;
import foretress.assessment.Validity;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** One version of a product line as its maker's leaflet describes it. Never changed: another leaflet is another version. */
@Entity
@Table(name = "product_line")
public class ProductLine extends PanacheEntityBase {
    /** How long the leaflet lets a negative test stand. */
    public enum Stands { UNSAID, EACH_APPLICATION, DAYS, MONTHS }

    /** With what the test is made, as the leaflet says. */
    public enum Mixing { MIXED, NEAT }

    public enum Site { BEHIND_EAR, INNER_ELBOW, OTHER }

    /** Whether there is any dye of the para group in it (PPD, PTD, ME-PPD, aminophenols); not known counts as yes. */
    public enum ParaGroup { YES, NO, UNKNOWN }

    @Id public UUID id;
    /** The same through all versions. */
    @Column(name = "line_id") public UUID lineId;
    @Column(name = "version_no") public int versionNo;
    public String name;
    /** The chemistry it is for, as knowledge names it. */
    @Column(length = 32) public String kind;
    /** Hours from applying to reading; 0 when the leaflet names none. */
    @Column(name = "wait_hours") public int waitHours;
    @Enumerated(EnumType.STRING) @Column(length = 16) public Stands validity;
    @Column(name = "validity_count") public int validityCount;
    @Enumerated(EnumType.STRING) @Column(length = 16) public Mixing mixing;
    @Enumerated(EnumType.STRING) @Column(length = 16) public Site site;
    /** Minutes until it is wiped off; 0 when it stays on until it is read. */
    @Column(name = "leave_on_minutes") public int leaveOnMinutes;
    @Column(name = "leaflet_date") LocalDate leafletDate;
    @Enumerated(EnumType.STRING) @Column(name = "para_group", length = 16) public ParaGroup paraGroup;
    @Column(name = "other_dyes", columnDefinition = "text") public String otherDyes;
    @Column(columnDefinition = "text") String shades;
    public boolean retired;
    @Column(name = "made_at") public Instant madeAt;
    @Column(name = "made_by") UUID madeBy;

    public Optional<LocalDate> leafletDate() {
        return Optional.ofNullable(leafletDate);
    }

    /** The shades of the line, the darkest first; empty where the salon has not listed them. */
    public List<String> shades() {
        return shades.lines().map(String::strip).filter(shade -> !shade.isEmpty()).toList();
    }

    /** @param oneALine the darkest first */
    public void shades(String oneALine) {
        shades = oneALine;
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
