package foretress.load;

import foretress.intake.Answering;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jsoup.nodes.Element;

/**
 * Clients who go through the real pages beside each other, from the link to the signature, and what each kind of request took. They go
 * page by page together, so that the server's processor time belongs to one kind at a time.
 */
final class Walks {
    private static final LocalDate BORN = LocalDate.of(1985, 3, 4);
    private static final Map<String, List<String>> TOLD = Map.of("hair-state", List.of("breaks"));
    private static final int MOST_PAGES = 40;

    private final Running server;
    private final Crowd crowd;
    private final Phone desk;
    final LocalDate day;
    final Map<String, Cost> costs = new LinkedHashMap<>();
    /** Ids of the visits that were booked. */
    final List<String> visits = new ArrayList<>();
    final List<String> links = new ArrayList<>();
    private int requests;

    /** @param desk somebody signed in who books */
    Walks(Running server, Crowd crowd, Phone desk, LocalDate day) {
        this.server = server;
        this.crowd = crowd;
        this.desk = desk;
        this.day = day;
    }

    int requests() {
        return requests;
    }

    private void all(String kind, List<Phone> phones, Consumer<Phone> act) throws Exception {
        costs.merge(kind, crowd.each(server, phones, act), Cost::and);
        requests += phones.size();
    }

    /** So many clients up to their first page of questions, which is open before them. */
    List<Phone> arrive(int clients) throws Exception {
        Map<Phone, String> invited = new LinkedHashMap<>();
        for (int i = 0; i < clients; i++) {
            invited.put(new Phone(server.port), booked());
        }
        List<Phone> phones = List.copyOf(invited.keySet());
        all("door", phones, p -> p.open(invited.get(p)).expect(200));
        all("birth date sent", phones, p -> p.send("main form", Map.of("day", "4", "month", "3", "year", "1985")));
        phones.forEach(Walks::follow);
        all("notice", phones, p -> p.open("/answers/notice").expect(200));
        all("notice agreed to", phones, p -> Answering.on(p, TOLD).agree());
        phones.forEach(Walks::follow);
        return phones;
    }

    /** To the page behind every door that only leads on. */
    private static void follow(Phone phone) {
        while (!phone.leads().isEmpty()) {
            phone.onwards();
        }
    }

    /** They answer page after page, read it back and sign. */
    void sign(List<Phone> phones) throws Exception {
        List<Phone> answering = new ArrayList<>(phones);
        for (int i = 0; i < MOST_PAGES && !answering.isEmpty(); i++) {
            all("save", answering, p -> Answering.on(p, TOLD).page());
            all("page, first shown", answering, p -> p.onwards().expect(200));
            answering.removeIf(p -> p.at().equals("/answers/read-back"));
        }
        all("read-back confirmed", phones, p -> Answering.on(p, TOLD).readBack());
        all("page to sign", phones, p -> p.onwards().expect(200));
        all("signature", phones, p -> Answering.on(p, TOLD).sign("Ottilie Brandt"));
        all("done", phones, p -> p.onwards().expect(200));
    }

    private String booked() {
        desk.open("/desk/new-visit").expect(200);
        String stylist = desk.page().select("[name=stylist] option").eachAttr("value").stream()
            .filter(id -> !id.isEmpty()).findFirst().orElseThrow();
        Map<String, String> form = new LinkedHashMap<>(Map.of("given", "Ottilie", "family", "Brandt", "birth-day",
            "" + BORN.getDayOfMonth(), "birth-month", "" + BORN.getMonthValue(), "birth-year", "" + BORN.getYear()));
        form.putAll(Map.of("date", day.toString(), "time", "11:00", "stylist", stylist, "service", "perm-alkaline"));
        desk.send("form[action=/desk/new-visit]", form);
        if (desk.leads().isEmpty()) {
            throw new IllegalStateException("not booked: " + desk.page().text());
        }
        visits.add(desk.leads().replaceAll(".*/visits/", "").replaceAll("\\?.*", ""));
        desk.onwards().expect(200).send("form[action$=/link]", Map.of());
        Element link = desk.onwards().only("[name=link]");
        links.add(link.attr("value").replaceAll("^https?://[^/]+", ""));
        return links.get(links.size() - 1);
    }
}
