package foretress.card;

import foretress.assessment.Assessment;
import foretress.assessment.Situation;
import foretress.assessment.Weight;
import foretress.bench.BenchRecords;
import foretress.card.CardView.DecisionView;
import foretress.card.CardView.DoneView;
import foretress.card.CardView.Line;
import foretress.card.CardView.PaperView;
import foretress.card.CardView.TestView;
import foretress.card.CardView.VisitView;
import foretress.closing.Closing;
import foretress.closing.ClosingSaid;
import foretress.closing.ClosingWords;
import foretress.closing.Closings;
import foretress.closing.HairPhotos;
import foretress.closing.KeptClosing;
import foretress.consent.ConsentInput.Strand;
import foretress.consent.Consents;
import foretress.decision.Decisions;
import foretress.decision.KeptDecision;
import foretress.decision.ServiceDecision;
import foretress.hair.StrandDrawing;
import foretress.hair.StrandLayout;
import foretress.hair.StrandMap;
import foretress.hair.StrandSvg;
import foretress.hair.StrandWords;
import foretress.intake.Assessments;
import foretress.intake.BookedChemistry;
import foretress.intake.Intake;
import foretress.intake.KeptAssessment;
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
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Gathers what a client's record card shows, over all visits. */
@RequestScoped
class Cards {
    private final Clients clients;
    private final Visits visits;
    private final Intake intake;
    private final Assessments assessments;
    private final BookedChemistry chemistry;
    private final Decisions decisions;
    private final Closings closings;
    private final CardHistory history;
    private final Consents consents;
    private final SkinTestHistory skinTests;
    private final BenchRecords benchTests;
    private final Knowledge knowledge;
    private final CardText text;
    private final HairPhotos photos;
    private final ClosingSaid said;
    private final ClosingWords closing;
    private final CardWords say;

    Cards(Clients clients, Visits visits, Intake intake, Assessments assessments, BookedChemistry chemistry,
        Decisions decisions, Closings closings,
        CardHistory history, Consents consents, SkinTestHistory skinTests, BenchRecords benchTests, Knowledge knowledge,
        CardText text, HairPhotos photos,
        ClosingSaid said, ClosingWords closing, CardWords say) {
        this.clients = clients;
        this.visits = visits;
        this.intake = intake;
        this.assessments = assessments;
        this.chemistry = chemistry;
        this.decisions = decisions;
        this.closings = closings;
        this.history = history;
        this.consents = consents;
        this.skinTests = skinTests;
        this.benchTests = benchTests;
        this.knowledge = knowledge;
        this.text = text;
        this.photos = photos;
        this.said = said;
        this.closing = closing;
        this.say = say;
    }

    CardView of(Client client) {
        List<Visit> all = visits.of(client.id);
        Optional<Visit> last = all.stream().filter(v -> v.state.hasAnswers() && v.state != State.WITHDRAWN)
            .filter(v -> !intake.said(v).byQuestion().isEmpty()).findFirst();
        Optional<StrandMap> map = last.map(visit -> map(visit, text.today())).filter(m -> !m.lanes().isEmpty());
        StrandWords strandWords = StrandMaps.words(text.words());
        int records = clients.everyId(client.id).size();
        return new CardView(client.id.toString(), client.fullName(), particulars(client),
            records > 1 ? say.merged_from(records) : "",
            map.map(m -> StrandSvg.figure(m, strandWords, "map")).orElse(""),
            last.map(v -> say.map_aside(day(v))).orElse(""),
            map.map(m -> strand(m, strandWords)), tests(client.id, all), all.stream().map(this::visit).toList());
    }

    private static Strand strand(StrandMap map, StrandWords words) {
        return new Strand(StrandDrawing.of(map, words, StrandLayout.PAPER), words.list(map));
    }

    /** As told at that visit and done here since, grown on until this day. */
    private StrandMap map(Visit visit, LocalDate today) {
        Answers said = intake.said(visit);
        LocalDate visitDay = visit.startsThere().toLocalDate();
        LocalDate told = closings.of(visit.id).map(kept -> kept.closedAt().atZone(visit.zone()).toLocalDate())
            .orElse(visitDay.isBefore(today) ? visitDay : today);
        Situation situation =
            assessments.situation(visit, said).seenOn(told, today).knowing(history.all(visit.client.id));
        return StrandMaps.map(situation, knowledge, text.words());
    }

