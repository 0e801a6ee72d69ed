package foretress.api;

import foretress.Walker;
import foretress.salon.OpenSalon;
import io.restassured.RestAssured;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Singleton;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;

/** Programs that ask, with tokens the owner makes on the page as she would. */
@Singleton
class Programs {
    private final OpenSalon salon;
    private final AtomicInteger made = new AtomicInteger();

    Programs(OpenSalon salon) {
        this.salon = salon;
    }

    /** A token for these scopes, good for so many days, of the choice on the page. */
    String token(int days, String... scopes) {
        return page(days, scopes).only("section.handed code").text();
    }

    Walker page(int days, String... scopes) {
        salon.open();
        Walker edda = salon.as("edda").open("/programs");
        List<Map.Entry<String, String>> fields = new ArrayList<>(edda.fields("main form.form"));
        fields.removeIf(f -> List.of("program-name", "scope", "days").contains(f.getKey()));
        fields.add(Map.entry("program-name", "Ledgerwren " + made.incrementAndGet()));
        for (String scope : scopes) {
            fields.add(Map.entry("scope", scope));
        }
        fields.add(Map.entry("days", Integer.toString(days)));
        return edda.post("/programs", fields).expect(201);
    }

    /** The name of the program that got the last token. */
    String lastName() {
        return "Ledgerwren " + made.get();
    }

    static RequestSpecification with(String token) {
        return RestAssured.given().header("Authorization", "Bearer " + token).contentType("application/json");
    }
}
