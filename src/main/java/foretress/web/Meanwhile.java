package foretress.web;

import jakarta.inject.Singleton;
import jakarta.ws.rs.core.MultivaluedHashMap;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

/**
 * What somebody else kept while a form was open. It is told beside what was typed, and the form that is shown again stands on what is
 * kept now, so that the next press is taken by somebody who has seen both.
 */
@Singleton
public class Meanwhile {
    /** The field that names what a form was filled in from. */
    public static final String VERSION = "version";

    private final StaffWords words;

    Meanwhile(StaffWords words) {
        this.words = words;
    }

    /** Whether the form was filled in from something else than what is kept now. */
    public boolean isStale(Form typed, Form now) {
        return !typed.one(VERSION).equals(now.one(VERSION));
    }

    /**
     * @param now the form as it would be filled in from what is kept now
     * @param form id of the form's element, to which the summary leads
     * @param said a field's value in words
     * @return what was typed, standing on what is kept now
     */
    public Form tell(Form typed, Form now, String form, BiFunction<String, String, String> said, Mistakes mistakes) {
        mistakes.add(form, words.form_changed());
        now.fields().keySet().stream()
            .filter(field -> !field.equals(VERSION) && !values(typed, field).equals(values(now, field))).sorted()
            .forEach(field -> mistakes.add(field, kept(field, values(now, field), said)));
        var fields = new MultivaluedHashMap<String, String>(typed.fields());
        fields.putSingle(VERSION, now.one(VERSION));
        return new Form(fields);
    }

    private static List<String> values(Form form, String field) {
        return form.all(field).stream().map(value -> value.strip().replace("\r\n", "\n"))
            .filter(value -> !value.isEmpty()).toList();
    }

    private String kept(String field, List<String> values, BiFunction<String, String, String> said) {
        return values.isEmpty() ? words.form_kept_nothing()
            : words.form_kept_now(
                values.stream().map(value -> said.apply(field, value)).collect(Collectors.joining(", ")));
    }
}
