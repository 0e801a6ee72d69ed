package foretress.bench;

import foretress.assessment.Weight;
import foretress.bench.BenchElasticityPages.Choice;
import foretress.visit.Visit;
import foretress.web.ChairTime;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.function.Function;
import org.jboss.resteasy.reactive.RestPath;

/** A test cutting beforehand, and the strand test while the product develops: mixed, timed, rinsed, judged. */
@Path("/visits/{id}/bench/{kind: test-cutting|strand-test}")
public class BenchTrialPages {
    private static final int LONGEST_NAME = 120;
    private static final int LONGEST_MINUTES = 180;

    @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record BenchTrialBegin(BenchHead head, Kind kind, String product, String strength, String unit, String minutes,
        String submission, List<BenchOutcome> outcomes, Mistakes mistakes)
        implements TemplateInstance {}

    @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record BenchTrialRun(Running trial) implements TemplateInstance {}

    @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record BenchTrialLive(Running trial) implements TemplateInstance {}

    /** The kind in words; what a cutting and a test on the head have different. */
    public record Kind(String name, String what, String action, boolean cutting) {}

    public record Running(BenchHead head, Kind kind, String mixed, Watch watch, Judging judging, Judged judged,
        BenchAfter after, BenchNews news, Mistakes mistakes) {
        public String live() {
            return kind.action() + "/live";
        }
    }

    /**
     * The clock that runs.
     *
     * @param clock empty once it is ended
     * @param early its time is not over
     */
    public record Watch(Optional<BenchTimer> clock, String started, List<String> unwatched, boolean early) {}

    /** What is asked of it once it is rinsed; {@code open} while nobody has said. */
    public record Judging(boolean open, List<Choice> colours, List<Choice> conditions, List<Choice> bounces) {}

    /** @param read it was judged */
    public record Judged(boolean read, Weight weight, String result, List<String> lines) {}

    private final BenchDoor door;
    private final BenchRecords tests;
    private final BenchChanges changes;
    private final BenchTails tails;
    private final BenchOutcomes outcomes;
    private final BenchTimers timers;
    private final BenchSay words;
    private final BenchWords say;
    private final ChairTime time;

    BenchTrialPages(BenchDoor door, BenchRecords tests, BenchChanges changes, BenchTails tails, BenchOutcomes outcomes,
        BenchTimers timers, BenchSay words, BenchWords say,
        ChairTime time) {
        this.door = door;
        this.tests = tests;
        this.changes = changes;
        this.tails = tails;
        this.outcomes = outcomes;
        this.timers = timers;
        this.words = words;
        this.say = say;
        this.time = time;
    }

    @GET
    public TemplateInstance begin(@RestPath UUID id, @RestPath String kind) {
        return begin(door.wanted(id, of(kind)), of(kind), new Form(new MultivaluedHashMap<>()),
            UUID.randomUUID().toString(), new Mistakes());
    }

    @POST
    public Response start(@RestPath UUID id, @RestPath String kind, MultivaluedMap<String, String> posted) {
        var form = new Form(posted);
        Visit visit = door.wanted(id, of(kind));
        var mistakes = new Mistakes();
        Optional<BenchTrialBody> trial = read(form, mistakes);
        if (trial.isEmpty()) {
            return FormAgain.with(begin(visit, of(kind), form, form.one("submission"), mistakes));
        }
        BenchRecord test = tests.make(visit.id, of(kind), form.one("submission"), trial.get(), door.staff());
        tests.start(test, trial.get().minutes() * 60, door.staff());
        return BenchDoor.go(BenchDoor.at(test));
    }

    @GET
    @Path("/{test}")
    public TemplateInstance show(@RestPath UUID id, @RestPath String kind, @RestPath UUID test) {
        return new BenchTrialRun(running(door.visit(id), door.test(id, test, of(kind)),
            new Form(new MultivaluedHashMap<>()), new Mistakes()));
    }

