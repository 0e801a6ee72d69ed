package foretress.visit;

import foretress.assessment.Service;
import foretress.salon.Menu;
import foretress.salon.Salon;
import foretress.salon.Staff;
import foretress.web.Mistakes;
import foretress.web.StaffLanguage;
import foretress.web.StaffWords;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Makes sense of the desk's form, or says beside each field what to put right. */
@ApplicationScoped
public class BookingReader {
    private static final int YEARS_AHEAD = 2;

    private final Menu menu;
    private final Clients clients;
    private final ClientReader reader;
    private final StaffWords say;
    private final Clock clock;
    private final StaffLanguage staff;

    BookingReader(Menu menu, Clients clients, ClientReader reader, StaffWords say, Clock clock, StaffLanguage staff) {
        this.staff = staff;
        this.menu = menu;
        this.clients = clients;
        this.reader = reader;
        this.say = say;
        this.clock = clock;
    }

    /** What was read: the person only when new. Whole only without mistakes. */
    record Read(Mistakes mistakes, Optional<Clients.Person> person, Slot slot, UUID stylist, List<Booked> services) {}

    /** When, as agreed and, unless there is a mistake, as it is; {@code twice} when the clock shows that time twice. */
    record Slot(Optional<LocalDateTime> wall, Optional<Instant> at, boolean twice) {}

    Read read(BookingForm form) {
        var mistakes = new Mistakes();
        Optional<Clients.Person> person = person(form, mistakes);
        return new Read(mistakes, person, slot(form, mistakes), stylist(form.stylist(), mistakes),
            services(form, mistakes));
    }

    private Optional<Clients.Person> person(BookingForm form, Mistakes mistakes) {
        if (!form.isForKnown()) {
            return Optional.of(reader.read(form.person(), mistakes));
        }
        known(form.clientId(), mistakes);
        return Optional.empty();
    }

    private Slot slot(BookingForm form, Mistakes mistakes) {
        Optional<LocalDateTime> wall = wall(form, mistakes);
        Optional<WallTime> time = wall.map(w -> WallTime.read(w, Salon.the().zoneId()));
        return new Slot(wall, time.flatMap(t -> meant(t, form, wall.get(), mistakes)),
            time.filter(WallTime.Twice.class::isInstance).isPresent());
    }

    private void known(String clientId, Mistakes mistakes) {
        boolean found = id(clientId).flatMap(clients::find).isPresent();
        mistakes.expect(found, "client", say.visit_client_gone());
    }

    private List<Booked> services(BookingForm form, Mistakes mistakes) {
        List<Booked> booked = menu.offered().stream()
            .filter(service -> form.hasService(service.id()))
            .map(service -> new Booked(service.id(), steps(service, form))).toList();
        mistakes.expect(!booked.isEmpty(), "services", say.visit_services_missing());
        return booked;
    }

    private static List<String> steps(Service service, BookingForm form) {
        return (form.isWithout(service.id()) ? service.plain() : service).stepIds();
    }

    private Optional<LocalDateTime> wall(BookingForm form, Mistakes mistakes) {
        Optional<LocalDate> date = parsed(() -> LocalDate.parse(form.date()));
        Optional<LocalTime> time = parsed(() -> LocalTime.parse(form.time()));
        if (mistakes.expect(date.isPresent(), "date", say.visit_date_missing())) {
            inReach(date.get(), mistakes);
        }
        mistakes.expect(time.isPresent(), "time", say.visit_time_missing());
        return date.flatMap(d -> time.map(d::atTime));
    }

    private void inReach(LocalDate date, Mistakes mistakes) {
        LocalDate today = today();
        if (mistakes.expect(!date.isBefore(today), "date", say.visit_date_over(staff.dates().date(date)))) {
            mistakes.expect(!date.isAfter(today.plusYears(YEARS_AHEAD)), "date",
                say.visit_date_far(staff.dates().date(date), YEARS_AHEAD));
        }
    }

    private Optional<Instant> meant(WallTime time, BookingForm form, LocalDateTime wall, Mistakes mistakes) {
        if (time instanceof WallTime.Skipped gap) {
            mistakes.add("time",
                say.visit_time_skipped(staff.dates().date(wall), staff.dates().hour(gap.last()),
                    staff.dates().hour(gap.next()),
                    staff.dates().hour(wall)));
        }
        Optional<Instant> at = time.at(turn(form.turn()));
        if (time instanceof WallTime.Twice && at.isEmpty()) {
            mistakes.add("turn", say.visit_time_twice(staff.dates().hour(wall)));
        }
        return at;
    }

    private static Optional<WallTime.Turn> turn(String typed) {
        return switch (typed) {
            case "first" -> Optional.of(WallTime.Turn.FIRST);
            case "second" -> Optional.of(WallTime.Turn.SECOND);
            default -> Optional.empty();
        };
    }

    private UUID stylist(String typed, Mistakes mistakes) {
        Optional<UUID> found = id(typed).filter(id -> Staff.stylists().stream().anyMatch(staff -> staff.id.equals(id)));
        mistakes.expect(found.isPresent(), "stylist", say.visit_stylist_missing());
        return found.orElse(new UUID(0, 0));
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), Salon.the().zoneId());
    }

    static Optional<UUID> id(String typed) {
        try {
            return Optional.of(UUID.fromString(typed));
        } catch (IllegalArgumentException notAnId) {
            return Optional.empty();
        }
    }

    private interface Parse<T> {
        T go();
    }

    private static <T> Optional<T> parsed(Parse<T> parse) {
        try {
            return Optional.of(parse.go());
        } catch (DateTimeException notOne) {
            return Optional.empty();
        }
    }
}
