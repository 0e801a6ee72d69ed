package foretress.web;

import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** The language of the page being made: {@code {inject:language.tag}}. {@link LanguageFilter} settles it. */
@Named("language")
@RequestScoped
public class Language {
    /** The cookie that keeps what the client chose. */
    public static final String COOKIE = "language";

    private String tag = Supported.ORIGINAL;
    private String here = "/answers";

    public String getTag() {
        return tag;
    }

    public Locale locale() {
        return Locale.forLanguageTag(tag);
    }

    /** Another language from here on; one we do not speak is left alone. */
    public void use(String wanted) {
        tag = Supported.match(wanted).orElse(tag);
    }

    /** The page one is on, as part of another address, for coming back to it from the choice of languages. */
    public String getHere() {
        return URLEncoder.encode(here, StandardCharsets.UTF_8);
    }

    /** A door's address holds its token, so it is never passed on. */
    void here(URI address) {
        if (!address.getPath().startsWith("/i/") && !address.getPath().startsWith("/a/")) {
            here = LocalPath.of(address).orElse(here);
        }
    }

    /** Which way the script runs, for the html element. */
    public String getDir() {
        return Supported.dir(tag);
    }
}