    @GET
    @Path("/{test}/live")
    public TemplateInstance live(@RestPath UUID id, @RestPath String kind, @RestPath UUID test) {
        return new BenchTrialLive(running(door.visit(id), door.test(id, test, of(kind)),
            new Form(new MultivaluedHashMap<>()), new Mistakes()));
    }

    /** Rinsed and judged; that ends it too. */
    @POST
    @Path("/{test}")
    public Response judge(@RestPath UUID id, @RestPath String kind, @RestPath UUID test,
        MultivaluedMap<String, String> posted) {
        var form = new Form(posted);
        Visit visit = door.ahead(id);
        BenchRecord found = door.test(id, test, of(kind));
        var mistakes = new Mistakes();
        mistakes.expect(known(form.one("colour"), Trial.Colour.class), "colour", say.trial_colour_missing());
        mistakes.expect(known(form.one("condition"), Trial.Condition.class), "condition",
            say.trial_condition_missing());
        mistakes.expect(known(form.one("bounce"), Trial.Bounce.class), "bounce", say.trial_bounce_missing());
        if (!mistakes.isEmpty()) {
            return FormAgain.with(new BenchTrialRun(running(visit, found, form, mistakes)));
        }
        tests.end(found, door.staff());
        tests.change(found, BenchTrialBody.class,
            before -> before.trial().isPresent() ? before : judged(found, before, form), door.staff());
        return BenchDoor.go(BenchDoor.at(found));
    }

    /** The minutes it really had; one second short of the planned time is not the planned time. */
    private BenchTrialBody judged(BenchRecord test, BenchTrialBody before, Form form) {
        long leftMinutes = (tests.leftSeconds(door.test(test.visitId(), test.id())) + 59) / 60;
        int minutes = (int) Math.max(1, before.minutes() - leftMinutes);
        return before
            .read(new Trial(before.product(), before.percent(), minutes, Trial.Colour.valueOf(form.one("colour")),
                Trial.Condition.valueOf(form.one("condition")), Trial.Bounce.valueOf(form.one("bounce"))));
    }

    private Optional<BenchTrialBody> read(Form form, Mistakes mistakes) {
        String product = form.one("product");
        OptionalDouble strength =
            form.one("unit").equals("none") ? OptionalDouble.of(0) : BenchNumber.read(form.one("strength"));
        OptionalDouble minutes = BenchNumber.read(form.one("minutes"));
        mistakes.expect(!product.isEmpty() && product.length() <= LONGEST_NAME, "product",
            say.trial_product_missing(LONGEST_NAME));
        mistakes.expect(strength.isPresent(), "strength", say.strength_missing(form.one("strength")));
        mistakes.expect(minutes.isPresent() && minutes.getAsDouble() >= 1 && minutes.getAsDouble() <= LONGEST_MINUTES,
            "minutes",
            say.no_time(form.one("minutes"), "1", "" + LONGEST_MINUTES));
        if (!mistakes.isEmpty()) {
            return Optional.empty();
        }
        try {
            double percent =
                strength.getAsDouble() == 0 ? 0 : strength(form.one("unit"), strength.getAsDouble()).percent();
            return Optional
                .of(new BenchTrialBody(product, percent, (int) Math.ceil(minutes.getAsDouble()), Optional.empty()));
        } catch (Impossible refused) {
            mistakes.add("strength", words.impossible(refused));
            return Optional.empty();
        }
    }

    static Peroxide strength(String unit, double value) {
        return unit.equals("percent") ? Peroxide.ofPercent(value) : Peroxide.ofVolumes(value);
    }

    private TemplateInstance begin(Visit visit, BenchKind kind, Form form, String submission, Mistakes mistakes) {
        BenchHead head = BenchHead.of(visit, time);
        return new BenchTrialBegin(head, kind(kind, head.begins(kind)), form.one("product"), form.one("strength"),
            form.one("unit"), form.one("minutes"),
            submission, outcomes.ahead(visit, kind), mistakes);
    }

