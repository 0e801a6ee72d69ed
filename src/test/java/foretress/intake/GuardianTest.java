package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import foretress.Walker;
import foretress.consent.Consents;
import foretress.consent.Evidence;
import foretress.consent.Read;
import foretress.consent.SignatureMark;
import foretress.consent.SignedConsent;
import foretress.salon.OpenSalon;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
@DisplayName("R31: a child does not agree or sign alone")
class GuardianTest {
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject NoticeConsent notices;
    @Inject Consents consents;
    @Inject Clock clock;

    @BeforeEach
    void open() {
        salon.open();
    }

    private LocalDate born(int years) {
        return LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC).minusYears(years).minusDays(3);
    }

    @Test
    void aChildAloneComesNoFurtherThanTheNotice() {
        UUID visit = make.visit(born(15));
        Answering child = knocking.come(visit, born(15), Map.of());
        Walker page = child.send(Map.of("agree", List.of("yes"), "act", List.of("agree"))).walker().expect(422);
        assertThat(page.page().select(".mistakes a").eachAttr("href"))
            .containsExactly("#guardian-name", "#guardian-relation");
        assertThat(notices.given(visit)).isFalse();
        child.send(Map.of("agree", List.of("yes"), "act", List.of("agree"), "guardian-name", List.of("Solveig"),
            "guardian-relation", List.of("aunt"))).walker().expect(422);
        assertThat(page.only("#guardian-name").val()).isEqualTo("Solveig");
        assertThatIllegalStateException()
            .isThrownBy(() -> notices.give(visit, "en", Optional.empty())).withMessageContaining("alone");
        assertThat(notices.given(visit)).isFalse();
    }

    @Test
    @ActivateRequestContext
    void bothMarksAreInTheEvidenceAndOnTheSignedPaper() {
        UUID visit = make.visit(born(15));
        Answering child = knocking.come(visit, born(15), Map.of()).agree().all().readBack();
        Walker page = child.walker().expect(200);
        assertThat(page.only("#guardian-name").val()).as("named at the notice").isEqualTo("Solveig Brandt");
        assertThat(page.only("input[name=guardian-relation][checked]").val()).isEqualTo("parent");
        List<String> ids = page.page().select("input[name=agree]").eachAttr("value");
        child.send(Map.of("agree", ids, "mark", List.of("typed"), "typed", List.of("Ottilie Brandt"), "guardian-mark",
            List.of("typed"), "guardian-typed", List.of("")));
        page.expect(422);
        assertThat(page.only(".mistakes a").attr("href")).isEqualTo("#guardian-mark");
        assertThat(page.only("input[name=typed]").val()).isEqualTo("Ottilie Brandt");
        assertThat(consents.latest(visit)).isEmpty();
        child.sign("Ottilie Brandt").walker().expect(200);
        SignedConsent signed = consents.latest(visit).orElseThrow();
        Evidence.Guardian guardian = consents.evidence(signed).how().evidence().guardian().orElseThrow();
        assertThat(guardian).isEqualTo(
            new Evidence.Guardian("Solveig Brandt", "Mother or father", new SignatureMark.Typed("Solveig Brandt")));
        assertThat(Read.body(consents.pdf(signed)).replaceAll("\\s+", " "))
            .contains("signed by Solveig Brandt (Mother or father) for");
    }

    @Test
    void whoeverIsOldEnoughIsAskedForNobody() {
        UUID visit = make.visit(born(16));
        Answering client = knocking.come(visit, born(16), Map.of());
        assertThat(client.walker().page().selectFirst("#guardian")).isNull();
        assertThat(client.agree().all().readBack().walker().page().selectFirst("#guardian")).isNull();
    }

    @Test
    void whoAgreedIsSealedInTheStore() {
        UUID visit = make.visit(born(14));
        knocking.come(visit, born(14), Map.of()).agree();
        List<?> kept = QuarkusTransaction.requiringNew().call(() -> Visit.getEntityManager()
            .createNativeQuery("select guardian from health_consent where visit_id = ?1").setParameter(1, visit)
            .getResultList());
        assertThat(kept).hasSize(1).allSatisfy(row -> assertThat(row.toString()).doesNotContain("Solveig"));
    }
}
