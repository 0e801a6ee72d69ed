package foretress.owner;

import foretress.ledger.AuditTrail;
import foretress.visit.Clients;
import foretress.visit.Visits;
import jakarta.enterprise.context.RequestScoped;
import jakarta.ws.rs.core.UriBuilder;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** The audit trail as the owner searches it. The chain knows records by pseudonyms alone; who they are is looked up from outside it. */
@RequestScoped
class OwnerTrail {
    static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);

    /** The search, word for word as it was typed. */
    public record Asked(String month, String client, String about, String person, String act, String from, String after,
        String until, String before) {}

    /** @param alone address of this client's trail alone; blank where no client is known */
    public record Row(long number, String at, String actor, String what, String subject, String alone) {}

    public record Person(String id, String name, boolean chosen) {}

    /** @param earlier address of the page with earlier lines; blank when there is none */
    public record Shown(Asked asked, List<Person> people, List<Row> rows, String earlier, String later, String csv,
        String json) {}

    private static final int MOST_PAGES = 40;
    private static final Clients.Found NOBODY = new Clients.Found(List.of(), 0, false);

    private final AuditTrail trail;
    private final Clients clients;
    private final Visits visits;
    private final LedgerActs acts;
    private final TrailNames names;
    private final TrailWords say;

    OwnerTrail(AuditTrail trail, Clients clients, Visits visits, LedgerActs acts, TrailNames names, TrailWords say) {
        this.trail = trail;
        this.acts = acts;
        this.clients = clients;
        this.visits = visits;
        this.names = names;
        this.say = say;
    }

    Shown of(TrailQuery query, String month, ZoneId zone) {
        int page = page(query.page.orElse(""));
        AuditTrail.Found found = trail.find(meant(query, zone), page);
        return new Shown(asked(query, month), choices(query.person.orElse("")),
            found.lines().stream().map(line -> row(line, month, zone)).toList(),
            found.more() ? address("/owner", query, month, page + 1) : "",
            page > 0 ? address("/owner", query, month, page - 1) : "", address("/owner/trail.csv", query, month, 0),
            address("/owner/trail.json", query, month, 0));
    }

    /** What is asked of the chain. */
    AuditTrail.Asked meant(TrailQuery query, ZoneId zone) {
        return new AuditTrail.Asked(subjects(query), some(query.person),
            some(query.act).map(typed -> acts.meant(typed, trail.acts())), query.first(zone), query.end(zone));
    }

    /** A line as the page shows it: when, who, what, about whom, its number. */
    List<String> cells(AuditTrail.Line line, ZoneId zone) {
        Row row = row(line, "", zone);
        return List.of(row.at(), row.actor(), row.what(), row.subject(), Long.toString(row.number()));
    }

    Asked asked(TrailQuery query) {
        return asked(query, query.month.orElse(""));
    }

    /** The same search at another address. */
    String address(String path, TrailQuery query) {
        return address(path, query, query.month.orElse(""), 0);
    }

    private static Asked asked(TrailQuery q, String month) {
        return new Asked(month, q.client.orElse(""), q.about.orElse(""), q.person.orElse(""), q.act.orElse(""),
            q.from.orElse(""), q.after.orElse(""), q.until.orElse(""), q.before.orElse(""));
    }

    private Row row(AuditTrail.Line line, String month, ZoneId zone) {
        TrailNames.Record about = names.record(line.subject());
        return new Row(line.number(), line.at().atZone(zone).format(MOMENT), names.actor(line.actor()),
            acts.said(line.what()), about.name(),
            about.id().isEmpty() ? "" : "/owner?month=%s&about=%s#trail".formatted(month, about.id()));
    }

    /** Everything on file under the clients found, or about the one client or visit asked for; empty fields ask for nobody in particular. */
    private Optional<Set<String>> subjects(TrailQuery query) {
        Optional<Set<UUID>> named = some(query.client).map(typed -> visits.recordsOf(found(typed)));
        Optional<Set<UUID>> opened = some(query.about).map(id -> TrailNames.uuid(id).map(this::about).orElse(Set.of()));
        return opened.map(ids -> both(ids, named)).or(() -> named)
            .map(ids -> ids.stream().map(id -> trail.pseudonym(id.toString())).collect(Collectors.toSet()));
    }

    private static Set<UUID> both(Set<UUID> ids, Optional<Set<UUID>> others) {
        Set<UUID> both = new HashSet<>(ids);
        others.ifPresent(both::retainAll);
        return both;
    }

    private Set<UUID> about(UUID id) {
        Set<UUID> ofClient = visits.recordsOf(List.of(id));
        return ofClient.isEmpty() ? visits.recordsOfVisit(id) : ofClient;
    }

    /** Everybody of that name, not only the first page of them; a query that names more is too wide to be one person's trail. */
    private List<UUID> found(String typed) {
        List<UUID> found = new ArrayList<>();
        Clients.Found some = clients.search(typed, 0);
        for (; !some.clients().isEmpty();
            some = some.more() && some.page() < MOST_PAGES ? clients.search(typed, some.page() + 1) : NOBODY) {
            some.clients().forEach(client -> found.add(client.id));
        }
        return found;
    }

    private List<Person> choices(String chosen) {
        List<Person> all = new ArrayList<>(names.staff().entrySet().stream()
            .map(e -> new Person(e.getKey().toString(), e.getValue(), e.getKey().toString().equals(chosen)))
            .sorted(Comparator.comparing(Person::name)).toList());
        all.add(new Person("client", say.actor_client(), chosen.equals("client")));
        all.add(new Person("nobody", say.actor_nobody(), chosen.equals("nobody")));
        all.add(new Person("server", say.actor_server(), chosen.equals("server")));
        return all;
    }

    private static String address(String path, TrailQuery q, String month, int page) {
        Map<String, Optional<String>> all = new LinkedHashMap<>();
        all.put("month", Optional.of(month));
        all.put("client", q.client);
        all.put("about", q.about);
        all.put("person", q.person);
        all.put("act", q.act);
        all.put("from", q.from);
        all.put("after", q.after);
        all.put("until", q.until);
        all.put("before", q.before);
        all.put("page", Optional.of(page).filter(n -> n > 0).map(String::valueOf));
        UriBuilder address = UriBuilder.fromPath(path);
        List<String> values = new ArrayList<>();
        all.forEach((name, value) -> some(value).ifPresent(typed -> {
            address.queryParam(name, "{" + name + "}");
            values.add(typed);
        }));
        return address.fragment(path.equals("/owner") ? "trail" : null).build(values.toArray()).toString();
    }

    private static Optional<String> some(Optional<String> typed) {
        return typed.map(text -> text.replace("\0", "").strip()).filter(text -> !text.isEmpty());
    }

    private static int page(String typed) {
        return typed.matches("[0-9]{1,5}") ? Integer.parseInt(typed) : 0;
    }
}