    private Kind kind(BenchKind kind, String action) {
        return new Kind(words.kind(kind), words.what(kind), action, kind == BenchKind.CUTTING);
    }

    private Running running(Visit visit, BenchRecord test, Form form, Mistakes mistakes) {
        BenchTrialBody body = tests.body(test, BenchTrialBody.class);
        BenchHead head = BenchHead.of(visit, time);
        boolean running = test.state() == BenchRecord.State.RUNNING && !test.struck();
        Optional<String> outcome = tests.outcome(test);
        BenchTail tail = tails.of(visit, test);
        Optional<BenchTimer> clock = running ? Optional.of(timers.of(test)) : Optional.empty();
        String result =
            outcome.map(words::outcome).orElseGet(() -> body.trial().isPresent() ? say.state_says_nothing() : "");
        String version = test.version() + "-" + clock.map(c -> c.left() == 0).orElse(false) + "-" + tail.photos().size()
            + "-" + tests.gaps(test).size();
        var watch = new Watch(clock, started(visit, test), timers.unwatched(visit, test),
            clock.filter(c -> c.left() > 0).isPresent());
        var judging = new Judging(head.ahead() && body.trial().isEmpty() && !test.struck(),
            choices(Trial.Colour.class, this::colour, form.one("colour")),
            choices(Trial.Condition.class, this::condition, form.one("condition")),
            choices(Trial.Bounce.class, this::bounce, form.one("bounce")));
        var judged = new Judged(body.trial().isPresent(), outcome.map(BenchSay::weight).orElse(Weight.NOTE), result,
            body.trial().map(this::lines).orElse(List.of()));
        return new Running(head, kind(test.kind(), BenchDoor.at(test)), mixed(body), watch, judging, judged,
            new BenchAfter(changes.of(visit, test), tail), new BenchNews(version, result), mistakes);
    }

    private String started(Visit visit, BenchRecord test) {
        return test.startedAt().map(at -> say.started_at(time.hour(at.atZone(visit.zone())))).orElse("");
    }

    private String mixed(BenchTrialBody trial) {
        return trial.percent() == 0 ? say.trial_mixed_none(trial.product(), trial.minutes())
            : say.trial_mixed(trial.product(), BenchNumber.say(trial.percent()),
                BenchNumber.say(trial.percent() * 10 / 3), trial.minutes());
    }

    private List<String> lines(Trial trial) {
        return List.of(say.trial_lasted(trial.minutes()), say.trial_colour() + ": " + colour(trial.colour()),
            say.trial_condition() + ": " + condition(trial.condition()),
            say.trial_bounce() + ": " + bounce(trial.bounce()));
    }

    private static <E extends Enum<E>> List<Choice> choices(Class<E> type, Function<E, String> word, String chosen) {
        return Arrays.stream(type.getEnumConstants())
            .map(c -> new Choice(c.name(), word.apply(c), c.name().equals(chosen))).toList();
    }

    private String colour(Trial.Colour colour) {
        return colour == Trial.Colour.AS_PLANNED ? say.colour_as_planned() : say.colour_otherwise();
    }

    private String condition(Trial.Condition condition) {
        return switch (condition) {
            case AS_BEFORE -> say.condition_as_before();
            case ROUGHER -> say.condition_rougher();
            case GUMMY_OR_BREAKING -> say.condition_gummy();
        };
    }

    private String bounce(Trial.Bounce bounce) {
        return switch (bounce) {
            case SPRANG_BACK -> say.ending_back();
            case STAYED_LONG -> say.ending_long();
            case BROKE -> say.ending_broke();
            case NOT_PULLED -> say.bounce_not_pulled();
        };
    }

    private static <E extends Enum<E>> boolean known(String code, Class<E> type) {
        return Arrays.stream(type.getEnumConstants()).anyMatch(c -> c.name().equals(code));
    }

    private static BenchKind of(String kind) {
        return BenchKind.of(kind).orElseThrow(NotFoundException::new);
    }
}
