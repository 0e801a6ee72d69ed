package foretress.owner;

import foretress.ledger.Anchors;
import foretress.ledger.Ledger;
import foretress.salon.Salon;
import foretress.salon.Who;
import foretress.told.ComplaintViews;
import foretress.visit.Task;
import foretress.visit.Tasks;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;

/** What the owner answers for, on one page: a month's work that was done without what it needed, what is still to do, who did what. */
@Path("/owner")
public class OwnerPages {
    @CheckedTemplate(basePath = "owner", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record OwnerPage(String month, String earlier, String later, int closed, List<OwnerText.Undone> untested,
        List<OwnerText.Undone> unsigned,
        List<OwnerText.Undone> unreadable, List<OwnerText.Against> overrides, List<OwnerText.ToDo> tasks,
        List<ComplaintViews.Line> complaints, OwnerTrail.Shown trail, Optional<OwnerText.Chain> chain)
        implements TemplateInstance {}

    private final Oversight oversight;
    private final Tasks tasks;
    private final OwnerText text;
    private final ComplaintViews complaints;
    private final OwnerTrail trail;
    private final Ledger ledger;
    private final Anchors anchors;
    private final Who who;
    private final Clock clock;

    OwnerPages(Oversight oversight, Tasks tasks, OwnerText text, ComplaintViews complaints, OwnerTrail trail,
        Ledger ledger, Anchors anchors, Who who, Clock clock) {
        this.complaints = complaints;
        this.oversight = oversight;
        this.tasks = tasks;
        this.text = text;
        this.trail = trail;
        this.ledger = ledger;
        this.anchors = anchors;
        this.who = who;
        this.clock = clock;
    }

    @GET
    public TemplateInstance show(@BeanParam TrailQuery query, @RestQuery Optional<String> chain) {
        String owner = who.staff().id.toString();
        if (chain.isPresent()) {
            ledger.note(owner, "audit chain checked", "");
        } else {
            ledger.read(owner, "owner's page read", "");
        }
        ZoneId zone = Salon.the().zoneId();
        YearMonth shown =
            query.month.flatMap(OwnerPages::month).orElseGet(() -> YearMonth.from(clock.instant().atZone(zone)));
        Instant first = shown.atDay(1).atStartOfDay(zone).toInstant();
        Instant end = shown.plusMonths(1).atDay(1).atStartOfDay(zone).toInstant();
        List<Oversight.Closed> closed = oversight.closed(first, end);
        OwnerText.People people = text.people();
        return new OwnerPage(text.month(shown), "/owner?month=" + shown.minusMonths(1),
            "/owner?month=" + shown.plusMonths(1), closed.size(),
            closed.stream().filter(c -> !c.untested().isEmpty()).map(text::undone).toList(),
            closed.stream().filter(c -> !c.consented()).map(text::undone).toList(),
            closed.stream().filter(c -> !c.readable()).map(text::undone).toList(),
            oversight.overrides(first, end).stream().map(o -> text.against(o, people)).toList(),
            tasks.open().stream().filter(OwnerPages::isListedNowhereElse).map((Task t) -> text.toDo(t, people))
                .toList(),
            complaints.unanswered(), trail.of(query, shown.toString(), zone),
            chain.map(
                asked -> text.chain(ledger.check(anchors.newest(Integer.MAX_VALUE)), clock.instant().atZone(zone))));
    }

    private static boolean isListedNowhereElse(Task task) {
        return task.kind() != Task.Kind.COMPLAINT;
    }

    private static Optional<YearMonth> month(String typed) {
        try {
            return Optional.of(YearMonth.parse(typed)).filter(m -> m.getYear() > 1999 && m.getYear() < 2200);
        } catch (DateTimeException notOne) {
            return Optional.empty();
        }
    }
}
