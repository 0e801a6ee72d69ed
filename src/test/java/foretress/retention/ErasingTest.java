package foretress.retention;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.intake.Knocking;
import foretress.invitation.Codes;
import foretress.ledger.Ledger;
import foretress.rights.RecordMap;
import foretress.salon.OpenSalon;
import foretress.skintest.Chair;
import foretress.vault.Unreadable;
import foretress.vault.Vault;
import foretress.visit.Clients;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A client is erased: nothing of her is left in the whole store, nobody else lost anything, and the audit chain holds. */
@QuarkusTest
class ErasingTest {
    private static final Map<String, String> BORN = Map.of("day", "4", "month", "3", "year", "1965");
    private static final Pattern TOKEN = Pattern.compile("[0-9a-f]{64}|[0-9a-f-]{36}");
    /** What goes on by itself beside the act: the chain grows by it, and who is signed in was seen a moment ago. */
    private static final Set<String> GOES_ON = Set.of("ledger_entry", "ledger_head", "staff_session");
    private static final RecordMap MAP = RecordMap.read();

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject Chair chair;
    @Inject Codes codes;
    @Inject Clients clients;
    @Inject Erasing erasing;
    @Inject Vault vault;
    @Inject Ledger ledger;
    @Inject DataSource store;

    @BeforeEach
    void open() {
        salon.open();
    }

