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
        return Stream.of(WHOLE.invited(), WHOLE.birthDate(), WHOLE.healthConsent(), WHOLE.text(), WHOLE.seen(),
            WHOLE.moment(),
            WHOLE.seen().pages().get(0),
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
        assertThatThrownBy(() -> Evidences.with(WHOLE.text(), "ruleSet", " ")).isInstanceOf(Evidence.Missing.class);
        assertThatThrownBy(() -> Evidences.with(WHOLE.seen(), "pages", List.of())).isInstanceOf(Evidence.Missing.class);
        assertThatThrownBy(() -> Evidences.with(WHOLE, "agreed", List.of())).isInstanceOf(Evidence.Missing.class);
        assertThatThrownBy(() -> Evidences.with(WHOLE.birthDate(), "tries", 0)).isInstanceOf(Evidence.Missing.class);
    }

    @Test
    void nobodySignsATextBeforeItIsShownOrBeforeConsenting() {
        Evidence.Seen after = Evidences.with(WHOLE.seen(), "textShownAt", WHOLE.signedAt().plusSeconds(1));
        assertThatThrownBy(() -> Evidences.with(WHOLE, "seen", after))
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

    @Test
    @DisplayName("its JSON has one level of fields as ever, so that what was kept years ago is still read")
    void theWrittenFormStaysFlat() {
        var kept = new KeptEvidence(new HowSigned(Consenting.DOCUMENT, 1, java.util.Optional.empty(), WHOLE),
            new SignatureMark.Typed("Ottilie Brandt"), "ab".repeat(32));
        String json = new String(kept.bytes(), java.nio.charset.StandardCharsets.UTF_8);
        assertThat(json).containsSubsequence("\"healthConsent\":{", "},\"language\":\"", "\"textSha256\":",
            "\"answersCode\":", "\"ruleSet\":", "\"pages\":[", "\"readBackAt\":", "\"textShownAt\":",
            "\"agreed\":[", "\"signedAt\":", "\"zone\":", "\"zoneRules\":", "\"clock\":", "\"device\":")
            .doesNotContain("\"text\":{", "\"seen\":{", "\"moment\":{");
        String old = json.replace("\"answersCode\"", "\"answersSha256\"");
        assertThat(KeptEvidence.read(old.getBytes(java.nio.charset.StandardCharsets.UTF_8))).isEqualTo(kept);
    }
}
