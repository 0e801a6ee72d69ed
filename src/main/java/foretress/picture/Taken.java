package foretress.picture;

import java.util.Optional;

/** What became of a file that was sent: exactly one of the two is there. */
public record Taken<T>(Optional<T> kept, Optional<Refusal> refused) {
    static <T> Taken<T> kept(T kept) {
        return new Taken<>(Optional.of(kept), Optional.empty());
    }

    static <T> Taken<T> refused(Refusal why) {
        return new Taken<>(Optional.empty(), Optional.of(why));
    }
}
