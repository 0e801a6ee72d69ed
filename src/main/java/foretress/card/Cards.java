package foretress.card;

import foretress.assessment.Situation;
import foretress.bench.BenchRecords;
import foretress.card.CardView.Line;
import foretress.card.CardView.TestView;
import foretress.closing.Closings;
import foretress.consent.ConsentInput.Strand;
import foretress.hair.StrandDrawing;
import foretress.hair.StrandLayout;
import foretress.hair.StrandMap;
import foretress.hair.StrandSvg;
import foretress.hair.StrandWords;
import foretress.intake.Assessments;
import foretress.intake.Intake;
import foretress.intake.StrandMaps;
import foretress.knowledge.Knowledge;
import foretress.questionnaire.Answers;
import foretress.skintest.SkinTestHistory;
import foretress.visit.Client;
import foretress.visit.Clients;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.Visits;
import jakarta.enterprise.context.RequestScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/** Gathers what a client's record card shows, over all visits. */
@RequestScoped
class Cards {
    private final CardVisits cardVisits;
    private final Clients clients;
    private final Visits visits;
    private final Intake intake;
    private final Assessments assessments;
    private final Closings closings;
    private final CardHistory history;
    private final SkinTestHistory skinTests;
    private final BenchRecords benchTests;
    private final Knowledge knowledge;
    private final CardText text;
    private final CardWords say;

    Cards(CardVisits cardVisits, Clients clients, Visits visits, Intake intake, Assessments assessments,
        Closings closings, CardHistory history, SkinTestHistory skinTests, BenchRecords benchTests, Knowledge knowledge,
        CardText text, CardWords say) {
        this.cardVisits = cardVisits;
        this.clients = clients;
        this.visits = visits;
        this.intake = intake;
        this.assessments = assessments;
        this.closings = closings;
        this.history = history;
        this.skinTests = skinTests;
        this.benchTests = benchTests;
        this.knowledge = knowledge;
        this.text = text;
        this.say = say;
    }

    CardView of(Client client) {
        List<Visit> all = visits.of(client.id);
        cardVisits.ready(all.stream().map(visit -> visit.id).toList());
        Optional<Visit> last = all.stream().filter(v -> v.state.hasAnswers() && v.state != State.WITHDRAWN)
            .filter(v -> !intake.said(v).byQuestion().isEmpty()).findFirst();
        Optional<StrandMap> map = last.map(visit -> map(visit, text.today())).filter(m -> !m.lanes().isEmpty());
        StrandWords strandWords = StrandMaps.words(text.words());
        int records = clients.everyId(client.id).size();
        return new CardView(client.id.toString(), client.fullName(), particulars(client),
            records > 1 ? say.merged_from(records) : "",
            map.map(m -> StrandSvg.figure(m, strandWords, "map")).orElse(""),
            last.map(v -> say.map_aside(day(v))).orElse(""),
            map.map(m -> strand(m, strandWords)), tests(client.id, all), all.stream().map(cardVisits::of).toList());
    }

    private static Strand strand(StrandMap map, StrandWords words) {
        return new Strand(StrandDrawing.of(map, words, StrandLayout.PAPER), words.list(map));
    }

    /** As told at that visit and done here since, grown on until this day. */
    private StrandMap map(Visit visit, LocalDate today) {
        Answers said = intake.said(visit);
        LocalDate visitDay = visit.startsThere().toLocalDate();
        LocalDate told = Optional.ofNullable(closings.ofClient(visit.client.id).get(visit.id))
            .map(kept -> kept.closedAt().atZone(visit.zone()).toLocalDate())
            .orElse(visitDay.isBefore(today) ? visitDay : today);
        Situation situation =
            assessments.situation(visit, said).seenOn(told, today).knowing(history.all(visit.client.id));
        return StrandMaps.map(situation, knowledge, text.words());
    }

    private List<Line> particulars(Client client) {
        return List.of(new Line(say.born(), client.birthDate().map(text::day).orElseGet(say::not_on_file)),
            new Line(say.phone(), client.phone().orElseGet(say::not_on_file)),
            new Line(say.email(), client.email().orElseGet(say::not_on_file)),
            new Line(say.language(), Locale.forLanguageTag(client.language).getDisplayLanguage(text.locale())),
            new Line(say.file_since(), text.day(client.createdAt.atZone(text.when().zone()).toLocalDate())));
    }

    /** Skin tests, then what was tried at the bench, each the newest first; none made for a visit whose consent was withdrawn. */
    private List<TestView> tests(UUID clientId, List<Visit> all) {
        List<UUID> readable = all.stream().filter(v -> v.state != State.WITHDRAWN).map(v -> v.id).toList();
        Stream<TestView> skin =
            skinTests.of(clientId).stream().filter(t -> readable.contains(t.visitId())).map(text::test);
        Stream<TestView> bench = benchTests.of(clientId).stream().filter(t -> readable.contains(t.visitId()))
            .map(t -> text.test(t, benchTests.outcome(t)));
        return Stream.concat(skin, bench).toList();
    }

    private String day(Visit visit) {
        return text.day(visit.startsThere().toLocalDate());
    }
}
