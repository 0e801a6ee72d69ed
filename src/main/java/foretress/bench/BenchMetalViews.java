package foretress.bench;

import foretress.assessment.Weight;
import foretress.bench.BenchMetalView.Glass;
import foretress.bench.BenchMetalView.Reading;
import foretress.bench.BenchMetalView.Sheet;
import foretress.bench.BenchMetalView.Watch;
import foretress.salon.Policies;
import foretress.visit.Visit;
import foretress.web.ChairTime;
import foretress.web.Mistakes;
import jakarta.enterprise.context.RequestScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Puts the page of an incompatibility test together. */
@RequestScoped
class BenchMetalViews {
    private final BenchRecords tests;
    private final BenchChanges changes;
    private final BenchTails tails;
    private final BenchOutcomes outcomes;
    private final BenchTimers timers;
    private final BenchDoor door;
    private final BenchSay words;
    private final BenchWords say;
    private final ChairTime time;
    private final Policies policies;
    private final Clock clock;

    BenchMetalViews(BenchRecords tests, BenchChanges changes, BenchTails tails, BenchOutcomes outcomes,
        BenchTimers timers,
        BenchDoor door, BenchSay words, BenchWords say, ChairTime time,
        Policies policies, Clock clock) {
        this.tests = tests;
        this.changes = changes;
        this.tails = tails;
        this.outcomes = outcomes;
        this.timers = timers;
        this.door = door;
        this.words = words;
        this.say = say;
        this.time = time;
        this.policies = policies;
        this.clock = clock;
    }

    /** @param typed what was typed about the bottle, where that needs a second look */
    BenchMetalView of(Visit visit, BenchRecord test, Optional<BenchMetalView.Mix> typed, Mistakes mistakes) {
        BenchMetalBody body = tests.body(test, BenchMetalBody.class);
        MetalCheck metal = tests.metal(test);
        BenchHead head = BenchHead.of(visit, time);
        BenchTail tail = tails.of(visit, test);
        List<BenchMetalView.Tuft> tufts = metal.tufts().stream().map(t -> tuft(body, metal, t)).toList();
        return new BenchMetalView(head,
            new Sheet(BenchDoor.at(test), head.ahead() && !test.struck(), UUID.randomUUID().toString()), step(test),
            glass(body, typed), tufts, tests.sights(test).stream().map(s -> sight(test, s)).toList(),
            watch(visit, test, body, metal), reading(visit, test, body, metal),
            new BenchAfter(changes.of(visit, test), tail),
            new BenchNews(version(test, metal, tail) + "-" + tests.gaps(test).size(), news(metal)), mistakes);
    }

    private Glass glass(BenchMetalBody body, Optional<BenchMetalView.Mix> typed) {
        return new Glass(body.mix().map(m -> bath(m.bath())).orElse(List.of()),
            body.mix().filter(m -> !m.recipe().ammoniaStrengthStated()).map(m -> say.bath_unstated()).orElse(""),
            typed.orElseGet(() -> mix(body)));
    }

    private Watch watch(Visit visit, BenchRecord test, BenchMetalBody body, MetalCheck metal) {
        boolean running = test.state() == BenchRecord.State.RUNNING && !test.struck();
        boolean alarmed = metal.stopsNow();
        return new Watch(running ? Optional.of(timers.of(test)) : Optional.empty(),
            BenchStrand.of(metal.ranSeconds(), MetalCheck.FULL_SECONDS,
                metal.seen().stream().map(s -> new BenchStrand.Seen(s.second(), s.tuft())).toList()),
            timers.unwatched(visit, test), warmth(body), alarmed && !test.struck() ? alarm(metal) : "",
            toRead(metal), alarmed || metal.fullTime() && metal.toRead().isEmpty());
    }

    private Reading reading(Visit visit, BenchRecord test, BenchMetalBody body, MetalCheck metal) {
        return new Reading(
            test.state() == BenchRecord.State.ENDED || test.struck() ? List.of() : outcomes(visit, metal),
            result(visit, test, metal), nextDay(visit, test, body, metal));
    }

    private BenchMetalView.Sight sight(BenchRecord test, BenchSight sight) {
        String seen = say.sight(sight.seen().tuft(), words.sign(sight.seen().sign()),
            BenchNumber.clock(sight.seen().second()), BenchDoor.name(sight.by()));
        return new BenchMetalView.Sight(sight.id().toString(), seen,
            sight.struck() ? say.sight_struck(sight.struckWhy()) : "",
            sight.struck() ? BenchStrike.NO : door.strike(test, sight), "");
    }

    private static int step(BenchRecord test) {
        return switch (test.state()) {
            case MADE -> 2;
            case RUNNING -> 3;
            case ENDED -> 4;
        };
    }

    List<String> bath(Bath bath) {
        List<String> lines = new ArrayList<>();
        double stock = bath.peroxide().stockMl();
        String strength = say.bath_strength(BenchNumber.say(bath.peroxide().stock().percent()),
            BenchNumber.say(bath.peroxide().stock().volumes()));
        lines.add(bath.peroxide().waterMl() < 0.05 ? say.bath_straight(BenchNumber.say(stock), strength)
            : say.bath_thinned(BenchNumber.say(stock), strength, BenchNumber.say(bath.peroxide().waterMl())));
        lines.add(bath.drops() > 0 ? say.bath_drops(bath.drops(), BenchNumber.say(bath.ammoniaMl()))
            : say.bath_ammonia(BenchNumber.say(bath.ammoniaMl())));
        return lines;
    }

