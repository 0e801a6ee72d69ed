package foretress.web;

import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.vertx.core.http.Cookie;
import io.vertx.core.http.CookieSameSite;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The token for the forms of the page being made: {@code {inject:formToken.value}}. Bound to the sign-in or the door behind the request;
 * where there is neither yet (the door itself, signing in, aftercare), to a cookie that only tells this browser from others.
 */
@Named("formToken")
@RequestScoped
public class FormToken {
    static final String COOKIE = "form";
    private static final Pattern OURS = Pattern.compile("[A-Za-z0-9_-]{43}");

    private final FormTokens tokens;
    private final CurrentVertxRequest current;
    private final PublicAddress address;
    private Optional<String> session = Optional.empty();
    private Optional<String> browser = Optional.empty();

    FormToken(FormTokens tokens, CurrentVertxRequest current, PublicAddress address) {
        this.tokens = tokens;
        this.current = current;
        this.address = address;
    }

    /** @param opened what names the session: the same words for as long as it lives, and never another session's */
    public void bind(String opened) {
        session = Optional.of(opened);
    }

    /** The session is over: forms are made for this browser alone. */
    public void unbind() {
        session = Optional.empty();
    }

    public String getValue() {
        return tokens.of(session.orElseGet(this::thisBrowser));
    }

    public String getField() {
        return FormTokens.FIELD;
    }

    private String thisBrowser() {
        if (browser.isEmpty()) {
            browser = known().or(() -> Optional.of(begin()));
        }
        return browser.get();
    }

    /** The session that is none: what this browser was called before anybody came through a door or signed in. */
    public Optional<String> known() {
        return Optional.ofNullable(current.getCurrent())
            .map(context -> context.request().getCookie(address.cookieName(COOKIE)))
            .map(Cookie::getValue).filter(OURS.asMatchPredicate()).map(FormToken::named);
    }

    private static String named(String cookie) {
        return "browser " + cookie;
    }

    private String begin() {
        String value = RandomText.fresh();
        Optional.ofNullable(current.getCurrent()).map(RoutingContext::response)
            .ifPresent(response -> response.addCookie(
                Cookie.cookie(address.cookieName(COOKIE), value).setPath("/").setHttpOnly(true)
                    .setSecure(address.secure()).setSameSite(CookieSameSite.LAX)));
        return named(value);
    }
}
