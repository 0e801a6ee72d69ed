package foretress.api;

import com.fasterxml.jackson.databind.JsonNode;
import foretress.api.Shape.Fields;
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
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** One client before one visit, as a program describes them: what the pages take from the store, taken from a body instead. */
final class ClientBody {
    private static final int MOST_TESTS = 50;
    private static final int MOST_CLOSED = 400;
    private static final int MOST_SPANS = 6;
    private static final int MOST_SERVICES = 20;
    private static final Duration FURTHEST = Duration.ofDays(731);

    private static final String ADVICE = "medical-advice";

    private final Knowledge knowledge;
    private final CodedAnswers answers;
    private final StaffsHair hair;

    ClientBody(Knowledge knowledge, CodedAnswers answers, StaffsHair hair) {
        this.knowledge = knowledge;
        this.answers = answers;
        this.hair = hair;
    }

    /**
     * @param booked with the steps that stayed in
     * @param asked the moment at which the answers are read
     * @param skinTest what law and leaflet ask of a skin test for this visit
     * @param hours of the salon, in its zone
     */
    record Read(Situation situation, List<Service> booked, Instant asked, Instant visit, Stricter skinTest,
        OpeningHours hours,
        Words words) {}

    Fields shape() {
        Fields visit = Shape.object().need("now", Times.instant().saying("The moment at which the answers are read."))
            .need("visit",
                Times.instant()
                    .saying("When the visit begins: not before the day of 'now', at most two years after it."))
            .need("zone",
                Times.zone().saying("The salon's time zone: days are days there, opening hours are its wall time."))
            .need("openingHours",
                week().saying("When the salon is open, in wall time; a day that is left out is closed."))
            .may("closed", Shape.set(Times.day(), 0, MOST_CLOSED).saying("Single days on which it is closed."))
            .need("jurisdiction", jurisdiction())
            .need("booked",
                Shape.list(booking(), 1, MOST_SERVICES)
                    .saying("What is booked. 'without' names steps that are taken out."))
            .may("born", Times.day().saying("Day of birth. Left out, the age counts as not known."))
            .may("tests",
                Shape.list(test(), 0, MOST_TESTS).saying(
                    "Tests that were made. Nothing here has a default: what a test is worth hangs on every field."))
            .may("leaflet", leaflet().saying(
                "What the leaflet of the product now planned asks of a skin test. Of leaflet and law the stricter holds."))
            .need("answers", answers.shape())
            .may("language", language());
        return hair.shape(visit);
    }

    Shape jurisdiction() {
        return Shape.code(knowledge.policies().keySet()).saying("Whose rules hold: waits, ages, warnings.");
    }

    Shape language() {
        return Shape.code(knowledge.languages()).saying("Of the words in the answer; English when left out.");
    }

    private static Shape week() {
        Shape spans = Shape.list(
            Shape.object().need("opens", Times.time()).need("closes", Times.time()).named("OpenFromTo"), 0, MOST_SPANS);
        Fields week = Shape.object();
        for (DayOfWeek day : DayOfWeek.values()) {
            week = week.may(code(day), spans);
        }
        return week;
    }

    private static String code(DayOfWeek day) {
        return day.name().toLowerCase(Locale.ROOT);
    }

    private Shape booking() {
        List<String> services = knowledge.ruleSet().services().stream().map(Service::id).toList();
        List<String> steps = knowledge.ruleSet().steps().stream().map(Step::id).toList();
        return Shape.object().need("service", Shape.code(services))
            .may("without", Shape.set(Shape.code(steps), 0, steps.size())).named("Booking");
    }

    /** What a doctor can be asked about: the facts that the rules ask a word about. */
    private List<String> askedAbout() {
        return knowledge.ruleSet().facts().stream()
            .flatMap(def -> def.computation().filter(how -> how.name().equals(ADVICE)).stream())
            .flatMap(how -> how.of().stream()).toList();
    }

