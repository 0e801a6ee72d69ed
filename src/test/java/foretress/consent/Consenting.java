package foretress.consent;

import foretress.assessment.Weight;
import foretress.consent.ConsentInput.Answered;
import foretress.consent.ConsentInput.Client;
import foretress.consent.ConsentInput.Found;
import foretress.consent.ConsentInput.Salon;
import foretress.consent.ConsentInput.Test;
import foretress.consent.ConsentInput.Visit;
import foretress.hair.HairHistory;
import foretress.hair.HairLength;
import foretress.hair.Residue;
import foretress.hair.StrandDrawing;
import foretress.hair.StrandLayout;
import foretress.hair.StrandMap;
import foretress.hair.StrandWords;
import foretress.hair.Treatment;
import foretress.hair.Zone;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;

/** Builds consents in words; everything not said is that of one invented client. */
final class Consenting {
    static final ZoneId LONDON = ZoneId.of("Europe/London");
    static final Salon SALON = new Salon("Alder & Wren", "3 Millrace Lane", "Tarnbeck", "01632 960 114",
        "desk@alder-and-wren.example", "Tuesday to Saturday, 9:00 to 18:00.", "112");
    static final UUID CLIENT = UUID.fromString("5b0c1e52-6a3e-4a7f-9a33-1c5cbd5a0001");
    static final UUID VISIT = UUID.fromString("5b0c1e52-6a3e-4a7f-9a33-1c5cbd5a0002");

    private UUID client = CLIENT;
    private UUID visit = VISIT;
    private int treatments;
    private boolean strand;
    private String language = "en";
    private String name = "Ottilie Brandt";
    private Weight standing = Weight.TEST_FIRST;
    private List<Test> tests = List.of(
        new Test("skin-test", "A skin test with Larkmoss 4-0"),
        new Test("incompatibility-test", "A test on hair cut from three places"));
    private List<Found> found = List.of(
        new Found(Weight.TEST_FIRST,
            "Metal is probably still in the lengths, from a darkening lotion used until summer 2024. A metal test comes first."),
        new Found(Weight.TEST_FIRST, "No valid skin test for this shade. Latest start: Tuesday 9 June, 14:00."),
        new Found(Weight.RESTRICTS, "After the tests, the ends get a weaker mix than the lengths."),
        new Found(Weight.NOTE, "Two answers are “don’t know”. They count as a possible yes."));
    private List<Answered> answered = List.of(
        new Answered("What was done before", "A lotion or foam that darkens grey hair little by little",
            "Yes, some time ago: summer 2024"),
        new Answered("What was done before", "Henna or plant colour", "No, never"),
        new Answered("Reactions", "A black temporary tattoo", "Don’t know"),
        new Answered("Reactions", "A reaction to hair colour or anything on the skin", "No"),
        new Answered("Today", "Medicines in the last three months", "One, typed as “amlodipine”"),
        new Answered("Today", "Length of the longest hair", "42 cm, own measure"));

    static Consenting aConsent() {
        return new Consenting();
    }

    Consenting at(UUID visitId, UUID clientId) {
        visit = visitId;
        client = clientId;
        return this;
    }

    Consenting in(String tag) {
        language = tag;
        return this;
    }

    Consenting by(String client) {
        name = client;
        return this;
    }

    Consenting standing(Weight weight) {
        standing = weight;
        return this;
    }

    Consenting testing(Test... owed) {
        tests = List.of(owed);
        return this;
    }

    Consenting found(Found... what) {
        found = List.of(what);
        return this;
    }

    /** Three earlier treatments on 42 cm of hair. */
    Consenting withStrand() {
        strand = true;
        return this;
    }

    /** As many touch-ups as a list can hold. */
    Consenting withTreatments(int count) {
        treatments = count;
        return withStrand();
    }

    private Treatment touchUp(int i) {
        LocalDate day = LocalDate.of(2026, 5, 1).minusDays(40L * i);
        return Treatment.once(Residue.values()[i % Residue.values().length], day, day, Zone.REGROWTH, "Colour " + i)
            .since(day.minusYears(3), day.minusYears(2), 1.6)
            .said("the new growth, about every 6 weeks, two to three years ago to " + day);
    }

