package foretress.ledger;

import foretress.knowledge.Sha256;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * What is kept of a stretch of the chain outside the database: on paper or in a mail. Whoever holds it can tell later whether the chain
 * up to its last entry is still the one it was made of.
 *
 * @param day on which it was made, in the salon's zone
 * @param first the first entry of the stretch
 * @param last the last one
 * @param head hash of the last entry, which holds all before it: 64 hexadecimal digits
 * @param root Merkle tree hash (RFC 9162, section 2.1) over the hashes of the entries of the stretch: 64 hexadecimal digits
 */
public record Slip(LocalDate day, long first, long last, String head, String root) {
    private static final String DIGITS = "((?:[0-9a-f]\\s{0,4}){%d})";
    private static final Pattern WRITTEN =
        Pattern.compile("day\\s+(\\d{4}-\\d{2}-\\d{2})\\s+entries\\s+(\\d{1,18})\\s+to\\s+(\\d{1,18})\\s+head\\s+"
            + DIGITS.formatted(64) + "\\s*root\\s+" + DIGITS.formatted(64) + "\\s*check\\s+" + DIGITS.formatted(8));
    private static final Pattern BEGUN = Pattern.compile("\\bentries\\s+\\d");
    private static final int CHECK = 8;
    /** Some thousands of slips: more than ten years of them. */
    public static final int LONGEST = 2_000_000;

    public Slip {
        if (first < 1 || last < first || !isHash(head) || !isHash(root)) {
            throw new IllegalArgumentException("no slip: entries %d to %d, %s, %s".formatted(first, last, head, root));
        }
    }

    static boolean isHash(String text) {
        return text.matches("[0-9a-f]{64}");
    }

    /** How many entries the stretch has. */
    public long entries() {
        return last - first + 1;
    }

    /** Word for word what is printed, mailed and typed again, in English whatever the page speaks; the check at its end finds a typing mistake. */
    public String text() {
        return "Day %s%nEntries %d to %d%nHead %s%nRoot %s%nCheck %s%n".formatted(day, first, last, inFours(head),
            inFours(root), inFours(check())).replace(System.lineSeparator(), "\n");
    }

    private static String inFours(String digits) {
        return digits.replaceAll("(.{4})(?=.)", "$1 ");
    }

    private String check() {
        return Sha256.of("%s %d %d %s %s".formatted(day, first, last, head, root)).substring(0, CHECK);
    }

    /**
     * What was typed or pasted.
     *
     * @param slips those that could be read
     * @param mistyped whether one could not, or there was none
     */
    public record Typed(List<Slip> slips, boolean mistyped) {}

    /** Reads one slip or many, whatever stands around them and however they are spaced. */
    public static Typed read(String text) {
        String lower = text.substring(0, Math.min(LONGEST, text.length())).toLowerCase(Locale.ROOT);
        List<Slip> slips = new ArrayList<>();
        WRITTEN.matcher(lower).results().map(Slip::read).forEach(slip -> slip.ifPresent(slips::add));
        return new Typed(List.copyOf(slips), slips.isEmpty() || BEGUN.matcher(lower).results().count() != slips.size());
    }

    private static Optional<Slip> read(MatchResult found) {
        try {
            var slip = new Slip(LocalDate.parse(found.group(1)), Long.parseLong(found.group(2)),
                Long.parseLong(found.group(3)), digits(found.group(4)), digits(found.group(5)));
            return Optional.of(slip).filter(one -> one.check().equals(digits(found.group(6))));
        } catch (DateTimeException | IllegalArgumentException notOne) {
            return Optional.empty();
        }
    }

    private static String digits(String spaced) {
        return spaced.replaceAll("\\s", "");
    }
}
