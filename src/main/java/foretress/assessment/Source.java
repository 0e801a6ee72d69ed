package foretress.assessment;

import java.util.Optional;

/**
 * Where a rule or a limit comes from.
 *
 * @param place chapter, section or row
 * @param read how much of it was read, as written
 * @param reasons the page of docs/why that gives our reasons; for developers, on no screen
 * @param kind whom it binds: shown wherever a limit stands
 */
public record Source(String title, Optional<String> place, Optional<String> link, Optional<String> read, Status status,
    Optional<String> reasons,
    Kind kind) {
    /** A law binds everybody, a maker's instructions whoever uses the product, a trade rule its members; the others bind nobody by themselves. */
    public enum Kind {
        LAW, MAKER, TRADE_RULE, HOUSE_RULE, HEALTH_ADVICE, RESEARCH, TEACHING
    }

    public enum Status { PUBLISHED, COMMON_PRACTICE, FROM_MEMORY, OWN_DECISION }
}
