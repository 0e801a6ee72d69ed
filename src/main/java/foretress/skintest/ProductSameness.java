package foretress.skintest;

import foretress.salon.ProductLine;
import foretress.visit.PlannedProducts;
import java.util.List;

/** Whether a test made with one product speaks for another. In doubt it does not. */
final class ProductSameness {
    private ProductSameness() {}

    /**
     * The same line, with nothing in its leaflet changed that touches the skin, and a shade at least as dark as the planned one:
     * the darkest carries most dye. Where the line's shades are not listed, or not these two, only the very same shade counts.
     */
    static boolean covers(ProductLine used, String usedShade, PlannedProducts.Planned planned) {
        ProductLine line = planned.line();
        return used.lineId.equals(line.lineId) && used.kind.equals(line.kind) && used.mixing == line.mixing
            && used.paraGroup == line.paraGroup
            && used.otherDyes.equals(line.otherDyes) && darkEnough(usedShade, planned.shade(), line.shades());
    }

    private static boolean darkEnough(String used, String wanted, List<String> darkestFirst) {
        int at = darkestFirst.indexOf(used);
        int needed = darkestFirst.indexOf(wanted);
        return used.equals(wanted) || at >= 0 && needed >= 0 && at <= needed;
    }
}
