package foretress.lexicon;

import java.util.List;
import java.util.Optional;

/**
 * A substance that may stand on a label.
 *
 * @param name INCI name, or the name of a group
 * @param cas empty for groups, plants and everyday bases
 * @param kind its class, for example {@code metal-salt}, {@code oxidative-dye-primary}
 * @param entry the entry of Regulation (EC) 1223/2009 that applies, or empty
 * @param limit what that and other law says, in words, or empty
 * @param source where the row was looked up
 * @param confidence {@code verified} or {@code memory}
 */
public record Substance(String name, Optional<Cas> cas, List<String> otherNames, String kind, Risk risk, String entry,
    String limit, String source, String confidence) {

    /** What a substance may do, from harmless to grave. */
    public enum Risk {
        NONE("none"), IRRITANT("irritant"), METAL_TRACE("metal-trace"), OTHER_ALLERGEN("other-allergen"),
        PPD_GROUP_ALLERGEN("ppd-group-allergen"), METAL_RESIDUE("metal-residue");

        private final String code;

        Risk(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }

        public static Optional<Risk> of(String code) {
            for (Risk risk : values()) {
                if (risk.code.equals(code)) {
                    return Optional.of(risk);
                }
            }
            return Optional.empty();
        }
    }

    public Substance {
        otherNames = List.copyOf(otherNames);
        if (name.isBlank() || kind.isBlank()) {
            throw new IllegalArgumentException("a substance has a name and a class: '%s', '%s'".formatted(name, kind));
        }
    }
}
