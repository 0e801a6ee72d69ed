package foretress.salon;

import java.time.LocalDate;
import java.time.ZoneId;

/**
 * Told in the transaction that changed what holds in this salon: its policy, its place, the hours it is open. Rooms above keep values
 * that were computed under what held before.
 *
 * @param today the salon's day
 */
public record RulesChanged(LocalDate today, ZoneId zone) {}
