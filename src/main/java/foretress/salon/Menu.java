package foretress.salon;

import foretress.assessment.Placing;
import foretress.assessment.RuleSet;
import foretress.assessment.Service;
import foretress.assessment.Step;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.running.AuditEvent;
import foretress.running.Held;
import foretress.web.Fold;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * What this salon offers: the known services except those it took out, and those it made of known steps. Rules look at steps,
 * so a service of the salon's own is judged by the same rules as any other.
 */
@ApplicationScoped
public class Menu {
    private static final String OWN = "own-";

    private final Knowledge knowledge;
    private final Event<AuditEvent> happened;
    private final Clock clock;
    private final Held<List<Item>> items = Held.of(List.of("menu_item"), Menu::stored);
    private final Held<List<Called>> names = Held.of(List.of("menu_name"), Menu::storedNames);

    Menu(Knowledge knowledge, Event<AuditEvent> happened, Clock clock) {
        this.knowledge = knowledge;
        this.happened = happened;
        this.clock = clock;
    }

    private record Item(String id, boolean own, List<String> steps, boolean retired) {}

    private record Called(String id, String language, String name) {}

    private static List<Item> stored() {
        return MenuItem.all().stream()
            .map(item -> new Item(item.serviceId, item.own, item.stepIds(), item.retired)).toList();
    }

    private static List<Called> storedNames() {
        return MenuName.every().stream().map(one -> new Called(one.serviceId(), one.language, one.name)).toList();
    }

    /** A service on the owner's page. */
    public record Line(Service service, boolean own, boolean retired) {}

    /** Every service there is, offered or not: the known ones in their order, then the salon's own. */
    public List<Line> all() {
        List<Item> kept = items.get();
        Set<String> retired = kept.stream().filter(Item::retired).map(Item::id).collect(Collectors.toSet());
        List<Line> lines = new ArrayList<>(knowledge.ruleSet().services().stream()
            .map(service -> new Line(service, false, retired.contains(service.id()))).toList());
        kept.stream().filter(Item::own)
            .forEach(item -> made(item).ifPresent(service -> lines.add(new Line(service, true, item.retired()))));
        return lines;
    }

    public List<Service> offered() {
        return all().stream().filter(line -> !line.retired()).map(Line::service).toList();
    }

    /** A service by its id, also one that is no longer offered: it may be booked still. */
    public Optional<Service> service(String id) {
        return knowledge.ruleSet().service(id)
            .or(() -> items.get().stream().filter(item -> item.id().equals(id)).findFirst().flatMap(this::made));
    }

    /** Empty when a step of it is no longer known. */
    private Optional<Service> made(Item item) {
        RuleSet rules = knowledge.ruleSet();
        List<Step> steps = item.steps().stream().flatMap(step -> rules.step(step).stream()).toList();
        return steps.size() == item.steps().size() && !steps.isEmpty()
            ? Optional.of(new Service(item.id(), steps, Placing.ANYWHERE, rules.aims(steps))) : Optional.empty();
    }

    /**
     * The service's name for a reader of these words; what the salon has no name for in a language is called as in its own. A booked
     * service that nobody knows any more goes by its id: a list of visits must not fail over one of them.
     */
    public String name(String id, Words words) {
        if (id.startsWith(OWN)) {
            return called(id, words.language()).orElse(id);
        }
        return knowledge.ruleSet().service(id).map(known -> words.service(id)).orElse(id);
    }

    private Optional<String> called(String id, String language) {
        List<Called> called = names.get().stream().filter(name -> name.id().equals(id)).toList();
        String salons = Salon.the().languageTags().get(0);
        return in(called, language).or(() -> in(called, salons)).or(() -> called.stream().findFirst())
            .map(Called::name);
    }

    private static Optional<Called> in(List<Called> called, String language) {
        return called.stream().filter(name -> name.language().equals(language)).findFirst();
    }

    /** Whether a service in use is called like that in any of these languages. */
    boolean isTaken(String name, List<String> languages) {
        return languages.stream().map(knowledge::words).anyMatch(words -> offered().stream()
            .anyMatch(service -> Fold.fold(name(service.id(), words)).equals(Fold.fold(name))));
    }

    /**
     * A service of the salon's own.
     *
     * @param steps ids of known steps; they are worked in the order knowledge lists them
     * @param called its names by language tag, at least one
     */
    @Transactional
    public String add(List<String> steps, Map<String, String> called, String actor) {
        List<String> known = knowledge.ruleSet().steps().stream().map(Step::id).filter(steps::contains).toList();
        if (known.isEmpty() || called.isEmpty()) {
            throw new IllegalArgumentException("a service has a name and at least one step");
        }
        items.changes();
        names.changes();
        MenuItem item = MenuItem.own(OWN + UUID.randomUUID().toString().substring(0, 13), known, clock.instant());
        item.persist();
        called.forEach((language, name) -> new MenuName(item.serviceId, language, name).persist());
        happened.fire(new AuditEvent(actor, "service added", item.serviceId));
        return item.serviceId;
    }

    /** Takes a service out of what is offered, or puts it back; false when there is none of that id. */
    @Transactional
    public boolean turn(String id, boolean retired, String actor) {
        if (service(id).isEmpty()) {
            return false;
        }
        items.changes();
        MenuItem item = MenuItem.<MenuItem>findByIdOptional(id).orElseGet(() -> known(id));
        item.turn(retired);
        happened.fire(new AuditEvent(actor, retired ? "service no longer offered" : "service offered again", id));
        return true;
    }

    private MenuItem known(String id) {
        MenuItem item = MenuItem.known(id, clock.instant());
        item.persist();
        return item;
    }
}
