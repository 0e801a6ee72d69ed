package foretress.salon;

import java.util.Optional;

/** An invented product line for tests: to be mixed, behind the ear, 45 minutes, 48 hours, three months. */
public final class ExampleLine {
    private ExampleLine() {}

    public static ProductLine.Described leaflet() {
        return leaflet("Larkmoss Deep", "oxidative-dye", ProductLine.ParaGroup.YES, "resorcinol");
    }

    /** The same for another dye. */
    public static ProductLine.Described leaflet(String name, String kind, ProductLine.ParaGroup paraGroup,
        String otherDyes) {
        return new ProductLine.Described(name, kind, 48, ProductLine.Stands.MONTHS, 3, ProductLine.Mixing.MIXED,
            ProductLine.Site.BEHIND_EAR, 45,
            Optional.empty(), paraGroup, otherDyes, "2-0\n4-0\n6-0");
    }
}
