package foretress.ledger;

import java.time.Instant;

/** A page about a record, read by somebody. */
record Reading(String actor, String what, String subject, Instant at) {
    Reading {
        if (actor.isBlank() || what.isBlank()) {
            throw new IllegalArgumentException("somebody reads something");
        }
    }
}
