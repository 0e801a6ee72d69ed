package foretress;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;

/** Somebody with a browser and no script, who only fills in the forms that are on the page and follows where they lead. */
public class Walker {
    private final Map<String, String> cookies = new HashMap<>();
    private final List<String> addresses = new ArrayList<>();
    private Response last;
    private Document page;

    /** Opens an address and follows redirects. */
    public Walker open(String path) {
        return arrive(path, request().urlEncodingEnabled(false).get(path));
    }

    /** Fills in the form that the selector finds (fields not named keep what the page gave them) and sends it. */
    public Walker send(String form, Map<String, String> filled) {
        FormElement found = (FormElement) page.selectFirst(form);
        assertThat(found).as("a form %s on %s:%n%s", form, at(), page).isNotNull();
        return submit(found, filled);
    }

    public Walker send(Map<String, String> filled) {
        return send("main form", filled);
    }

    /** The same browser with a cookie more. */
    public Walker with(String cookie, String value) {
        cookies.put(cookie, value);
        return this;
    }

    private Walker submit(FormElement form, Map<String, String> filled) {
        var fields = new ArrayList<Map.Entry<String, String>>();
        form.formData().stream().filter(data -> !filled.containsKey(data.key()))
            .forEach(data -> fields.add(Map.entry(data.key(), data.value())));
        filled.forEach((name, value) -> {
            assertThat(form.select("[name=" + name + "]")).as("a field %s in the form on %s", name, at()).isNotEmpty();
            fields.add(Map.entry(name, value));
        });
        String action = form.hasAttr("action") ? form.attr("action") : at();
        if (form.attr("method").equalsIgnoreCase("get")) {
            return open(action + "?" + query(fields));
        }
        return post(action, fields);
    }

    private static String query(List<Map.Entry<String, String>> fields) {
        return String.join("&", fields.stream().map(f -> f.getKey() + "="
            + java.net.URLEncoder.encode(f.getValue(), java.nio.charset.StandardCharsets.UTF_8)).toList());
    }

    /** Sends fields to an address, as a replayed or forged form would. */
    public Walker post(String path, List<Map.Entry<String, String>> fields) {
        RequestSpecification request = request().contentType("application/x-www-form-urlencoded; charset=UTF-8")
            .header("Origin", RestAssured.baseURI + ":" + RestAssured.port);
        var grouped = new java.util.LinkedHashMap<String, List<String>>();
        fields.forEach(f -> grouped.computeIfAbsent(f.getKey(), any -> new ArrayList<>()).add(f.getValue()));
        grouped.forEach((name, values) -> request.formParam(name, values.toArray()));
        return arrive(path, request.post(path));
    }

    /** The fields of a form as they stand on the page. */
    public List<Map.Entry<String, String>> fields(String form) {
        return ((FormElement) page.selectFirst(form)).formData().stream()
            .map(data -> Map.entry(data.key(), data.value())).toList();
    }

    private Walker arrive(String path, Response response) {
        addresses.add(path);
        response.detailedCookies().forEach(cookie -> {
            if (cookie.getMaxAge() == 0) {
                cookies.remove(cookie.getName());
            } else {
                cookies.put(cookie.getName(), cookie.getValue());
            }
        });
        last = response;
        if (response.statusCode() == 303) {
            return open(response.header("Location").replaceAll("^https?://[^/]+", ""));
        }
        page = Jsoup.parse(response.asString());
        return this;
    }

    /** Asks as a script of the page does, with a header of its own. */
    public Walker ask(String path, String header, String value) {
        return arrive(path, request().header(header, value).get(path));
    }

    private RequestSpecification request() {
        return RestAssured.given().redirects().follow(false).cookies(cookies).header("Accept", "text/html");
    }

    public Walker expect(int status) {
        assertThat(last.statusCode()).as("%s:%n%s", at(), page.text()).isEqualTo(status);
        return this;
    }

    public Document page() {
        return page;
    }

    public String text() {
        return page.select("main").text();
    }

    /** The address now in the bar. */
    public String at() {
        return addresses.get(addresses.size() - 1);
    }

    public List<String> addresses() {
        return List.copyOf(addresses);
    }

    public Response response() {
        return last;
    }

    public Map<String, String> cookies() {
        return cookies;
    }

    public Element only(String selector) {
        assertThat(page.select(selector)).as("%s on %s", selector, at()).hasSize(1);
        return page.selectFirst(selector);
    }
}
