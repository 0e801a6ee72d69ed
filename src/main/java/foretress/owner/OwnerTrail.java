package foretress.owner;

import foretress.ledger.AuditTrail;
import foretress.visit.Clients;
import foretress.visit.Visits;
import jakarta.enterprise.context.RequestScoped;
import jakarta.ws.rs.core.UriBuilder;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
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
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);

    /** The search, word for word as it was typed. */
    public record Asked(String month, String client, String person, String act, String from, String until,
        String page) {}

    public record Row(long number, String at, String actor, String what, String subject) {}

    public record Person(String id, String name, boolean chosen) {}

    /** @param earlier address of the page with earlier lines; blank when there is none */
    public record Shown(Asked asked, List<Person> people, List<Row> rows, String earlier, String later) {}

    private static final int MOST_PAGES = 40;
    private static final Clients.Found NOBODY = new Clients.Found(List.of(), 0, false);

    private final AuditTrail trail;
    private final Clients clients;
    private final Visits visits;
    private final LedgerActs acts;
    private final OwnerWords say;

    OwnerTrail(AuditTrail trail, Clients clients, Visits visits, LedgerActs acts, OwnerWords say) {
        this.trail = trail;
        this.acts = acts;
        this.clients = clients;
        this.visits = visits;
        this.say = say;
    }

    Shown of(Asked asked, OwnerText.People people, ZoneId zone) {
        int page = page(asked.page());
        Map<String, String> behind = behind();
        AuditTrail.Found found =
            trail.find(new AuditTrail.Asked(subjects(asked.client()), some(asked.person()),
                some(asked.act()).map(typed -> acts.meant(typed, trail.acts())),
                start(asked.from(), zone, 0), start(asked.until(), zone, 1)), page);
        return new Shown(asked, choices(asked, people),
            found.lines().stream().map(line -> row(line, people, behind, zone)).toList(),
            found.more() ? address(asked, page + 1) : "", page > 0 ? address(asked, page - 1) : "");
    }

    private Row row(AuditTrail.Line line, OwnerText.People people, Map<String, String> behind, ZoneId zone) {
        return new Row(line.number(), line.at().atZone(zone).format(MOMENT), actor(line.actor(), people),
            acts.said(line.what()),
            behind.getOrDefault(line.subject(), ""));
    }

    private String actor(String actor, OwnerText.People people) {
        return switch (actor) {
            case "client" -> say.actor_client();
            case "server" -> say.actor_server();
            case "nobody" -> say.actor_nobody();
            default -> uuid(actor).map(people::named).filter(name -> !name.isEmpty()).orElse(actor);
        };
    }

    /** Every person and visit by the chain's own name for it. */
    private Map<String, String> behind() {
        Map<String, String> named = new HashMap<>();
        visits.peopleBehind().forEach((id, name) -> named.put(trail.pseudonym(id.toString()), name));
        return named;
    }

    /** Everything on file under the clients found; an empty field asks for nobody in particular. */
    private Optional<Set<String>> subjects(String typed) {
        if (typed.isBlank()) {
            return Optional.empty();
        }
        return Optional.of(visits.recordsOf(found(typed)).stream().map(id -> trail.pseudonym(id.toString()))
            .collect(Collectors.toSet()));
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

    private List<Person> choices(Asked asked, OwnerText.People people) {
        List<Person> all = new ArrayList<>(people.staff().entrySet().stream()
            .map(e -> new Person(e.getKey().toString(), e.getValue(), e.getKey().toString().equals(asked.person())))
            .sorted(Comparator.comparing(Person::name)).toList());
        all.add(new Person("client", say.actor_client(), asked.person().equals("client")));
        all.add(new Person("nobody", say.actor_nobody(), asked.person().equals("nobody")));
        all.add(new Person("server", say.actor_server(), asked.person().equals("server")));
        return all;
    }

    private static String address(Asked asked, int page) {
        return UriBuilder.fromPath("/owner").queryParam("month", "{m}").queryParam("client", "{c}")
            .queryParam("person", "{p}").queryParam("act", "{a}")
            .queryParam("from", "{f}").queryParam("until", "{u}").queryParam("page", "{n}").fragment("trail")
            .build(asked.month(), asked.client(), asked.person(), asked.act(), asked.from(), asked.until(), page)
            .toString();
    }

    private static Optional<Instant> start(String day, ZoneId zone, int later) {
        try {
            return Optional.of(LocalDate.parse(day)).filter(d -> d.getYear() > 1999 && d.getYear() < 2200)
                .map(d -> d.plusDays(later).atStartOfDay(zone).toInstant());
        } catch (DateTimeException notADay) {
            return Optional.empty();
        }
    }

    private static Optional<String> some(String typed) {
        return Optional.of(typed.strip()).filter(text -> !text.isEmpty());
    }

    private static Optional<UUID> uuid(String text) {
        try {
            return Optional.of(UUID.fromString(text));
        } catch (IllegalArgumentException notOne) {
            return Optional.empty();
        }
    }

    private static int page(String typed) {
        return typed.matches("[0-9]{1,5}") ? Integer.parseInt(typed) : 0;
    }
}
