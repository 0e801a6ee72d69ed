package foretress.visit;

import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.post.Post;
import foretress.salon.Menu;
import foretress.salon.Salon;
import foretress.salon.Staff;
import foretress.web.StaffLanguage;
import foretress.web.StaffWords;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;

/** What the desk sees of the coming visits: who has answered, what is owed by when. Never why, and no standing. */
@ApplicationScoped
public class DeskList {
    /** How far a visit's answers have come, as the desk may know it. */
    public enum Answered {
        NO_LINK, NOT, HALF, YES, STOPPED, WITHDRAWN, CALLED_OFF
    }

    private static final Set<Answered> UNANSWERED = EnumSet.of(Answered.NO_LINK, Answered.NOT, Answered.HALF);

    /** One visit in the list. */
    public record Row(UUID id, String day, String hour, String client, String services, String stylist,
        Answered answered,
        boolean mailable, boolean over, Optional<Owed> owed, String postponed) {
        /** Nothing needs to be said about answers that are there. */
        public boolean isQuiet() {
            return answered == Answered.YES && postponed.isEmpty();
        }

        public boolean isStopped() {
            return answered == Answered.STOPPED;
        }

        public boolean isUnanswered() {
            return UNANSWERED.contains(answered);
        }

        public boolean isNeverSent() {
            return answered == Answered.NO_LINK;
        }
    }

    /**
     * What must be done in the salon before the visit.
     *
     * @param atLeast the client has not answered everything: more may follow
     */
    public record Owed(UUID visitId, String client, String what, String visitAt, Optional<String> latest, boolean over,
        boolean atLeast) {}

    /** A promise in the list; {@code who} is blank when it is the whole desk's. */
    public record Promise(UUID id, Task.Kind kind, UUID visitId, UUID clientId, String client, Optional<String> phone,
        String who,
        String due, boolean over) {
        public boolean isCall() {
            return kind == Task.Kind.CALL;
        }

        /** Whether somebody says it is done by the button; the others are closed by doing them. */
        public boolean isSaidDone() {
            return kind == Task.Kind.CALL || kind == Task.Kind.SPEAK_AT_ONCE || kind == Task.Kind.ASK_AFTER
                || kind == Task.Kind.TAKEN_BACK;
        }

        /** Whether it is kept by speaking to the client. */
        public boolean isSpoken() {
            return kind != Task.Kind.TAKEN_BACK;
        }

        public String dial() {
            return phone.map(Client::dial).orElse("");
        }
    }

    /** The visits of one day. */
    public record Day(String name, boolean today, List<Row> rows) {}

    private final Visits visits;
    private final Tasks tasks;
    private final Knowledge knowledge;
    private final Menu menu;
    private final Post post;
    private final StaffWords say;
    private final Clock clock;
    private final StaffLanguage staff;
    private final Moments moments;

    DeskList(Visits visits, Tasks tasks, Knowledge knowledge, Menu menu, Post post, StaffWords say, Clock clock,
        StaffLanguage staff, Moments moments) {
        this.moments = moments;
        this.staff = staff;
        this.visits = visits;
        this.tasks = tasks;
        this.knowledge = knowledge;
        this.menu = menu;
        this.post = post;
        this.say = say;
        this.clock = clock;
    }

    LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), Salon.the().zoneId());
    }

    /** Days with visits, from this one on, so many days ahead; those called off are left out, those withdrawn from are not. */
    List<Day> days(LocalDate from, int howMany) {
        When when = when();
        Names names = everybody();
        return starting(from, howMany).stream()
            .collect(Collectors.groupingBy(v -> LocalDate.ofInstant(v.startsAt, when.zone()), TreeMap::new,
                Collectors.toList()))
            .entrySet().stream().map(day -> new Day(when.day(day.getKey()), day.getKey().equals(when.today()),
                day.getValue().stream().map(visit -> row(visit, when, names)).toList()))
            .toList();
    }

    private List<Visit> starting(LocalDate from, int howMany) {
        ZoneId zone = Salon.the().zoneId();
        Instant start = from.atStartOfDay(zone).toInstant();
        return visits.between(start, from.plusDays(howMany).atStartOfDay(zone).toInstant()).stream()
            .filter(visit -> visit.state != State.CANCELLED).toList();
    }

    /** Everything that must be done in the salon before a coming visit, the most pressing first. */
    List<Owed> owed() {
        When when = when();
        return visits.owingFrom(when.today(), when.zone()).stream().flatMap(visit -> owed(visit, when).stream()
            .map(owed -> Map.entry(visit.owed().flatMap(Visit.Owed::by).orElse(visit.startsAt), owed)))
            .sorted(Map.Entry.comparingByKey()).map(Map.Entry::getValue).toList();
    }

    List<Promise> promises() {
        When when = when();
        Map<UUID, String> names = names();
        return tasks.open().stream().map(task -> new Promise(task.id, task.kind(), task.visit.id, task.visit.client.id,
            task.visit.client.fullName(), task.visit.client.phone(), task.owner().map(names::get).orElse(""),
            when.moment(task.dueAt), task.dueAt.isBefore(clock.instant()))).toList();
    }

    /** All visits of one client, the newest first. */
    List<Row> of(UUID clientId) {
        When when = when();
        Names names = everybody();
        return visits.of(clientId).stream().map(visit -> row(visit, when, names)).toList();
    }

    /** What a list looks up once for all its rows. */
    private record Names(Map<UUID, String> staff, Set<UUID> stopped) {}

    private Names everybody() {
        return new Names(names(), tasks.stopped());
    }

    private Row row(Visit visit, When when, Names names) {
        LocalDate day = LocalDate.ofInstant(visit.startsAt, when.zone());
        return new Row(visit.id, when.day(day), when.hour(visit.startsAt), visit.client.fullName(), services(visit),
            names.staff().getOrDefault(visit.stylistId, ""), answered(visit, names.stopped()),
            post.canSend() && visit.client.email().isPresent(), visit.state == State.CLOSED,
            owed(visit, when), postponed(visit, when));
    }

    /** What desk and client may know of a decision; blank while the visit takes place as booked. */
    public String postponed(Visit visit, When when) {
        if (!visit.postponed) {
            return "";
        }
        return visit.postponedUntil().map(day -> say.desk_postponed_until(when.date(day)))
            .orElseGet(say::desk_postponed);
    }

    /** A service by name. */
    public String service(String id) {
        return menu.name(id, knowledge.words(staff.tag()));
    }

    /** The services by name. */
    public String services(Visit visit) {
        Words words = knowledge.words(staff.tag());
        return visit.services.stream().map(booked -> menu.name(booked.serviceId, words))
            .collect(Collectors.joining(", "));
    }

    /** The same, where something came up that cannot wait: the visit is stopped until somebody has spoken to the client. */
    public static Answered answered(Visit visit, Set<UUID> stopped) {
        return visit.state.isAhead() && stopped.contains(visit.id) ? Answered.STOPPED : answered(visit);
    }

    public static Answered answered(Visit visit) {
        return switch (visit.state) {
            case BOOKED -> Answered.NO_LINK;
            case INVITED -> Answered.NOT;
            case ANSWERING -> Answered.HALF;
            case SIGNED, DECIDED, CLOSED -> Answered.YES;
            case WITHDRAWN -> Answered.WITHDRAWN;
            case CANCELLED -> Answered.CALLED_OFF;
        };
    }

    private Optional<Owed> owed(Visit visit, When when) {
        return visit.owed().map(owed -> new Owed(visit.id, visit.client.fullName(), owed.what(),
            when.moment(visit.startsAt), owed.by().map(when::moment),
            owed.by().filter(by -> by.isBefore(clock.instant())).isPresent(), UNANSWERED.contains(answered(visit))));
    }

    public When when() {
        return moments.in(Salon.the().zoneId());
    }

    static Map<UUID, String> names() {
        return Staff.names();
    }
}
