package foretress.demo;

import foretress.Counts;
import foretress.Counts.Cost;
import foretress.Walker;
import foretress.intake.Assessments;
import foretress.intake.Intake;
import foretress.intake.Knocking;
import foretress.questionnaire.Answers;
import foretress.salon.OpenSalon;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What each page costs the store, the vault and the rules. */
@QuarkusTest
@DisplayName("Counts have ceilings; times have none")
class CountsTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject Assessments assessments;
    @Inject Intake intake;
    @Inject Counts counts;
    @Inject Clock clock;
    private final Map<String, Cost> table = new LinkedHashMap<>();

    @BeforeEach
    void open() {
        salon.open();
        counts.begin();
    }

    @AfterEach
    void end() {
        counts.end();
    }

    private Cost one(String name, Runnable act) {
        counts.taken();
        act.run();
        Cost first = counts.taken().get(0);
        table.put(name, first);
        return first;
    }

    private LocalDate dayWith(int visits, int inDays) {
        LocalDate day = LocalDate.ofInstant(clock.instant(), LONDON).plusDays(inDays);
        for (int i = 0; i < visits; i++) {
            UUID id = make.on(day);
            QuarkusTransaction.requiringNew().run(() -> {
                Visit visit = Visit.findById(id);
                visit.state = State.SIGNED;
                visit.signed(clock.instant());
                assessments.renew(visit, Answers.NONE);
                visit.owes(java.util.Optional.of(new Visit.Owed("skin-test", java.util.Optional.of(visit.startsAt))));
            });
        }
        return day;
    }

    @Test
    void all() {
        UUID before = make.visit(LocalDate.of(1965, 3, 4));
        knocking.come(before, Map.of()).agree().all().readBack().sign("Ottilie Brandt");
        UUID id = make.again(before);
        Walker client = new Walker();
        String link = knocking.link(id);
        one("door", () -> client.open(link));
        one("birth date", () -> client.send(Map.of("day", "4", "month", "3", "year", "1965")));
        walk(client);
        Walker petra = salon.as("petra");
        String visit = "/visits/" + id;
        one("consultation", () -> petra.open(visit));
        one("consultation again", () -> petra.open(visit));
        one("bench page", () -> petra.open(visit + "/bench"));
        one("bench poll", () -> petra.open(visit + "/bench/live"));
        one("consent PDF", () -> petra.open(visit + "/consent/1"));
        UUID person = QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(id).client.id);
        one("record card", () -> petra.open("/clients/" + person + "/card"));
        int days = 400;
        for (int n : List.of(1, 10, 30, 60)) {
            LocalDate day = dayWith(n, days += 60);
            one("day sheet of " + n, () -> petra.open("/day?date=" + day));
            one("desk of " + n, () -> petra.open("/desk?from=" + day));
        }
        Walker edda = salon.as("edda");
        one("owner", () -> edda.open("/owner"));
        print();
    }

    private void walk(Walker client) {
        one("notice", () -> client.open("/answers/notice"));
        foretress.intake.Answering answering = foretress.intake.Answering.on(client, Map.of());
        answering.agree();
        String first = client.at();
        one("question page", () -> client.open(first));
        one("question page again", () -> client.open(first));
        one("save", answering::page);
        for (int i = 0; i < 60 && !client.at().equals("/answers/read-back"); i++) {
            String at = client.at();
            one("question " + i, () -> client.open(at));
            one("save " + i, answering::page);
        }
        one("read-back", () -> client.open("/answers/read-back"));
        one("read-back sent", answering::readBack);
        one("sign", () -> client.open("/answers/sign"));
        one("signed", () -> answering.sign("Ottilie Brandt"));
        one("done", () -> client.open("/answers/done"));
    }

    private void print() {
        var out = new StringBuilder("| page | reads | writes | transactions | opened | again | assessed | again |\n");
        table.forEach((name, c) -> out.append("| %s (%s) | %d | %d | %d | %d | %d | %d | %d |%n".formatted(name,
            c.what().replaceAll("[0-9a-f]{8}-[0-9a-f-]{27}", "…"), c.reads(), c.writes(), c.transactions(),
            c.decryptions(), c.openedAgain().size(), c.assessed(), c.again())));
        System.out.println(out);
        try {
            var detail = new ArrayList<String>();
            table.forEach((name, c) -> {
                detail.add("=== " + name + " " + c.what());
                c.statements().forEach((sql, n) -> detail.add("  " + n + " x " + sql.replaceAll("\\s+", " ")
                    .replaceAll("select (distinct )?[a-z0-9_]+\\.[a-z_0-9]+,.*? from", "select … from")));
                c.openedAgain().forEach(place -> detail.add("  opened " + place));
            });
            java.nio.file.Files.write(java.nio.file.Path.of("target/counts.txt"), detail);
        } catch (java.io.IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
