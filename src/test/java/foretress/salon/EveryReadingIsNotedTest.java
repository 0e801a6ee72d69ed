package foretress.salon;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.UUID;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The same as {@link ActsOfRoutesReferenceTest}, asked of the running program: each page of the staff about one visit or client is opened. */
@QuarkusTest
@DisplayName("B30, C9: whoever opens a page about a visit or client stands in the trail, which names nobody and nothing of health")
class EveryReadingIsNotedTest {
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject DataSource store;

    @BeforeEach
    void open() {
        salon.open();
    }

    private static List<String> pages(Map<String, Set<String>> left) {
        return Rights.table().stream().filter(right -> right.kind() == Right.Kind.STAFF && right.allows(Role.OWNER))
            .map(Right::route).filter(route -> route.startsWith("GET ") && route.contains("{id}"))
            .filter(route -> !left.get(route).isEmpty())
            .map(route -> route.replace("/bench/{kind}", "/bench/test-cutting").replace("/noted/{kind}",
                "/noted/letter"))
            .filter(route -> !route.replace("{id}", "").contains("{")).map(route -> route.substring("GET ".length()))
            .toList();
    }

    private long entries() throws SQLException {
        return Long.parseLong(texts("select cast(count(*) as varchar(20)) from ledger_entry").get(0));
    }

    private List<String> texts(String select) throws SQLException {
        List<String> all = new ArrayList<>();
        try (Connection connection = store.getConnection(); Statement s = connection.createStatement();
            ResultSet rows = s.executeQuery(select)) {
            while (rows.next()) {
                all.add(rows.getString(1));
            }
        }
        return all;
    }

    private String at(String page) {
        UUID visit = make.visit(LocalDate.of(1965, 3, 4));
        UUID client = QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).client.id);
        return page.replace("{id}", (page.contains("/clients/") ? client : visit).toString());
    }

    @Test
    void everyPageThatOpensLeavesAnEntry() throws IOException, SQLException {
        Walker edda = salon.as("edda");
        List<String> opened = new ArrayList<>();
        for (String page : pages(new ActsOfRoutes().all())) {
            String at = at(page);
            long before = entries();
            edda.open(at);
            if (edda.response().statusCode() == 200 && edda.at().equals(at)) {
                opened.add(page);
                assertThat(entries()).as(page).isGreaterThan(before);
            }
        }
        assertThat(opened).hasSizeGreaterThan(15).contains("/visits/{id}", "/clients/{id}/card", "/desk/clients/{id}");
        nothingIsNamed();
    }

    /** Every act is one of the few fixed ones; whoever did it is an id or a role; the record is a pseudonym. */
    private void nothingIsNamed() throws IOException, SQLException {
        var acts = new Properties();
        try (Reader in = Files.newBufferedReader(Path.of("src/main/resources/messages/acts_es.properties"))) {
            acts.load(in);
        }
        String ofStaff = "select distinct %s from ledger_entry where actor = 'client' or length(actor) = 36";
        assertThat(texts(ofStaff.formatted("what"))).isNotEmpty()
            .allMatch(act -> acts.containsKey(act.replaceAll("[^a-z]+", "_")));
        assertThat(texts(ofStaff.formatted("actor"))).allMatch(actor -> actor.matches("client|[0-9a-f-]{36}"));
        assertThat(texts(ofStaff.formatted("subject"))).allMatch(subject -> subject.matches("|[0-9a-f]{64}"));
    }
}
