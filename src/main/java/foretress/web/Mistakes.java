package foretress.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Everything to put right on a page, in the order of its fields. */
public class Mistakes {
    private final List<Mistake> list = new ArrayList<>();

    public Mistakes add(String field, String text) {
        list.add(new Mistake(field, text));
        return this;
    }

    /** Notes a mistake unless it holds. */
    public boolean expect(boolean holds, String field, String text) {
        if (!holds) {
            add(field, text);
        }
        return holds;
    }

    public boolean isEmpty() {
        return list.isEmpty();
    }

    public List<Mistake> list() {
        return List.copyOf(list);
    }

    /** The first mistake at a field, for the words beside it. */
    public Optional<String> at(String field) {
        return list.stream().filter(m -> m.field().equals(field)).map(Mistake::text).findFirst();
    }

    /** The same for a template's {@code error=} parameter, which wants nothing rather than an Optional. */
    public String on(String field) {
        return at(field).orElse(null);
    }
}
