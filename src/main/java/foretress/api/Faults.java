package foretress.api;

import java.util.ArrayList;
import java.util.List;

/** Everything that is wrong with one body, each with the place where it stands, in the order of the body. */
final class Faults {
    /** A body that is wrong all over is answered with its first faults. */
    static final int MOST = 50;

    /**
     * @param pointer a JSON Pointer (RFC 6901) to the value that is wrong; empty for the whole body
     * @param detail what belongs there
     */
    record Fault(@Json(says = "A JSON Pointer (RFC 6901) to the value that is wrong.") String pointer,
        String detail) {}

    private final List<Fault> list = new ArrayList<>();

    void add(String pointer, String detail, Object... parts) {
        if (list.size() < MOST) {
            list.add(new Fault(pointer, parts.length == 0 ? detail : detail.formatted(parts)));
        }
    }

    void expect(boolean holds, String pointer, String detail, Object... parts) {
        if (!holds) {
            add(pointer, detail, parts);
        }
    }

    boolean isEmpty() {
        return list.isEmpty();
    }

    List<Fault> list() {
        return List.copyOf(list);
    }

    /** @throws Refused if there is any */
    void orThrow() {
        if (!isEmpty()) {
            throw new Refused(422,
                "The body is JSON, but not what this operation takes. Each entry of 'errors' says where and what belongs there.",
                list());
        }
    }

    /** One step further down, its slashes and tildes written as RFC 6901 asks. */
    static String below(String pointer, String name) {
        return pointer + "/" + name.replace("~", "~0").replace("/", "~1");
    }
}
