package foretress.bench;

/**
 * A test that comes first, and the latest moment it can begin.
 *
 * @param href where it is begun, gone on with or read; empty when that is not for now
 * @param first it is the next act of all
 */
public record OwedLine(String name, String how, String latest, boolean late, String href, String act, boolean first) {
    OwedLine next() {
        return new OwedLine(name, how, latest, late, href, act, true);
    }
}
