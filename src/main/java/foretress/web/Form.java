package foretress.web;

import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A posted form as it came: a doubled field or a NUL is a forgery, not a mistake, and is refused with 400. */
public record Form(MultivaluedMap<String, String> fields) {
    /** What a page calls its form, so that the same one sent twice counts once; stored where there is room for this many letters. */
    private static final String SUBMISSION = "submission";
    private static final int LONGEST_SUBMISSION = 64;

    /** What was typed, without the blanks around it; empty when the field is not there. */
    public String one(String name) {
        return exact(name).strip();
    }

    /** What was typed, to the letter: for passwords. */
    public String exact(String name) {
        List<String> values = all(name);
        if (values.size() > 1) {
            throw new BadRequestException("a field came twice: " + name);
        }
        return values.isEmpty() ? "" : values.get(0);
    }

    public List<String> all(String name) {
        List<String> values = fields.getOrDefault(name, List.of());
        if (name.equals(SUBMISSION) && values.stream().anyMatch(value -> value.length() > LONGEST_SUBMISSION)) {
            throw new BadRequestException("a name for a form that no page of ours gave");
        }
        if (values.stream().anyMatch(value -> value.indexOf('\0') >= 0)) {
            throw new BadRequestException("a NUL in a field: " + name);
        }
        return List.copyOf(values);
    }

    /** Whether this option of the field was chosen. */
    public boolean is(String name, String value) {
        return all(name).contains(value);
    }

    /** The constant whose name was chosen; empty when it was none of them. */
    public <E extends Enum<E>> Optional<E> constant(String name, Class<E> known) {
        String chosen = one(name);
        return Arrays.stream(known.getEnumConstants()).filter(one -> one.name().equals(chosen)).findFirst();
    }

    public boolean ticked(String name) {
        return !one(name).isEmpty();
    }
}
