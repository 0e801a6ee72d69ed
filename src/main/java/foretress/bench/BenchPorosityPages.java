package foretress.bench;

import foretress.assessment.Weight;
import foretress.bench.BenchElasticityPages.Choice;
import foretress.bench.Porosity.Feel;
import foretress.bench.Porosity.Look;
import foretress.bench.Porosity.Touch;
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
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** The porosity test: touch and look, part by part. */
@Path("/visits/{id}/bench/porosity-test")
public class BenchPorosityPages {
    @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record BenchPorosity(BenchHead head, List<Zone> zones, String submission, Mistakes mistakes)
        implements TemplateInstance {}

    @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record BenchPorosityRead(BenchHead head, Weight weight, String result, List<Line> lines, List<BenchChange> changes,
        BenchTail tail) implements TemplateInstance {}

    public record Zone(String code, String name, List<Choice> touches, List<Choice> looks, String touchMissing,
        String lookMissing) {
        public String touchField() {
            return "touch-" + code;
        }

        public String lookField() {
            return "look-" + code;
        }
    }

    public record Line(String part, String said, boolean read, Weight weight, String word) {}

    private final BenchDoor door;
    private final BenchRecords tests;
    private final BenchChanges changes;
    private final BenchTails tails;
    private final BenchSay words;
    private final BenchWords say;
    private final ChairTime time;

    BenchPorosityPages(BenchDoor door, BenchRecords tests, BenchChanges changes, BenchTails tails, BenchSay words,
        BenchWords say, ChairTime time) {
        this.door = door;
        this.tests = tests;
        this.changes = changes;
        this.tails = tails;
        this.words = words;
        this.say = say;
        this.time = time;
    }

    @GET
    public TemplateInstance begin(@RestPath UUID id) {
        return form(door.wanted(id, BenchTestKind.POROSITY), new Form(new MultivaluedHashMap<>()),
            UUID.randomUUID().toString(), new Mistakes());
    }

    @POST
    public Response felt(@RestPath UUID id, MultivaluedMap<String, String> posted) {
        Form form = new Form(posted);
        Visit visit = door.wanted(id, BenchTestKind.POROSITY);
        Mistakes mistakes = new Mistakes();
        Map<Part, Feel> felt = read(form, mistakes);
        if (!mistakes.isEmpty()) {
            return FormAgain.with(form(visit, form, form.one("submission"), mistakes));
        }
        BenchRecord test =
            tests.make(visit.id, BenchTestKind.POROSITY, form.one("submission"), new Porosity(felt), door.staff());
        return BenchDoor.go(BenchDoor.at(test));
    }

    @GET
    @Path("/{test}")
    public TemplateInstance show(@RestPath UUID id, @RestPath UUID test) {
        Visit visit = door.visit(id);
        BenchRecord found = door.test(id, test, BenchTestKind.POROSITY);
        Porosity porosity = tests.body(found, Porosity.class);
        return new BenchPorosityRead(BenchHead.of(visit, time),
            porosity.result().map(BenchPorosityPages::weight).orElse(Weight.NOTE),
            porosity.result().map(this::word).orElseGet(say::state_says_nothing),
            Part.ALL.stream().map(p -> line(porosity, p)).toList(),
            changes.of(visit, found), tails.of(visit, found));
    }

    private Map<Part, Feel> read(Form form, Mistakes mistakes) {
        Map<Part, Feel> felt = new EnumMap<>(Part.class);
        for (Part part : Part.ALL) {
            String touch = known(form.one("touch-" + code(part)), Touch.class);
            String look = known(form.one("look-" + code(part)), Look.class);
            mistakes.expect(!touch.isEmpty(), "touch-" + code(part), say.porosity_touch_missing(words.part(part)));
            mistakes.expect(!look.isEmpty(), "look-" + code(part), say.porosity_look_missing(words.part(part)));
            if (!touch.isEmpty() && !look.isEmpty()) {
                felt.put(part, new Feel(Touch.valueOf(touch), Look.valueOf(look)));
            }
        }
        return felt;
    }

    private TemplateInstance form(Visit visit, Form form, String submission, Mistakes mistakes) {
        List<Zone> zones = Part.ALL.stream().map(p -> new Zone(code(p), words.part(p),
            Arrays.stream(Touch.values())
                .map(t -> new Choice(t.name(), touch(t), form.one("touch-" + code(p)).equals(t.name()))).toList(),
            Arrays.stream(Look.values())
                .map(l -> new Choice(l.name(), look(l), form.one("look-" + code(p)).equals(l.name()))).toList(),
            mistakes.at("touch-" + code(p)).orElse(""), mistakes.at("look-" + code(p)).orElse(""))).toList();
        return new BenchPorosity(BenchHead.of(visit, time), zones, submission, mistakes);
    }

    private Line line(Porosity porosity, Part part) {
        String said = porosity.byPart().containsKey(part)
            ? touch(porosity.byPart().get(part).touch()) + ", " + look(porosity.byPart().get(part).look()) : "";
        return new Line(words.part(part), said, porosity.at(part).isPresent(),
            porosity.at(part).map(BenchPorosityPages::weight).orElse(Weight.NOTE),
            porosity.at(part).map(this::word).orElse(""));
    }

    private static Weight weight(Porosity.Reading reading) {
        return reading == Porosity.Reading.POROUS ? Weight.RESTRICTS : Weight.NOTHING_FOUND;
    }

    private String word(Porosity.Reading reading) {
        return reading == Porosity.Reading.POROUS ? say.outcome_porous() : say.outcome_even();
    }

    private String touch(Touch touch) {
        return switch (touch) {
            case SMOOTH -> say.touch_smooth();
            case RUFFLED -> say.touch_ruffled();
            case CANNOT_TELL -> say.cannot_tell();
        };
    }

    private String look(Look look) {
        return switch (look) {
            case SHINES -> say.look_shines();
            case DULL -> say.look_dull();
            case CANNOT_TELL -> say.cannot_tell();
        };
    }

    private static String code(Part part) {
        return part.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static <E extends Enum<E>> String known(String code, Class<E> type) {
        return Arrays.stream(type.getEnumConstants()).anyMatch(c -> c.name().equals(code)) ? code : "";
    }
}
