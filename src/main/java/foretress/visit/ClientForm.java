package foretress.visit;

import foretress.web.Form;
import java.time.LocalDate;
import java.util.Optional;

/** What the desk typed about a client, word for word. */
public record ClientForm(String given, String family, String birthDay, String birthMonth, String birthYear,
    String email, String phone, String language) {
    static ClientForm blank(String language) {
        return new ClientForm("", "", "", "", "", "", "", language);
    }

    static ClientForm from(Form form) {
        return new ClientForm(form.one("given"), form.one("family"), form.one("birth-day"), form.one("birth-month"),
            form.one("birth-year"), form.one("email"), form.one("phone"), form.one("language"));
    }

    static ClientForm of(Client client) {
        Optional<LocalDate> birth = client.birthDate();
        return new ClientForm(client.givenName, client.familyName, birth.map(d -> "" + d.getDayOfMonth()).orElse(""),
            birth.map(d -> "" + d.getMonthValue()).orElse(""), birth.map(d -> "" + d.getYear()).orElse(""),
            client.email().orElse(""), client.phone().orElse(""), client.language);
    }
}
