package foretress.bench;

import foretress.hair.StrandMap;
import foretress.hair.StrandSvg;
import foretress.hair.StrandWords;
import foretress.intake.Intake;
import foretress.intake.StrandMaps;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.salon.Policies;
import foretress.visit.Visit;
import foretress.web.ChairTime;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Language;
import foretress.web.Mistakes;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** The incompatibility test for metallic salts: cut, mix, watch, look again the next day. */
@Path("/visits/{id}/bench/incompatibility-test")
public class BenchMetalPages {
    @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record BenchMetalCut(BenchHead head, String action, String map, String mapAside, boolean measured, List<Row> cuts,
        String submission, Mistakes mistakes)
        implements TemplateInstance {}

    @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record BenchMetal(BenchMetalView metal) implements TemplateInstance {}

    @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record BenchMetalLive(BenchMetalView metal) implements TemplateInstance {}

    /** A tuft to cut, with what was typed about it. */
    public record Row(String letter, String name, String hint, String from, String to, boolean cut, boolean pale,
        String mistake) {}

    private final BenchDoor door;
    private final BenchRecords tests;
    private final BenchMetalViews views;
    private final BenchStruck struck;
    private final Intake intake;
    private final StrandMaps maps;
    private final Knowledge knowledge;
    private final Policies policies;
    private final Language language;
    private final BenchSay words;
    private final BenchWords say;
    private final ChairTime time;
    private final Clock clock;

    BenchMetalPages(BenchDoor door, BenchRecords tests, BenchMetalViews views, BenchStruck struck, Intake intake,
        StrandMaps maps, Knowledge knowledge, Policies policies, Language language,
        BenchSay words, BenchWords say, ChairTime time, Clock clock) {
        this.door = door;
        this.tests = tests;
        this.views = views;
        this.struck = struck;
        this.intake = intake;
        this.maps = maps;
        this.knowledge = knowledge;
        this.policies = policies;
        this.language = language;
        this.words = words;
        this.say = say;
        this.time = time;
        this.clock = clock;
    }

    @GET
    public TemplateInstance where(@RestPath UUID id) {
        return cut(door.wanted(id, BenchKind.METAL), new Form(new MultivaluedHashMap<>()), false,
            UUID.randomUUID().toString(), new Mistakes());
    }

    @POST
    public Response cut(@RestPath UUID id, MultivaluedMap<String, String> posted) {
        var form = new Form(posted);
        Visit visit = door.wanted(id, BenchKind.METAL);
        var mistakes = new Mistakes();
        List<Tuft> tufts = new ArrayList<>();
        List<String> without = new ArrayList<>();
        Map<String, String> names = new TreeMap<>();
        for (BenchCut cut : BenchCuts.of(map(visit))) {
            read(form, cut, mistakes).ifPresentOrElse(tufts::add,
                () -> without.add(words.tuft(cut.kind(), cut.stretch())));
            names.put(cut.letter(), cut.stretch());
        }
        mistakes.expect(tufts.stream().anyMatch(t -> !t.control()), "cut-A", say.cut_none());
        if (!mistakes.isEmpty()) {
            return FormAgain.with(cut(visit, form, true, form.one("submission"), mistakes));
        }
        without.remove(words.tuft(Tuft.Kind.CONTROL, ""));
        BenchRecord test = tests.make(visit.id, BenchKind.METAL, form.one("submission"),
            BenchMetalBody.cut(tufts, without, names), door.staff());
        return BenchDoor.go(BenchDoor.at(test));
    }

    private Optional<Tuft> read(Form form, BenchCut cut, Mistakes mistakes) {
        if (!form.ticked("cut-" + cut.letter())) {
            return Optional.empty();
        }
        OptionalDouble from = BenchNumber.read(form.one("from-" + cut.letter()));
        OptionalDouble to = BenchNumber.read(form.one("to-" + cut.letter()));
        try {
            return Optional.of(new Tuft(cut.letter(), cut.kind(), from.orElse(Double.NaN), to.orElse(Double.NaN),
                !form.ticked("pale-" + cut.letter())));
        } catch (Impossible refused) {
            mistakes.add("from-" + cut.letter(),
                from.isPresent() && to.isPresent() ? words.impossible(refused) : say.cut_where(cut.letter()));
            return Optional.empty();
        }
    }

    private TemplateInstance cut(Visit visit, Form form, boolean typed, String submission, Mistakes mistakes) {
        StrandMap map = map(visit);
        StrandWords strand = StrandMaps.words(knowledgeWords());
        BenchHead head = BenchHead.of(visit, time);
        List<Row> rows = BenchCuts.of(map).stream().map(c -> row(c, form, typed, mistakes)).toList();
        return new BenchMetalCut(head, head.begins(BenchKind.METAL), StrandSvg.figure(map, strand, "map"),
            strand.length(map), map.lengthMeasured(), rows,
            submission, mistakes);
    }

