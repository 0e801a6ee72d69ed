package foretress.told;

import foretress.questionnaire.Code;
import java.util.Optional;

/** What a client may send photos of, in the order it is asked for. */
public enum PhotoOf {
    FRONT(1), SIDE(1), BACK(1), BOX(3), INGREDIENTS(3);

    private final int most;

    PhotoOf(int most) {
        this.most = most;
    }

    static Optional<PhotoOf> of(String code) {
        return Code.in(PhotoOf.class, code);
    }

    public String code() {
        return Code.of(this);
    }

    /** How many of it are kept at once. Where it is one, the next takes its place. */
    int most() {
        return most;
    }
}
