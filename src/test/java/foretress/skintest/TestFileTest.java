package foretress.skintest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foretress.assessment.SkinTestOutcome;
import foretress.salon.ProductLine;
import foretress.visit.Unstored;
import foretress.visit.Visit;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("What everything told and read of one skin test comes to")
class TestFileTest {
    private static final Instant PUT_ON = Instant.parse("2026-06-08T10:00:00Z");
    private static final Instant WAITED = PUT_ON.plus(Duration.ofHours(48));
    private static final UUID STAFF = UUID.randomUUID();
    private static final Visit VISIT = Unstored.visit(PUT_ON);
    private static final TestApplied APPLIED = applied(Duration.ofHours(48));

    private static TestApplied applied(Duration wait) {
        var agreed = new TestAgreement(UUID.randomUUID(), VISIT.id, UUID.randomUUID(), "4-0");
        return new TestApplied(UUID.randomUUID(), VISIT, UUID.randomUUID(), agreed, STAFF, PUT_ON, wait, place -> "x");
    }

    private static TestFile.Seen seen(Optional<UUID> staff, Instant when, List<String> masking, SkinSign... signs) {
        var look = new SkinLook(List.of(signs), Optional.empty(), "", masking, false);
        return new TestFile.Seen(new SkinTestEntry(UUID.randomUUID(), APPLIED, staff, when, place -> "x"), look);
    }

    private static TestFile.Seen read(Instant when, SkinSign... signs) {
        return seen(Optional.of(STAFF), when, List.of(), signs);
    }

    private static TestFile.Seen told(SkinSign... signs) {
        return seen(Optional.empty(), WAITED, List.of(), signs);
    }

    private static TestFile.Seen inError(TestFile.Seen slip) {
        slip.entry().wasInError(STAFF, WAITED, place -> "x");
        return slip;
    }

    private static TestMethod made(TestMethod.Medicines medicines, String... masking) {
        return new TestMethod("4-0", "b1", ProductLine.Mixing.NEAT, ProductLine.Site.INNER_ELBOW, "",
            List.of(masking), medicines);
    }

    private static TestFile file(TestFile.Seen... seen) {
        return new TestFile(APPLIED, made(TestMethod.Medicines.NONE), List.of(seen));
    }

    @Test
    void aClientsNothingIsNoResultAndAStaffMembersIs() {
        assertThat(file().result()).isEmpty();
        assertThat(file(told(SkinSign.NONE)).result()).isEmpty();
        assertThat(file(told(SkinSign.NONE)).reacted()).isFalse();
        assertThat(file(read(WAITED, SkinSign.NONE)).result()).contains(SkinTestOutcome.NEGATIVE);
        assertThat(file(read(WAITED, SkinSign.NONE)).reacted()).isFalse();
    }

    @Test
    void theHeaviestOfAllLooksStandsWhoeverLookedAndWhenever() {
        assertThat(file(told(SkinSign.ITCH), read(WAITED, SkinSign.NONE)).result())
            .contains(SkinTestOutcome.POSITIVE);
        assertThat(file(read(WAITED, SkinSign.FAINT), read(WAITED, SkinSign.NONE)).result())
            .contains(SkinTestOutcome.DOUBTFUL);
        assertThat(file(read(PUT_ON, SkinSign.REDNESS)).reacted()).as("at any hour").isTrue();
        assertThat(file(read(WAITED, SkinSign.FAINT)).reacted()).as("doubtful counts as a reaction").isTrue();
    }

    @Test
    void aSlipOfTheFingerCountsNoMore() {
        TestFile file = file(inError(read(WAITED, SkinSign.BLISTERS)), read(WAITED, SkinSign.NONE));
        assertThat(file.counting()).hasSize(1);
        assertThat(file.result()).contains(SkinTestOutcome.NEGATIVE);
        assertThat(file(inError(read(WAITED, SkinSign.NONE))).readNegative(WAITED)).isEmpty();
        assertThat(file(inError(seen(Optional.of(STAFF), WAITED, List.of("steroid-tablets"), SkinSign.NONE))).masked())
            .isFalse();
    }

    @Test
    void aNegativeReadingCountsFromTheVeryEndOfTheWaitOnAndOnlyAStaffMembers() {
        assertThat(file(read(WAITED.minusMillis(1), SkinSign.NONE)).readNegative(WAITED)).isEmpty();
        assertThat(file(read(WAITED, SkinSign.NONE)).readNegative(WAITED)).isPresent();
        assertThat(file(told(SkinSign.NONE)).readNegative(WAITED)).isEmpty();
        assertThat(file(read(WAITED, SkinSign.FAINT)).readNegative(WAITED)).isEmpty();
    }