    private Row row(BenchCut cut, Form form, boolean typed, Mistakes mistakes) {
        String letter = cut.letter();
        String hint =
            !cut.possible() ? say.cut_control_short() : cut.kind() == Tuft.Kind.CONTROL ? say.cut_control_hint() : "";
        return new Row(letter, words.tuft(cut.kind(), cut.stretch()), hint,
            typed ? form.one("from-" + letter) : BenchNumber.say(cut.fromCm()),
            typed ? form.one("to-" + letter) : BenchNumber.say(cut.toCm()),
            typed ? form.ticked("cut-" + letter) : cut.possible(),
            typed && form.ticked("pale-" + letter), mistakes.at("from-" + letter).orElse(""));
    }

    private StrandMap map(Visit visit) {
        return maps.map(visit, intake.said(visit), knowledgeWords());
    }

    @GET
    @Path("/{test}")
    public TemplateInstance show(@RestPath UUID id, @RestPath UUID test) {
        return page(door.visit(id), found(id, test), new Mistakes());
    }

    @GET
    @Path("/{test}/live")
    public TemplateInstance live(@RestPath UUID id, @RestPath UUID test) {
        return new BenchMetalLive(views.of(door.visit(id), found(id, test), Optional.empty(), new Mistakes()));
    }

    /** Works the bath out of the bottle that is on the shelf. */
    @POST
    @Path("/{test}/mix")
    public Response mix(@RestPath UUID id, @RestPath UUID test, MultivaluedMap<String, String> posted) {
        var form = new Form(posted);
        Visit visit = door.ahead(id);
        BenchRecord found = found(id, test);
        var mistakes = new Mistakes();
        Optional<BenchMetalBody.Mix> mix = read(form, mistakes);
        if (mix.isEmpty()) {
            var typed =
                new BenchMetalView.Mix(form.one("recipe"), form.one("strength"), form.one("unit"), form.one("ml"));
            return FormAgain.with(new BenchMetal(views.of(visit, found, Optional.of(typed), mistakes)));
        }
        tests.change(found, BenchMetalBody.class,
            before -> found.state() == BenchRecord.State.MADE ? before.mixed(mix.get()) : before, door.staff());
        return back(found);
    }

    private Optional<BenchMetalBody.Mix> read(Form form, Mistakes mistakes) {
        OptionalDouble strength = BenchNumber.read(form.one("strength"));
        OptionalDouble ml = BenchNumber.read(form.one("ml"));
        if (form.is("recipe", "none")) {
            mistakes.add("recipe", say.mix_no_ammonia());
            return Optional.empty();
        }
        mistakes.expect(form.is("recipe", "TWENTY_TO_ONE") || form.is("recipe", "DROPS"), "recipe",
            say.mix_recipe_missing());
        mistakes.expect(strength.isPresent(), "strength", say.strength_missing(form.one("strength")));
        mistakes.expect(ml.isPresent(), "ml", say.mix_ml_missing(form.one("ml")));
        if (!mistakes.isEmpty()) {
            return Optional.empty();
        }
        try {
            double percent = BenchTrialPages.strength(form.one("unit"), strength.getAsDouble()).percent();
            var mix = new BenchMetalBody.Mix(Bath.Recipe.valueOf(form.one("recipe")), percent, ml.getAsDouble());
            mix.bath();
            return Optional.of(mix);
        } catch (Impossible refused) {
            mistakes.add(refused.reason() == Impossible.Reason.VOLUME_OUT_OF_RANGE ? "ml" : "strength",
                words.impossible(refused));
            return Optional.empty();
        }
    }

    /** The tufts are in. */
    @POST
    @Path("/{test}/start")
    public Response start(@RestPath UUID id, @RestPath UUID test) {
        door.ahead(id);
        BenchRecord found = found(id, test);
        if (tests.body(found, BenchMetalBody.class).mix().isPresent()) {
            tests.start(found, (int) MetalCheck.FULL_SECONDS, door.staff());
        }
        return back(found);
    }

    @POST
    @Path("/{test}/seen")
    public Response seen(@RestPath UUID id, @RestPath UUID test, MultivaluedMap<String, String> posted) {
        var form = new Form(posted);
        Visit visit = door.ahead(id);
        BenchRecord found = found(id, test);
        String[] what = form.one("seen").split(":");
        List<String> letters = tests.body(found, BenchMetalBody.class).tufts().stream().map(Tuft::letter).toList();
        if (what.length != 2 || !letters.contains(what[0])) {
            throw new BadRequestException("no such tuft");
        }
        boolean kept =
            tests.see(found, what[0], sign(what[1]), submission(form) + what[0] + what[1], ago(form), door.staff());
        return kept ? back(found) : notKept(visit, found, what[0] + ": " + words.sign(sign(what[1])));
    }

    /** A tap that came when the tufts were out already, or before they were in: said, never dropped. */
    private Response notKept(Visit visit, BenchRecord test, String seen) {
        return Response.status(Response.Status.CONFLICT)
            .entity(page(visit, test, new Mistakes().add("seen", say.seen_not_kept(seen)))).build();
    }

    private static String submission(Form form) {
        String name = form.one("submission");
        if (!name.matches("[0-9a-zA-Z-]{1,36}")) {
            throw new BadRequestException("a form without its name");
        }
        return name;
    }

