package foretress.bench;

import foretress.assessment.Weight;
import foretress.visit.Visit;
import foretress.web.ChairTime;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** The elasticity test, hair by hair: the worst counts, and a pass needs every part. */
@Path("/visits/{id}/bench/elasticity-test")
public class BenchElasticityPages {
    private static final int MOST_HAIRS = 30;

    @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record BenchElasticity(BenchHead head, Sheet sheet, List<BenchOutcome> outcomes, List<BenchChange> changes,
        Optional<BenchTail> tail,
        Mistakes mistakes) implements TemplateInstance {}

    /**
     * The next hair to pull.
     *
     * @param mark where to stop, for the rest length typed
     */
    public record NextHair(String mark, List<Choice> parts, List<Choice> endings, boolean wet, String rest,
        String stretched) {}

    /**
     * @param weight of the result so far
     * @param result in words; empty while no hair was pulled
     * @param missing what a pass still needs
     */
    public record Sheet(String action, List<Hair> hairs, Weight weight, String result, String missing, NextHair next,
        String submission, boolean open) {
        /** The worst counts, so nothing that is pulled from now on changes it. */
        public boolean enough() {
            return open && (weight == Weight.RESTRICTS || weight == Weight.PREVENTS);
        }
    }

    public record Hair(String part, String how, String percent, Weight weight, String word, String remark) {}

    public record Choice(String code, String word, boolean chosen) {}

    private final BenchDoor door;
    private final BenchRecords tests;
    private final BenchChanges changes;
    private final BenchTails tails;
    private final BenchOutcomes outcomes;
    private final BenchSay words;
    private final BenchWords say;
    private final ChairTime time;

    BenchElasticityPages(BenchDoor door, BenchRecords tests, BenchChanges changes, BenchTails tails,
        BenchOutcomes outcomes, BenchSay words,
        BenchWords say, ChairTime time) {
        this.door = door;
        this.tests = tests;
        this.changes = changes;
        this.tails = tails;
        this.outcomes = outcomes;
        this.words = words;
        this.say = say;
        this.time = time;
    }

    @GET
    public TemplateInstance begin(@RestPath UUID id) {
        return page(door.wanted(id, BenchKind.ELASTICITY), Optional.empty(), Typed.FIRST, new Mistakes());
    }

    @POST
    public Response first(@RestPath UUID id, MultivaluedMap<String, String> posted) {
        return pulled(door.wanted(id, BenchKind.ELASTICITY), Optional.empty(), new Form(posted));
    }

    @GET
    @Path("/{test}")
    public TemplateInstance show(@RestPath UUID id, @RestPath UUID test) {
        BenchRecord found = door.test(id, test, BenchKind.ELASTICITY);
        List<Pull> pulls = tests.body(found, Elasticity.class).pulls();
        return page(door.visit(id), Optional.of(found), Typed.after(pulls.get(pulls.size() - 1)), new Mistakes());
    }

    @POST
    @Path("/{test}")
    public Response another(@RestPath UUID id, @RestPath UUID test, MultivaluedMap<String, String> posted) {
        return pulled(door.ahead(id), Optional.of(door.test(id, test, BenchKind.ELASTICITY)), new Form(posted));
    }

    private Response pulled(Visit visit, Optional<BenchRecord> test, Form form) {
        Typed typed = Typed.of(form);
        var mistakes = new Mistakes();
        Optional<Pull> pull = read(typed, mistakes);
        mistakes.expect(test.map(t -> tests.body(t, Elasticity.class).pulls().size()).orElse(0) < MOST_HAIRS, "rest",
            say.hair_enough(MOST_HAIRS));
        if (pull.isPresent() && test.filter(t -> meanwhile(t, pull.get(), typed.submission())).isPresent()) {
            mistakes.add("rest", say.hair_meanwhile());
        }
        if (pull.isEmpty() || !mistakes.isEmpty()) {
            return FormAgain.with(page(visit, test, typed, mistakes));
        }
        BenchRecord kept = test.isPresent() ? add(test.get(), pull.get(), typed.submission())
            : tests.make(visit.id, BenchKind.ELASTICITY, typed.submission(), new Elasticity(List.of(pull.get())),
                door.staff());
        return BenchDoor.go(BenchDoor.at(kept));
    }

    /** Another device added a hair since this page was made; the very same one is a double tap. */
    private boolean meanwhile(BenchRecord test, Pull pull, String known) {
        List<Pull> pulls = tests.body(test, Elasticity.class).pulls();
        return !Integer.toString(pulls.size()).equals(known) && !pulls.get(pulls.size() - 1).equals(pull);
    }

    /** The page names how many hairs it knew of; sent twice, it adds one. */
    private BenchRecord add(BenchRecord test, Pull pull, String known) {
        tests.change(test, Elasticity.class,
            before -> Integer.toString(before.pulls().size()).equals(known) ? with(before, pull) : before,
            door.staff());
        return test;
    }

    private static Elasticity with(Elasticity before, Pull pull) {
        List<Pull> more = new ArrayList<>(before.pulls());
        more.add(pull);
        return new Elasticity(more);
    }

