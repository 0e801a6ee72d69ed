package foretress.plan;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The hours of an ordinary week, in wall time. Written a day at a time:
 * {@code MONDAY closed; TUESDAY 09:00-13:00, 14:00-18:00; ...}; a day left out is closed.
 */
public record Week(Map<DayOfWeek, List<Span>> days) {

    /** From, included, to, not included; on one day. */
    public record Span(LocalTime from, LocalTime to) {
        public Span {
            if (!from.isBefore(to)) {
                throw new IllegalArgumentException("opens at %s but closes at %s".formatted(from, to));
            }
        }

        @Override
        public String toString() {
            return from + "-" + to;
        }
    }

    public Week {
        var copy = new EnumMap<DayOfWeek, List<Span>>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            copy.put(day, inOrder(day, days.getOrDefault(day, List.of())));
        }
        days = copy;
    }

    private static List<Span> inOrder(DayOfWeek day, List<Span> spans) {
        for (int i = 1; i < spans.size(); i++) {
            if (spans.get(i).from().isBefore(spans.get(i - 1).to())) {
                throw new IllegalArgumentException("%s: %s overlaps %s".formatted(day, spans.get(i), spans.get(i - 1)));
            }
        }
        return List.copyOf(spans);
    }

    public List<Span> on(DayOfWeek day) {
        return days.get(day);
    }

    /** @throws IllegalArgumentException naming the day and what is wrong with it */
    public static Week parse(String text) {
        var days = new EnumMap<DayOfWeek, List<Span>>(DayOfWeek.class);
        for (String line : text.split(";")) {
            if (line.isBlank()) {
                continue;
            }
            String[] parts = line.strip().split("\\s+", 2);
            days.put(DayOfWeek.valueOf(parts[0]), spans(parts.length > 1 ? parts[1] : ""));
        }
        return new Week(days);
    }

    /**
     * One day as a person writes it: {@code 9:00-17:30}, {@code 09:00 – 13:00, 14:00 – 18:00}, {@code closed} or nothing.
     *
     * @throws IllegalArgumentException when it cannot be read
     */
    public static List<Span> spans(String day) {
        var spans = new ArrayList<Span>();
        if (day.isBlank() || day.strip().equalsIgnoreCase("closed")) {
            return spans;
        }
        for (String part : day.split(",")) {
            spans.add(span(part));
        }
        return spans;
    }

    private static Span span(String part) {
        String[] ends = part.strip().split("\\s*[-–—]\\s*");
        if (ends.length != 2) {
            throw new IllegalArgumentException("not hours: " + part.strip());
        }
        return new Span(time(ends[0]), time(ends[1]));
    }

    private static LocalTime time(String text) {
        try {
            return LocalTime.parse(text.length() == 4 ? "0" + text : text);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException("not a time of day: " + text, e);
        }
    }

    /** The day in words for a page; empty when closed. */
    public Optional<String> said(DayOfWeek day) {
        return on(day).isEmpty() ? Optional.empty() : Optional.of(written(day).replace("-", "–"));
    }

    private String written(DayOfWeek day) {
        return on(day).stream().map(Span::toString).collect(Collectors.joining(", "));
    }

    @Override
    public String toString() {
        return days.keySet().stream().map(day -> day + " " + (on(day).isEmpty() ? "closed" : written(day)))
            .collect(Collectors.joining("; "));
    }
}
