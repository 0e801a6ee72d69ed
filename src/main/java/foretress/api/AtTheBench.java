package foretress.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foretress.bench.Dilution;
import foretress.bench.Elasticity;
import foretress.bench.Impossible;
import foretress.bench.MetalCheck;
import foretress.bench.Part;
import foretress.bench.Peroxide;
import foretress.bench.Porosity;
import foretress.bench.Pull;
import foretress.bench.Seen;
import foretress.bench.Strength;
import foretress.bench.Tuft;
import foretress.bench.TuftSign;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;

/** What is computed at the bench: elasticity, porosity, the peroxide of a bath, the test for metallic salts. */
final class AtTheBench {
    private static final String CAUTION =
        " Gloves and eye protection with peroxide and ammonia, good air, and a bath that is never covered or tried on a head. ";
    private static final int MOST = 100;
    private static final double FINEST_CM = 300;
    private static final int LONGEST_SECONDS = 86_400;
    private static final JsonNodeFactory NODE = JsonNodeFactory.instance;

    private AtTheBench() {}

    static List<Operation> operations() {
        return List.of(elasticity(), porosity(), dilution(), incompatibility());
    }

    private static Operation operation(String what, String summary, String description, Shape request, Shape response,
        List<String> examples,
        Function<JsonNode, JsonNode> work) {
        return new Operation("bench-" + what, "bench/" + what, Optional.of(Scope.BENCH), summary, description,
            Optional.of(request), response, examples, work);
    }

