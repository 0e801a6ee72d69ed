package foretress.skintest;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.salon.ProductLine;
import foretress.salon.ProductVersions;
import foretress.visit.PlannedProducts.Planned;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Whether a test with one product speaks for another")
class ProductSamenessTest {
    private static final ProductLine TESTED = ProductVersions.invented("1-0\n3-0\n6-0");

    private static boolean covers(ProductLine planned, String used, String wanted) {
        return ProductSameness.covers(TESTED, used, new Planned(planned, wanted));
    }

    @ParameterizedTest
    @CsvSource({ "3-0, 3-0, true", "1-0, 6-0, true", "6-0, 1-0, false", "3-0, 6-0, true", "9-0, 9-0, true",
        "9-0, 6-0, false", "1-0, 9-0, false", "9-0, 8-0, false" })
    void aShadeAtLeastAsDarkSpeaksForALighterOneAndAnUnlistedOneForItselfAlone(String used, String wanted,
        boolean covers) {
        assertThat(covers(ProductVersions.again(TESTED, "1-0\n3-0\n6-0"), used, wanted)).isEqualTo(covers);
    }

    @Test
    void whereTheShadesAreNotListedOnlyTheVerySameCounts() {
        ProductLine unlisted = ProductVersions.again(TESTED, "");
        assertThat(covers(unlisted, "1-0", "1-0")).isTrue();
        assertThat(covers(unlisted, "1-0", "6-0")).isFalse();
    }

    static Stream<Consumer<ProductLine>> whatTouchesTheSkin() {
        return Stream.of(line -> line.lineId = UUID.randomUUID(), line -> line.kind = "direct-dye",
            line -> line.mixing = ProductLine.Mixing.NEAT, line -> line.paraGroup = ProductLine.ParaGroup.UNKNOWN,
            line -> line.otherDyes = "another");
    }

    @ParameterizedTest
    @MethodSource("whatTouchesTheSkin")
    void aLeafletChangedInWhatTouchesTheSkinIsAnotherProduct(Consumer<ProductLine> change) {
        ProductLine changed = ProductVersions.again(TESTED, "1-0\n3-0\n6-0");
        change.accept(changed);
        assertThat(covers(changed, "3-0", "3-0")).isFalse();
    }

    @Test
    void whatDoesNotTouchTheSkinChangesNothing() {
        ProductLine later = ProductVersions.again(TESTED, "1-0\n3-0\n6-0");
        later.waitHours = 72;
        later.name = "under another name";
        assertThat(covers(later, "3-0", "6-0")).isTrue();
    }
}
