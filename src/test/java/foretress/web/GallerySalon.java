package foretress.web;

import foretress.salon.Salon;
import io.quarkus.narayana.jta.QuarkusTransaction;
import java.util.UUID;

/** The invented salon whose name stands on the gallery's pages. */
final class GallerySalon {
    private GallerySalon() {}

    static void open() {
        QuarkusTransaction.requiringNew().run(() -> {
            Salon.deleteAll();
            var salon = new Salon();
            salon.id = UUID.randomUUID();
            salon.name = "Alder & Wren";
            salon.town = "Tarnbeck";
            salon.address = "3 Millrace Lane";
            salon.phone = "01632 960 114";
            salon.email = "hello@alderandwren.example";
            salon.zone = "Europe/London";
            salon.jurisdiction = "uk";
            salon.urgentNumber = "999";
            salon.paperSize = Salon.PaperSize.A4;
            salon.languages = "en,es";
            salon.openingHours = "";
            salon.persist();
        });
    }

    static void close() {
        QuarkusTransaction.requiringNew().run(() -> Salon.deleteAll());
    }
}