    private static <E extends Enum<E>> String code(E constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static <E extends Enum<E>> Shape codes(Class<E> type) {
        return Shape.code(Arrays.stream(type.getEnumConstants()).map(AtTheBench::code).toList());
    }

    private static <E extends Enum<E>> E read(Class<E> type, JsonNode code) {
        return Enum.valueOf(type, code.textValue().toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    private static <E extends Enum<E>> void list(ArrayNode node, List<E> constants) {
        constants.stream().map(AtTheBench::code).forEach(node::add);
    }

    /** What was measured, unless it cannot be; then a fault at the field that is wrong, in the bench's own words. */
    private static <T> Optional<T> possible(Supplier<T> measured, Function<Impossible.Reason, String> pointer,
        Faults faults) {
        try {
            return Optional.of(measured.get());
        } catch (Impossible no) {
            faults.add(pointer.apply(no.reason()), "%s", no.getMessage());
            return Optional.empty();
        }
    }

    private static double rounded(double value) {
        return Math.round(value * 1_000) / 1_000.0;
    }

    // -- elasticity

    private static Operation elasticity() {
        Shape pull = Shape.object().need("part", codes(Part.class)).need("wet", Shape.flag())
            .need("restMm", Shape.number(0, 1_000))
            .need("stretchedMm", Shape.number(0, 2_000)).need("ending", codes(Pull.Ending.class));
        Shape told = Shape.object().need("part", codes(Part.class)).need("percent", Shape.number())
            .need("markMm", Shape.number())
            .need("reachedMark", Shape.flag()).need("beyondMark", Shape.flag()).need("strength", codes(Strength.class));
        return operation("elasticity", "What pulled hairs say about their strength",
            "Rest and stretched lengths in mm, dry or wet, in; how far each hair went and "
                + "what that means out. Pull gently, to the mark and no further: beyond it the hair is harmed for good. The result is left out while it says nothing yet.",
            Shape.object().need("pulls", Shape.list(pull, 1, MOST)),
            Shape.object().need("pulls", Shape.list(told, 0, MOST)).need("missing", Shape.list(codes(Part.class), 0, 3))
                .may("result", codes(Strength.class))
                .named("ElasticityReading"),
            List.of("a-wet-hair-stays-long"), AtTheBench::elasticity);
    }

    private static JsonNode elasticity(JsonNode body) {
        Faults faults = new Faults();
        List<Pull> pulls = new ArrayList<>();
        for (int i = 0; i < body.get("pulls").size(); i++) {
            JsonNode said = body.get("pulls").get(i);
            String place = "/pulls/" + i;
            possible(
                () -> new Pull(read(Part.class, said.get("part")), said.get("wet").booleanValue(),
                    said.get("restMm").doubleValue(),
                    said.get("stretchedMm").doubleValue(), read(Pull.Ending.class, said.get("ending"))),
                reason -> place + (reason == Impossible.Reason.REST_OUT_OF_RANGE ? "/restMm" : "/stretchedMm"), faults)
                .ifPresent(pulls::add);
        }
        faults.orThrow();
        Elasticity elasticity = new Elasticity(pulls);
        ObjectNode answer = NODE.objectNode();
        ArrayNode told = answer.putArray("pulls");
        pulls.forEach(p -> told.addObject().put("part", code(p.part())).put("percent", rounded(p.percent()))
            .put("markMm", p.markMm())
            .put("reachedMark", p.reachedMark()).put("beyondMark", p.beyondMark()).put("strength", code(p.strength())));
        list(answer.putArray("missing"), elasticity.missing());
        elasticity.result().ifPresent(result -> answer.put("result", code(result)));
        return answer;
    }

    // -- porosity

    private static Operation porosity() {
        Shape feel = Shape.object().need("touch", codes(Porosity.Touch.class)).need("look", codes(Porosity.Look.class));
        Shape.Fields parts = Shape.object();
        Shape.Fields told = Shape.object();
        for (Part part : Part.ALL) {
            parts = parts.may(code(part), feel);
            told = told.may(code(part), codes(Porosity.Reading.class));
        }
        return operation("porosity", "What hair feels and looks like, part by part",
            "How each part feels and looks in; whether it is porous out. One porous part makes "
                + "the hair porous; it is even only when every part is. The result is left out while it says nothing yet.",
            Shape.object().need("parts", parts),
            Shape.object().need("parts", told).need("unread", Shape.list(codes(Part.class), 0, 3))
                .may("result", codes(Porosity.Reading.class)).named("PorosityReading"),
            List.of("dull-ends"), AtTheBench::porosity);
    }

    private static JsonNode porosity(JsonNode body) {
        Map<Part, Porosity.Feel> feels = new EnumMap<>(Part.class);
        for (Part part : Part.ALL) {
            JsonNode said = body.get("parts").path(code(part));
            if (said.isObject()) {
                feels.put(part, new Porosity.Feel(read(Porosity.Touch.class, said.get("touch")),
                    read(Porosity.Look.class, said.get("look"))));
            }
        }
        Porosity porosity = new Porosity(feels);
        ObjectNode answer = NODE.objectNode();
        ObjectNode parts = answer.putObject("parts");
        Part.ALL.forEach(part -> porosity.at(part).ifPresent(reading -> parts.put(code(part), code(reading))));
        list(answer.putArray("unread"), porosity.unread());
        porosity.result().ifPresent(result -> answer.put("result", code(result)));
        return answer;
    }

    // -- dilution

    private static Operation dilution() {
        Shape strength = Shape.either().or("percent", one("percent")).or("volumes", one("volumes"))
            .or("oxygenVolumes", one("oxygenVolumes"))
            .or("molPerLitre", one("molPerLitre")).or("ureaPeroxidePercent", one("ureaPeroxidePercent"))
            .named("PeroxideStrength");
        Shape told = Shape.object().need("percent", Shape.number())
            .need("volumes", Shape.number().saying("As bottles and law count: 10 volumes are 3 %."))
            .need("oxygenVolumes", Shape.number().saying("By stoichiometry.")).need("molPerLitre", Shape.number())
            .need("withinEuHairLimit", Shape.flag()).named("Peroxide");
        return operation("dilution", "How much of the bottle and how much water",
            "A bottle's strength and the wanted strength and volume in; ml of both out "
                + "(C1 V1 = C2 V2)." + CAUTION,
            Shape.object().need("stock", strength).need("wanted", strength).need("wantedMl", Shape.number(0, 10_000)),
            Shape.object().need("stock", told).need("wanted", told).need("stockMl", Shape.number())
                .need("waterMl", Shape.number()).named("Dilution"),
            List.of("twenty-volumes-from-forty"), AtTheBench::dilution);
    }

    private static Shape.Fields one(String unit) {
        return Shape.object().need(unit, Shape.number(0, 1_000));
    }

    private static JsonNode dilution(JsonNode body) {
        Faults faults = new Faults();
        Optional<Peroxide> stock = possible(() -> peroxide(body.get("stock")), reason -> "/stock", faults);
        Optional<Peroxide> wanted = possible(() -> peroxide(body.get("wanted")), reason -> "/wanted", faults);
        faults.orThrow();
        Optional<Dilution> dilution =
            possible(() -> Dilution.of(stock.orElseThrow(), wanted.orElseThrow(), body.get("wantedMl").doubleValue()),
                reason -> reason == Impossible.Reason.VOLUME_OUT_OF_RANGE ? "/wantedMl" : "/wanted", faults);
        faults.orThrow();
        ObjectNode answer = NODE.objectNode();
        answer.set("stock", told(stock.orElseThrow()));
        answer.set("wanted", told(wanted.orElseThrow()));
        return answer.put("stockMl", rounded(dilution.orElseThrow().stockMl())).put("waterMl",
            rounded(dilution.orElseThrow().waterMl()));
    }

    private static Peroxide peroxide(JsonNode said) {
        String unit = said.fieldNames().next();
        double number = said.get(unit).doubleValue();
        return switch (unit) {
            case "volumes" -> Peroxide.ofVolumes(number);
            case "oxygenVolumes" -> Peroxide.ofOxygenVolumes(number);
            case "molPerLitre" -> Peroxide.ofMolPerLitre(number);
            case "ureaPeroxidePercent" -> Peroxide.ofUreaPeroxide(number);
            default -> Peroxide.ofPercent(number);
        };
    }

    private static ObjectNode told(Peroxide peroxide) {
        return NODE.objectNode().put("percent", rounded(peroxide.percent())).put("volumes", rounded(peroxide.volumes()))
            .put("oxygenVolumes", rounded(peroxide.oxygenVolumes())).put("molPerLitre", rounded(peroxide.molPerLitre()))
            .put("withinEuHairLimit", peroxide.withinEuHairLimit());
    }

    // -- incompatibility

    private static Operation incompatibility() {
        Shape letter = Shape.text(1, 10);
        Shape tuft = Shape.object().need("letter", letter).need("kind", codes(Tuft.Kind.class))
            .need("fromCm", Shape.number(0, FINEST_CM))
            .need("toCm", Shape.number(0, FINEST_CM))
            .need("couldLighten", Shape.flag().saying("It has pigment to lose; white and pre-lightened hair has not."));
        Shape seen = Shape.object().need("tuft", letter).need("sign", codes(TuftSign.class)).need("second",
            Shape.whole(0, LONGEST_SECONDS));
        Shape told = Shape.object().need("letter", Shape.text()).need("result", codes(MetalCheck.TuftResult.class));
        return operation("incompatibility", "What the test for metallic salts says so far",
            "The tufts, what was seen on each and when, in; the test as it stands out. "
                + "Any alarming sign ends it at once. Nothing at all after the full time is no clear result. 'withoutTuft' names suspect stretches of which no tuft was cut."
                + CAUTION,
            Shape.object().need("tufts", Shape.list(tuft, 1, 30))
                .need("withoutTuft", Shape.list(Shape.text(1, 100), 0, 30)).need("seen", Shape.list(seen, 0, 500))
                .need("ranSeconds", Shape.whole(0, LONGEST_SECONDS).saying("How long the tufts have lain in the bath."))
                .may("nextDay",
                    Shape.set(letter, 0, 30)
                        .saying("Tufts that came apart by the next day; left out while nobody looked.")),
            Shape.object().need("result", codes(MetalCheck.Result.class)).need("stopsNow", Shape.flag())
                .need("fullTime", Shape.flag())
                .need("tufts", Shape.list(told, 0, 30)).need("gaps", Shape.list(codes(MetalCheck.Gap.class), 0, 10))
                .named("IncompatibilityReading"),
            List.of("nothing-at-all-happened", "bubbles"), AtTheBench::incompatibility);
    }

    private static JsonNode incompatibility(JsonNode body) {
        Faults faults = new Faults();
        List<Tuft> tufts = new ArrayList<>();
        Set<String> letters = new HashSet<>();
        for (int i = 0; i < body.get("tufts").size(); i++) {
            JsonNode said = body.get("tufts").get(i);
            String place = "/tufts/" + i;
            faults.expect(letters.add(said.get("letter").textValue()), place + "/letter",
                "another tuft has this letter");
            possible(
                () -> new Tuft(said.get("letter").textValue(), read(Tuft.Kind.class, said.get("kind")),
                    said.get("fromCm").doubleValue(),
                    said.get("toCm").doubleValue(), said.get("couldLighten").booleanValue()),
                reason -> place + "/toCm", faults).ifPresent(tufts::add);
        }
        int ran = body.get("ranSeconds").intValue();
        List<Seen> seen = new ArrayList<>();
        for (int i = 0; i < body.get("seen").size(); i++) {
            JsonNode said = body.get("seen").get(i);
            faults.expect(letters.contains(said.get("tuft").textValue()), "/seen/%d/tuft".formatted(i),
                "there is no tuft with this letter");
            faults.expect(said.get("second").intValue() <= ran, "/seen/%d/second".formatted(i),
                "seen after the %d seconds the test has run", ran);
            seen.add(new Seen(said.get("tuft").textValue(), read(TuftSign.class, said.get("sign")),
                said.get("second").longValue()));
        }
        Optional<Set<String>> nextDay =
            body.has("nextDay") ? Optional.of(new HashSet<>(texts(body.get("nextDay")))) : Optional.empty();
        for (int i = 0; i < body.path("nextDay").size(); i++) {
            faults.expect(letters.contains(body.get("nextDay").get(i).textValue()), "/nextDay/" + i,
                "there is no tuft with this letter");
        }
        faults.orThrow();
        return told(new MetalCheck(tufts, texts(body.get("withoutTuft")), seen, ran, nextDay));
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(entry -> texts.add(entry.textValue()));
        return texts;
    }

    private static ObjectNode told(MetalCheck test) {
        ObjectNode answer = NODE.objectNode().put("result", code(test.result())).put("stopsNow", test.stopsNow())
            .put("fullTime", test.fullTime());
        ArrayNode tufts = answer.putArray("tufts");
        test.tufts().forEach(tuft -> tufts.addObject().put("letter", tuft.letter()).put("result", code(test.at(tuft))));
        list(answer.putArray("gaps"), test.gaps());
        return answer;
    }
}
