package foretress.knowledge;

import java.util.regex.Pattern;

/** How ids and codes are written: small letters and figures joined by hyphens. */
final class IdSyntax {
    private static final Pattern KEBAB = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    private IdSyntax() {}

    static String read(Yaml yaml) {
        String id = yaml.text();
        if (!KEBAB.matcher(id).matches()) {
            throw yaml.refuse("'%s' is no id: small letters and figures joined by hyphens".formatted(id));
        }
        return id;
    }
}
