package foretress;

import foretress.start.Launched;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.Connection;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.FormElement;

/** The owner in a browser without script, at a program that runs as a process of its own. */
public class SalonOwner {
    private static final String LOGIN = "edda";
    private static final String PASSWORD = "kettle orbit walnut 7";

    private final Connection session =
        Jsoup.newSession().timeout(60_000).ignoreHttpErrors(true).ignoreContentType(true);
    private final String base;

    public SalonOwner(Launched server) {
        this.base = "http://127.0.0.1:" + server.port;
    }

    private Document get(String path) throws IOException {
        return session.newRequest(base + path).get();
    }

    private Connection.Response send(Document page, String form, Map<String, String> filled) throws IOException {
        FormElement found = (FormElement) page.selectFirst(form);
        var data = new HashMap<String, String>();
        found.formData().forEach(field -> data.put(field.key(), field.value()));
        data.putAll(filled);
        return session.newRequest(found.hasAttr("action") ? found.absUrl("action") : page.location())
            .method(Connection.Method.POST)
            .followRedirects(false).data(data).execute();
    }

    /** Sets the salon up behind the link that the console gave. */
    public void setUp(String path) throws IOException {
        HashMap<String, String> form = new HashMap<>(
            Map.of("name", "Alder & Wren", "address", "3 Millrace Lane", "town", "Tarnbeck", "phone", "01632 960 114",
                "email", "hello@alderandwren.example", "urgent-number", "999", "zone", "Europe/London", "jurisdiction",
                "uk", "paper-size", "A4"));
        form.putAll(Map.of("languages", "en", "own-name", "Edda Wren", "login", LOGIN, "password", PASSWORD,
            "password-again", PASSWORD));
        expect(303, send(get(path), "main form", form));
    }

    public void signIn() throws IOException {
        expect(303, send(get("/sign-in"), "main form", Map.of("login", LOGIN, "password", PASSWORD)));
    }

    /** A wrong password, as if it came from that address; the status of the answer. */
    public int tryToSignIn(String login, String forwardedFor) throws IOException {
        Document page = get("/sign-in");
        return session.newRequest(base + "/sign-in").method(Connection.Method.POST).followRedirects(false)
            .header("X-Forwarded-For", forwardedFor)
            .data("csrf-token", page.selectFirst("input[name=csrf-token]").val()).data("login", login)
            .data("password", "wrong").execute().statusCode();
    }

    /** Comes back only when the page said that the person is taken on. */
    public void takeOn(String login) throws IOException {
        expect(201, send(get("/staff"), "form[action=/staff]",
            Map.of("own-name", "Juno Marsh", "login", login, "role", "DESK")));
    }

    public List<String> logins() throws IOException {
        return get("/staff").select("tbody td:nth-child(2) bdi").eachText();
    }

    private static void expect(int status, Connection.Response response) throws IOException {
        if (response.statusCode() != status) {
            throw new IOException(response.statusCode() + " " + response.body());
        }
    }
}
