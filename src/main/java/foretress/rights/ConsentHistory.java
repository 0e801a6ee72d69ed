package foretress.rights;

import com.fasterxml.jackson.annotation.JsonValue;
import foretress.questionnaire.Code;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What became of one consent, from what was said about it: each word is one event, in order. */
final class ConsentHistory {
    private ConsentHistory() {}

    /** The name of an event. */
    enum Kind {
        GIVEN, RENEWED, REFUSED, WITHDRAWN, EXPIRED;

        @JsonValue
        String code() {
            return Code.of(this);
        }
    }

    /**
     * Yes or no, said once.
     *
     * @param how the way it was said
     * @param on id of the row that keeps it
     */
    record Said(Instant at, boolean yes, String how, String on) {}

    record Event(Instant at, Kind kind, String how, String on) {}

    /**
     * @param ends when nothing rests on it any more, unless it is said again; empty where that is not known
     * @param now nothing later has happened
     */
    static List<Event> of(List<Said> said, Optional<Instant> ends, Instant now) {
        List<Event> events = new ArrayList<>();
        for (Said one : said.stream().sorted(Comparator.comparing(Said::at)).toList()) {
            events.add(new Event(one.at(), kind(one, events), one.how(), one.on()));
        }
        ends.filter(end -> !end.isAfter(now) && stands(events)).ifPresent(end -> events
            .add(new Event(later(end, events), Kind.EXPIRED, "time", events.get(events.size() - 1).on())));
        return List.copyOf(events);
    }

    private static Kind kind(Said one, List<Event> before) {
        if (one.yes()) {
            return stands(before) ? Kind.RENEWED : Kind.GIVEN;
        }
        return stands(before) ? Kind.WITHDRAWN : Kind.REFUSED;
    }

    /** Whether it holds after these. */
    static boolean stands(List<Event> events) {
        return !events.isEmpty() && switch (events.get(events.size() - 1).kind()) {
            case GIVEN, RENEWED -> true;
            case REFUSED, WITHDRAWN, EXPIRED -> false;
        };
    }

    /** What was said after the end began it anew: it ends no earlier than it was said. */
    private static Instant later(Instant end, List<Event> events) {
        Instant last = events.get(events.size() - 1).at();
        return end.isBefore(last) ? last : end;
    }
}
