package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.assessment.Weight;
import foretress.knowledge.Knowledge;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.salon.OpenSalon;
import foretress.visit.Task;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
@DisplayName("R61: whoever has the database without the keys cannot tell what a client answered")
class DumpTest {
    /** As long as this is a column value, or longer, it is a sealed text and only its length is looked at. */
    private static final int SEALED = 300;
    private static final int CLIENTS = 4;
    /** Both open two pages more: how many pages were opened lies in clear, and docs/why says so. */
    private static final Map<String, List<String>> QUIET = Map.of("treatments.what", List.of("salon-colour")),
        WEIGHTY = Map.of("darkening-lotion", List.of("some-time-ago"), "asthma", List.of("yes"));

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject Intake intake;
    @Inject Knowledge knowledge;
    @Inject DataSource store;

    @BeforeEach
    void open() {
        salon.open();
    }

    /** Everything one visit left in the database: a column's values, and how many rows there are, by table and column. */
    private final class Left {
        private final UUID visit;
        private final Map<String, List<String>> values = new TreeMap<>();

        Left(Map<String, List<String>> told) {
            visit = make.visit(LocalDate.of(1965, 3, 4));
            knocking.come(visit, told).agree().all().readBack().sign("Ottilie Brandt");
            try {
                read();
            } catch (SQLException e) {
                throw new IllegalStateException(e);
            }
        }

        /** The earliest moment that is offered, so that neither two weeks' wait nor two days' makes a difference of its own. */
        private void bookAShortVisit() {
            Walker sanna = salon.as("sanna").open("/desk/visits/" + visit + "/test-visit").expect(200);
            sanna.send("#book", Map.of("start", sanna.page().select("#book [name=start]").last().val())).expect(200);
            values.clear();
            try {
                read();
            } catch (SQLException e) {
                throw new IllegalStateException(e);
            }
        }

        private void read() throws SQLException {
            try (Connection connection = store.getConnection(); Statement statement = connection.createStatement()) {
                var tables = new ArrayList<String[]>();
                ResultSet found = statement
                    .executeQuery("select lower(table_name), lower(column_name) from information_schema.columns"
                        + " where lower(table_schema) = 'public' and lower(column_name) in ('visit_id', 'client_id') order by 1, 2 desc");
                while (found.next()) {
                    tables.add(new String[] { found.getString(1), found.getString(2) });
                }
                var done = new TreeSet<String>();
                for (String[] table : tables) {
                    if (done.add(table[0])) {
                        rows(table[0], table[1]);
                    }
                }
                rows("visit", "id");
            }
        }

        private void rows(String table, String by) throws SQLException {
            String whose = by.equals("client_id") ? "(select client_id from visit where id = ?)" : "?";
            try (Connection connection = store.getConnection();
                PreparedStatement query =
                    connection.prepareStatement("select * from %s where %s = %s".formatted(table, by, whose))) {
                query.setObject(1, visit);
                ResultSet found = query.executeQuery();
                int count = 0;
                for (; found.next(); count++) {
                    for (int i = 1; i <= found.getMetaData().getColumnCount(); i++) {
                        add(table + "." + found.getMetaData().getColumnName(i).toLowerCase(), found.getString(i));
                    }
                }
                values.put("rows of " + table, List.of("" + count));
            }
        }

        private void add(String column, String value) {
            String seen =
                value == null ? "nothing" : value.length() >= SEALED ? "sealed, " + value.length() + " letters" : value;
            values.computeIfAbsent(column, any -> new ArrayList<>()).add(seen);
        }

        Stream<String> all() {
            return values.values().stream().flatMap(List::stream);
        }

        /** What can be compared between clients: a column with all its values, in no order. */
        Set<String> traits() {
            return values.entrySet().stream()
                .map(column -> column.getKey() + " = " + column.getValue().stream().sorted().toList())
                .collect(Collectors.toSet());
        }
    }

    private List<Left> clients(Map<String, List<String>> told) {
        return Stream.generate(() -> new Left(told)).limit(CLIENTS).toList();
    }

    @Test
    @DisplayName("R61: no open value, no number of rows and no length separates clients who answered one thing from those who answered another")
    void nothingOpenSeparatesTwoWaysToAnswer() {
        List<Left> quiet = clients(QUIET), weighty = clients(WEIGHTY);
        assertThat(only(quiet, weighty)).isEmpty();
        assertThat(only(weighty, quiet)).isEmpty();
    }

