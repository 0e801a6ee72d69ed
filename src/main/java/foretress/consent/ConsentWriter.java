package foretress.consent;

import static foretress.consent.ConsentText.Part.*;

import foretress.assessment.Weight;
import foretress.consent.ConsentText.Line;
import foretress.consent.ConsentText.Part;
import foretress.consent.ConsentText.Section;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** Puts one visit's particulars, findings and answers into the sentences of a consent. */
final class ConsentWriter {
    private final ConsentInput input;
    private final ConsentSentences words;
    private final Locale locale;
    private final Dates dates;
    private final Direction direction;
    private final List<ConsentInput.Test> tests;
    private final Map<String, String> places;

    ConsentWriter(ConsentInput input, ConsentSentences words) {
        this.input = input;
        this.words = words;
        this.locale = Locale.forLanguageTag(words.language());
        this.dates = Dates.of(input.language(), words.language());
        this.direction = Direction.ofLanguage(locale);
        this.tests = input.tests().stream().filter(test -> !test.isAdvice()).toList();
        this.places = places();
    }

    ConsentText write() {
        Stream<Section> parts = Stream.of(
            new Section(PARTICULARS, "", particulars()),
            section(STATEMENTS, statements()),
            section(FOUND, found()),
            section(TESTS, tests()),
            section(CAUTIONS, cautions()),
            section(STRAND, strand()),
            section(ANSWERED, answered()),
            section(TAKE_BACK, paragraphs("take-back", "how", "then")),
            section(URGENT, paragraphs("urgent", "ambulance", "doctor", "salon")));
        return new ConsentText(words.language(), words.say("version"), input.salt(),
            say(input.prevented() ? "title-prevented" : "title"),
            parts.filter(section -> !section.lines().isEmpty()).toList());
    }

    /** What is signed before the product touches the skin. */
    ConsentText writeSkinTest() {
        Stream<Section> parts = Stream.of(
            new Section(PARTICULARS, "", particulars()),
            section(STATEMENTS,
                numbered("skin-test.statements", List.of("test", "never-reacted", "wash-off", "take-back"))),
            section(TESTS, tests()),
            section(CAUTIONS, paragraphs("skin-test.cautions", "alone", "look", "medicines", "doctor")),
            section(URGENT, paragraphs("urgent", "ambulance", "doctor", "salon")));
        return new ConsentText(words.language(), words.say("skin-test.version"), input.salt(), say("skin-test.title"),
            parts.toList());
    }

    private List<Line> numbered(String part, List<String> ids) {
        var lines = new ArrayList<Line>();
        ids.forEach(id -> lines.add(new Line.Statement(lines.size() + 1, id, say(part + "." + id))));
        return lines;
    }

    private Section section(Part part, List<Line> lines) {
        return new Section(part, say("headings." + part.id()), lines);
    }

    private List<Line> particulars() {
        ConsentInput.Visit visit = input.visit();
        return List.of(
            pair("client", input.client().name()),
            pair("born", input.client().born().map(dates::day).orElseGet(() -> say("particulars.not-given"))),
            pair("language", locale.getDisplayLanguage(locale)),
            pair("visit", dates.weekday(visit.startsAt())),
            pair("service", String.join(", ", visit.services())),
            pair("with", visit.stylist()));
    }

    private Line pair(String label, String value) {
        return new Line.Pair(say("particulars." + label), value);
    }

    /** Each act agreed to by a tick of its own; what the signature itself says stands under them. */
    private List<Line> statements() {
        var ids = new ArrayList<String>();
        if (!tests.isEmpty()) {
            ids.add("tests");
        }
        if (tests.size() < input.tests().size()) {
            ids.add("advice");
        }
        if (!input.refused().isEmpty()) {
            ids.add("tests-refused");
        }
        ids.add(serviceStatement());
        List<Line> lines = new ArrayList<>(numbered("statements", ids));
        lines.add(new Line.Paragraph(say(input.prevented() ? "statements.truth-prevented" : "statements.truth")));
        return lines;
    }

    /** Nobody is asked to agree to a service that their own answers rule out. */
    private String serviceStatement() {
        if (input.prevented()) {
            return "service-prevented";
        }
        return tests.isEmpty() ? "service" : "service-after-tests";
    }

