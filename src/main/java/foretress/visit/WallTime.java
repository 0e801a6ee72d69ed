package foretress.visit;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.util.List;
import java.util.Optional;

/**
 * What a time read off the salon's wall clock can mean. When the clocks go forward some times do not exist; when they
 * go back some happen twice and a person must say which.
 */
public sealed interface WallTime {
    /** The usual case: one instant. */
    record Once(Instant at) implements WallTime {}

    /** No such time: the clock jumps from {@code last} straight to {@code next}. */
    record Skipped(LocalDateTime last, LocalDateTime next) implements WallTime {}

    /** The time comes twice, first before the clock is put back and again after. */
    record Twice(Instant first, Instant second) implements WallTime {}

    static WallTime read(LocalDateTime wall, ZoneId zone) {
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(wall);
        return switch (offsets.size()) {
            case 1 -> new Once(wall.toInstant(offsets.get(0)));
            case 2 -> new Twice(wall.toInstant(offsets.get(0)), wall.toInstant(offsets.get(1)));
            default -> skipped(wall, zone);
        };
    }

    private static WallTime skipped(LocalDateTime wall, ZoneId zone) {
        ZoneOffsetTransition jump = zone.getRules().getTransition(wall);
        return new Skipped(jump.getDateTimeBefore(), jump.getDateTimeAfter());
    }

    /** The instant meant, or empty when the time does not exist or comes twice and nobody said which. */
    default Optional<Instant> at(Optional<Turn> turn) {
        if (this instanceof Once once) {
            return Optional.of(once.at());
        }
        if (this instanceof Twice twice) {
            return turn.map(t -> t == Turn.FIRST ? twice.first() : twice.second());
        }
        return Optional.empty();
    }

    /** Which of two equal wall times is meant. */
    enum Turn { FIRST, SECOND }
}
