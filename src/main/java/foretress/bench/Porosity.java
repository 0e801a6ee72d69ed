package foretress.bench;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How rough the hair feels and looks, part by part: finger and thumb slide from tip to root over a few dry hairs. Common
 * practice. Floating a hair in water is popular and has no evidence behind it, so it is not asked.
 */
public record Porosity(Map<Part, Feel> byPart) {
    public enum Touch { SMOOTH, RUFFLED, CANNOT_TELL }

    public enum Look { SHINES, DULL, CANNOT_TELL }

    public enum Reading { EVEN, POROUS }

    /** One part: rough to touch or dull to look at is porous; only smooth and shining is even; otherwise it says nothing. */
    public record Feel(Touch touch, Look look) {
        public Optional<Reading> reading() {
            if (touch == Touch.RUFFLED || look == Look.DULL) {
                return Optional.of(Reading.POROUS);
            }
            return touch == Touch.SMOOTH && look == Look.SHINES ? Optional.of(Reading.EVEN) : Optional.empty();
        }
    }

    public Porosity {
        byPart = byPart.isEmpty() ? Map.of() : Map.copyOf(new EnumMap<>(byPart));
    }

    public Optional<Reading> at(Part part) {
        return Optional.ofNullable(byPart.get(part)).flatMap(Feel::reading);
    }

    /** Parts of which touch and look say nothing yet. */
    public List<Part> unread() {
        return Part.ALL.stream().filter(part -> at(part).isEmpty()).toList();
    }

    /** One porous part makes the hair porous; it is even only when every part is. */
    public Optional<Reading> result() {
        if (Part.ALL.stream().anyMatch(part -> at(part).equals(Optional.of(Reading.POROUS)))) {
            return Optional.of(Reading.POROUS);
        }
        return unread().isEmpty() ? Optional.of(Reading.EVEN) : Optional.empty();
    }
}
