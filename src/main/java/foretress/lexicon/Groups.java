package foretress.lexicon;

import foretress.lexicon.LabelReading.Found;
import java.util.List;
import java.util.Map;

/**
 * Words that name a group: a warning ("contains persulfates") or a title ("black henna") says of the whole what the list says of
 * its parts. Where the list names a member at least as grave, the word adds nothing.
 */
final class Groups {
    private static final Map<String, List<String>> MEMBERS = Map.ofEntries(
        Map.entry("PERSULFATES", List.of(" PERSULFATE")), Map.entry("PARABENS", List.of("PARABEN")),
        Map.entry("THIOGLYCOLATE", List.of(" THIOGLYCOLATE", "THIOGLYCOLIC ACID")),
        Map.entry("PHENYLENEDIAMINES", List.of("PHENYLENEDIAMINE", "TOLUENE-2,5-DIAMINE")),
        Map.entry("TOLUENEDIAMINES", List.of("TOLUENE-2,5-DIAMINE")),
        Map.entry("AMMONIA", List.of("AMMONIUM HYDROXIDE")), Map.entry("LEAD COMPOUND", List.of("LEAD ")),
        Map.entry("SILVER COMPOUND", List.of("SILVER ")), Map.entry("BISMUTH COMPOUND", List.of("BISMUTH ")),
        Map.entry("COPPER COMPOUND", List.of("COPPER ")), Map.entry("METALLIC SALTS", List.of(" ACETATE", " NITRATE")),
        Map.entry("CASSIA OBOVATA LEAF POWDER", List.of("CASSIA AURICULATA")),
        Map.entry("CYSTEAMINE", List.of("CYSTEAMINE HCL")));

    private Groups() {}

    /** Whether this is a word for a group, which goes when a member of it comes. */
    static boolean isGroup(String substance) {
        return MEMBERS.containsKey(substance);
    }

    /** Whether one of the others is a member of it: a damaged member is not taken for its group. */
    static boolean isGroupOf(String group, List<String> others) {
        return MEMBERS.getOrDefault(group, List.of()).stream()
            .anyMatch(
                member -> others.stream().anyMatch(o -> !o.equals(group) && !isGroup(o) && (" " + o).contains(member)));
    }

    /** Whether another one found names what this word means by the way. */
    static boolean saidByAMember(Found group, List<Found> all) {
        List<String> members = MEMBERS.getOrDefault(group.substance().name(), List.of());
        return !members.isEmpty() && byItsGroup(group)
            && all.stream().anyMatch(other -> isMember(other, group, members));
    }

    /** "Cassia obovata" is the name of one substance, "neutral henna" is not. */
    private static boolean byItsGroup(Found group) {
        String written = LetterFolding.folded(group.written());
        return !written.contains("cassia");
    }

    private static boolean isMember(Found other, Found group, List<String> members) {
        String name = other.substance().name();
        return !name.equals(group.substance().name()) && !MEMBERS.containsKey(name)
            && other.substance().risk().compareTo(group.substance().risk()) >= 0
            && members.stream().anyMatch(member -> (" " + name).contains(member));
    }
}