    private static BenchMetalView.Mix mix(BenchMetalBody body) {
        return body.mix()
            .map(m -> new BenchMetalView.Mix(m.recipe().name(), BenchNumber.say(m.shelfPercent()), "percent",
                BenchNumber.say(m.peroxideMl())))
            .orElseGet(() -> new BenchMetalView.Mix(Bath.Recipe.TWENTY_TO_ONE.name(), "", "volumes",
                Integer.toString(glassful(body))));
    }

    /** A glass for each tuft, filled so that it covers one; never less than the recipe's own measure. */
    private static int glassful(BenchMetalBody body) {
        return Math.max(40, BenchMetalView.GLASS_ML * body.tufts().size());
    }

    private BenchMetalView.Tuft tuft(BenchMetalBody body, MetalCheck metal, Tuft tuft) {
        List<BenchMetalView.Sign> signs = Arrays.stream(TuftSign.values()).map(s -> sign(metal, tuft, s)).toList();
        String place = say.tuft_place(BenchNumber.say(tuft.fromCm()), BenchNumber.say(tuft.toCm()))
            + (tuft.couldLighten() ? "" : " · " + say.tuft_pale());
        return new BenchMetalView.Tuft(tuft.letter(), words.tuft(tuft.kind(), body.named(tuft.letter())), place,
            tuft.control(),
            words.tuftResult(metal.at(tuft)), signs);
    }

    /** "Nothing so far" on the way is another thing than "no change at all" at the end, and says so. */
    private BenchMetalView.Sign sign(MetalCheck metal, Tuft tuft, TuftSign sign) {
        boolean soFar = sign == TuftSign.NOTHING && !metal.fullTime();
        String at = metal.seen().stream().filter(s -> s.tuft().equals(tuft.letter()) && s.sign() == sign)
            .filter(s -> sign != TuftSign.NOTHING || s.second() >= MetalCheck.FULL_SECONDS == metal.fullTime())
            .findFirst().map(s -> say.seen_at(BenchNumber.clock(s.second()))).orElse("");
        return new BenchMetalView.Sign(tuft.letter() + ":" + sign.name(),
            soFar ? say.sign_nothing_yet() : words.sign(sign), at, sign.alarming());
    }

    private List<String> warmth(BenchMetalBody body) {
        return body.warmth().stream()
            .map(w -> say.warmth_line(BenchNumber.say(w.celsius()), BenchNumber.clock(w.second()))).toList();
    }

    private String alarm(MetalCheck metal) {
        List<String> letters = metal.tufts().stream().filter(t -> metal.at(t) == MetalCheck.TuftResult.REACTION)
            .map(Tuft::letter).toList();
        return say.alarm(String.join(", ", letters));
    }

    private String toRead(MetalCheck metal) {
        List<String> letters = metal.toRead().stream().map(Tuft::letter).toList();
        return letters.isEmpty() || metal.stopsNow() ? "" : say.to_read(String.join(", ", letters));
    }

    private List<BenchOutcome> outcomes(Visit visit, MetalCheck metal) {
        MetalCheck.Result now = metal.result();
        boolean said = now != MetalCheck.Result.RUNNING && now != MetalCheck.Result.NOT_WHOLE;
        return List.of(
            outcomes.of(visit, BenchKind.METAL, "positive", say.outcome_reaction_means(), said,
                now == MetalCheck.Result.REACTION),
            outcomes.of(visit, BenchKind.METAL, "slight-lightening", say.outcome_slight_means(), said,
                now == MetalCheck.Result.SLIGHT_LIGHTENING),
            outcomes.of(visit, BenchKind.METAL, "nothing-happened", say.outcome_nothing_means(), said,
                now == MetalCheck.Result.NOTHING_HAPPENED));
    }

    private BenchMetalView.Result result(Visit visit, BenchRecord test, MetalCheck metal) {
        Optional<String> outcome = tests.outcome(test);
        String ended = test.endedAt()
            .map(at -> say.ended_at(time.dayAndTime(at.atZone(visit.zone())), BenchNumber.clock(metal.ranSeconds())))
            .orElse("");
        boolean notWhole = outcome.filter("not-whole"::equals).isPresent();
        return new BenchMetalView.Result(outcome.isPresent(), outcome.map(BenchSay::weight).orElse(Weight.NOTE),
            outcome.map(words::outcome)
                .orElseGet(test.state() == BenchRecord.State.ENDED ? say::stopped_early : say::state_running),
            notWhole ? metal.gaps().stream().map(words::gap).toList() : List.of(), ended);
    }

    private BenchMetalView.NextDay nextDay(Visit visit, BenchRecord test, BenchMetalBody body, MetalCheck metal) {
        long waitMillis =
            Duration.ofHours(policies.effective().incompatibilityTestHours()).toMillis();
        long toGo = Math.max(0, waitMillis - tests.sinceBegunMillis(test));
        Instant from = clock.instant().plusMillis(toGo);
        String done = body.nextDay()
            .map(l -> l.apart().isEmpty() ? say.next_day_intact() : say.next_day_apart(String.join(", ", l.apart())))
            .orElse("");
        boolean due = test.state() == BenchRecord.State.ENDED && metal.fullTime() && body.nextDay().isEmpty()
            && !metal.stopsNow();
        return new BenchMetalView.NextDay(due, toGo > 0,
            toGo > 0 ? say.next_day_from(time.dayAndTime(from.atZone(visit.zone()))) : say.next_day_now(), done);
    }

    private static String version(BenchRecord test, MetalCheck metal, BenchTail tail) {
        return test.version() + "-" + test.state() + "-" + metal.seen().hashCode() + "-" + metal.fullTime() + "-"
            + tail.photos().size() + "-" + test.struck();
    }

    private String news(MetalCheck metal) {
        List<Seen> seen = metal.seen();
        return seen.isEmpty() ? ""
            : seen.get(seen.size() - 1).tuft() + ": " + words.sign(seen.get(seen.size() - 1).sign());
    }
}
