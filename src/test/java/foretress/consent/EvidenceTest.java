package foretress.consent;

import static foretress.consent.Consenting.aConsent;
import static foretress.consent.Consenting.evidenceFor;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("D12: evidence is complete or refused")
class EvidenceTest {
    private static final Evidence WHOLE = evidenceFor(aConsent().text());

    static Stream<String> fields() {
        return names(Evidence.class);
    }

    static Stream<Record> parts() {
        return Stream.of(WHOLE.invited(), WHOLE.birthDate(), WHOLE.healthConsent(), WHOLE.pages().get(0),
            new Evidence.Guardian("Edda Brandt", "mother", new SignatureMark.Typed("Edda Brandt")));
    }

    private static Stream<String> names(Class<?> type) {
        return Arrays.stream(type.getRecordComponents()).map(RecordComponent::getName);
    }

    @ParameterizedTest
    @MethodSource("fields")
    void withoutAnyOneFieldNothingIsSigned(String field) {
        assertThatThrownBy(() -> Evidences.with(WHOLE, field, null)).isInstanceOf(Evidence.Missing.class)
            .hasMessageContaining("is missing");
    }

    @ParameterizedTest
    @MethodSource("parts")
    void everyPartIsCompleteToo(Record part) {
        Stream<RecordComponent> objects =
            Arrays.stream(part.getClass().getRecordComponents()).filter(field -> !field.getType().isPrimitive());
        assertThat(objects.map(RecordComponent::getName)).isNotEmpty().allSatisfy(
            field -> assertThatThrownBy(() -> Evidences.with(part, field, null)).isInstanceOf(Evidence.Missing.class));
    }

    @Test
    void anEmptyFieldIsAMissingOne() {
        assertThatThrownBy(() -> Evidences.with(WHOLE, "ruleSet", " ")).isInstanceOf(Evidence.Missing.class);
        assertThatThrownBy(() -> Evidences.with(WHOLE, "pages", List.of())).isInstanceOf(Evidence.Missing.class);
        assertThatThrownBy(() -> Evidences.with(WHOLE, "agreed", List.of())).isInstanceOf(Evidence.Missing.class);
        assertThatThrownBy(() -> Evidences.with(WHOLE.birthDate(), "tries", 0)).isInstanceOf(Evidence.Missing.class);
    }

    @Test
    void nobodySignsATextBeforeItIsShownOrBeforeConsenting() {
        assertThatThrownBy(() -> Evidences.with(WHOLE, "textShownAt", WHOLE.signedAt().plusSeconds(1)))
            .isInstanceOf(Evidence.Missing.class);
        Evidence.HealthConsent late = Evidences.with(WHOLE.healthConsent(), "givenAt", WHOLE.signedAt().plusSeconds(1));
        assertThatThrownBy(() -> Evidences.with(WHOLE, "healthConsent", late)).isInstanceOf(Evidence.Missing.class);
    }

    @Test
    void whatADeviceMayHideIsOptional() {
        assertThat(Evidences.with(WHOLE, "device", java.util.Optional.empty()).device()).isEmpty();
    }

    @Test
    @DisplayName("C2: what was kept as JSON comes back the same")
    void theEvidenceSurvivesItsWriting() {
        var kept = new KeptEvidence(new HowSigned(Consenting.DOCUMENT, 1, java.util.Optional.empty(), WHOLE),
            new SignatureMark.Typed("Ottilie Brandt"), "ab".repeat(32));
        assertThat(KeptEvidence.read(kept.bytes())).isEqualTo(kept);
    }
}
