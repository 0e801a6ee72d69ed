package foretress.demo;

import foretress.salon.Hiring;
import foretress.salon.Role;
import foretress.salon.Salon;
import foretress.salon.Staff;
import jakarta.inject.Singleton;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.UUID;

/** Alder & Wren in Tarnbeck: an invented salon with invented people. The telephone number is kept free for fiction. */
@Singleton
class DemoSalon {
    /** The same for everybody, printed at start: the demo listens on this machine only and holds nobody's data. */
    static final String PASSWORD = "comb in the millrace";

    private final Hiring hiring;

    DemoSalon(Hiring hiring) {
        this.hiring = hiring;
    }

    static final List<String> LOGINS = List.of("petra (stylist)", "juno (stylist)", "sanna (front desk)", "edda (owner)");

    @Transactional
    void open() {
        salon().persist();
        hiring.hire("Petra Lind", "petra", Role.STYLIST, PASSWORD);
        hiring.hire("Juno Marsh", "juno", Role.STYLIST, PASSWORD);
        hiring.hire("Sanna Reed", "sanna", Role.DESK, PASSWORD);
        hiring.hire("Edda Wren", "edda", Role.OWNER, PASSWORD);
    }

    static Staff stylist(String login) {
        return Staff.byLogin(login).orElseThrow();
    }

    private static Salon salon() {
        var salon = new Salon();
        salon.id = UUID.randomUUID();
        salon.name = "Alder & Wren";
        salon.town = "Tarnbeck";
        salon.address = "3 Millrace Lane";
        salon.phone = "01632 960 114";
        salon.email = "hello@alderandwren.example";
        salon.zone = "Europe/London";
        salon.jurisdiction = "uk";
        salon.urgentNumber = "999";
        salon.paperSize = Salon.PaperSize.A4;
        salon.languages = "en,es";
        salon.openingHours = "MONDAY 10:00-17:00; TUESDAY 09:00-18:00; WEDNESDAY 09:00-18:00; THURSDAY 09:00-20:00; FRIDAY 09:00-18:00;"
            + " SATURDAY 09:00-17:00";
        return salon;
    }
}
