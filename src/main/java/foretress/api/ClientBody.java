package foretress.api;

import com.fasterxml.jackson.databind.JsonNode;
import foretress.assessment.ComputedAs;
import foretress.assessment.Leaflet;
import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.Step;
import foretress.assessment.Stricter;
import foretress.assessment.TestFact;
import foretress.assessment.Validity;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.plan.OpeningHours;
import foretress.plan.Week;
import foretress.questionnaire.Answers;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** One client before one visit, as a program describes them: what the pages take from the store, taken from a body instead. */
final class ClientBody {
    private static final Duration FURTHEST = Duration.ofDays(731);

    private final Knowledge knowledge;
    private final CodedAnswers answers;

    ClientBody(Knowledge knowledge, CodedAnswers answers) {
        this.knowledge = knowledge;
        this.answers = answers;
    }

    /**
     * @param booked with the steps that stayed in
     * @param asked the moment at which the answers are read
     * @param skinTest what law and leaflet ask of a skin test for this visit
     * @param hours of the salon, in its zone
     */
    record Read(Situation situation, List<Service> booked, Instant asked, Instant visit, Stricter skinTest,
        OpeningHours hours, Words words) {}

    record Asked(@Json(name = "now", as = "moment", says = "The moment at which the answers are read.") Instant asked,
        @Json(as = "moment",
            says = "When the visit begins: not before the day of 'now', at most two years after it.") Instant visit,
        @Json(flat = true) House salon,
        @Json(least = 1, most = 20,
            says = "What is booked. 'without' names steps that are taken out.") List<Booking> booked,
        @Json(says = "Day of birth. Left out, the age counts as not known.") Optional<LocalDate> born,
        @Json(most = 50,
            says = "Tests that were made. Nothing here has a default: what a test is worth hangs on every field.") Optional<List<TestMade>> tests,
        @Json(
            says = "What the leaflet of the product now planned asks of a skin test. Of leaflet and law the stricter holds.") Optional<Sheet> leaflet,
        @Json(as = "answers") JsonNode answers, @Json(as = "languages") Optional<String> language,
        @Json(flat = true) StaffsHair hair) {}

    /** Where, when and under which law. */
    record House(
        @Json(says = "The salon's time zone: days are days there, opening hours are its wall time.") ZoneId zone,
        @Json(most = 6,
            says = "When the salon is open, in wall time; a day that is left out is closed.") Map<DayOfWeek, List<OpenFromTo>> openingHours,
        @Json(most = 400, says = "Single days on which it is closed.") Optional<Set<LocalDate>> closed,
        @Json(as = "jurisdictions") String jurisdiction) {}

    @Json(name = "OpenFromTo")
    record OpenFromTo(LocalTime opens, LocalTime closes) {}

    @Json(name = "Booking")
    record Booking(@Json(as = "services") String service, @Json(as = "steps") Optional<Set<String>> without) {}

    @Json(name = "TestMade")
    record TestMade(@Json(as = "tests") String test, @Json(as = "outcomes") String outcome, LocalDate started,
        @Json(says = "The day staff read it. Left out, nobody has.") Optional<LocalDate> read,
        @Json(
            says = "It was read after the wait that policy and leaflet ask, and once more on the day findings ask for, where they do.") boolean waitKept,
        @Json(says = "It was made with the product now planned.") boolean thisProduct,
        @Json(says = "It was made for the visit now planned.") boolean thisVisit,
        @Json(says = "It was begun or read under something that hides reactions, or may.") boolean masked,
        @Json(says = "Something since may have changed what it says.") boolean overtaken,
        @Json(says = "What the leaflet of the product it was made with asks.") Optional<Sheet> leaflet,
        @Json(as = "asked about",
            says = "What a doctor's word is about; for medical-advice, and needed there. It lifts no other demand.") Optional<String> about) {}

    @Json(name = "Leaflet")
    record Sheet(@Json(most = 1000, says = "From applying to reading; 0 when it names none.") int waitHours,
        @Json(says = "How long a negative test stands.") Valid valid) {
        Leaflet leaflet() {
            return new Leaflet(waitHours, valid.validity());
        }
    }

    sealed interface Valid {
        Validity validity();
    }

    record Months(@Json(least = 1, most = 120) int months) implements Valid {
        @Override
        public Validity validity() {
            return new Validity.Months(months);
        }
    }

    record Days(@Json(least = 1, most = 3650) int days) implements Valid {
        @Override
        public Validity validity() {
            return new Validity.Days(days);
        }
    }

    record EachApplication(Yes forEachApplication) implements Valid {
        @Override
        public Validity validity() {
            return new Validity.EachApplication();
        }
    }

    record Unsaid(Yes unsaid) implements Valid {
        @Override
        public Validity validity() {
            return new Validity.Unsaid();
        }
    }

    enum Yes {
        YES
    }

    /** What only knowledge can give of these records and of those of the strand map. */
    Map<String, Shape> known() {
        List<String> steps = knowledge.ruleSet().steps().stream().map(Step::id).toList();
        Map<String, Shape> known = new HashMap<>(answers.ofTreatments());
        known.putAll(Map.of("moment", Times.instant(), "answers", answers.shape(), "jurisdictions",
            Shape.code(knowledge.policies().keySet()).saying("Whose rules hold: waits, ages, warnings."),
            "languages", languages(knowledge),
            "services", Shape.code(knowledge.ruleSet().services().stream().map(Service::id).toList()),
            "steps", Shape.set(Shape.code(steps), 0, steps.size()),
            "tests", Shape.code(TestFact.OUTCOMES.keySet().stream().sorted().toList()), "outcomes", outcomes(),
            "asked about", Shape.code(askedAbout())));
        return known;
    }

