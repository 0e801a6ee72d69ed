package foretress.told;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a client may send photos of, in the order it is asked for. */
public enum PhotoOf {
    FRONT(1), SIDE(1), BACK(1), BOX(3), INGREDIENTS(3);

    private final int most;

    PhotoOf(int most) {
        this.most = most;
    }

    static Optional<PhotoOf> of(String code) {
        return Arrays.stream(values()).filter(one -> one.code().equals(code)).findFirst();
    }

    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** How many of it are kept at once. Where it is one, the next takes its place. */
    int most() {
        return most;
    }
}