    private Optional<ConsentInput.Strand> strand() {
        if (!strand) {
            return Optional.empty();
        }
        LocalDate today = LocalDate.of(2026, 6, 7);
        StrandMap map = StrandMap.of(HairHistory.of(HairLength.measured(42), List.of(
            Treatment.once(Residue.METAL, LocalDate.of(2024, 6, 1), LocalDate.of(2024, 8, 31), Zone.WHOLE,
                "Darkening lotion"),
            Treatment.once(Residue.OXIDATIVE, LocalDate.of(2025, 2, 1), LocalDate.of(2025, 2, 28), Zone.REGROWTH,
                "Box dye"),
            Treatment.once(Residue.LIGHTENED, LocalDate.of(2023, 9, 1), LocalDate.of(2023, 11, 30), Zone.STRANDS,
                "Highlights"))),
            today);
        if (treatments > 0) {
            map = StrandMap.of(HairHistory.of(HairLength.measured(42),
                IntStream.range(0, treatments).mapToObj(this::touchUp).toList()), today);
        }
        var words = new StrandWords(Locale.forLanguageTag(language), new StrandSentences()::say);
        return Optional.of(new ConsentInput.Strand(StrandDrawing.of(map, words, StrandLayout.PAPER), words.list(map)));
    }

    Consenting answered(List<Answered> all) {
        answered = all;
        return this;
    }

    ConsentInput input() {
        var booked = new Visit(visit, ZonedDateTime.of(2026, 6, 11, 14, 0, 0, 0, LONDON), "Petra Lind",
            List.of("Permanent colour"));
        return new ConsentInput(language, SALON, new Client(client, name, Optional.of(LocalDate.of(1965, 3, 4))),
            booked,
            standing, tests, found, answered, strand());
    }

    ConsentText text() {
        return ConsentText.of(input(), ConsentWords.in(language));
    }

    static final String VERIFY = "https://visits.example.org/verify";
    static final UUID DOCUMENT = UUID.fromString("5b0c1e52-6a3e-4a7f-9a33-1c5cbd5a0005");

    /** The printed consent, first version, on A4, with a drawn mark. */
    byte[] paper() {
        return paper(aDrawing(), PaperSize.A4);
    }

    byte[] paper(SignatureMark mark, PaperSize size) {
        return ConsentPaper.print(input(), text(), mark,
            new HowSigned(DOCUMENT, 1, Optional.empty(), evidenceFor(text())), size, VERIFY);
    }

    /** Two loops and a dot, as a hand might. */
    static SignatureMark.Drawn aDrawing() {
        List<SignatureMark.Point> line = IntStream.rangeClosed(0, 160).mapToObj(step -> step / 160.0)
            .map(part -> new SignatureMark.Point(
                0.08 + 0.72 * part + 0.05 * Math.sin(part * 31),
                0.52 - (0.34 - 0.24 * part) * Math.sin(part * 29 + 0.6) * Math.cos(part * 4.2)))
            .toList();
        return new SignatureMark.Drawn(List.of(new SignatureMark.Stroke(line),
            new SignatureMark.Stroke(List.of(new SignatureMark.Point(0.86, 0.3)))));
    }

    static final Instant SIGNED = Instant.parse("2026-06-07T19:41:00Z");

    static Evidence evidenceFor(ConsentText text) {
        return evidenceFor(text, UUID.fromString("5b0c1e52-6a3e-4a7f-9a33-1c5cbd5a0003"));
    }

    static Evidence evidenceFor(ConsentText text, UUID submission) {
        Instant opened = Instant.parse("2026-06-07T19:27:12Z");
        return new Evidence(submission,
            new Evidence.Invited(UUID.fromString("5b0c1e52-6a3e-4a7f-9a33-1c5cbd5a0004"), Evidence.Way.MAIL,
                "Sanna Reed",
                Instant.parse("2026-06-02T10:00:00Z"), opened),
            new Evidence.BirthDateCheck(Evidence.BirthDateResult.CONFIRMED, 1, opened.plusSeconds(60)),
            new Evidence.HealthConsent("2026-11-24", "ab".repeat(32), opened.plusSeconds(108)),
            new Evidence.Text(text.language(), text.sha256(), "cd".repeat(32), "ef".repeat(32)),
            new Evidence.Seen(
                List.of(new Evidence.PageShown("reactions", opened.plusSeconds(120), opened.plusSeconds(300))),
                opened.plusSeconds(600), opened.plusSeconds(660)),
            text.statements().stream().map(ConsentText.Line.Statement::id).toList(),
            new Evidence.Moment(SIGNED, LONDON, "2025a", "system clock, not checked against another"),
            Optional.of(new Evidence.Device("198.51.100.7", "a phone")), Optional.empty());
    }
}
