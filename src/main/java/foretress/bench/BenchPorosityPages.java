package foretress.bench;

import foretress.assessment.TestFact;
import foretress.assessment.Weight;
import foretress.bench.Porosity.Feel;
import foretress.bench.Porosity.Reading;
import foretress.visit.Visit;
import foretress.web.ChairTime;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import foretress.web.StylistWords;
import foretress.web.WeightSaid;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestPath;

/** The porosity test: one of the four classes for each part, by touch and look. */
@Path("/visits/{id}/bench/porosity-test")
public class BenchPorosityPages {
    @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record BenchPorosity(BenchHead head, List<Zone> zones, List<Line> meanings, String submission, Mistakes mistakes)
        implements TemplateInstance {}

    @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record BenchPorosityRead(BenchHead head, Weight weight, String result, List<Line> lines, List<BenchChange> changes,
        BenchTail tail) implements TemplateInstance {}

    /** @param missing what is said beside a part of which nothing was chosen, or "" */
    public record Zone(String code, String name, List<Tile> classes, String missing) {}

    /** @param feel touch and look in a few words; "" for "cannot tell" */
    public record Tile(String code, String word, String feel, boolean chosen) {}

    /** @param word "" while it says nothing */
    public record Line(String part, String said, Weight weight, String word) {}

    private static final String CANNOT_TELL = "CANNOT_TELL";

    private final BenchDoor door;
    private final BenchRecords tests;
    private final BenchChanges changes;
    private final BenchTails tails;
    private final BenchSay words;
    private final BenchWords say;
    private final StylistWords stylist;
    private final ChairTime time;

    BenchPorosityPages(BenchDoor door, BenchRecords tests, BenchChanges changes, BenchTails tails, BenchSay words,
        BenchWords say, StylistWords stylist, ChairTime time) {
        this.door = door;
        this.tests = tests;
        this.changes = changes;
        this.tails = tails;
        this.words = words;
        this.say = say;
        this.stylist = stylist;
        this.time = time;
    }

    @GET
    public TemplateInstance begin(@RestPath UUID id) {
        return form(door.wanted(id, BenchKind.POROSITY), new Form(new MultivaluedHashMap<>()),
            UUID.randomUUID().toString(), new Mistakes());
    }

    @POST
    public Response felt(@RestPath UUID id, MultivaluedMap<String, String> posted) {
        var form = new Form(posted);
        Visit visit = door.wanted(id, BenchKind.POROSITY);
        var mistakes = new Mistakes();
        Map<Part, Feel> felt = read(form, mistakes);
        if (!mistakes.isEmpty()) {
            return FormAgain.with(form(visit, form, form.one("submission"), mistakes));
        }
        BenchRecord test =
            tests.make(visit.id, BenchKind.POROSITY, form.one("submission"), new Porosity(felt), door.staff());
        return BenchDoor.go(BenchDoor.at(test));
    }

    @GET
    @Path("/{test}")
    public TemplateInstance show(@RestPath UUID id, @RestPath UUID test) {
        Visit visit = door.visit(id);
        BenchRecord found = door.test(id, test, BenchKind.POROSITY);
        Porosity porosity = tests.body(found, Porosity.class);
        return new BenchPorosityRead(BenchHead.of(visit, time),
            porosity.result().map(BenchPorosityPages::weight).orElse(Weight.NOTE),
            porosity.result().map(this::word).orElseGet(say::state_says_nothing),
            Part.ALL.stream().map(p -> line(p, porosity.at(p))).toList(), changes.of(visit, found),
            tails.of(visit, found));
    }

    private Map<Part, Feel> read(Form form, Mistakes mistakes) {
        Map<Part, Feel> felt = new EnumMap<>(Part.class);
        for (Part part : Part.ALL) {
            Optional<Feel> feel = feel(form.one(code(part)));
            mistakes.expect(feel.isPresent(), code(part), say.porosity_missing(words.part(part)));
            feel.ifPresent(f -> felt.put(part, f));
        }
        return felt;
    }

    private static Optional<Feel> feel(String code) {
        return code.equals(CANNOT_TELL) ? Optional.of(Feel.UNKNOWN)
            : Arrays.stream(Reading.values()).filter(r -> r.name().equals(code)).findFirst().map(Reading::typical);
    }

    private TemplateInstance form(Visit visit, Form form, String submission, Mistakes mistakes) {
        List<Zone> zones = Part.ALL.stream().map(p -> new Zone(code(p), words.part(p), tiles(form.one(code(p))),
            mistakes.at(code(p)).orElse(""))).toList();
        LocalDate day = visit.startsThere().toLocalDate();
        List<Line> meanings = Arrays.stream(Reading.values()).map(r -> meaning(visit, r, day)).toList();
        return new BenchPorosity(BenchHead.of(visit, time), zones, meanings, submission, mistakes);
    }

    private List<Tile> tiles(String chosen) {
        Stream<Tile> classes =
            Arrays.stream(Reading.values()).map(r -> new Tile(r.name(), word(r), look(r), chosen.equals(r.name())));
        var none = new Tile(CANNOT_TELL, say.cannot_tell(), "", chosen.equals(CANNOT_TELL));
        return Stream.concat(classes, Stream.of(none)).toList();
    }

    /** Where the booked services would stand if the whole head were of this class. */
    private Line meaning(Visit visit, Reading reading, LocalDate day) {
        String outcome = BenchReadings.code(reading);
        List<TestFact> facts = Stream.of("porosity-test", "porosity-of-roots")
            .map(test -> TestFact.sound(test, outcome, day, day)).toList();
        Optional<Weight> then = changes.bookedIf(visit, facts);
        return new Line(word(reading), means(reading), then.orElse(Weight.NOTE),
            then.map(w -> WeightSaid.of(w, stylist)).orElse(""));
    }

    private Line line(Part part, Optional<Reading> reading) {
        return new Line(words.part(part), reading.map(this::means).orElse(""),
            reading.map(BenchPorosityPages::weight).orElse(Weight.NOTE), reading.map(this::word).orElse(""));
    }

    private static Weight weight(Reading reading) {
        return BenchSay.weight(BenchReadings.code(reading));
    }

    private String word(Reading reading) {
        return words.outcome(BenchReadings.code(reading));
    }

    private String look(Reading reading) {
        return switch (reading) {
            case RESISTANT -> say.feels_resistant();
            case AVERAGE -> say.feels_average();
            case POROUS -> say.feels_porous();
            case OVER_POROUS -> say.feels_over_porous();
        };
    }

    private String means(Reading reading) {
        return switch (reading) {
            case RESISTANT -> say.means_resistant();
            case AVERAGE -> say.means_average();
            case POROUS -> say.means_porous();
            case OVER_POROUS -> say.means_over_porous();
        };
    }

    private static String code(Part part) {
        return BenchReadings.code(part);
    }
}
