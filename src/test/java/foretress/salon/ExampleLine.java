package foretress.salon;

/** An invented product line for tests: to be mixed, behind the ear, 45 minutes, 48 hours, three months. */
public final class ExampleLine {
    private ExampleLine() {}

    public static void fill(ProductLine line) {
        line.name = "Larkmoss Deep";
        line.kind = "oxidative-dye";
        line.waitHours = 48;
        line.validity = ProductLine.Stands.MONTHS;
        line.validityCount = 3;
        line.mixing = ProductLine.Mixing.MIXED;
        line.site = ProductLine.Site.BEHIND_EAR;
        line.leaveOnMinutes = 45;
        line.paraGroup = ProductLine.ParaGroup.YES;
        line.otherDyes = "resorcinol";
        line.shades = "2-0\n4-0\n6-0";
    }
}
