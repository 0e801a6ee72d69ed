package foretress.day;

import foretress.ledger.ByStaff;
import foretress.plan.Week;
import foretress.salon.Salon;
import foretress.visit.State;
import foretress.visit.Task;
import foretress.visit.Tasks;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.web.ChairTime;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jboss.resteasy.reactive.RestQuery;

/** The stylist's day: every visit with its standing, what is owed by when and the one thing to do now; and the promises to keep. */
@Path("/day")
public class DayPages {
    private static final int COMING_DAYS = 14;
    private static final Set<Task.Kind> CALLS = Set.of(Task.Kind.CALL, Task.Kind.SPEAK_AT_ONCE, Task.Kind.ASK_AFTER);

    @CheckedTemplate(basePath = "day", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record DayPage(String title, DayText.Count count, double share, boolean today, String previous, String next,
        String said,
        List<DayRow> rows, List<DayRow> coming, List<DayText.MustCome> mustCome, List<DayText.Promise> promises)
        implements TemplateInstance {}

    private final ByStaff byStaff;
    private final Visits visits;
    private final Tasks tasks;
    private final DayText text;
    private final ChairTime time;
    private final Clock clock;

    DayPages(Visits visits, Tasks tasks, DayText text, ChairTime time, Clock clock, ByStaff byStaff) {
        this.byStaff = byStaff;
        this.visits = visits;
        this.tasks = tasks;
        this.text = text;
        this.time = time;
        this.clock = clock;
    }

    @GET
    public TemplateInstance show(@RestQuery Optional<String> date, @RestQuery Optional<String> said) {
        byStaff.looked("day sheet read");
        Salon salon = Salon.the();
        ZoneId zone = salon.zoneId();
        LocalDate today = clock.instant().atZone(zone).toLocalDate();
        LocalDate day = date.flatMap(DayPages::parsed).orElse(today);
        Instant evening = day.plusDays(1).atStartOfDay(zone).toInstant();
        List<Visit> from = visits.between(day.atStartOfDay(zone).toInstant(),
            day.plusDays(1L + COMING_DAYS).atStartOfDay(zone).toInstant());
        List<Visit> onDay =
            from.stream().filter(v -> v.startsAt.isBefore(evening) && v.state != State.CANCELLED).toList();
        List<Visit> coming = from.stream().filter(v -> !v.startsAt.isBefore(evening) && v.state.isAhead()).toList();
        List<Task> open = tasks.open();
        DayText.Looked looked = text.look(onDay, open);
        List<DayRow> rows = onDay.stream().map(v -> text.row(v, looked)).toList();
        return new DayPage(time.day(day.atStartOfDay(zone)), text.count(rows),
            day.equals(today) ? share(salon, day) : day.isBefore(today) ? 1 : 0,
            day.equals(today), "/day?date=" + day.minusDays(1), "/day?date=" + day.plusDays(1), said.orElse(""), rows,
            coming.stream().map(v -> text.coming(v, looked)).toList(),
            coming.stream().filter(v -> v.owed().isPresent()).map(text::mustCome).toList(),
            open.stream().filter(t -> CALLS.contains(t.kind())).map(t -> text.promise(t, looked)).toList());
    }

    /** How much of the opening day has gone, 0 to 1. */
    private double share(Salon salon, LocalDate day) {
        List<Week.Span> open = salon.week().on(day.getDayOfWeek());
        if (open.isEmpty()) {
            return 0;
        }
        Instant from = day.atTime(open.get(0).from()).atZone(salon.zoneId()).toInstant();
        Instant to = day.atTime(open.get(open.size() - 1).to()).atZone(salon.zoneId()).toInstant();
        double share = (double) (clock.millis() - from.toEpochMilli()) / (to.toEpochMilli() - from.toEpochMilli());
        return Math.max(0, Math.min(1, share));
    }

    private static Optional<LocalDate> parsed(String date) {
        try {
            return Optional.of(LocalDate.parse(date)).filter(d -> d.getYear() > 1999 && d.getYear() < 2200);
        } catch (DateTimeParseException notADay) {
            return Optional.empty();
        }
    }
}
