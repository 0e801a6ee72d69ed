package foretress.skintest;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.intake.Answering;
import foretress.intake.Knocking;
import foretress.salon.ExampleLine;
import foretress.salon.OpenSalon;
import foretress.salon.ProductLine;
import foretress.salon.ProductLines;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** A visit on its way to a skin test, step by step through the real pages. */
@Singleton
public class Chair {
    private final OpenSalon salon;
    private final VisitMaker make;
    private final Knocking knocking;
    private final ProductLines lines;

    Chair(OpenSalon salon, VisitMaker make, Knocking knocking, ProductLines lines) {
        this.salon = salon;
        this.make = make;
        this.knocking = knocking;
        this.lines = lines;
    }

    /** Ottilie Brandt, who said no to everything but this, has signed for permanent colour in five days. */
    public UUID signed(Map<String, List<String>> told) {
        return signed(LocalDate.of(1965, 3, 4), told);
    }

    public UUID signed(LocalDate born, Map<String, List<String>> told) {
        UUID visit = make.visit(born);
        knocking.come(visit, born, told).agree().all().readBack().sign("Ottilie Brandt");
        return visit;
    }

    /** The same client, who said no to everything, the skin test included. */
    public UUID refused() {
        UUID visit = make.visit(LocalDate.of(1965, 3, 4));
        Answering client = knocking.come(visit, Map.of()).agree().all().readBack();
        client.walker().open("/answers/tests").send(Map.of("refuse", "skin-test"));
        client.sign("Ottilie Brandt");
        return visit;
    }

    /** Sanna at the desk books the latest moment that is offered. */
    public Walker shortVisit(UUID visit) {
        Walker sanna = salon.as("sanna").open("/desk/visits/" + visit + "/test-visit").expect(200);
        return sanna.send("#book", Map.of("start", sanna.page().selectFirst("#book [name=start]").val())).expect(200);
    }

    /** The same, with the product named. */
    public UUID planned(Map<String, List<String>> told) {
        UUID visit = signed(told);
        name(visit, "4-0");
        return visit;
    }

    public void name(UUID visit, String shade) {
        ProductLine line = QuarkusTransaction.requiringNew()
            .call(() -> lines.inUse().stream().filter(one -> one.name.equals("Larkmoss Deep")).findFirst()
                .orElseGet(() -> lines.add(salon.stylist().id, ExampleLine.leaflet())));
        salon.as("petra").open("/desk/visits/" + visit + "/product")
            .send(Map.of("line", line.lineId.toString(), "shade", shade)).expect(200);
    }

    /** The client signs on the tablet that Petra hands over. */
    public Walker agreed(UUID visit) {
        Walker tablet = handed(visit);
        sign(tablet);
        return back(tablet, visit);
    }

    /** The tablet in the client's hands, before the consent. */
    Walker handed(UUID visit) {
        return salon.as("petra").open("/visits/" + visit + "/skin-test").send("form[action$=hand-over]", Map.of())
            .expect(200);
    }

    void sign(Walker tablet) {
        List<Map.Entry<String, String>> fields = new ArrayList<>(tablet.fields("main form").stream()
            .filter(field -> !List.of("agree", "mark", "typed").contains(field.getKey())).toList());
        tablet.page().select("input[name=agree]").eachAttr("value").forEach(id -> fields.add(Map.entry("agree", id)));
        fields.add(Map.entry("mark", "typed"));
        fields.add(Map.entry("typed", "Ottilie Brandt"));
        tablet.post("/answers/skin-test", fields).expect(200);
    }

    /** Petra takes the tablet back and signs in. */
    Walker back(Walker tablet, UUID visit) {
        tablet.send("form[action$=give-back]", Map.of()).send(Map.of("login", "petra", "password", OpenSalon.PASSWORD))
            .expect(200);
        assertThat(tablet.at()).isEqualTo("/visits/" + visit + "/skin-test/record");
        return tablet;
    }

    static Map<String, String> wellMade() {
        return new HashMap<>(
            Map.of("batch", "LM-0417", "mixing", "MIXED", "site", "BEHIND_EAR", "medicines", "none", "whole", "yes"));
    }

    /** Petra has put the test on; its id. */
    public UUID applied(UUID visit) {
        agreed(visit).send(wellMade()).expect(200);
        return newest(visit);
    }

    public UUID newest(UUID visit) {
        return QuarkusTransaction.requiringNew()
            .call(() -> TestApplied.ofClient(Visit.<Visit>findById(visit).client.id).get(0).id());
    }

    /** Petra reads the spot; the page that answers. */
    Walker read(UUID visit, UUID test, Map<String, String> seen) {
        return salon.as("petra").open("/visits/" + visit + "/skin-test/tests/" + test + "/read").send(seen);
    }

    /** The client's own page. */
    public String link(UUID visit, UUID test) {
        Walker petra = salon.as("petra").open("/visits/" + visit + "/skin-test")
            .send("form[action$=" + test + "/link]", Map.of()).expect(200);
        return petra.only("#link").val().replaceAll("^https?://[^/]+", "");
    }

    public String standing(UUID visit) {
        return QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).standing().orElse(""));
    }
}
