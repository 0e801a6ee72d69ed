package foretress.salon;

import foretress.assessment.Policy;
import foretress.knowledge.Knowledge;
import foretress.running.AuditEvent;
import foretress.running.Held;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** The policy that holds in this salon: the figures of its place, each replaced where the salon's own is stricter. */
@ApplicationScoped
public class Policies {
    private final Knowledge knowledge;
    private final Event<AuditEvent> happened;
    private final Event<RulesChanged> changed;
    private final Clock clock;
    private final Held<Map<String, Integer>> own = Held.of(List.of("stricter_figure"), Policies::stored);

    Policies(Knowledge knowledge, Event<AuditEvent> happened, Event<RulesChanged> changed, Clock clock) {
        this.knowledge = knowledge;
        this.happened = happened;
        this.changed = changed;
        this.clock = clock;
    }

    /** What holds in this place before the salon sets anything of its own: law, makers' instructions, trade rules and our own figures. */
    public Policy place() {
        return knowledge.policy(Salon.the().jurisdiction);
    }

    /** What holds here. A figure kept under another law that is laxer than today's does not count. */
    public Policy effective() {
        Policy place = place();
        Map<String, Integer> figures = new LinkedHashMap<>(place.figures());
        own().forEach((name, figure) -> figures.merge(name, figure, Setting.of(name)::stricter));
        return place.with(figures);
    }

    /** The salon's own figures by name, only those it set. */
    Map<String, Integer> own() {
        return own.get();
    }

    private static Map<String, Integer> stored() {
        Map<String, Integer> own = StricterFigure.figures();
        own.keySet().removeIf(name -> !Setting.known(name));
        return Collections.unmodifiableMap(own);
    }

    /** @param figures each empty to leave it to the law */
    @Transactional
    void set(Map<Setting, Optional<Integer>> figures, UUID staff) {
        own.changes();
        Map<String, Integer> before = own();
        figures.forEach((setting, figure) -> set(setting, figure, staff));
        ZoneId zone = Salon.the().zoneId();
        if (!own().equals(before)) {
            changed.fire(new RulesChanged(LocalDate.ofInstant(clock.instant(), zone), zone));
        }
    }

    private void set(Setting setting, Optional<Integer> figure, UUID staff) {
        if (Optional.ofNullable(own().get(setting.figure())).equals(figure)) {
            return;
        }
        StricterFigure.deleteById(setting.figure());
        figure.filter(value -> setting.stricterThan(value, place().figure(setting.figure())))
            .ifPresent(value -> new StricterFigure(setting, value, clock.instant(), staff).persist());
        happened.fire(new AuditEvent(staff.toString(), "policy changed", setting.figure()));
    }
}
