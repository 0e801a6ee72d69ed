package foretress.consultation;

import foretress.assessment.Weight;
import foretress.salon.Menu;
import foretress.salon.Salon;
import foretress.visit.State;
import foretress.visit.Task;
import foretress.visit.Tasks;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.web.Language;
import foretress.intake.Plans;
import foretress.web.SkinWords;
import foretress.web.Stylist;
import foretress.knowledge.Knowledge;
import foretress.salon.OpeningHours;
import foretress.salon.Staff;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;

/** The stylist's day: every visit with its standing, what is missing and what is owed, and the promises to keep. */
@Path("/day")
public class DayPages {
    private static final int COMING_DAYS = 14;

    @CheckedTemplate(basePath = "consultation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record DayPage(String title, int visits, int unanswered, double share, boolean today, String previous, String next,
                   List<Row> rows, List<Coming> coming, List<MustCome> mustCome, List<Promise> promises) implements TemplateInstance {}

    /** @param standing empty until everything was answered */
    public record Row(String id, String hour, String client, String services, boolean over, String unsaid, Optional<Weight> standing,
                      String word, String stylist, String owed, String latest) {}

    public record Coming(String id, String when, String client, String unsaid, Optional<Weight> standing, String word) {}

    public record MustCome(String client, String what, String latest, boolean soon) {}

    public record Promise(String id, String client, String who, String until) {}

    private final Visits visits;
    private final Tasks tasks;
    private final Knowledge knowledge;
    private final Menu menu;
    private final Language language;
    private final Stylist say;
    private final SkinWords skin;
    private final ChairTime time;
    private final Clock clock;

    DayPages(Visits visits, Tasks tasks, Knowledge knowledge, Menu menu, Language language, Stylist say, SkinWords skin, ChairTime time, Clock clock) {
        this.visits = visits;
        this.tasks = tasks;
        this.knowledge = knowledge;
        this.menu = menu;
        this.language = language;
        this.say = say;
        this.skin = skin;
        this.time = time;
        this.clock = clock;
    }

    @GET
    @Transactional
    public TemplateInstance show(@RestQuery Optional<String> date) {
        Salon salon = Salon.the();
        ZoneId zone = salon.zoneId();
        LocalDate today = clock.instant().atZone(zone).toLocalDate();
        LocalDate day = date.flatMap(DayPages::parsed).orElse(today);
        List<Visit> onDay = visits.on(day, zone).stream().filter(v -> v.state != State.CANCELLED).toList();
        List<Visit> coming = visits.between(day.plusDays(1).atStartOfDay(zone).toInstant(),
            day.plusDays(1L + COMING_DAYS).atStartOfDay(zone).toInstant()).stream().filter(v -> v.state.isAhead()).toList();
        return new DayPage(time.day(day.atStartOfDay(zone)), onDay.size(), (int) onDay.stream().filter(v -> v.signed().isEmpty()).count(),
            day.equals(today) ? share(salon, day) : day.isBefore(today) ? 1 : 0, day.equals(today), "/day?date=" + day.minusDays(1),
            "/day?date=" + day.plusDays(1), onDay.stream().map(this::row).toList(), coming.stream().map(this::coming).toList(),
            coming.stream().filter(v -> v.owed().isPresent()).map(this::mustCome).toList(), tasks.open().stream()
                .filter(t -> t.kind == Task.Kind.CALL || t.kind == Task.Kind.SPEAK_AT_ONCE || t.kind == Task.Kind.ASK_AFTER).map(this::promise).toList());
    }

    private Row row(Visit visit) {
        boolean over = visit.startsAt.isBefore(clock.instant()) || !visit.state.isAhead();
        Optional<Weight> standing = standing(visit);
        return new Row(visit.id.toString(), time.hour(visit.startsThere()), visit.client.fullName(), services(visit), over, unsaid(visit),
            standing, standing.map(w -> WeightWord.of(w, say)).orElse(""), stylist(visit), owed(visit),
            visit.owed().flatMap(Visit.Owed::by).map(by -> latest(visit, by)).orElse(""));
    }

    private Coming coming(Visit visit) {
        Optional<Weight> standing = standing(visit);
        return new Coming(visit.id.toString(), time.dayAndTime(visit.startsThere()), visit.client.fullName(), unsaid(visit), standing,
            standing.map(w -> WeightWord.of(w, say)).orElse(""));
    }

    private MustCome mustCome(Visit visit) {
        Visit.Owed owed = visit.owed().orElseThrow();
        boolean soon = owed.by().filter(by -> by.isBefore(clock.instant().plusSeconds(24 * 3600))).isPresent();
        return new MustCome(visit.client.fullName(), test(owed) + ", " + time.dayAndTime(visit.startsThere()),
            owed.by().map(by -> latest(visit, by)).orElse(""), soon);
    }

    private String latest(Visit visit, Instant by) {
        return by.isBefore(clock.instant()) ? say.day_owed_late(at(visit, by)) : say.day_owed_latest(at(visit, by));
    }

    private Promise promise(Task task) {
        String name = task.owner().flatMap(Staff::byId).map(s -> s.name).orElse("");
        String who = task.kind == Task.Kind.SPEAK_AT_ONCE ? skin.day_speak(name) : task.kind == Task.Kind.ASK_AFTER ? skin.day_ask() : task.owner().flatMap(Staff::byId).map(s -> say.day_promised(s.name)).orElseGet(say::day_promised_desk);
        return new Promise(task.id.toString(), task.visit.client.fullName(), who, say.day_until(at(task.visit, task.dueAt)));
    }

    /** A standing is shown once the client has signed; before that it would be a guess. */
    private static Optional<Weight> standing(Visit visit) {
        return visit.signed().isEmpty() ? Optional.empty() : visit.standing().map(Weight.BY_CODE::get);
    }

    private String unsaid(Visit visit) {
        return visit.signed().isPresent() ? "" : visit.state == State.ANSWERING ? say.day_half_answered() : say.day_not_answered();
    }

    private String owed(Visit visit) {
        return visit.owed().map(this::test).orElseGet(() -> visit.signed().isPresent() ? say.day_nothing_owed() : "");
    }

    private String test(Visit.Owed owed) {
        return owed.what().equals(Plans.READING) ? skin.day_reading() : knowledge.words(language.getTag()).test(owed.what());
    }

    private String services(Visit visit) {
        return String.join(", ", visit.services.stream().map(s -> menu.name(s.serviceId, knowledge.words(language.getTag()))).toList());
    }

    private String stylist(Visit visit) {
        return Staff.byId(visit.stylistId).map(s -> say.day_with(s.name)).orElse("");
    }

    private String at(Visit visit, Instant moment) {
        return time.dayAndTime(moment.atZone(visit.zone()));
    }

    /** How much of the opening day has gone, 0 to 1. */
    private double share(Salon salon, LocalDate day) {
        List<OpeningHours.Span> open = salon.hours().on(day.getDayOfWeek());
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
