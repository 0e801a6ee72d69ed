package foretress.visit;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.salon.OpenSalon;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A client is found by the beginning of any name or of the e-mail, and by any part of the number, however it is typed. */
@QuarkusTest
class SearchTest {
    @Inject OpenSalon salon;
    @Inject Clients clients;
    private String mark;

    @BeforeEach
    void open() {
        salon.open();
        mark = "q" + UUID.randomUUID().toString().replace("-", "").substring(0, 10);
    }

    private UUID add(String given, String family, String email, String phone) {
        return clients
            .add(new Clients.Person(given, family, Optional.empty(), Optional.of(email), Optional.of(phone), "en")).id;
    }

    private List<UUID> found(String query) {
        return QuarkusTransaction.requiringNew()
            .call(() -> clients.search(query, 0).clients().stream().map(c -> c.id).toList());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "no accents and no capitals, núñez",
        "no accents and no capitals, NUNEZ",
        "the second part of a double name, moreau",
        "the double name without its mark, nunezmor",
        "both names in any order, nun hél",
        "letters as wide as in East Asian print, ｎｕｎ" })
    void namesAreFoundByTheirBeginnings(String what, String query) {
        UUID id = add("Hélène " + mark, "Núñez-Moreau", mark + "@post.example", "01632 960 111");
        assertThat(found(query + " " + mark)).as(what).containsExactly(id);
        assertThat(found("oreau " + mark)).as("not from the middle of a word").isEmpty();
    }

    @ParameterizedTest(name = "R57: {0} is found by {1}")
    @CsvSource({ "Łącka, lacka", "Łącka, łącka", "Søndergård, sondergard", "Đặng, dang", "Weiß, weiss", "Weiss, weiß",
        "WEIẞ, weiss",
        "Lærke, laerke", "Cœur, coeur", "Işık, isik", "Þórður, thordur", "Ħaż-Żebbuġ, hazzebbug" })
    void lettersThatDoNotComeApartAreFoundByThoseEverybodyHas(String name, String query) {
        UUID id = add(name + " " + mark, "Thorne", mark + "@post.example", "01632 960 111");
        assertThat(found(query + " " + mark)).containsExactly(id);
    }

    @ParameterizedTest(name = "{0} finds 01632 964 518")
    @CsvSource({ "01632964518", "01632 964518", "(01632) 964-518", "+44 1632 964518", "0044 1632 964518", "964518",
        "964 518", "4518", "1632 96" })
    void aNumberIsFoundByAnyPartHoweverItIsTyped(String query) {
        UUID id = add("Ada " + mark, "Thorne", mark + "@post.example", "01632 964 518");
        UUID abroad = add("Bo " + mark, "Thorne", "b" + mark + "@post.example", "+44 1632 964518");
        assertThat(QuarkusTransaction.requiringNew().call(() -> every(query))).contains(id, abroad);
        clients.correct(id, new Clients.Person("Ada " + mark, "Thorne", Optional.empty(), Optional.empty(),
            Optional.of("01632 960 000"), "en"), 0, "server");
        assertThat(QuarkusTransaction.requiringNew().call(() -> every("964518"))).as("not by the number of yesterday")
            .doesNotContain(id).contains(abroad);
    }

    private List<UUID> every(String query) {
        var all = new java.util.ArrayList<UUID>();
        for (int page = 0; page < 50; page++) {
            Clients.Found found = clients.search(query, page);
            found.clients().forEach(c -> all.add(c.id));
            if (!found.more()) {
                break;
            }
        }
        return all;
    }

    @Test
    void mailIsFoundByItsBeginningAndAsAWhole() {
        UUID id = add("Cy", "Lund", "cy.lund+" + mark + "@post.example", "01632 960 112");
        assertThat(found("cy.lund+" + mark + "@post.example")).containsExactly(id);
        assertThat(found(mark)).containsExactly(id);
    }

    @Test
    void whatHoldsNoLetterFindsNobodyAndSignsAreNotWildcards() {
        add("Di " + mark, "Frost", mark + "@post.example", "01632 960 113");
        assertThat(found("%")).isEmpty();
        assertThat(found("_")).isEmpty();
        assertThat(found("!' or 1=1 --")).isEmpty();
    }

    @Test
    void pagesFollowEachOtherAndNobodyComesTwice() {
        for (int i = 0; i < 60; i++) {
            add("Twin" + mark, "Number" + (char) ('a' + i % 26) + i, mark + i + "@post.example", "01632 960 114");
        }
        List<UUID> all = QuarkusTransaction.requiringNew().call(() -> every("twin" + mark));
        assertThat(all).hasSize(60).doesNotHaveDuplicates();
        assertThat(found("twin" + mark)).hasSize(25);
    }

    @DisplayName("a record merged away is found as the one it became, never by itself")
    @Test
    void aMergedRecordIsNotFoundByItself() {
        UUID one = add("Eva " + mark, "Holt", mark + "@post.example", "01632 960 115");
        UUID other = add("Eve " + mark, "Holt", "e" + mark + "@post.example", "01632 960 116");
        clients.merge(one, other, salon.stylist().id);
        assertThat(found("holt " + mark)).containsExactly(one);
        assertThat(QuarkusTransaction.requiringNew().call(() -> clients.current(other).orElseThrow().id))
            .isEqualTo(one);
        assertThat(QuarkusTransaction.requiringNew().call(() -> clients.everyId(one))).containsExactly(one, other);
    }
}
