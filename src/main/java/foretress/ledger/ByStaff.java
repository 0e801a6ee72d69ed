package foretress.ledger;

import foretress.salon.Who;
import jakarta.inject.Singleton;
import java.util.UUID;

/** What whoever is signed in reads or does. */
@Singleton
public class ByStaff {
    private final Ledger ledger;
    private final Who who;

    ByStaff(Ledger ledger, Who who) {
        this.ledger = ledger;
        this.who = who;
    }

    /**
     * They look at a page with somebody's data; again within {@link Readings#SPAN} leaves no entry of its own.
     *
     * @param what the act, in a few fixed words
     */
    public void looked(String what, UUID record) {
        ledger.read(who.staff().id.toString(), what, record.toString());
    }

    /** The same of a list of many people, none of them in particular. */
    public void looked(String what) {
        ledger.read(who.staff().id.toString(), what, "");
    }

    /** They do something about a record; each time is an entry. */
    public void did(String what, UUID record) {
        ledger.note(who.staff().id.toString(), what, record.toString());
    }
}