    private Shape test() {
        List<String> outcomes = TestFact.OUTCOMES.values().stream().flatMap(List::stream).distinct().sorted().toList();
        return Shape.object().need("test", Shape.code(TestFact.OUTCOMES.keySet().stream().sorted().toList()))
            .need("outcome",
                Shape.code(outcomes).saying(TestFact.OUTCOMES.entrySet().stream().sorted(Map.Entry.comparingByKey())
                    .map(e -> e.getKey() + ": " + String.join(", ", e.getValue()))
                    .collect(Collectors.joining("; ", "", "."))))
            .need("started", Times.day())
            .may("read", Times.day().saying("The day staff read it. Left out, nobody has."))
            .need("waitKept", Shape.flag().saying(
                "It was read after the wait that policy and leaflet ask, and once more on the day findings ask for, where they do."))
            .need("thisProduct", Shape.flag().saying("It was made with the product now planned."))
            .need("thisVisit", Shape.flag().saying("It was made for the visit now planned."))
            .need("masked", Shape.flag().saying("It was begun or read under something that hides reactions, or may."))
            .need("overtaken", Shape.flag().saying("Something since may have changed what it says."))
            .may("leaflet", leaflet().saying("What the leaflet of the product it was made with asks."))
            .may("about",
                Shape.code(askedAbout()).saying(
                    "What a doctor's word is about; for medical-advice, and needed there. It lifts no other demand."))
            .named("TestMade");
    }

    private static Shape leaflet() {
        Shape validity = Shape.either().or("months", Shape.object().need("months", Shape.whole(1, 120)))
            .or("days", Shape.object().need("days", Shape.whole(1, 3650)))
            .or("forEachApplication", Shape.object().need("forEachApplication", Shape.code(List.of("yes"))))
            .or("unsaid", Shape.object().need("unsaid", Shape.code(List.of("yes"))));
        return Shape.object()
            .need("waitHours", Shape.whole(0, 1000).saying("From applying to reading; 0 when it names none."))
            .need("valid", validity.saying("How long a negative test stands.")).named("Leaflet");
    }

    private static Optional<Leaflet> leaflet(JsonNode body) {
        return body.has("leaflet")
            ? Optional.of(new Leaflet(body.at("/leaflet/waitHours").intValue(), validity(body.at("/leaflet/valid"))))
            : Optional.empty();
    }

    private static Validity validity(JsonNode valid) {
        if (valid.has("months")) {
            return new Validity.Months(valid.get("months").intValue());
        }
        if (valid.has("days")) {
            return new Validity.Days(valid.get("days").intValue());
        }
        return valid.has("forEachApplication") ? new Validity.EachApplication() : new Validity.Unsaid();
    }

    /** @throws Refused naming what cannot be */
    Read read(JsonNode body) {
        Faults faults = new Faults();
        ZoneId zone = ZoneId.of(body.get("zone").textValue());
        Instant now = Times.instant(body.get("now").textValue());
        Instant visit = Times.instant(body.get("visit").textValue());
        LocalDate today = now.atZone(zone).toLocalDate();
        LocalDate day = visit.atZone(zone).toLocalDate();
        faults.expect(!day.isBefore(today), "/visit", "the visit lies before the day on which the answers are read, %s",
            today);
        faults.expect(!visit.isAfter(now.plus(FURTHEST)), "/visit", "the visit lies more than two years ahead");
        OpeningHours hours = hours(body, zone, faults);
        List<Service> booked = booked(body.get("booked"), faults);
        Set<String> chemistries = booked.stream().flatMap(s -> s.chemistries().stream()).collect(Collectors.toSet());
        Optional<LocalDate> born = day(body, "born");
        born.ifPresent(b -> faults.expect(!b.isAfter(today), "/born",
            "nobody is born after the day on which the answers are read, %s", today));
        List<TestFact> tests = tests(body.path("tests"), today, faults);
        Answers said = answers.read(body.get("answers"), "/answers", today, faults);
        Situation situation = hair.known(new Situation(today, day, born, chemistries, knowledge.questionnaire(), said,
            knowledge.policy(body.get("jurisdiction").textValue()), tests, Optional.empty()), body, faults);
        faults.orThrow();
        return new Read(situation, booked, now, visit, Stricter.of(situation.policy(), leaflet(body)), hours,
            words(body));
    }