    /** Traits that all of these share and none of those has. */
    private static Set<String> only(List<Left> these, List<Left> those) {
        TreeSet<String> shared = new TreeSet<>(these.get(0).traits());
        these.forEach(left -> shared.retainAll(left.traits()));
        those.forEach(left -> shared.removeAll(left.traits()));
        return shared;
    }

    @Test
    @DisplayName("R61: a booked short visit does not tell whether hair is cut at it, which would name a suspicion of metal")
    void aShortVisitNamesNoTest() {
        List<Left> quiet = withAShortVisit(QUIET), weighty = withAShortVisit(WEIGHTY);
        assertThat(quiet.get(0).values.get("rows of test_visit")).isEqualTo(List.of("1"));
        assertThat(only(quiet, weighty)).isEmpty();
        assertThat(only(weighty, quiet)).isEmpty();
    }

    private List<Left> withAShortVisit(Map<String, List<String>> told) {
        List<Left> left = clients(told);
        left.forEach(Left::bookAShortVisit);
        return left;
    }

    @Test
    @DisplayName("R61: the same answers leave nothing equal in two clients' rows that could be tried out")
    void equalAnswersHaveUnequalCodes() {
        Left one = new Left(WEIGHTY), other = new Left(WEIGHTY);
        Set<String> hex = one.all().filter(DumpTest::isCode).collect(Collectors.toSet());
        hex.retainAll(other.all().filter(DumpTest::isCode).collect(Collectors.toSet()));
        // What is left is the rules and the notice, which are everybody's.
        assertThat(hex)
            .isSubsetOf(Set.of(knowledge.ruleSet().hash(), one.values.get("health_consent.notice_sha256").get(0)));
    }

    @Test
    @DisplayName("R61: trying answers out, topic by topic as they were kept, names none of them")
    void theDictionaryFindsNothing() {
        var left = new Left(WEIGHTY);
        var tried = new HashMap<String, String>();
        Answers said = QuarkusTransaction.requiringNew().call(() -> intake.said(Visit.findById(left.visit)));
        Map<String, Answer> soFar = new LinkedHashMap<>();
        said.byQuestion().forEach((question, answer) -> {
            soFar.put(question, answer);
            tried.put(Intake.hash(new Answers(soFar)), "answers up to " + question);
            tried.put(Intake.hash(new Answers(Map.of(question, answer))), "the answer to " + question);
        });
        knowledge.questionnaire().topics().forEach(topic -> tried.put(sha256(topic.id()), "topic " + topic.id()));
        assertThat(tried).containsKey(Intake.hash(said));
        assertThat(left.all().filter(tried::containsKey).map(tried::get)).isEmpty();
    }

    @Test
    @DisplayName("R61: no topic, question, page, standing, owed test or promise stands in clear")
    void nothingIsNamed() {
        var left = new Left(
            Map.of("colour-reaction", List.of("yes"), "colour-reaction-what", List.of("swelling", "breathing")));
        var names = new TreeSet<String>(Weight.BY_CODE.keySet());
        knowledge.questionnaire().topics().forEach(topic -> names.add(topic.id()));
        knowledge.questionnaire().questions().forEach(question -> names.add(question.id()));
        Stream.of(Task.Kind.values()).forEach(kind -> names.add(kind.name()));
        names.addAll(List.of("care", "read-back", "sign", "skin-test", "incompatibility-test", "test-cutting"));
        assertThat(left.all().flatMap(value -> Stream.of(value.split(" "))).filter(names::contains)).isEmpty();
        assertThat(left.values.get("rows of task")).isEqualTo(List.of("1"));
    }

    @Test
    @DisplayName("R61: what was assessed page by page on the way leaves no trace")
    void assessmentsOnTheWayGiveWay() {
        var left = new Left(WEIGHTY);
        assertThat(left.values.get("rows of assessment")).isEqualTo(List.of("1"));
        assertThat(Integer.parseInt(left.values.get("rows of topic_answers").get(0))).isGreaterThan(3);
    }

    private static boolean isCode(String value) {
        return value.matches("[0-9a-f]{64}");
    }

    private static String sha256(String text) {
        try {
            return HexFormat.of()
                .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
