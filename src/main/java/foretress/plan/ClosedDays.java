package foretress.plan;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Days on which the salon is shut although its week says otherwise. Written a line each, one day or from a day to a day, both
 * included: {@code 2026-12-24 to 2027-01-02}.
 */
public record ClosedDays(SortedSet<LocalDate> days) {
    /** As many as anybody looks ahead. */
    public static final int MOST = 400;

    public ClosedDays {
        days = Collections.unmodifiableSortedSet(new TreeSet<>(days));
        if (days.size() > MOST) {
            throw new IllegalArgumentException("more than %d days".formatted(MOST));
        }
    }

    public static ClosedDays of(Set<LocalDate> days) {
        return new ClosedDays(new TreeSet<>(days));
    }

    /** @throws IllegalArgumentException naming the line that cannot be read */
    public static ClosedDays parse(String text) {
        SortedSet<LocalDate> days = new TreeSet<>();
        text.lines().map(String::strip).filter(line -> !line.isEmpty()).forEach(line -> days.addAll(line(line)));
        return new ClosedDays(days);
    }

    private static List<LocalDate> line(String line) {
        String[] ends = line.split("\\s+to\\s+|\\s*[–—]\\s*|\\s+-\\s+");
        try {
            LocalDate from = LocalDate.parse(ends[0]);
            LocalDate to = LocalDate.parse(ends[ends.length - 1]);
            if (ends.length <= 2 && !to.isBefore(from) && ChronoUnit.DAYS.between(from, to) < MOST) {
                return from.datesUntil(to.plusDays(1)).toList();
            }
        } catch (DateTimeParseException notADay) {
            throw new IllegalArgumentException(line, notADay);
        }
        throw new IllegalArgumentException(line);
    }

    /** Days that follow each other on one line. */
    @Override
    public String toString() {
        List<LocalDate[]> spans = new ArrayList<>();
        for (LocalDate day : days) {
            int last = spans.size() - 1;
            if (last >= 0 && spans.get(last)[1].plusDays(1).equals(day)) {
                spans.get(last)[1] = day;
            } else {
                spans.add(new LocalDate[] { day, day });
            }
        }
        return spans.stream().map(span -> span[0] + (span[0].equals(span[1]) ? "" : " to " + span[1]))
            .collect(Collectors.joining("\n"));
    }
}
