package foretress;

import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jsoup.Jsoup;

/** A browser without script: keeps cookies, sends the token of the form it looked at last, follows no redirect by itself. */
public class Visitor {
    private final Map<String, String> cookies = new HashMap<>();
    private String token = "";
    private String address = "";

    private RequestSpecification request() {
        RequestSpecification request =
            RestAssured.given().redirects().follow(false).cookies(cookies).header("Accept", "text/html");
        return address.isEmpty() ? request : request.header("X-Forwarded-For", address);
    }

    /** Comes from this address, as a trusted proxy would say. */
    public Visitor from(String forwarded) {
        address = forwarded;
        return this;
    }

    public Response get(String path) {
        return kept(request().urlEncodingEnabled(false).get(path));
    }

    /** Posts these fields, and the last form's token. */
    public Response post(String path, Map<String, String> fields) {
        return kept(
            request().contentType("application/x-www-form-urlencoded; charset=UTF-8").formParam("csrf-token", token)
                .formParams(fields).post(path));
    }

    /** The same with one more field of a name that is there already. */
    public Response post(String path, Map<String, String> fields, String again, String value) {
        return kept(
            request().contentType("application/x-www-form-urlencoded; charset=UTF-8").formParam("csrf-token", token)
                .formParams(fields).formParam(again, value).post(path));
    }

    private Response kept(Response response) {
        response.detailedCookies().forEach(cookie -> {
            if (cookie.getMaxAge() == 0) {
                cookies.remove(cookie.getName());
            } else {
                cookies.put(cookie.getName(), cookie.getValue());
            }
        });
        tokenIn(response).ifPresent(found -> token = found);
        return response;
    }

    private static Optional<String> tokenIn(Response response) {
        if (response.contentType() == null || !response.contentType().startsWith("text/html")) {
            return Optional.empty();
        }
        return Optional.ofNullable(Jsoup.parse(response.asString()).selectFirst("input[name=csrf-token]"))
            .map(input -> input.val());
    }

    public String cookie(String name) {
        return cookies.get(name);
    }

    public void cookie(String name, String value) {
        cookies.put(name, value);
    }
}
