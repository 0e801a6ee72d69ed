package foretress.running;

import jakarta.persistence.AttributeConverter;
import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A constant in the store as its code: the name of a class may change, what is stored may not. */
public abstract class CodeColumn<E extends Enum<E>> implements AttributeConverter<E, String> {
    private final Function<E, String> code;
    private final Map<String, E> byCode;

    protected CodeColumn(E[] all, Function<E, String> code) {
        this.code = code;
        this.byCode = Arrays.stream(all).collect(Collectors.toMap(code, one -> one));
    }

    @Override
    public String convertToDatabaseColumn(E constant) {
        return constant == null ? null : code.apply(constant);
    }

    /** @throws IllegalStateException for a code that nobody writes */
    @Override
    public E convertToEntityAttribute(String stored) {
        if (stored != null && !byCode.containsKey(stored)) {
            throw new IllegalStateException("no such code: " + stored);
        }
        return byCode.get(stored);
    }
}
