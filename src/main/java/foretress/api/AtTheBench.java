package foretress.api;

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
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
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
    private static final int FINEST_CM = 300;
    private static final int LONGEST_SECONDS = 86_400;
    private static final int LONGEST_LETTER = 10;
    private static final int STRONGEST = 1_000;

    private AtTheBench() {}

    static List<Operation> operations() {
        return List.of(elasticity(), porosity(), dilution(), incompatibility());
    }

    private static <Q extends Record> Operation operation(String what, String summary, String description,
        Class<Q> request, Class<? extends Record> response, List<String> examples, Function<Q, Record> work) {
        return Operation.of("bench-" + what, "bench/" + what, Scope.BENCH, summary, description, request, response,
            examples, work);
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

    record Pulls(@Json(least = 1, most = MOST) List<OnePull> pulls) {}

    record OnePull(Part part, boolean wet, @Json(most = 1_000) double restMm, @Json(most = 2_000) double stretchedMm,
        Pull.Ending ending) {}

    @Json(name = "ElasticityReading")
    record ElasticityRead(@Json(most = MOST) List<PullRead> pulls, @Json(most = 3) List<Part> missing,
        Optional<Strength> result) {}

    record PullRead(Part part, double percent, int markMm, boolean reachedMark, boolean beyondMark,
        Strength strength) {}

    private static Operation elasticity() {
        return operation("elasticity", "What pulled hairs say about their strength",
            "Rest and stretched lengths in mm, dry or wet, in; how far each hair went and "
                + "what that means out. Pull gently, to the mark and no further: beyond it the hair is harmed for good. The result is left out while it says nothing yet.",
            Pulls.class, ElasticityRead.class, List.of("a-wet-hair-stays-long"), AtTheBench::elasticity);
    }

    private static ElasticityRead elasticity(Pulls said) {
        var faults = new Faults();
        List<Pull> pulls = new ArrayList<>();
        for (int i = 0; i < said.pulls().size(); i++) {
            OnePull one = said.pulls().get(i);
            String place = "/pulls/" + i;
            possible(() -> new Pull(one.part(), one.wet(), one.restMm(), one.stretchedMm(), one.ending()),
                reason -> place + (reason == Impossible.Reason.REST_OUT_OF_RANGE ? "/restMm" : "/stretchedMm"), faults)
                .ifPresent(pulls::add);
        }
        faults.orThrow();
        var elasticity = new Elasticity(pulls);
        return new ElasticityRead(pulls.stream().map(AtTheBench::read).toList(), elasticity.missing(),
            elasticity.result());
    }

    private static PullRead read(Pull p) {
        return new PullRead(p.part(), rounded(p.percent()), p.markMm(), p.reachedMark(), p.beyondMark(), p.strength());
    }

    // -- porosity

    record Felt(Map<Part, Porosity.Feel> parts) {}

    @Json(name = "PorosityReading")
    record PorosityRead(Map<Part, Porosity.Reading> parts, @Json(most = 3) List<Part> unread,
        Optional<Porosity.Reading> result) {}

    private static Operation porosity() {
        return operation("porosity", "What hair feels and looks like, part by part",
            "How each part feels and looks in; resistant, average, porous or over-porous out. The worst "
                + "part counts; it is average or resistant only when every part was read. The result is left out while it says nothing yet.",
            Felt.class, PorosityRead.class, List.of("dull-ends"), felt -> porosity(new Porosity(felt.parts())));
    }

    private static PorosityRead porosity(Porosity porosity) {
        Map<Part, Porosity.Reading> parts = new EnumMap<>(Part.class);
        Part.ALL.forEach(part -> porosity.at(part).ifPresent(reading -> parts.put(part, reading)));
        return new PorosityRead(parts, porosity.unread(), porosity.result());
    }

    // -- dilution

    /** A strength in one of the units in which bottles and books give it. */
    @Json(name = "PeroxideStrength")
    sealed interface InUnit {
        Peroxide peroxide();
    }

    record Percent(@Json(most = STRONGEST) double percent) implements InUnit {
        @Override
        public Peroxide peroxide() {
            return Peroxide.ofPercent(percent);
        }
    }

    record Volumes(@Json(most = STRONGEST) double volumes) implements InUnit {
        @Override
        public Peroxide peroxide() {
            return Peroxide.ofVolumes(volumes);
        }
    }

    record OxygenVolumes(@Json(most = STRONGEST) double oxygenVolumes) implements InUnit {
        @Override
        public Peroxide peroxide() {
            return Peroxide.ofOxygenVolumes(oxygenVolumes);
        }
    }

    record MolPerLitre(@Json(most = STRONGEST) double molPerLitre) implements InUnit {
        @Override
        public Peroxide peroxide() {
            return Peroxide.ofMolPerLitre(molPerLitre);
        }
    }

    record UreaPeroxide(@Json(most = STRONGEST) double ureaPeroxidePercent) implements InUnit {
        @Override
        public Peroxide peroxide() {
            return Peroxide.ofUreaPeroxide(ureaPeroxidePercent);
        }
    }

    record Wanted(InUnit stock, InUnit wanted, @Json(most = 10_000) double wantedMl) {}

    @Json(name = "Dilution")
    record Mixed(InEveryUnit stock, InEveryUnit wanted, double stockMl, double waterMl) {}

    @Json(name = "Peroxide")
    record InEveryUnit(double percent,
        @Json(says = "As bottles and law count: 10 volumes are 3 %.") double volumes,
        @Json(says = "By stoichiometry.") double oxygenVolumes, double molPerLitre, boolean withinEuHairLimit) {
        static InEveryUnit of(Peroxide peroxide) {
            return new InEveryUnit(rounded(peroxide.percent()), rounded(peroxide.volumes()),
                rounded(peroxide.oxygenVolumes()), rounded(peroxide.molPerLitre()), peroxide.withinEuHairLimit());
        }
    }

    private static Operation dilution() {
        return operation("dilution", "How much of the bottle and how much water",
            "A bottle's strength and the wanted strength and volume in; ml of both out "
                + "(C1 V1 = C2 V2)." + CAUTION,
            Wanted.class, Mixed.class, List.of("twenty-volumes-from-forty"), AtTheBench::dilution);
    }

    private static Mixed dilution(Wanted said) {
        var faults = new Faults();
        Optional<Peroxide> stock = possible(() -> said.stock().peroxide(), reason -> "/stock", faults);
        Optional<Peroxide> wanted = possible(() -> said.wanted().peroxide(), reason -> "/wanted", faults);
        faults.orThrow();
        Optional<Dilution> mixed =
            possible(() -> Dilution.of(stock.orElseThrow(), wanted.orElseThrow(), said.wantedMl()),
                reason -> reason == Impossible.Reason.VOLUME_OUT_OF_RANGE ? "/wantedMl" : "/wanted", faults);
        faults.orThrow();
        return new Mixed(InEveryUnit.of(stock.orElseThrow()), InEveryUnit.of(wanted.orElseThrow()),
            rounded(mixed.orElseThrow().stockMl()), rounded(mixed.orElseThrow().waterMl()));
    }

    // -- incompatibility

    record Bath(@Json(least = 1, most = 30) List<OneTuft> tufts,
        @Json(most = 30, mostOfEach = 100) List<String> withoutTuft, @Json(most = 500) List<OneSign> seen,
        @Json(most = LONGEST_SECONDS, says = "How long the tufts have lain in the bath.") int ranSeconds,
        @Json(most = 30, mostOfEach = LONGEST_LETTER,
            says = "Tufts that came apart by the next day; left out while nobody looked.") Optional<Set<String>> nextDay) {}

    record OneTuft(@Json(least = 1, most = LONGEST_LETTER) String letter, Tuft.Kind kind,
        @Json(most = FINEST_CM) double fromCm, @Json(most = FINEST_CM) double toCm,
        @Json(says = "It has pigment to lose; white and pre-lightened hair has not.") boolean couldLighten) {}

    record OneSign(@Json(least = 1, most = LONGEST_LETTER) String tuft, TuftSign sign,
        @Json(most = LONGEST_SECONDS) int second) {}

    @Json(name = "IncompatibilityReading")
    record BathRead(MetalCheck.Result result, boolean stopsNow, boolean fullTime,
        @Json(most = 30) List<TuftRead> tufts, @Json(most = 10) List<MetalCheck.Gap> gaps) {}

    record TuftRead(String letter, MetalCheck.TuftResult result) {}

    private static Operation incompatibility() {
        return operation("incompatibility", "What the test for metallic salts says so far",
            "The tufts, what was seen on each and when, in; the test as it stands out. "
                + "Any alarming sign ends it at once. Nothing at all after the full time is no clear result. 'withoutTuft' names suspect stretches of which no tuft was cut."
                + CAUTION,
            Bath.class, BathRead.class, List.of("nothing-at-all-happened", "bubbles"), AtTheBench::incompatibility);
    }

    private static BathRead incompatibility(Bath said) {
        var faults = new Faults();
        Set<String> letters = new HashSet<>();
        List<Tuft> tufts = new ArrayList<>();
        for (int i = 0; i < said.tufts().size(); i++) {
            OneTuft one = said.tufts().get(i);
            String place = "/tufts/" + i;
            faults.expect(letters.add(one.letter()), place + "/letter", "another tuft has this letter");
            possible(() -> new Tuft(one.letter(), one.kind(), one.fromCm(), one.toCm(), one.couldLighten()),
                reason -> place + "/toCm", faults).ifPresent(tufts::add);
        }
        List<Seen> seen = new ArrayList<>();
        for (int i = 0; i < said.seen().size(); i++) {
            OneSign one = said.seen().get(i);
            isThere(one.tuft(), letters, "/seen/%d/tuft".formatted(i), faults);
            faults.expect(one.second() <= said.ranSeconds(), "/seen/%d/second".formatted(i),
                "seen after the %d seconds the test has run", said.ranSeconds());
            seen.add(new Seen(one.tuft(), one.sign(), one.second()));
        }
        List<String> apart = List.copyOf(said.nextDay().orElse(Set.of()));
        for (int i = 0; i < apart.size(); i++) {
            isThere(apart.get(i), letters, "/nextDay/" + i, faults);
        }
        faults.orThrow();
        return read(new MetalCheck(tufts, said.withoutTuft(), seen, said.ranSeconds(), said.nextDay()));
    }

    private static void isThere(String letter, Set<String> letters, String place, Faults faults) {
        faults.expect(letters.contains(letter), place, "there is no tuft with this letter");
    }

    private static BathRead read(MetalCheck test) {
        return new BathRead(test.result(), test.stopsNow(), test.fullTime(),
            test.tufts().stream().map(tuft -> new TuftRead(tuft.letter(), test.at(tuft))).toList(), test.gaps());
    }
}
