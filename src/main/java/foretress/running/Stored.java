package foretress.running;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Id;
import jakarta.persistence.MappedSuperclass;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** A row of the store, right from birth: it is made with all that it cannot be without, or it is not made. */
@MappedSuperclass
public abstract class Stored extends PanacheEntityBase {
    @Id public UUID id;

    /** For the mapping alone, which fills it. */
    protected Stored() {}

    /** A new one, under an id of its own. @param needed as {@link #needed} */
    protected Stored(Object... needed) {
        needed(needed);
        this.id = UUID.randomUUID();
    }

    public UUID id() {
        return id;
    }

    /** Where what is sealed in this column belongs; moved anywhere else it cannot be opened. */
    public String place(String column) {
        return getClass().getAnnotation(Table.class).name() + "." + column + "." + id;
    }

    protected String sealed(String column, UnaryOperator<String> seal) {
        String sealed = seal.apply(place(column));
        needed(sealed);
        return sealed;
    }

    /** @throws IllegalArgumentException naming it when it is missing, or a text and blank */
    public static <T> T named(String what, T value) {
        if (isMissing(value)) {
            throw new IllegalArgumentException("missing or blank: " + what);
        }
        return value;
    }

    private static boolean isMissing(Object value) {
        return value == null || value instanceof String text && text.isBlank();
    }

    /** @throws IllegalArgumentException when one of them is missing, or a text is blank */
    public static void needed(Object... all) {
        for (int i = 0; i < all.length; i++) {
            if (isMissing(all[i])) {
                throw new IllegalArgumentException(
                    "missing: number %d of what a row cannot be without".formatted(i + 1));
            }
        }
    }

    /** @throws IllegalArgumentException below 0 */
    public static long counted(long number) {
        if (number < 0) {
            throw new IllegalArgumentException("counted from 0, not from " + number);
        }
        return number;
    }

    /** The end, or the beginning where that is later: what would end before it began ends at once. */
    protected static Instant ending(Instant begun, Instant end) {
        return end.isBefore(begun) ? begun : end;
    }
}
