package foretress.salon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import foretress.plan.ClosedDays;
import foretress.plan.Week;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** Nothing the salon keeps of itself can be made half. */
class RightFromBirthTest {
    private static final Instant NOW = Instant.parse("2026-06-06T09:00:00Z");
    private static final UUID EDDA = UUID.randomUUID();

    @Test
    void aSalonHasANameANumberForEmergenciesALawAndALanguage() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Salon.Contact(" ", "", "", "", "", "999"))
            .withMessageContaining("name");
        assertThatIllegalArgumentException().isThrownBy(() -> new Salon.Contact("Alder & Wren", "", "", "", "", ""))
            .withMessageContaining("emergencies");
        assertThatIllegalArgumentException().isThrownBy(() -> custom("", List.of("en"))).withMessageContaining("law");
        assertThatIllegalArgumentException().isThrownBy(() -> custom("uk", List.of()))
            .withMessageContaining("language");
    }

    private static Salon.Custom custom(String law, List<String> languages) {
        return new Salon.Custom(ZoneId.of("Europe/London"), law, Salon.PaperSize.A4, languages, Week.parse(""),
            ClosedDays.parse(""));
    }

    @Test
    void somebodyOnTheStaffHasANameAndALogin() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Staff("", "edda", Role.OWNER, NOW))
            .withMessageContaining("name");
        assertThatIllegalArgumentException().isThrownBy(() -> new Staff("Edda Wren", " ", Role.OWNER, NOW))
            .withMessageContaining("login");
    }

    @Test
    void aServiceOfTheSalonsOwnHasAStepAndAName() {
        assertThatIllegalArgumentException().isThrownBy(() -> MenuItem.own("own-1", List.of(), NOW))
            .withMessageContaining("step");
        assertThatIllegalArgumentException().isThrownBy(() -> new MenuName("own-1", "en", " "))
            .withMessageContaining("blank");
    }

    @Test
    void aLeafletCountsFromNothingUpwards() {
        assertThatIllegalArgumentException().isThrownBy(() -> leaflet("Larkmoss Deep", -1, 45))
            .withMessageContaining("nothing upwards");
        assertThatIllegalArgumentException().isThrownBy(() -> leaflet("Larkmoss Deep", 48, -1))
            .withMessageContaining("nothing upwards");
        assertThatIllegalArgumentException().isThrownBy(() -> leaflet("", 48, 45)).withMessageContaining("name");
    }

    private static ProductLine.Described leaflet(String name, int wait, int leaveOn) {
        return new ProductLine.Described(name, "oxidative-dye", wait, ProductLine.Stands.MONTHS, 3,
            ProductLine.Mixing.MIXED, ProductLine.Site.BEHIND_EAR,
            leaveOn, Optional.empty(), ProductLine.ParaGroup.YES, "", "");
    }

    @Test
    void aNextLeafletIsAVersionOfTheSameLineInUse() {
        ProductLine first = ProductLine.first(ExampleLine.leaflet(), EDDA, NOW);
        ProductLine away = first.turned(true, EDDA, NOW);
        ProductLine again = away.next(ExampleLine.leaflet(), EDDA, NOW);
        assertThat(List.of(first, away, again)).extracting(line -> line.versionNo).containsExactly(1, 2, 3);
        assertThat(List.of(first, away, again)).extracting(line -> line.retired).containsExactly(false, true, false);
        assertThat(again.lineId).isEqualTo(first.lineId);
        assertThat(again.id).isNotEqualTo(first.id);
    }
}