    private UUID client(UUID visit) {
        return QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).client.id);
    }

    /** The year that the notice names, six after the last visit. */
    private int years(UUID visit) {
        return QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).startsThere().getYear() + 6);
    }

    private void over(UUID visit) {
        make.is(visit, State.DECIDED);
        make.is(visit, State.CLOSED);
    }

    /** Answers, a signed consent, a skin test, a mended name, a complaint and a link, and a second record of the same person. */
    private UUID known(String family) {
        UUID visit = chair.planned(Map.of());
        chair.applied(visit);
        Walker sanna = salon.as("sanna").open("/desk/clients/" + client(visit)).expect(200);
        sanna.send("form[data-keep]", Map.of("family", family, "given", "Zebedea", "email",
            family.toLowerCase() + "@post.example", "phone", "01632 960 717")).expect(200);
        UUID other = make.visit(LocalDate.of(1965, 3, 4));
        knocking.come(other, Map.of()).agree().all().readBack().sign("Ottilie Brandt");
        over(other);
        QuarkusTransaction.requiringNew().run(() -> clients.merge(client(visit), client(other), salon.stylist().id));
        return visit;
    }

    private void complains(UUID visit) {
        Walker phone = new Walker().open(knocking.link(visit)).send(BORN);
        phone.send("form[action=/code]", Map.of("code", codes.readOut(visit, "server")));
        phone.open("/answers/complaint").send(Map.of("words", "My neck burns.")).expect(200);
    }

    private void answered(UUID client) {
        QuarkusTransaction.requiringNew()
            .run(() -> Visit.getEntityManager()
                .createNativeQuery("update complaint set answered_at = made_at where client_id = :who")
                .setParameter("who", client).executeUpdate());
    }

    private Map<String, Set<String>> of(List<UUID> who) throws SQLException {
        Map<String, Set<String>> rows = new TreeMap<>();
        for (Map.Entry<String, String> table : MAP.rows().entrySet()) {
            rows.put(table.getKey(), StoreDump.rows(store, table.getKey(), table.getValue(), who));
        }
        return rows;
    }

    private static String all(Map<String, Set<String>> dump) {
        return dump.values().stream().flatMap(Set::stream).collect(Collectors.joining("\n"));
    }

    /** Ids and codes that stand in these rows and nowhere else. */
    private static Set<String> marks(Map<String, Set<String>> hers, String others) {
        return TOKEN.matcher(all(hers)).results().map(found -> found.group())
            .filter(mark -> !others.contains(mark)).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Map<String, Set<String>> without(Map<String, Set<String>> dump, Map<String, Set<String>> less) {
        Map<String, Set<String>> rest = new TreeMap<>();
        dump.forEach((table, rows) -> {
            Set<String> left = new TreeSet<>(rows);
            left.removeAll(less.getOrDefault(table, Set.of()));
            rest.put(table, left);
        });
        GOES_ON.forEach(rest::remove);
        return rest;
    }

    @Test
    @DisplayName("GDPR 17: after erasing nothing of her stands in the dump of the whole store; every other row is there as before; the chain verifies")
    void nothingIsLeft() throws SQLException {
        UUID bystander = chair.planned(Map.of());
        complains(bystander);
        UUID visit = known("Quillonby");
        complains(visit);
        answered(client(visit));
        over(visit);
        UUID her = client(visit);
        List<UUID> who = QuarkusTransaction.requiringNew().call(() -> clients.everyId(her));
        assertThat(who).as("a merged record too").hasSize(2);
        Map<String, Set<String>> before = StoreDump.of(store);
        Map<String, Set<String>> hers = of(who);
        for (String filled : List.of("client", "client_key", "client_word", "client_before", "visit", "topic_answers",
            "signed_consent", "skin_test", "complaint", "assessment", "health_consent", "invitation", "door",
            "door_code", "task", "page_shown", "outbox")) {
            assertThat(hers.get(filled)).as(filled).isNotEmpty();
        }
        Map<String, Set<String>> others = without(before, hers);
        Set<String> marks = marks(hers, all(others));
        assertThat(marks).contains(her.toString(), visit.toString()).hasSizeGreaterThan(50);

        assertThat(erasing.erase(her, salon.stylist().id)).isEmpty();

        Map<String, Set<String>> after = StoreDump.of(store);
        assertThat(without(after, Map.of())).isEqualTo(others);
        assertThat(all(after)).doesNotContain(marks).doesNotContainIgnoringCase("quillonby")
            .doesNotContainIgnoringCase("zebedea").doesNotContain("960 717", "960717");
        assertThat(QuarkusTransaction.requiringNew().call(ledger::firstBroken)).isEmpty();
    }

    @Test
    @DisplayName("what was sealed for her opens no more")
    void theKeyIsGone() {
        UUID visit = make.visit(LocalDate.of(1965, 3, 4));
        UUID her = client(visit);
        String place = "topic_answers.body." + UUID.randomUUID();
        String sealed = QuarkusTransaction.requiringNew()
            .call(() -> vault.seal(her, place, "itching".getBytes(StandardCharsets.UTF_8)));
        over(visit);
        erasing.erase(her, salon.stylist().id);
        QuarkusTransaction.requiringNew()
            .run(() -> Assertions.assertThatThrownBy(() -> vault.open(her, place, sealed))
                .isInstanceOf(Unreadable.class));
    }

    @Test
    @DisplayName("her links lead nowhere, and a browser that was in is out")
    void herLinksAreDead() {
        UUID visit = make.visit(LocalDate.of(1965, 3, 4));
        String link = knocking.link(visit);
        over(visit);
        Walker phone = new Walker().open(link).send("main form", BORN);
        assertThat(phone.at()).isEqualTo("/answers/after");
        String unknown = new Walker().open("/i/" + "x".repeat(43)).text();
        erasing.erase(client(visit), salon.stylist().id);
        assertThat(new Walker().open(link).text()).isEqualTo(unknown);
        assertThat(phone.open("/answers/after").text()).doesNotContain("Alder & Wren must answer", "Your data");
        assertThat(phone.open("/answers/copy").response().contentType()).doesNotContain("pdf");
    }

    @Test
    @DisplayName("a visit ahead or a complaint without an answer comes first, also when it came while the owner read the page")
    void whatComesFirst() {
        UUID visit = chair.planned(Map.of());
        UUID her = client(visit);
        assertThat(erasing.erase(her, salon.stylist().id)).contains(Erasing.Against.VISIT_AHEAD);
        complains(visit);
        over(visit);
        assertThat(erasing.erase(her, salon.stylist().id)).contains(Erasing.Against.COMPLAINT_OPEN);
        assertThat(salon.as("edda").open("/clients/" + her + "/erase").text()).contains("Answer it first.");
        answered(her);
        assertThat(erasing.erase(her, salon.stylist().id)).isEmpty();
    }

    @Test
    @DisplayName("only the owner erases, with the password once more; it stands in the trail, and the client is found no more")
    void throughThePages() {
        UUID visit = known("Wexcombe");
        over(visit);
        String at = "/clients/" + client(visit) + "/erase";
        salon.as("petra").open(at).expect(403);
        salon.as("sanna").open(at).expect(403);
        Walker edda = salon.as("edda").open("/desk/clients/" + client(visit)).expect(200);
        edda.open(edda.only("a[href$=/erase]").attr("href")).expect(200);
        assertThat(edda.text()).contains("By the notice it is kept until").contains(String.valueOf(years(visit)));
        assertThat(edda.send(Map.of("password", "not it")).expect(422).text()).contains("That is not your password.");
        assertThat(edda.send(Map.of("password", OpenSalon.PASSWORD)).expect(200).at()).isEqualTo("/desk");
        edda.open(at).expect(404);
        assertThat(edda.open("/desk?q=Wexcombe").text()).doesNotContain("Zebedea");
        assertThat(salon.as("edda").open("/owner").send("form.trail", Map.of("act", "erased")).text())
            .contains("everything about a client erased");
    }
}
