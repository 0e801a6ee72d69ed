package foretress.demo;

import foretress.salon.ProductLine.Described;
import foretress.salon.ProductLine.Mixing;
import foretress.salon.ProductLine.ParaGroup;
import foretress.salon.ProductLine.Site;
import foretress.salon.ProductLine.Stands;
import foretress.salon.ProductLines;
import foretress.salon.Staff;
import foretress.visit.PlannedProducts;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Product lines that nobody makes. Their leaflets differ, so that it can be seen how the stricter holds. */
@Singleton
class DemoProducts {
    private static final List<String> COLOURED =
        List.of("colour-whole", "colour-roots", "colour-demi", "highlights", "highlights-regrowth");

    private final ProductLines lines;
    private final PlannedProducts planned;

    DemoProducts(ProductLines lines, PlannedProducts planned) {
        this.lines = lines;
        this.planned = planned;
    }

    void open(Staff owner) {
        lines.add(owner.id,
            leaflet("Larkmoss Deep (invented)", "oxidative-dye", 48, Stands.MONTHS, 3, Mixing.MIXED, 45, ParaGroup.YES,
                "resorcinol, m-aminophenol", "2-0\n4-0\n5-3\n6-0\n8-1"));
        lines.add(owner.id,
            leaflet("Fenlight Demi (invented)", "oxidative-dye", 72, Stands.EACH_APPLICATION, 0, Mixing.MIXED, 30,
                ParaGroup.YES,
                "", "4N\n6N\n7A\n9P"));
        lines.add(owner.id,
            leaflet("Quillwort Bright (invented)", "direct-dye", 24, Stands.UNSAID, 0, Mixing.NEAT, 0,
                ParaGroup.UNKNOWN,
                "basic dyes", "Damson\nKingfisher\nCoral"));
    }

    private static Described leaflet(String name, String kind, int wait, Stands stands, int count, Mixing mixing,
        int leaveOn, ParaGroup para,
        String dyes, String shades) {
        return new Described(name, kind, wait, stands, count, mixing, Site.BEHIND_EAR, leaveOn, Optional.empty(), para,
            dyes, shades);
    }

    /** The stylist has named the product when booking. */
    void plan(UUID visit, Invented client) {
        if (COLOURED.contains(client.service())) {
            planned.name(visit,
                lines.inUse().stream().filter(line -> line.name.startsWith("Larkmoss")).findFirst()
                    .orElseThrow().lineId,
                "4-0",
                DemoSalon.stylist(client.stylist()).id);
        }
    }
}
