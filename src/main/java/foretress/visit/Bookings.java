package foretress.visit;

import foretress.ledger.Ledger;
import foretress.salon.Salon;
import foretress.salon.Who;
import jakarta.enterprise.context.RequestScoped;
import jakarta.transaction.Transactional;
import java.util.UUID;

/** Puts a form without mistakes on file: the client if new, and the visit, in one go. */
@RequestScoped
public class Bookings {
    private final Visits visits;
    private final Clients clients;
    private final Ledger ledger;
    private final Who who;

    Bookings(Visits visits, Clients clients, Ledger ledger, Who who) {
        this.visits = visits;
        this.clients = clients;
        this.ledger = ledger;
        this.who = who;
    }

    /** The id of the visit; the same form twice gives the same visit and no second client. */
    @Transactional
    public UUID keep(BookingForm form, BookingReader.Read read) {
        return visits.bySubmission(form.submission()).orElseGet(() -> create(form, read)).id;
    }

    /** A form sent twice at the same moment ends here for the slower one: no visit, and no second client either. */
    private Visit create(BookingForm form, BookingReader.Read read) {
        UUID client =
            read.person().map(person -> clients.add(person).id).orElseGet(() -> UUID.fromString(form.clientId()));
        Visit visit = visits.create(new Booking(form.submission(), client, read.slot().wall().orElseThrow(),
            Salon.the().zoneId(), read.slot().at().orElseThrow(), read.stylist(), read.services()));
        ledger.note(who.staff().id.toString(), "visit booked", visit.id.toString());
        return visit;
    }
}