    Words words(JsonNode body) {
        return knowledge.words(body.path("language").asText("en"));
    }

    static Optional<LocalDate> day(JsonNode body, String field) {
        return body.has(field) ? Optional.of(LocalDate.parse(body.get(field).textValue())) : Optional.empty();
    }

    private static OpeningHours hours(JsonNode body, ZoneId zone, Faults faults) {
        Map<DayOfWeek, List<Week.Span>> week = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            week.put(day, spans(body.get("openingHours").path(code(day)), "/openingHours/" + code(day), faults));
        }
        Set<LocalDate> closed = new HashSet<>();
        body.path("closed").forEach(d -> closed.add(LocalDate.parse(d.textValue())));
        return new OpeningHours(new Week(week), closed, zone);
    }

    private static List<Week.Span> spans(JsonNode spans, String place, Faults faults) {
        List<Week.Span> read = new ArrayList<>();
        LocalTime last = LocalTime.MIN;
        for (int i = 0; i < spans.size(); i++) {
            LocalTime opens = LocalTime.parse(spans.get(i).get("opens").textValue());
            LocalTime closes = LocalTime.parse(spans.get(i).get("closes").textValue());
            boolean fine = opens.isBefore(closes) && !opens.isBefore(last);
            faults.expect(fine, place + "/" + i, "opening comes before closing, and after the closing before it");
            if (fine) {
                read.add(new Week.Span(opens, closes));
            }
            last = closes;
        }
        return read;
    }

    private List<Service> booked(JsonNode bookings, Faults faults) {
        List<Service> booked = new ArrayList<>();
        for (int i = 0; i < bookings.size(); i++) {
            Service service = knowledge.ruleSet().service(bookings.get(i).get("service").textValue()).orElseThrow();
            List<String> kept = new ArrayList<>(service.stepIds());
            JsonNode without = bookings.get(i).path("without");
            for (int j = 0; j < without.size(); j++) {
                faults.expect(kept.remove(without.get(j).textValue()), "/booked/%d/without/%d".formatted(i, j),
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

    private static List<TestFact> tests(JsonNode tests, LocalDate today, Faults faults) {
        List<TestFact> read = new ArrayList<>();
        for (int i = 0; i < tests.size(); i++) {
            read.add(test(tests.get(i), "/tests/" + i, today, faults));
        }
        return read;
    }

    private static TestFact test(JsonNode test, String place, LocalDate today, Faults faults) {
        String id = test.get("test").textValue();
        String outcome = test.get("outcome").textValue();
        LocalDate started = LocalDate.parse(test.get("started").textValue());
        Optional<LocalDate> read = day(test, "read");
        faults.expect(TestFact.OUTCOMES.get(id).contains(outcome), place + "/outcome", "%s comes to one of %s", id,
            TestFact.OUTCOMES.get(id));
        faults.expect(!started.isAfter(today), place + "/started",
            "it was started after the day on which the answers are read, %s", today);
        read.ifPresent(r -> faults.expect(!r.isBefore(started) && !r.isAfter(today), place + "/read",
            "it is read between its start and %s", today));
        faults.expect(id.equals(ADVICE) == test.has("about"), place + "/about",
            "medical-advice says what it is about, and no other test does");
        return new TestFact(id, outcome, started, read, is(test, "waitKept"), is(test, "thisProduct"),
            is(test, "thisVisit"), is(test, "masked"),
            is(test, "overtaken"), leaflet(test), Optional.ofNullable(test.path("about").textValue()));
    }

    private static boolean is(JsonNode test, String field) {
        return test.get(field).booleanValue();
    }
}
