package foretress.salon;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** Versions of an invented product line that no store keeps. */
public final class ProductVersions {
    private static final Instant NOW = Instant.parse("2026-06-06T09:00:00Z");
    private static final UUID OWNER = UUID.randomUUID();

    private ProductVersions() {}

    /** @param shades one a line, the darkest first */
    public static ProductLine invented(String shades) {
        return ProductLine.first(described(shades), OWNER, NOW);
    }

    /** The next version of that line, with nothing changed but perhaps its shades. */
    public static ProductLine again(ProductLine line, String shades) {
        return line.next(described(shades), OWNER, NOW);
    }

    private static ProductLine.Described described(String shades) {
        return new ProductLine.Described("Invented cream colour", "oxidative-dye", 48, ProductLine.Stands.UNSAID, 0,
            ProductLine.Mixing.MIXED, ProductLine.Site.INNER_ELBOW, 0, Optional.empty(), ProductLine.ParaGroup.YES, "",
            shades);
    }
}
