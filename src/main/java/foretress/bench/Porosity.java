package foretress.bench;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How the hair feels and looks, part by part: finger and thumb slide from tip to root over a few dry hairs. Common
 * practice, taught alike by colleges; nobody publishes a measured limit, so two people may differ. Floating a hair in
 * water is popular and has no evidence behind it, so it is not asked.
 */
public record Porosity(Map<Part, Feel> byPart) {
    public enum Touch { HARD, SMOOTH, RUFFLED, SPONGY, CANNOT_TELL }

    public enum Look { GLASSY, SHINES, DULL, DAMAGED, CANNOT_TELL }

    /** The trade's four classes. */
    public enum Reading {
        /** Takes slowly: very smooth, hard, dense. */
        RESISTANT,
        /** Takes in the expected time: the cuticle is slightly raised. */
        AVERAGE,
        /** Takes fast and unevenly, and fades fast: rough, dry. */
        POROUS,
        /** Spongy or gummy when wet, visibly damaged: takes and lets go, and breaks. */
        OVER_POROUS;

        /** The touch and look that are taught for it. */
        public Feel typical() {
            return switch (this) {
                case RESISTANT -> new Feel(Touch.HARD, Look.GLASSY);
                case AVERAGE -> new Feel(Touch.SMOOTH, Look.SHINES);
                case POROUS -> new Feel(Touch.RUFFLED, Look.DULL);
                case OVER_POROUS -> new Feel(Touch.SPONGY, Look.DAMAGED);
            };
        }
    }

    /** One part: of touch and look the worse counts; resistant or average needs both, and either sign of resistance is enough. */
    public record Feel(Touch touch, Look look) {
        public static final Feel UNKNOWN = new Feel(Touch.CANNOT_TELL, Look.CANNOT_TELL);

        public Optional<Reading> reading() {
            if (touch == Touch.SPONGY || look == Look.DAMAGED) {
                return Optional.of(Reading.OVER_POROUS);
            }
            if (touch == Touch.RUFFLED || look == Look.DULL) {
                return Optional.of(Reading.POROUS);
            }
            if (touch == Touch.CANNOT_TELL || look == Look.CANNOT_TELL) {
                return Optional.empty();
            }
            return Optional.of(touch == Touch.HARD || look == Look.GLASSY ? Reading.RESISTANT : Reading.AVERAGE);
        }
    }

    private static final Set<Reading> WORSE = Set.of(Reading.POROUS, Reading.OVER_POROUS);

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

    /** The worst part counts; that none is worse than average is known only when every part was read, and one resistant part makes it so. */
    public Optional<Reading> result() {
        List<Reading> read = Part.ALL.stream().flatMap(part -> at(part).stream()).toList();
        if (read.stream().anyMatch(WORSE::contains)) {
            return Optional.of(read.contains(Reading.OVER_POROUS) ? Reading.OVER_POROUS : Reading.POROUS);
        }
        if (read.size() < Part.ALL.size()) {
            return Optional.empty();
        }
        return Optional.of(read.contains(Reading.RESISTANT) ? Reading.RESISTANT : Reading.AVERAGE);
    }
}
