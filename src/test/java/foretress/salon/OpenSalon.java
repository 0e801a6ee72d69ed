package foretress.salon;

import foretress.Walker;
import foretress.plan.ClosedDays;
import foretress.plan.Week;
import foretress.web.SpokenLanguages;
import foretress.web.Supported;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import jakarta.ws.rs.core.NewCookie;
import java.time.Clock;
import java.time.ZoneId;

/** The salon of the tests, open: Alder & Wren with a stylist, somebody at the desk and the owner. */
@Singleton
public class OpenSalon {
    public static final String PASSWORD = "kettle orbit walnut 7";

    /** Made once: hashing is slow on purpose, and many tests hire. */
    private static final String HASHED = PasswordHash.of(PASSWORD).toString();

    private final Sessions sessions;
    private final LanguageReviews reviews;
    private final SpokenLanguages spoken;
    private final Clock clock;

    OpenSalon(Sessions sessions, LanguageReviews reviews, SpokenLanguages spoken, Clock clock) {
        this.sessions = sessions;
        this.reviews = reviews;
        this.spoken = spoken;
        this.clock = clock;
    }

    /** Sets the salon up unless another test has done so. */
    public void open() {
        QuarkusTransaction.requiringNew().run(() -> {
            if (Salon.count() == 0) {
                salon().persist();
            }
            hire("Petra Lind", "petra", Role.STYLIST);
            hire("Sanna Reed", "sanna", Role.DESK);
            hire("Edda Wren", "edda", Role.OWNER);
        });
        Supported.TAGS.stream().filter(tag -> !spoken.tags().contains(tag))
            .forEach(tag -> reviews.read(tag, "Ines Vidal", staff("edda").id));
    }

    private void hire(String name, String login, Role role) {
        if (Staff.byLogin(login).isPresent()) {
            return;
        }
        var staff = new Staff(name, login, role, clock.instant());
        staff.proves(PasswordHash.parse(HASHED));
        staff.persist();
    }

    private static Salon salon() {
        return new Salon(
            new Salon.Contact("Alder & Wren", "3 Millrace Lane", "Tarnbeck", "01632 960 114",
                "hello@alderandwren.example", "999"),
            new Salon.Custom(ZoneId.of("Europe/London"), "uk", Salon.PaperSize.A4, Supported.TAGS,
                Week.parse("TUESDAY 09:00-18:00; WEDNESDAY 09:00-18:00; "
                    + "THURSDAY 09:00-20:00; FRIDAY 09:00-18:00; SATURDAY 09:00-17:00"),
                ClosedDays.parse("")));
    }

    public Staff desk() {
        return staff("sanna");
    }

    public Staff stylist() {
        return staff("petra");
    }

    private static Staff staff(String login) {
        return QuarkusTransaction.requiringNew().call(() -> Staff.byLogin(login).orElseThrow());
    }

    /**
     * A browser in which this person is signed in (petra, sanna or edda), on their first page. The session is the one that signing in
     * begins; that the right password begins it is SignInTest's business, and checking one is slow on purpose.
     */
    public Walker as(String login) {
        NewCookie cookie = sessions.begin(staff(login));
        return new Walker().with(cookie.getName(), cookie.getValue()).open("/");
    }
}
