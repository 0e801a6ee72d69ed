package foretress.bench;

import java.util.List;

/**
 * What stands under every test: photos, who made it, and the way to strike it out.
 *
 * @param struck why, by whom and when it was struck out; empty when it stands
 */
public record BenchTail(String href, String made, String struck, BenchStrike strike, boolean mayPhoto,
    List<Photo> photos) {
    public record Photo(String href, String when) {}
}
