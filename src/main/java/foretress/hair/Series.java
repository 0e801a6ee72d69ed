package foretress.hair;

import java.time.LocalDate;

/**
 * A treatment done again and again: the first time, and how far apart.
 *
 * @param firstEarliest first day the first time can have been, included
 * @param firstLatest last day it can have been, included
 * @param monthsApart the longest pause its words allow, above 0; what grew before the first time counts as that long
 */
public record Series(LocalDate firstEarliest, LocalDate firstLatest, double monthsApart) {
    public Series {
        if (firstLatest.isBefore(firstEarliest)) {
            throw new IllegalArgumentException("a first time between %s and %s".formatted(firstEarliest, firstLatest));
        }
        if (!(monthsApart > 0)) {
            throw new IllegalArgumentException("%s months apart".formatted(monthsApart));
        }
    }
}
