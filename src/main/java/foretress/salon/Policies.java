package foretress.salon;

import foretress.assessment.Policy;
import foretress.knowledge.Knowledge;
import foretress.web.Happened;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** The policy that holds in this salon: its law's figures, each replaced where the salon's own is stricter. */
@ApplicationScoped
public class Policies {
    private final Knowledge knowledge;
    private final Event<Happened> happened;
    private final Clock clock;

    Policies(Knowledge knowledge, Event<Happened> happened, Clock clock) {
        this.knowledge = knowledge;
        this.happened = happened;
        this.clock = clock;
    }

    /** What the jurisdiction sets by itself. */
    public Policy law() {
        return knowledge.policy(Salon.the().jurisdiction);
    }

    /** What holds here. A figure kept under another law that is laxer than today's does not count. */
    public Policy effective() {
        Policy law = law();
        Map<String, Integer> figures = new LinkedHashMap<>(law.figures());
        own().forEach((name, figure) -> figures.merge(name, figure, Setting.of(name)::stricter));
        return new Policy(law.jurisdiction(), figures, law.emergencyNumber(), law.paper(), law.hemisphere(), law.warnings(), law.source());
    }

    /** The salon's own figures by name, only those it set. */
    Map<String, Integer> own() {
        Map<String, Integer> own = new LinkedHashMap<>();
        StricterFigure.<StricterFigure>list("order by name").stream().filter(row -> Setting.known(row.name))
            .forEach(row -> own.put(row.name, row.figure));
        return own;
    }

    /** @param figure empty to leave it to the law */
    @Transactional
    void set(Setting setting, Optional<Integer> figure, UUID staff) {
        if (Optional.ofNullable(own().get(setting.figure())).equals(figure)) return;
        StricterFigure.deleteById(setting.figure());
        figure.filter(value -> setting.stricterThan(value, law().figure(setting.figure()))).ifPresent(value -> {
            var row = new StricterFigure();
            row.name = setting.figure();
            row.figure = value;
            row.setAt = clock.instant();
            row.setBy = staff;
            row.persist();
        });
        happened.fire(new Happened(staff.toString(), "policy changed", setting.figure()));
    }
}