    @Test
    void theFirstNegativeReadingAfterTheWaitIsTheOneThatCounts() {
        TestFile.Seen first = read(WAITED.plusSeconds(60), SkinSign.NONE);
        TestFile file = file(read(PUT_ON, SkinSign.NONE), first, read(WAITED.plusSeconds(120), SkinSign.NONE));
        assertThat(file.readNegative(WAITED)).contains(first);
    }

    @Test
    void itIsMaskedByWhatWasTakenWhenItWasPutOnOrReadAndNotByWhatTheClientTellsLater() {
        assertThat(file(read(WAITED, SkinSign.NONE)).masked()).isFalse();
        assertThat(file(seen(Optional.of(STAFF), WAITED, List.of("steroid-tablets"), SkinSign.NONE)).masked()).isTrue();
        assertThat(file(seen(Optional.empty(), WAITED, List.of("steroid-tablets"), SkinSign.NONE)).masked()).isFalse();
        assertThat(new TestFile(APPLIED, made(TestMethod.Medicines.TAKEN), List.of()).masked()).isTrue();
        assertThat(new TestFile(APPLIED, made(TestMethod.Medicines.UNKNOWN), List.of()).masked())
            .as("not known is not none").isTrue();
        assertThat(new TestFile(APPLIED, made(TestMethod.Medicines.NONE, "skin-steroid"), List.of()).masked()).isTrue();
    }

    @Test
    void itMayBeReadOnceTheWaitIsOverAndAWaitIsNeverNegative() {
        assertThat(APPLIED.readableFrom()).isEqualTo(WAITED);
        assertThat(applied(Duration.ZERO).readableFrom()).isEqualTo(PUT_ON);
        assertThatThrownBy(() -> applied(Duration.ofHours(-1))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatStaffSeeIsKeptAtAnyHourButNothingSeenOnlyFromTheEndOfTheWaitOn() {
        SkinLook nothing = read(WAITED, SkinSign.NONE).look();
        Instant early = WAITED.minusMillis(1);
        assertThat(LookRecording.provesNothing(APPLIED, nothing, Optional.of(STAFF), early)).isTrue();
        assertThat(LookRecording.provesNothing(APPLIED, nothing, Optional.of(STAFF), WAITED)).isFalse();
        assertThat(LookRecording.provesNothing(APPLIED, nothing, Optional.empty(), early)).as("a client tells")
            .isFalse();
        assertThat(LookRecording.provesNothing(APPLIED, read(early, SkinSign.FAINT).look(), Optional.of(STAFF), early))
            .as("a reaction is one at any hour").isFalse();
    }

    @Test
    void aConsentServesOneTest() {
        UUID consent = UUID.randomUUID();
        var agreed = new TestAgreement(consent, VISIT.id, UUID.randomUUID(), "4-0");
        assertThat(agreed.use(UUID.randomUUID())).isEqualTo(consent);
        assertThatThrownBy(() -> agreed.use(UUID.randomUUID())).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void troubleBreathingAndASwollenFaceAreForTheAmbulanceWhateverElseIsTicked() {
        assertThat(Arrays.stream(SkinSign.values()).filter(SkinSign::isUrgent)).containsExactly(SkinSign.FACE,
            SkinSign.BREATHING);
        assertThat(told(SkinSign.ITCH, SkinSign.FACE).look().urgent()).isTrue();
        assertThat(told(SkinSign.ITCH, SkinSign.REDNESS).look().urgent()).isFalse();
    }

    @ParameterizedTest
    @EnumSource(SkinSign.class)
    void everySignIsReadBackFromItsCode(SkinSign sign) {
        assertThat(SkinSign.of(sign.code())).contains(sign);
        assertThat(SkinSign.of("neither")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Onset.class)
    void everyOnsetIsReadBackFromItsCode(Onset onset) {
        assertThat(Onset.of(onset.code())).contains(onset);
        assertThat(Onset.of("never")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(TestMethod.Medicines.class)
    void whatWasSaidOfMedicinesIsReadBackFromItsCode(TestMethod.Medicines said) {
        assertThat(TestMethod.Medicines.of(said.code())).contains(said);
        assertThat(TestMethod.Medicines.of("some")).isEmpty();
    }
}