    /** How long ago a tap that had to wait was made, in ms. */
    private static long ago(Form form) {
        String millis = form.one("ago");
        if (!millis.matches("\\d{0,8}")) {
            throw new BadRequestException("not a number of milliseconds");
        }
        return millis.isEmpty() ? 0 : Long.parseLong(millis);
    }

    /** A tap that was none: kept with the reason, and counting for nothing. */
    @POST
    @Path("/{test}/not-seen")
    public Response notSeen(@RestPath UUID id, @RestPath UUID test, MultivaluedMap<String, String> posted) {
        var form = new Form(posted);
        Visit visit = door.visit(id);
        BenchRecord found = found(id, test);
        BenchSight sight = tests.sights(found).stream().filter(s -> s.id().toString().equals(form.one("sight")))
            .findFirst().orElseThrow(NotFoundException::new);
        String why = "why-" + sight.id();
        var mistakes = new Mistakes();
        OptionalLong pause = struck.check(door.strike(found, sight), form, why, "password-" + sight.id(), mistakes);
        if (!mistakes.isEmpty()) {
            return FormAgain.with(pause,
                new BenchMetal(views.of(visit, found, Optional.empty(), mistakes).typed(form.one(why))));
        }
        tests.strike(found, sight.id(), form.one(why), door.staff());
        return back(found);
    }

    private static TuftSign sign(String code) {
        try {
            return TuftSign.valueOf(code);
        } catch (IllegalArgumentException forged) {
            throw new BadRequestException(forged);
        }
    }

    @POST
    @Path("/{test}/warmth")
    public Response warmth(@RestPath UUID id, @RestPath UUID test, MultivaluedMap<String, String> posted) {
        var form = new Form(posted);
        Visit visit = door.ahead(id);
        BenchRecord found = found(id, test);
        OptionalDouble celsius = BenchNumber.read(form.one("celsius"));
        var mistakes = new Mistakes();
        if (!mistakes.expect(celsius.isPresent() && celsius.getAsDouble() <= 100, "celsius",
            say.warmth_wrong(form.one("celsius")))) {
            return FormAgain.with(new BenchMetal(views.of(visit, found, Optional.empty(), mistakes)));
        }
        var felt = new BenchMetalBody.Warmth(celsius.getAsDouble(), tests.ran(found).ranMillis() / 1000);
        tests.change(found, BenchMetalBody.class, before -> before.warmth().contains(felt) ? before : before.felt(felt),
            door.staff());
        return back(found);
    }

    /** The tufts are out. */
    @POST
    @Path("/{test}/end")
    public Response end(@RestPath UUID id, @RestPath UUID test) {
        door.ahead(id);
        BenchRecord found = found(id, test);
        tests.end(found, door.staff());
        return back(found);
    }

    /** The second look. Hair that came apart counts at once; hair that did not, only after the whole wait. */
    @POST
    @Path("/{test}/next-day")
    public Response nextDay(@RestPath UUID id, @RestPath UUID test, MultivaluedMap<String, String> posted) {
        var form = new Form(posted);
        Visit visit = door.ahead(id);
        BenchRecord found = found(id, test);
        List<String> letters = tests.body(found, BenchMetalBody.class).tufts().stream().map(Tuft::letter).toList();
        List<String> apart = letters.stream().filter(l -> form.is("look-" + l, "apart")).toList();
        long since = tests.sinceBegunMillis(found);
        var mistakes = new Mistakes();
        letters.stream().filter(l -> !form.is("look-" + l, "apart") && !form.is("look-" + l, "intact"))
            .forEach(l -> mistakes.add("look-" + l, say.next_day_missing(l)));
        if (mistakes.isEmpty() && apart.isEmpty()) {
            mistakes.expect(since >= Duration.ofHours(hours()).toMillis(), "look-" + letters.get(0),
                say.next_day_early((int) (since / 3_600_000), hours()));
        }
        if (found.state() != BenchRecord.State.ENDED || !mistakes.isEmpty()) {
            return FormAgain.with(new BenchMetal(views.of(visit, found, Optional.empty(), mistakes)));
        }
        String day = clock.instant().atZone(visit.zone()).toLocalDate().toString();
        tests.change(found, BenchMetalBody.class, before -> before.nextDay().isPresent() ? before
            : before.lookedAt(new BenchMetalBody.NextDay(since, apart, day)), door.staff());
        return back(found);
    }

    private int hours() {
        return policies.effective().incompatibilityTestHours();
    }

    private TemplateInstance page(Visit visit, BenchRecord test, Mistakes mistakes) {
        return new BenchMetal(views.of(visit, test, Optional.empty(), mistakes));
    }

    private BenchRecord found(UUID id, UUID test) {
        return door.test(id, test, BenchKind.METAL);
    }

    private static Response back(BenchRecord test) {
        return BenchDoor.go(BenchDoor.at(test));
    }

    private Words knowledgeWords() {
        return knowledge.words(language.getTag());
    }
}