    private Optional<Pull> read(Typed typed, Mistakes mistakes) {
        OptionalDouble rest = BenchNumber.read(typed.rest());
        OptionalDouble stretched = BenchNumber.read(typed.stretched());
        mistakes.expect(!typed.part().isEmpty(), "part", say.hair_part_missing());
        mistakes.expect(rest.isPresent(), "rest", say.hair_rest_missing(typed.rest()));
        mistakes.expect(stretched.isPresent(), "stretched", say.hair_stretched_missing(typed.stretched()));
        mistakes.expect(!typed.ending().isEmpty(), "ending", say.hair_ending_missing());
        if (!mistakes.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Pull(Part.valueOf(typed.part()), typed.wet(), rest.getAsDouble(),
                stretched.getAsDouble(), Pull.Ending.valueOf(typed.ending())));
        } catch (Impossible refused) {
            mistakes.add(refused.reason() == Impossible.Reason.REST_OUT_OF_RANGE ? "rest" : "stretched",
                words.impossible(refused));
            return Optional.empty();
        }
    }

    /** What the form holds. */
    private record Typed(String part, boolean wet, String rest, String stretched, String ending, String submission) {
        static final Typed FIRST = new Typed("", true, "50", "", "", UUID.randomUUID().toString());

        static Typed of(Form form) {
            return new Typed(known(form.one("part"), Part.class), !form.one("wet").equals("dry"), form.one("rest"),
                form.one("stretched"),
                known(form.one("ending"), Pull.Ending.class), form.one("submission"));
        }

        static Typed after(Pull last) {
            return new Typed("", last.wet(), BenchNumber.say(last.restMm()), "", "", "");
        }

        private static <E extends Enum<E>> String known(String code, Class<E> type) {
            return Arrays.stream(type.getEnumConstants()).anyMatch(c -> c.name().equals(code)) ? code : "";
        }
    }

    private TemplateInstance page(Visit visit, Optional<BenchRecord> test, Typed typed, Mistakes mistakes) {
        Elasticity hairs = test.map(t -> tests.body(t, Elasticity.class)).orElseGet(() -> new Elasticity(List.of()));
        BenchHead head = BenchHead.of(visit, time);
        String submission = test.isPresent() ? Integer.toString(hairs.pulls().size())
            : typed == Typed.FIRST ? UUID.randomUUID().toString() : typed.submission();
        boolean open = head.ahead() && test.filter(BenchRecord::struck).isEmpty() && hairs.pulls().size() < MOST_HAIRS;
        var sheet = new Sheet(test.map(BenchDoor::at).orElse(head.begins(BenchKind.ELASTICITY)),
            hairs.pulls().stream().map(this::hair).toList(),
            hairs.worst().map(BenchSay::weight).orElse(Weight.NOTE), result(hairs), missing(hairs),
            new NextHair(mark(typed), parts(typed, hairs), endings(typed), typed.wet(), typed.rest(),
                typed.stretched()),
            submission, open);
        return new BenchElasticity(head, sheet,
            test.isPresent() ? List.of() : outcomes.ahead(visit, BenchKind.ELASTICITY),
            test.map(t -> changes.of(visit, t)).orElse(List.of()),
            test.map(t -> tails.of(visit, t)), mistakes);
    }

    private String result(Elasticity hairs) {
        return hairs.worst().map(worst -> hairs.result().map(words::strength).orElseGet(say::hair_so_far)).orElse("");
    }

    private String missing(Elasticity hairs) {
        boolean passing = hairs.worst().filter(Strength.PASS::equals).isPresent();
        return passing && !hairs.missing().isEmpty()
            ? say.hair_missing(String.join(", ", hairs.missing().stream().map(words::part).toList())) : "";
    }

    private Hair hair(Pull pull) {
        String how = pull.wet() ? say.hair_wet() : say.hair_dry();
        return new Hair(words.part(pull.part()),
            say.hair_line(how, BenchNumber.say(pull.restMm()), BenchNumber.say(pull.stretchedMm()),
                words.ending(pull.ending())),
            BenchNumber.say(pull.percent()), BenchSay.weight(pull.strength()), words.strength(pull.strength()),
            pull.beyondMark() ? say.hair_beyond(pull.markMm()) : "");
    }

    private String mark(Typed typed) {
        double rest = BenchNumber.read(typed.rest()).stream()
            .filter(mm -> mm >= Pull.SHORTEST_MM && mm <= Pull.LONGEST_MM).findFirst().orElse(50);
        return say.hair_mark(BenchNumber.say(rest), Pull.markMm(rest, false), Pull.markMm(rest, true));
    }

    /** The part that is next is chosen already. */
    private List<Choice> parts(Typed typed, Elasticity hairs) {
        String next =
            !typed.part().isEmpty() ? typed.part() : hairs.missing().isEmpty() ? "" : hairs.missing().get(0).name();
        return Part.ALL.stream().map(p -> new Choice(p.name(), words.part(p), p.name().equals(next))).toList();
    }

    private List<Choice> endings(Typed typed) {
        return Arrays.stream(Pull.Ending.values())
            .map(e -> new Choice(e.name(), words.ending(e), e.name().equals(typed.ending()))).toList();
    }
}
