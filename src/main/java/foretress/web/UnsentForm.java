package foretress.web;

import jakarta.ws.rs.container.ContainerRequestContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jboss.resteasy.reactive.server.core.CurrentRequestManager;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import org.jboss.resteasy.reactive.server.core.multipart.FormData;
import org.jboss.resteasy.reactive.server.multipart.FormValue;

/**
 * What was typed into a form that could not be taken yet. It travels hidden in the page that answers, and goes to the same address with
 * one more press. Passwords and files do not travel: they are asked for again.
 *
 * @param address a path of ours, with its query
 * @param parts whether it was sent in several parts, as forms with files are
 * @param secrets names of fields that were passwords
 * @param files names of fields that were files
 */
public record UnsentForm(String address, boolean parts, List<Field> fields, List<String> secrets, List<String> files) {
    public record Field(String name, String value) {}

    /** The names of all password fields; a test looks for others in the templates. */
    static final Set<String> SECRETS = Set.of("password", "password-again", "current");
    /** More characters than this are not carried: no form of ours is that long. */
    static final int LONGEST = 1 << 20;
    private static final String ADDRESS = "kept-address";
    private static final String PARTS = "kept-parts";
    private static final String SECRET = "kept-secret";
    private static final String FILE = "kept-file";
    private static final String TYPED = "kept:";

    /** The form of this request, which has been read; nothing when it is too long, or was not sent to an address of ours. */
    public static Optional<UnsentForm> of(ContainerRequestContext request) {
        boolean parts = String.valueOf(request.getMediaType()).startsWith("multipart/");
        return LocalPath.of(request.getUriInfo().getRequestUri()).map(to -> read(to, parts, data()))
            .filter(UnsentForm::fits);
    }

    /** The token this request's form came with; blank when it had none. */
    public static String token() {
        return data().map(form -> form.getFirst(FormTokens.FIELD)).filter(value -> !value.isFileItem())
            .map(value -> String.valueOf(value.getValue())).orElse("");
    }

    private static Optional<FormData> data() {
        return Optional.ofNullable(CurrentRequestManager.get()).map(ResteasyReactiveRequestContext::getFormData);
    }

    private static UnsentForm read(String address, boolean parts, Optional<FormData> data) {
        var kept = new UnsentForm(address, parts, new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        data.ifPresent(form -> form.forEach(name -> form.get(name).forEach(value -> kept.take(name, value))));
        return kept;
    }

    private void take(String name, FormValue value) {
        if (name == null || name.equals(FormTokens.FIELD)) {
            return;
        }
        if (value.isFileItem()) {
            files.add(name);
        } else if (SECRETS.contains(name)) {
            secrets.add(name);
        } else {
            fields.add(new Field(name, value.getValue()));
        }
    }

    private boolean fits() {
        return fields.stream().mapToLong(field -> field.name().length() + field.value().length()).sum() <= LONGEST;
    }

    /** The same as fields inside another form, under names which that form does not use itself. */
    public List<Field> carried() {
        var all = new ArrayList<Field>();
        all.add(new Field(ADDRESS, address));
        if (parts) {
            all.add(new Field(PARTS, "yes"));
        }
        secrets.forEach(name -> all.add(new Field(SECRET, name)));
        files.forEach(name -> all.add(new Field(FILE, name)));
        fields.forEach(field -> all.add(new Field(TYPED + field.name(), field.value())));
        return all;
    }

    public static Optional<UnsentForm> carriedBy(Form form) {
        return Optional.of(form.one(ADDRESS)).filter(Predicate.not(String::isEmpty)).flatMap(LocalPath::withQuery)
            .map(to -> new UnsentForm(to, form.ticked(PARTS), typed(form), form.all(SECRET), form.all(FILE)));
    }

    private static List<Field> typed(Form form) {
        return form.fields().keySet().stream().filter(name -> name.startsWith(TYPED))
            .flatMap(name -> form.all(name).stream().map(value -> new Field(name.substring(TYPED.length()), value)))
            .toList();
    }

    public String getEncoding() {
        return parts ? "multipart/form-data" : "application/x-www-form-urlencoded";
    }
}