    private List<Line> found() {
        List<Line> lines = new ArrayList<>();
        input.found().forEach(found -> lines.add(finding(found.weight(), found.text())));
        if (lines.isEmpty()) {
            lines.add(finding(Weight.NOTHING_FOUND, say("found.nothing")));
        }
        if (input.dayToCome()) {
            lines.add(new Line.Paragraph(say("found.day-to-come")));
        }
        return lines;
    }

    private Line finding(Weight weight, String text) {
        return new Line.Finding(weight, words.say("weights." + weight.code().replace(' ', '-')), text);
    }

    private List<Line> cautions() {
        ArrayList<Line> lines = new ArrayList<>(paragraphs("cautions", "instructions", "risk", "medicines", "doctor"));
        if (!input.warnings().isEmpty()) {
            lines.add(new Line.Topic(say("cautions.label")));
            input.warnings().forEach(warning -> lines.add(new Line.Paragraph(warning)));
        }
        return lines;
    }

    private List<Line> strand() {
        return input.strand().stream().flatMap(strand -> strand.words().stream()).<Line>map(Line.Paragraph::new)
            .toList();
    }

    private List<Line> tests() {
        return tests.stream()
            .<Line>map(test -> new Line.Pair(capital(test.name()), limits(test.id())))
            .toList();
    }

    private String limits(String test) {
        String key = "limits." + test;
        return words.say(words.has(key) ? key : "limits.other");
    }

    /** What the client said topic by topic; then, under the answer itself, everything they did not know, a line for each topic. */
    private List<Line> answered() {
        var lines = new ArrayList<Line>();
        String topic = "";
        for (ConsentInput.Answered answered : input.answered().stream().filter(answer -> !answer.unknown()).toList()) {
            if (!answered.topic().equals(topic)) {
                topic = answered.topic();
                lines.add(new Line.Topic(topic));
            }
            lines.add(new Line.Pair(answered.question(), answered.answer()));
        }
        lines.addAll(unknown());
        return lines;
    }

    private List<Line> unknown() {
        var byAnswer = new LinkedHashMap<String, Map<String, List<String>>>();
        input.answered().stream().filter(ConsentInput.Answered::unknown).forEach(answer -> byAnswer
            .computeIfAbsent(answer.answer(), same -> new LinkedHashMap<>())
            .computeIfAbsent(answer.topic(), asked -> new ArrayList<>()).add(answer.question()));
        var lines = new ArrayList<Line>();
        byAnswer.forEach((answer, topics) -> {
            lines.add(new Line.Topic(answer));
            topics.forEach((topic, questions) -> lines.add(new Line.Paragraph(
                words.say("answered.unknown", Map.of("topic", topic, "questions", String.join("; ", questions))))));
        });
        return lines;
    }

    private List<Line> paragraphs(String part, String... keys) {
        return Stream.of(keys).<Line>map(key -> new Line.Paragraph(say(part + "." + key))).toList();
    }

    private String say(String key) {
        return words.say(key, places);
    }

    private Map<String, String> places() {
        ConsentInput.Visit visit = input.visit();
        ConsentInput.Salon salon = input.salon();
        return Map.of(
            "refused", listed(input.refused().stream().map(ConsentInput.Test::name).toList()),
            "services", listed(visit.services()),
            "tests", listed(tests.stream().map(ConsentInput.Test::name).toList()),
            "date", dates.day(visit.startsAt().toLocalDate()),
            "stylist", direction.isolate(visit.stylist()),
            "salon", direction.isolate(salon.name()),
            "phone", salon.phone(),
            "opening", salon.opening(),
            "urgent", salon.urgentNumber());
    }

    private String listed(List<String> names) {
        List<String> small = names.stream().map(this::small).map(direction::isolate).toList();
        int last = small.size() - 1;
        if (last < 1) {
            return String.join("", small);
        }
        return words.say("and", Map.of("before", String.join(", ", small.subList(0, last)), "last", small.get(last)));
    }

    /** A name inside a sentence: "Permanent colour" becomes "permanent colour"; "GMTG perm" stays as it is. */
    private String small(String name) {
        if (name.isEmpty() || name.split(" ")[0].substring(1).chars().anyMatch(Character::isUpperCase)) {
            return name;
        }
        return name.substring(0, 1).toLowerCase(locale) + name.substring(1);
    }

    private String capital(String name) {
        return name.isEmpty() ? name : name.substring(0, 1).toUpperCase(locale) + name.substring(1);
    }
}
