package foretress;

import foretress.assessment.CountingFinder;
import foretress.vault.CountingVault;
import io.quarkus.scheduler.Scheduler;
import io.restassured.RestAssured;
import io.restassured.filter.Filter;
import io.restassured.filter.FilterContext;
import io.restassured.response.Response;
import io.restassured.specification.FilterableRequestSpecification;
import io.restassured.specification.FilterableResponseSpecification;
import jakarta.enterprise.context.Initialized;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import jakarta.transaction.TransactionScoped;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import javax.sql.DataSource;

/**
 * Counts what each HTTP request costs, while {@link #begin begun}: what the database itself says it executed, what the vault opened and
 * what was assessed. Nothing of it is in the program. One request at a time, and nothing by the clock meanwhile.
 */
@Singleton
public class Counts implements Filter {
    private static final Pattern WRITES = Pattern.compile("(?i)(insert|update|delete|merge)\\b.*", Pattern.DOTALL);
    private static final Pattern ENDS = Pattern.compile("(?i)(commit|rollback)\\b.*", Pattern.DOTALL);
    /** What the whole program holds, asked once in some seconds by whoever comes first: part of no page. */
    private static final Pattern HELD =
        Pattern.compile(
            "(?i)select .* from (salon|stricter_figure|menu_item|menu_name|look_up|staff) \\w+( where \\w+\\.withdrawn_at is null)?( order by .*"
                + "| fetch first .*)?",
            Pattern.DOTALL);
    /** What the counting asks, and the pool of a connection that is new. */
    private static final Pattern OURS =
        Pattern.compile("(?i)(set query_statistics|select .*query_statistics|call database).*",
            Pattern.DOTALL);

    private final DataSource store;
    private final CountingVault vault;
    private final CountingFinder finder;
    private final Scheduler clockwork;
    private final List<Cost> costs = new ArrayList<>();
    private final AtomicInteger begun = new AtomicInteger();

    Counts(DataSource store, CountingVault vault, CountingFinder finder, Scheduler clockwork) {
        this.store = store;
        this.vault = vault;
        this.finder = finder;
        this.clockwork = clockwork;
    }

    /**
     * One request.
     *
     * @param statements by their text, how often each was executed
     * @param transactions begun
     * @param opened by place, how often each sealed text was opened
     * @param assessed how often facts were found
     * @param again how often of these for a client about whom they had been found in this request
     */
    public record Cost(String what, Map<String, Integer> statements, int transactions, Map<String, Integer> opened,
        int assessed, int again) {
        public int writes() {
            return statements.entrySet().stream().filter(s -> WRITES.matcher(s.getKey()).matches())
                .mapToInt(Map.Entry::getValue).sum();
        }

        public int all() {
            return statements.values().stream().mapToInt(Integer::intValue).sum();
        }

        public int reads() {
            return all() - writes();
        }

        public int decryptions() {
            return opened.values().stream().mapToInt(Integer::intValue).sum();
        }

        /** What was opened more than once. */
        public List<String> openedAgain() {
            return opened.entrySet().stream().filter(place -> place.getValue() > 1)
                .map(place -> place.getValue() + " × " + place.getKey()).toList();
        }
    }

    void transaction(@Observes @Initialized(TransactionScoped.class) Object begins) {
        begun.incrementAndGet();
    }

    public void begin() {
        clockwork.pause();
        costs.clear();
        RestAssured.filters(this);
    }

    public void end() {
        RestAssured.replaceFiltersWith(List.of());
        clockwork.resume();
    }

    /** Every request since it began, or since this was asked last. */
    public List<Cost> taken() {
        List<Cost> taken = List.copyOf(costs);
        costs.clear();
        return taken;
    }

    @Override
    public Response filter(FilterableRequestSpecification request, FilterableResponseSpecification response,
        FilterContext context) {
        vault.forget();
        finder.forget();
        begun.set(0);
        database("set query_statistics false");
        database("set query_statistics true");
        Response answer = context.next(request, response);
        Map<String, Integer> executed = executed();
        executed.keySet().removeIf(sql -> ENDS.matcher(sql).matches() || OURS.matcher(sql).matches()
            || HELD.matcher(sql).matches());
        costs.add(new Cost(request.getMethod() + " " + request.getURI().replaceAll("^https?://[^/]+", ""), executed,
            begun.get(), vault.opened(), finder.found(), finder.again()));
        return answer;
    }

    private void database(String sql) {
        try (Connection connection = store.getConnection(); Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private Map<String, Integer> executed() {
        Map<String, Integer> executed = new LinkedHashMap<>();
        try (Connection connection = store.getConnection(); Statement statement = connection.createStatement()) {
            statement.execute("set query_statistics_max_entries 1000");
            try (ResultSet rows = statement.executeQuery(
                "select sql_statement, execution_count from information_schema.query_statistics")) {
                while (rows.next()) {
                    executed.put(rows.getString(1).strip(), rows.getInt(2));
                }
            }
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
        return executed;
    }
}