    private List<Line> particulars(Client client) {
        return List.of(new Line(say.born(), client.birthDate().map(text::day).orElseGet(say::not_on_file)),
            new Line(say.phone(), client.phone().orElseGet(say::not_on_file)),
            new Line(say.email(), client.email().orElseGet(say::not_on_file)),
            new Line(say.language(), Locale.forLanguageTag(client.language).getDisplayLanguage(Locale.ENGLISH)),
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

    VisitView visit(Visit visit) {
        boolean readable = visit.state != State.WITHDRAWN;
        Optional<Assessment> assessed =
            readable ? KeptAssessment.newest(visit.id).map(assessments::read) : Optional.empty();
        Optional<Weight> standing = assessed.flatMap(a -> visit.standing()).map(Weight.BY_CODE::get);
        return new VisitView(visit.id.toString(), text.moment(visit.startsAt), services(visit),
            text.staff(visit.stylistId), text.state(visit.state),
            standing, standing.map(text::word).orElse(""),
            assessed.map(a -> text.found(a.spoken(), chemistry.services(visit))).orElse(List.of()),
            decisions.all(visit.id).stream().map(this::decision).toList(),
            closings.versions(visit.id).stream().map(this::done).toList(), text.photos(visit.id, photos.of(visit.id)),
            consents.all(visit.id).stream()
                .map(c -> new PaperView(c.versionNo(), say.consent(c.versionNo(), text.moment(c.signedAt()))))
                .toList());
    }

    private String services(Visit visit) {
        return visit.services.stream().map(s -> text.service(s.serviceId)).collect(Collectors.joining(", "));
    }

    private String day(Visit visit) {
        return text.day(visit.startsThere().toLocalDate());
    }

    private DecisionView decision(KeptDecision kept) {
        KeptDecision.Body body = decisions.read(kept);
        List<String> lines = new ArrayList<>();
        body.services().forEach(one -> lines.addAll(lines(one)));
        if (!body.reason().isEmpty()) {
            lines.add(say.reason(body.reason()));
            if (body.alone()) {
                lines.add(say.alone());
            }
        }
        return new DecisionView(lines, say.decided_by(text.staff(kept.decidedBy()), text.moment(kept.decidedAt())));
    }

    private List<String> lines(ServiceDecision one) {
        List<String> lines = new ArrayList<>();
        String booked = one.bookedId().map(id -> " (" + say.booked_as(text.service(id)) + ")").orElse("");
        String until = one.until().map(day -> ", " + say.until(text.day(day))).orElse("");
        lines.add(say.decided(text.verdict(one.verdict()), text.service(one.serviceId()) + booked + until));
        if (!one.conditions().isBlank()) {
            lines.add(say.conditions(one.conditions()));
        }
        one.alternative().ifPresent(id -> lines.add(say.alternative(text.service(id))));
        one.against().forEach(a -> lines
            .add(say.against() + ": " + text.words().finding(a.ruleId()).title() + " (" + text.word(a.weight()) + ")"));
        return lines;
    }

    private DoneView done(KeptClosing kept) {
        Closing closing = closings.read(kept);
        return new DoneView(services(closing), closing.used().stream().map(this::product).toList(),
            closing.strandTest().isEmpty() ? "" : said.strandTest(closing.strandTest()), wrong(closing.wrong()),
            closing.wrong().happened(), closing.condition(), closing.notes(),
            closing.correction(), say.done_by(text.staff(kept.closedBy())) + ", " + text.moment(kept.closedAt()));
    }

    private List<String> services(Closing closing) {
        List<String> services = new ArrayList<>();
        closing.courses().keySet().stream().sorted()
            .forEach(id -> services.add(text.service(id) + ": " + said.course(closing.courses().get(id))));
        closing.done().stream().filter(done -> !closing.courses().containsKey(done.serviceId()))
            .forEach(done -> services.add(text.service(done.serviceId())));
        return services.isEmpty() ? List.of(said.course(Closing.NOT_DONE)) : services;
    }

    private List<String> wrong(Closing.Wrong wrong) {
        if (!wrong.happened()) {
            return wrong.said().isEmpty() ? List.of() : List.of(closing.wrong_nothing());
        }
        String kinds = wrong.kinds().stream().map(said::kind).collect(Collectors.joining(", "));
        return Stream
            .of(closing.wrong_text(kinds) + ". " + said.when(wrong.when()) + ".", wrong.words(), wrong.helped())
            .filter(line -> !line.isBlank()).toList();
    }

    private String product(Closing.Used used) {
        Closing.Planned plan = used.planned();
        Stream<String> parts =
            Stream.of(said.zone(used.zone()), used.product() + planned(used.product(), plan.product()),
                used.shade().isBlank() ? "" : say.shade(used.shade()) + planned(used.shade(), plan.shade()),
                used.batch().isBlank() ? "" : say.batch(used.batch()),
                used.ratio(), used.grams().isBlank() ? "" : used.grams() + " g",
                used.strength() + planned(used.strength(), plan.strength()),
                used.minutes().isBlank() ? "" : say.minutes(used.minutes()) + planned(used.minutes(), plan.minutes()));
        return parts.filter(part -> !part.isBlank()).collect(Collectors.joining(", "));
    }

    private String planned(String used, String plan) {
        return ClosingSaid.differs(used, plan) ? " (" + closing.planned(plan) + ")" : "";
    }
}
