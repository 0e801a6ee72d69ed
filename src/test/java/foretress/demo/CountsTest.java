package foretress.demo;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Counts;
import foretress.Counts.Cost;
import foretress.Walker;
import foretress.intake.Answering;
import foretress.intake.Assessments;
import foretress.intake.BookedChemistry;
import foretress.intake.Intake;
import foretress.intake.Knocking;
import foretress.knowledge.Knowledge;
import foretress.lexicon.Benchmarks;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Topic;
import foretress.salon.OpenSalon;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What each page costs the store, the vault and the rules: how often, never how long. */
@QuarkusTest
@DisplayName("A page asks the store no more than it may, whatever the number of visits")
class CountsTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final LocalDate BORN = LocalDate.of(1965, 3, 4);

    /**
     * How much a page may cost.
     *
     * @param before statements it took when they were first counted, on 30 November 2026; blank where that was not counted
     */
    private record Ceiling(String page, String before, int statements, int writes, int transactions) {}

    /** In the order of the walk. */
    private static final List<Ceiling> CEILINGS = List.of(
        new Ceiling("door", "6", 1, 0, 0),
        new Ceiling("birth date sent", "9", 8, 3, 1),
        new Ceiling("notice", "9", 3, 0, 1),
        new Ceiling("question page, first shown", "", 5, 1, 1),
        new Ceiling("question page, shown again", "12", 3, 0, 0),
        new Ceiling("question page saved", "43", 17, 5, 1),
        new Ceiling("read-back, first shown", "", 5, 1, 1),
        new Ceiling("read-back confirmed", "", 9, 3, 1),
        new Ceiling("consent, shown again", "", 6, 0, 0),
        new Ceiling("consent signed", "", 36, 8, 2),
        new Ceiling("done", "", 9, 0, 0),
        new Ceiling("consultation, first read", "218", 13, 2, 1),
        new Ceiling("consultation, read again", "218", 10, 0, 0),
        new Ceiling("bench, first read", "195", 11, 2, 1),
        new Ceiling("bench, asked every few seconds", "191", 8, 0, 0),
        new Ceiling("consent as PDF, sealed on the way", "", 11, 4, 4),
        new Ceiling("consent as PDF", "", 7, 2, 1),
        new Ceiling("record card, first read", "54", 16, 2, 1),
        new Ceiling("day sheet of 1", "11", 5, 0, 0),
        new Ceiling("day sheet of 10", "11", 5, 0, 0),
        new Ceiling("day sheet of 30", "11", 5, 0, 0),
        new Ceiling("day sheet of 60", "11", 5, 0, 0),
        new Ceiling("desk's list of 1", "16", 7, 2, 1),
        new Ceiling("desk's list of 10", "16", 4, 0, 0),
        new Ceiling("desk's list of 60", "16", 4, 0, 0),
        new Ceiling("owner's page, first read", "13", 16, 2, 1));

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject Intake intake;
    @Inject Assessments assessments;
    @Inject BookedChemistry chemistry;
    @Inject Knowledge knowledge;
    @Inject Counts counts;
    @Inject Clock clock;
    private final Map<String, Cost> taken = new LinkedHashMap<>();

    @BeforeEach
    void open() {
        salon.open();
        counts.begin();
    }

    @AfterEach
    void end() {
        counts.end();
    }

    /** The first request of the act: where it leads is another page's. */
    private Cost cost(Runnable act) {
        counts.taken();
        act.run();
        return counts.taken().get(0);
    }

    private void take(String page, Runnable act) {
        taken.put(page, cost(act));
    }

    @Test
    @DisplayName("every page keeps to its ceiling, opens no answer twice and assesses nobody twice")
    void everyPageKeepsToItsCeiling() {
        UUID visit = make.visit(BORN);
        aClientAnswers(visit);
        Walker petra = salon.as("petra");
        String at = "/visits/" + visit;
        take("consultation, first read", () -> petra.open(at).expect(200));
        take("consultation, read again", () -> petra.open(at).expect(200));
        take("bench, first read", () -> petra.open(at + "/bench").expect(200));
        take("bench, asked every few seconds", () -> petra.open(at + "/bench/live").expect(200));
        take("consent as PDF, sealed on the way", () -> petra.open(at + "/consent/1").expect(200));
        take("consent as PDF", () -> petra.open(at + "/consent/1").expect(200));
        take("record card, first read", () -> petra.open(card(visit)).expect(200));
        lists(petra);
        Walker edda = salon.as("edda");
        take("owner's page, first read", () -> edda.open("/owner").expect(200));
        print();
        hold();
    }

    private void aClientAnswers(UUID visit) {
        Walker client = new Walker();
        String link = knocking.link(visit);
        take("door", () -> client.open(link).expect(200));
        take("birth date sent", () -> client.send(Map.of("day", "4", "month", "3", "year", "1965")));
        take("notice", () -> client.open("/answers/notice").expect(200));
        Answering answering = Answering.on(client, Map.of());
        counts.taken();
        answering.agree();
        taken.put("question page, first shown", counts.taken().get(2));
        String first = client.at();
        take("question page, shown again", () -> client.open(first).expect(200));
        take("question page saved", answering::page);
        answering.all();
        taken.put("read-back, first shown", last());
        take("read-back confirmed", answering::readBack);
        take("consent, shown again", () -> client.open("/answers/sign").expect(200));
        take("consent signed", () -> answering.sign("Ottilie Brandt"));
        take("done", () -> client.open("/answers/done").expect(200));
    }

    private Cost last() {
        List<Cost> all = counts.taken();
        return all.get(all.size() - 1);
    }

    private void lists(Walker petra) {
        int days = 400;
        for (int visits : List.of(1, 10, 30, 60)) {
            days += 60;
            LocalDate day = dayWith(visits, days);
            take("day sheet of " + visits, () -> petra.open("/day?date=" + day).expect(200));
            take("desk's list of " + visits, () -> petra.open("/desk?from=" + day).expect(200));
        }
    }

    private LocalDate dayWith(int visits, int inDays) {
        LocalDate day = LocalDate.ofInstant(clock.instant(), LONDON).plusDays(inDays);
        for (int i = 0; i < visits; i++) {
            signed(make.on(day));
        }
        return day;
    }

    private void signed(UUID id) {
        QuarkusTransaction.requiringNew().run(() -> {
            Visit visit = Visit.findById(id);
            visit.moveTo(State.INVITED);
            visit.moveTo(State.ANSWERING);
            visit.moveTo(State.SIGNED);
            Topic first = knowledge.questionnaire().topics().get(0);
            intake.record(id, first, knowledge.answeredWell(Answers.NONE, chemistry.of(visit)), "en");
            visit.signed(clock.instant());
            assessments.renew(visit, Answers.NONE);
            visit.owes(Optional.of(new Visit.Owed("skin-test", Optional.of(visit.startsAt))));
        });
    }

    private static String card(UUID visit) {
        return QuarkusTransaction.requiringNew()
            .call(() -> "/clients/" + Visit.<Visit>findById(visit).client.id + "/card");
    }

    /** What runs at the chair of other visits stands on every bench: a statement a clock, and one for whose they are. */
    private static int running() {
        return QuarkusTransaction.requiringNew().call(() -> ((Number) Visit.getEntityManager().createNativeQuery(
            "select count(*) + 1 from bench_test where started_at is not null and ended_at is null and struck_at is null")
            .getSingleResult()).intValue());
    }

    private void hold() {
        int running = running();
        SoftAssertions.assertSoftly(all -> CEILINGS.forEach(ceiling -> {
            Cost cost = taken.get(ceiling.page());
            String what = ceiling.page() + said(cost);
            all.assertThat(cost.all()).as("statements of %s", what)
                .isLessThanOrEqualTo(ceiling.statements() + (ceiling.page().startsWith("bench") ? running : 0));
            all.assertThat(cost.writes()).as("of them writes, %s", what).isLessThanOrEqualTo(ceiling.writes());
            all.assertThat(cost.transactions()).as("transactions of %s", what)
                .isLessThanOrEqualTo(ceiling.transactions());
            all.assertThat(cost.openedAgain()).as("opened twice by %s", ceiling.page()).isEmpty();
            all.assertThat(cost.again()).as("assessed twice by %s", ceiling.page()).isZero();
        }));
    }

    private static String said(Cost cost) {
        return cost.statements().entrySet().stream().map(one -> "\n" + one.getValue() + " × " + one.getKey())
            .collect(Collectors.joining());
    }

    private void print() {
        System.out
            .println("| page | statements | writes | transactions | opened | assessed |\n|---|---|---|---|---|---|");
        taken.forEach((page, cost) -> System.out.printf("| %s | %d | %d | %d | %d | %d |%n", page, cost.all(),
            cost.writes(), cost.transactions(), cost.decryptions(), cost.assessed()));
    }

    @Test
    @DisplayName("with forty visits a list asks no more than with ten, and a client's pages no more with six visits than with two")
    void nothingGrowsWithTheVisits() {
        Walker petra = salon.as("petra");
        Walker edda = salon.as("edda");
        List<Integer> few = new ArrayList<>();
        List<Integer> many = new ArrayList<>();
        UUID visit = make.visit(BORN);
        times(1, () -> signed(make.again(visit)));
        LocalDate ten = dayWith(10, 900);
        pages(petra, edda, visit, ten, few);
        times(4, () -> signed(make.again(visit)));
        LocalDate forty = dayWith(40, 960);
        pages(petra, edda, visit, forty, many);
        for (int i = 0; i < few.size(); i++) {
            assertThat(many.get(i)).as("page %d", i).isLessThanOrEqualTo(few.get(i));
        }
    }

    private static void times(int times, Runnable act) {
        for (int i = 0; i < times; i++) {
            act.run();
        }
    }

    /** Each is opened twice: what is written once is written then. */
    private void pages(Walker petra, Walker edda, UUID visit, LocalDate day, List<Integer> cost) {
        for (String page : List.of("/day?date=" + day, "/desk?from=" + day, "/visits/" + visit, card(visit))) {
            petra.open(page).expect(200);
            cost.add(cost(() -> petra.open(page)).all());
        }
        edda.open("/owner").expect(200);
        cost.add(cost(() -> edda.open("/owner")).all());
    }

    @Test
    @DisplayName("the figures in the docs are those that are held")
    void theFiguresInTheDocs() throws IOException {
        String rows = CEILINGS.stream().map(one -> "| %s | %s | %d | %d |".formatted(one.page(), one.before(),
            one.statements(), one.writes())).collect(Collectors.joining("\n"));
        Benchmarks.hold("What a page asks of the store", """
            Statements that the database itself says it executed for one request, by anybody and of any kind; `CountsTest` holds them, and
            beside them that no sealed text is opened twice in a request and nobody assessed twice. What the whole program holds (particulars,
            figures, menu, staff's names, looked-up medicines: asked once in five seconds) is not among them. A page that staff read has three
            more the first time in a quarter of an hour, its entry in the audit chain. Before: as first counted on 30 November 2026, with what
            is held now among them.

            | page | statements before | now at most | of them writes |
            |---|---|---|---|
            """ + rows);
    }
}
