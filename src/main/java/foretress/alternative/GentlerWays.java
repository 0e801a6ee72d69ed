package foretress.alternative;

import foretress.assessment.Assessment;
import foretress.assessment.Service;
import foretress.assessment.Source;
import foretress.assessment.Ways;
import foretress.assessment.Weight;
import foretress.intake.Intake;
import foretress.intake.Plans;
import foretress.knowledge.Counted;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.plan.TestPlan;
import foretress.questionnaire.Answers;
import foretress.visit.Visit;
import foretress.web.ChairTime;
import foretress.web.Language;
import foretress.web.StylistWords;
import jakarta.enterprise.context.RequestScoped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Ways to the booked aim in words: what each can and cannot do on this hair, what it owes, and when it could be done. */
@RequestScoped
class GentlerWays {
    private final OpenWays open;
    private final Intake intake;
    private final Plans plans;
    private final Knowledge knowledge;
    private final Language language;
    private final StylistWords stylist;
    private final InsteadWords say;
    private final ChairTime time;

    GentlerWays(OpenWays open, Intake intake, Plans plans, Knowledge knowledge, Language language, StylistWords stylist,
        InsteadWords say, ChairTime time) {
        this.open = open;
        this.intake = intake;
        this.plans = plans;
        this.knowledge = knowledge;
        this.language = language;
        this.stylist = stylist;
        this.say = say;
        this.time = time;
    }

    List<GentlerWay> ways(Visit visit, List<Service> services, Assessment assessment, List<Alternative> all) {
        Answers said = intake.said(visit);
        return services.stream().flatMap(service -> all.stream().filter(one -> one.id().equals(service.id()))
            .map(one -> way(visit, said, service, assessment, one))).toList();
    }

    private GentlerWay way(Visit visit, Answers said, Service service, Assessment assessment, Alternative stands) {
        boolean off = stands.weight().atLeast(Weight.COULD_NOT_BE_ASSESSED);
        Optional<TestPlan> plan = off ? Optional.empty() : Optional.of(plans.instead(visit, said, List.of(service)));
        Optional<Ways.Lift> lift = knowledge.ways().lift(service, assessment.facts());
        boolean held = lift.filter(l -> l.by().isPresent()).isPresent();
        String lifts = lift.map(this::lifts).orElse("");
        Optional<Ways.Does> does = Optional.ofNullable(knowledge.ways().does().get(service.id()));
        return new GentlerWay(service.id(), stands.service(), stands.weight(), stands.word(), stands.unsaid(),
            stands.weight().atLeast(Weight.RESTRICTS) ? stands.because() : "",
            sentences(does.map(d -> words().text("ways.can." + service.id())), held ? "" : lifts),
            sentences(does.map(d -> words().text("ways.cannot." + service.id())), held ? lifts : ""),
            does.map(d -> say.lasts(words().text("ways.lasts." + d.lasts()))).orElse(""),
            plan.map(this::owes).orElse(""), plan.map(p -> earliest(visit, p)).orElse(""));
    }

    private static String sentences(Optional<String> one, String other) {
        return Stream.concat(one.stream(), Stream.of(other)).filter(text -> !text.isEmpty())
            .collect(Collectors.joining(" "));
    }

    private String lifts(Ways.Lift lift) {
        return lift.by()
            .map(by -> words().text("ways.lift." + (by.none() ? "none" : "unsure")).replace("{why}",
                words().text("ways.held-back." + by.id())))
            .orElseGet(() -> Counted.say(words().text("ways.lift.levels"), words().language(),
                Map.of("levels", lift.levels())));
    }

    String owes(TestPlan plan) {
        String tests = Stream.concat(plan.tests().stream(), plan.waiting().stream()).distinct().map(words()::test)
            .collect(Collectors.joining(", "));
        return tests.isEmpty() ? say.nothing_owed() : tests;
    }

    String earliest(Visit visit, TestPlan plan) {
        if (open.waitsForAWord(plan)) {
            return say.word_first();
        }
        if (plan.conflicts().isEmpty()) {
            return plan.lastStartOfAll().map(start -> say.at_visit_by(time.dayAndTime(start.atZone(visit.zone()))))
                .orElseGet(say::at_visit);
        }
        return plan.visitFrom().map(from -> time.dayAndTime(from.atZone(visit.zone()))).orElse("");
    }

    String source(List<GentlerWay> ways) {
        List<String> keys = ways.stream().flatMap(way -> Optional.ofNullable(knowledge.ways().does().get(way.service()))
            .stream()).flatMap(does -> does.sources().stream()).distinct().toList();
        return keys.isEmpty() ? "" : say.source(keys.stream().map(knowledge.ruleSet().sources()::get)
            .map(this::source).collect(Collectors.joining("; ")));
    }

    private String source(Source source) {
        return source.title() + " (" + status(source) + ")";
    }

    private String status(Source source) {
        return switch (source.status()) {
            case PUBLISHED -> stylist.source_published();
            case COMMON_PRACTICE -> stylist.source_common_practice();
            case FROM_MEMORY -> stylist.source_from_memory();
            case OWN_DECISION -> stylist.source_own_decision();
        };
    }

    private Words words() {
        return knowledge.words(language.getTag());
    }
}