    static Shape languages(Knowledge knowledge) {
        return Shape.code(knowledge.languages()).saying("Of the words in the answer; English when left out.");
    }

    private static Shape outcomes() {
        return Shape.code(TestFact.OUTCOMES.values().stream().flatMap(List::stream).distinct().sorted().toList())
            .saying(TestFact.OUTCOMES.entrySet().stream().sorted(Map.Entry.comparingByKey())
                .map(e -> e.getKey() + ": " + String.join(", ", e.getValue()))
                .collect(Collectors.joining("; ", "", ".")));
    }

    /** What a doctor can be asked about: the facts that the rules ask a word about. */
    private List<String> askedAbout() {
        return knowledge.ruleSet().facts().stream()
            .flatMap(def -> def.computation().filter(how -> how.as() == ComputedAs.MEDICAL_ADVICE).stream())
            .flatMap(how -> how.of().stream()).toList();
    }

    /** @throws Refused naming what cannot be */
    Read read(Asked body) {
        var faults = new Faults();
        ZoneId zone = body.salon().zone();
        LocalDate today = body.asked().atZone(zone).toLocalDate();
        LocalDate day = body.visit().atZone(zone).toLocalDate();
        faults.expect(!day.isBefore(today), "/visit", "the visit lies before the day on which the answers are read, %s",
            today);
        faults.expect(!body.visit().isAfter(body.asked().plus(FURTHEST)), "/visit",
            "the visit lies more than two years ahead");
        OpeningHours hours = hours(body.salon(), faults);
        List<Service> booked = booked(body.booked(), faults);
        Set<String> chemistries = booked.stream().flatMap(s -> s.chemistries().stream()).collect(Collectors.toSet());
        body.born().ifPresent(b -> faults.expect(!b.isAfter(today), "/born",
            "nobody is born after the day on which the answers are read, %s", today));
        List<TestFact> tests = tests(body.tests().orElse(List.of()), today, faults);
        Answers said = answers.read(body.answers(), "/answers", today, faults);
        Situation situation = body.hair().known(new Situation(today, day, body.born(), chemistries,
            knowledge.questionnaire(), said, knowledge.policy(body.salon().jurisdiction()), tests, Optional.empty()),
            faults);
        faults.orThrow();
        return new Read(situation, booked, body.asked(), body.visit(),
            Stricter.of(situation.policy(), body.leaflet().map(Sheet::leaflet)), hours, words(body.language()));
    }

    Words words(Optional<String> language) {
        return knowledge.words(language.orElse("en"));
    }

    private static OpeningHours hours(House salon, Faults faults) {
        Map<DayOfWeek, List<Week.Span>> week = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            week.put(day, spans(salon.openingHours().getOrDefault(day, List.of()),
                "/openingHours/" + RecordShape.code(day), faults));
        }
        return new OpeningHours(new Week(week), salon.closed().orElse(Set.of()), salon.zone());
    }

    private static List<Week.Span> spans(List<OpenFromTo> spans, String place, Faults faults) {
        List<Week.Span> read = new ArrayList<>();
        LocalTime last = LocalTime.MIN;
        for (OpenFromTo span : spans) {
            boolean fine = span.opens().isBefore(span.closes()) && !span.opens().isBefore(last);
            faults.expect(fine, place + "/" + spans.indexOf(span),
                "opening comes before closing, and after the closing before it");
            if (fine) {
                read.add(new Week.Span(span.opens(), span.closes()));
            }
            last = span.closes();
        }
        return read;
    }

    private List<Service> booked(List<Booking> bookings, Faults faults) {
        List<Service> booked = new ArrayList<>();
        for (int i = 0; i < bookings.size(); i++) {
            Service service = knowledge.ruleSet().service(bookings.get(i).service()).orElseThrow();
            List<String> kept = new ArrayList<>(service.stepIds());
            List<String> without = List.copyOf(bookings.get(i).without().orElse(Set.of()));
            for (int j = 0; j < without.size(); j++) {
                faults.expect(kept.remove(without.get(j)), "/booked/%d/without/%d".formatted(i, j),
                    "%s has no such step", service.id());
            }
            faults.expect(!kept.isEmpty(), "/booked/%d/without".formatted(i), "nothing would be left of %s",
                service.id());
            faults.expect(booked.stream().noneMatch(b -> b.id().equals(service.id())), "/booked/" + i,
                "this service is booked already");
            booked.add(service.keeping(kept));
        }
        return booked;
    }

    private static List<TestFact> tests(List<TestMade> tests, LocalDate today, Faults faults) {
        List<TestFact> read = new ArrayList<>();
        for (int i = 0; i < tests.size(); i++) {
            read.add(test(tests.get(i), "/tests/" + i, today, faults));
        }
        return read;
    }

    private static TestFact test(TestMade made, String place, LocalDate today, Faults faults) {
        List<String> outcomes = TestFact.OUTCOMES.get(made.test());
        faults.expect(outcomes.contains(made.outcome()), place + "/outcome", "%s comes to one of %s", made.test(),
            outcomes);
        faults.expect(!made.started().isAfter(today), place + "/started",
            "it was started after the day on which the answers are read, %s", today);
        made.read().ifPresent(r -> faults.expect(!r.isBefore(made.started()) && !r.isAfter(today), place + "/read",
            "it is read between its start and %s", today));
        faults.expect(made.test().equals(TestFact.ADVICE) == made.about().isPresent(), place + "/about",
            "medical-advice says what it is about, and no other test does");
        return new TestFact(made.test(), made.outcome(), made.started(), made.read(), made.waitKept(),
            made.thisProduct(), made.thisVisit(), made.masked(), made.overtaken(), made.leaflet().map(Sheet::leaflet),
            made.about());
    }
}
