package foretress.demo;

import foretress.plan.ClosedDays;
import foretress.plan.Week;
import foretress.salon.Hiring;
import foretress.salon.Role;
import foretress.salon.Salon;
import foretress.salon.Staff;
import foretress.web.Supported;
import jakarta.inject.Singleton;
import jakarta.transaction.Transactional;
import java.time.ZoneId;
import java.util.List;

/** Alder & Wren in Tarnbeck: an invented salon with invented people. The telephone number is kept free for fiction. */
@Singleton
class DemoSalon {
    /** The same for everybody, printed at start: the demo listens on this machine only and holds nobody's data. */
    static final String PASSWORD = "comb in the millrace";

    private final Hiring hiring;

    DemoSalon(Hiring hiring) {
        this.hiring = hiring;
    }

    static final List<String> LOGINS =
        List.of("petra (stylist)", "juno (stylist)", "sanna (front desk)", "edda (owner)");

    @Transactional
    void open() {
        salon().persist();
        hiring.hire(List.of(new Hiring.Person("Petra Lind", "petra", Role.STYLIST),
            new Hiring.Person("Juno Marsh", "juno", Role.STYLIST),
            new Hiring.Person("Sanna Reed", "sanna", Role.DESK),
            new Hiring.Person("Edda Wren", "edda", Role.OWNER)), PASSWORD);
    }

    static Staff stylist(String login) {
        return Staff.byLogin(login).orElseThrow();
    }

    private static Salon salon() {
        return new Salon(
            new Salon.Contact("Alder & Wren", "3 Millrace Lane", "Tarnbeck", "01632 960 114",
                "hello@alderandwren.example", "999"),
            new Salon.Custom(ZoneId.of("Europe/London"), "uk", Salon.PaperSize.A4, Supported.TAGS,
                Week.parse("MONDAY 10:00-17:00; TUESDAY 09:00-18:00; WEDNESDAY 09:00-18:00; "
                    + "THURSDAY 09:00-20:00; FRIDAY 09:00-18:00; SATURDAY 09:00-17:00"),
                ClosedDays.parse("")));
    }
}
