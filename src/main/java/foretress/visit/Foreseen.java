package foretress.visit;

import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.plan.Offers;
import foretress.plan.Owed;
import foretress.plan.TestPlan;
import foretress.web.StaffLanguage;
import foretress.web.StaffWords;
import jakarta.inject.Singleton;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** Says at the desk what a booking owes at least and when it could be kept, before anybody has answered. */
@Singleton
public class Foreseen {
    /**
     * What the desk reads.
     *
     * @param shut a sentence where the salon is closed at the visit's time; blank otherwise
     * @param tests what is owed at least, a sentence each
     * @param visitFrom the earliest visit that would do, where this one does not; blank otherwise
     */
    public record Told(String shut, List<Line> tests, String visitFrom) {
        public Told {
            tests = List.copyOf(tests);
        }

        /** Nothing stands against the moment. */
        public boolean fits() {
            return shut.isEmpty() && tests.stream().noneMatch(Line::late);
        }
    }

    public record Line(String words, boolean late) {}

    private final Foresight foresight;
    private final Knowledge knowledge;
    private final StaffWords say;
    private final StaffLanguage staff;
    private final Moments moments;

    Foreseen(Foresight foresight, Knowledge knowledge, StaffWords say, StaffLanguage staff, Moments moments) {
        this.moments = moments;
        this.staff = staff;
        this.foresight = foresight;
        this.knowledge = knowledge;
        this.say = say;
    }

    /** Empty once somebody has begun to answer: from then on the plan itself says what is owed. */
    public Optional<Told> of(Visit visit) {
        boolean silent = visit.state == State.BOOKED || visit.state == State.INVITED;
        return silent ? Optional.of(told(foresight.plan(visit), moments.in(visit.zone())))
            : Optional.empty();
    }

    /** The same for a form that is not kept yet; empty while it names no moment or no service. */
    Optional<Told> of(BookingReader.Read read, Optional<Client> known, ZoneId zone) {
        if (read.slot().at().isEmpty() || read.services().isEmpty()) {
            return Optional.empty();
        }
        return of(Visit.foreseen(known.orElseGet(() -> stranger(read)), read.slot().wall().orElseThrow(), zone,
            read.slot().at().get(), read.services()));
    }

    private static Client stranger(BookingReader.Read read) {
        return Client.stranger(read.person().flatMap(Clients.Person::birthDate));
    }

    private Told told(TestPlan plan, When when) {
        boolean late = !plan.conflicts().isEmpty();
        return new Told(plan.shut() ? say.foreseen_shut() : "",
            plan.owed().stream().map(owed -> line(owed, when)).toList(),
            late ? plan.visitFrom().map(from -> say.foreseen_from(when.moment(from))).orElse("") : "");
    }

    private Line line(Owed owed, When when) {
        return owed.conflict().map(conflict -> new Line(late(owed, conflict), true))
            .orElseGet(() -> new Line(inTime(owed, when), false));
    }

    private String inTime(Owed owed, When when) {
        boolean tight = Offers.of(List.of(owed), 1).slots().stream().anyMatch(Offers.Slot::tight);
        String moment = when.moment(owed.latestStart());
        return tight ? say.foreseen_test_tight(name(owed), moment) : say.foreseen_test(name(owed), moment);
    }

    private String late(Owed owed, Owed.Conflict conflict) {
        int needs = (int) conflict.needs().toHours();
        return switch (conflict.reason()) {
            case TOO_SOON -> say.foreseen_too_soon(name(owed), needs, (int) conflict.visitIn().toHours());
            case CLOSED_UNTIL_TOO_LATE, CLOSED_AT_THE_READING -> say.foreseen_closed(name(owed), needs);
            case STANDS_TOO_SHORT -> say.foreseen_short(name(owed), needs);
            case TOO_YOUNG -> say.foreseen_too_young(name(owed));
        };
    }

    private String name(Owed owed) {
        Words words = knowledge.words(staff.tag());
        return words.test(owed.test());
    }
}
