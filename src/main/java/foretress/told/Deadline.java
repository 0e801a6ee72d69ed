package foretress.told;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/**
 * By when a complaint must be acknowledged: within 30 days beginning when it is received. United Kingdom: Data Protection Act 2018
 * section 164A(3), put in by the Data (Use and Access) Act 2025 section 103 (read as enacted on legislation.gov.uk), for complaints about
 * the use of personal data. Whatever a complaint is about, and wherever the salon is, it is held to the same: the salon's own rule.
 */
final class Deadline {
    private static final int DAYS = 30;

    private Deadline() {}

    /** The last day; the day on which it came is the first of the thirty, which is the stricter way to count. */
    static LocalDate of(Instant received, ZoneId zone) {
        return received.atZone(zone).toLocalDate().plusDays(DAYS - 1L);
    }
}
