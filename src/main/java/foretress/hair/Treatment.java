package foretress.hair;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * One earlier treatment, or the last of a series of them.
 *
 * @param id whatever the caller knows it by
 * @param earliest first day the (last) use can have been, included
 * @param latest last day it can have been, included; a day after today counts as today
 * @param repeated used before that day too, again and again
 * @param series since when and how far apart; empty when done once, and when nobody can say: then it reaches to the tip
 * @param sure the client is sure there was no later use; false whenever the date is not known
 * @param metalPossible it may have left metal, whatever else it is (henna of a kind nobody knows)
 * @param label the first line beside its band, in the reader's language
 * @param said the second line: where and when, as the client said it; may be empty
 * @param extent how many cm of new growth were covered, or how many of today's ends it lies on; empty when nobody said
 */
public record Treatment(String id, Residue residue, LocalDate earliest, LocalDate latest, Zone zone,
    boolean repeated, Optional<Series> series, boolean sure, boolean metalPossible, String label,
    String said, Optional<Range> extent) {

    public Treatment {
        Objects.requireNonNull(id);
        Objects.requireNonNull(residue);
        Objects.requireNonNull(zone);
        Objects.requireNonNull(label);
        Objects.requireNonNull(said);
        Objects.requireNonNull(extent);
        if (latest.isBefore(earliest)) {
            throw new IllegalArgumentException(
                "%s: its last day %s is before its first %s".formatted(label, latest, earliest));
        }
        if (series.isPresent() && (!repeated || series.get().firstEarliest().isAfter(latest))) {
            throw new IllegalArgumentException(
                "%s: first done after it was last done, or done but once".formatted(label));
        }
    }

    /** Of which nobody said how many cm it was. */
    public Treatment(String id, Residue residue, LocalDate earliest, LocalDate latest, Zone zone, boolean repeated,
        Optional<Series> series, boolean sure, boolean metalPossible, String label, String said) {
        this(id, residue, earliest, latest, zone, repeated, series, sure, metalPossible, label, said, Optional.empty());
    }

    /** Whose first time nobody knows, if it was repeated. */
    public Treatment(String id, Residue residue, LocalDate earliest, LocalDate latest, Zone zone, boolean repeated,
        boolean sure,
        boolean metalPossible, String label, String said) {
        this(id, residue, earliest, latest, zone, repeated, Optional.empty(), sure, metalPossible, label, said);
    }

    /** Done once, its date a sure one. */
    public static Treatment once(Residue residue, LocalDate earliest, LocalDate latest, Zone zone, String label) {
        return new Treatment(label, residue, earliest, latest, zone, false, Optional.empty(), true,
            residue.mayHoldMetal(), label, "");
    }

    public Treatment againAndAgain() {
        return new Treatment(id, residue, earliest, latest, zone, true, series, sure, metalPossible, label, said,
            extent);
    }

    /** Again and again, since a first time as uncertain as any date. */
    public Treatment since(LocalDate firstEarliest, LocalDate firstLatest, double monthsApart) {
        return new Treatment(id, residue, earliest, latest, zone, true,
            Optional.of(new Series(firstEarliest, firstLatest, monthsApart)), sure,
            metalPossible, label, said, extent);
    }

    public Treatment unsure() {
        return new Treatment(id, residue, earliest, latest, zone, repeated, series, false, metalPossible, label, said,
            extent);
    }

    public Treatment maybeMetal() {
        return new Treatment(id, residue, earliest, latest, zone, repeated, series, sure, true, label, said,
            extent);
    }

    /** With the words a reader sees beside its band. */
    public Treatment labelled(String name, String words) {
        return new Treatment(id, residue, earliest, latest, zone, repeated, series, sure, metalPossible, name, words,
            extent);
    }

    public Treatment said(String words) {
        return new Treatment(id, residue, earliest, latest, zone, repeated, series, sure, metalPossible, label, words,
            extent);
    }

    /** About so many cm of the new growth, or of the ends. */
    public Treatment reaching(Range cm) {
        return new Treatment(id, residue, earliest, latest, zone, repeated, series, sure, metalPossible, label, said,
            Optional.of(cm));
    }

    /** So much of the new growth was covered once. What may hold metal is never drawn smaller for what somebody remembers. */
    Optional<Range> ofNewGrowth() {
        return extent.filter(cm -> zone == Zone.REGROWTH && !repeated && !metalPossible);
    }

    /** So many of today's ends it lies on, of which metal is no matter either. */
    Optional<Range> ofTheEnds() {
        return extent.filter(cm -> zone == Zone.ENDS && !metalPossible);
    }
}
