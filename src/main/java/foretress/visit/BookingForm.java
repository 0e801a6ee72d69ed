package foretress.visit;

import foretress.assessment.Service;
import foretress.salon.Staff;
import foretress.web.Form;
import java.util.List;

/**
 * The desk's form for a new visit, word for word as it was typed, so that a page with a mistake on it can be shown
 * again with nothing lost. {@link BookingReader} makes sense of it.
 */
public record BookingForm(String submission, String clientId, ClientForm person, String date, String time, String turn,
    String stylist, List<String> services, List<String> without) {
    public BookingForm {
        services = List.copyOf(services);
        without = List.copyOf(without);
    }

    static BookingForm blank(String submission, String clientId, String language) {
        return new BookingForm(submission, clientId, ClientForm.blank(language), "", "", "", "", List.of(), List.of());
    }

    static BookingForm from(Form form) {
        return new BookingForm(form.one("submission"), form.one("client"), ClientForm.from(form), form.one("date"),
            form.one("time"), form.one("turn"), form.one("stylist"), form.all("service"), form.all("without-toner"));
    }

    /** Whether the visit is for somebody already on file. */
    public boolean isForKnown() {
        return !clientId.isEmpty();
    }

    public boolean hasService(String id) {
        return services.contains(id);
    }

    public boolean isWith(Staff member) {
        return stylist.equals(member.id.toString());
    }

    public boolean isWithout(String id) {
        return without.contains(id);
    }

    /** Whether this service has a toner that can be taken out of it. */
    public static boolean hasToner(Service service) {
        return service.removable().isPresent();
    }
}
