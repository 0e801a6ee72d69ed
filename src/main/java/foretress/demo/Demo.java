package foretress.demo;

import foretress.demo.Invented.Told;
import foretress.invitation.Invitations;
import foretress.knowledge.Knowledge;
import foretress.running.AtStart;
import foretress.running.ConsoleNotices;
import foretress.salon.Salon;
import foretress.visit.Booked;
import foretress.visit.Booking;
import foretress.visit.Clients;
import foretress.visit.Visit;
import foretress.visit.Visits;
import io.quarkus.arc.Arc;
import io.quarkus.arc.ManagedContext;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Fills the demo's own database with the invented salon once, and says at every start which links and sign-ins to try. */
@Singleton
public class Demo implements AtStart {
    private final DemoSalon salon;
    private final DemoAnswers answers;
    private final DemoClosed closed;
    private final DemoProducts products;
    private final DemoPhotos photos;
    private final Clients clients;
    private final Visits visits;
    private final Invitations invitations;
    private final Knowledge knowledge;
    private final ConsoleNotices notices;
    private final Clock clock;
    private final boolean demo;

    Demo(DemoSalon salon, DemoAnswers answers, DemoClosed closed, DemoProducts products, DemoPhotos photos,
        Clients clients, Visits visits,
        Invitations invitations,
        Knowledge knowledge, ConsoleNotices notices, Clock clock,
        @ConfigProperty(name = "foretress.demo") Optional<Boolean> demo) {
        this.salon = salon;
        this.answers = answers;
        this.closed = closed;
        this.products = products;
        this.photos = photos;
        this.clients = clients;
        this.visits = visits;
        this.invitations = invitations;
        this.knowledge = knowledge;
        this.notices = notices;
        this.clock = clock;
        this.demo = demo.orElse(false);
    }

    @Override
    public int order() {
        return 1000;
    }

    @Override
    public void run() {
        if (!demo) {
            return;
        }
        boolean fresh = QuarkusTransaction.requiringNew().call(() -> Salon.found().isEmpty());
        if (fresh) {
            salon.open();
            QuarkusTransaction.requiringNew().run(() -> products.open(DemoSalon.stylist("edda")));
            QuarkusTransaction.requiringNew().call(() -> Cast.of(today())).forEach(this::book);
        }
        say();
    }

    private void book(Invented client) {
        UUID visit = QuarkusTransaction.requiringNew().call(() -> booked(client).id);
        inARequest(() -> products.plan(visit, client));
        if (client.told() != Told.NOTHING) {
            inARequest(() -> answers.say(visit, client));
        }
        if (client.visit().equals(Cast.WITH_PHOTOS)) {
            inARequest(() -> photos.send(visit));
        }
        if (client.told() == Told.CLOSED) {
            inARequest(() -> closed.close(visit));
            returns(visit,
                client.booking("colour-whole", client.visit()).in(56, 11).says("asthma", "yes").has(Told.SIGNED));
        }
    }

    /** The same client again, eight weeks later, with an answer that is no longer what it was. */
    private void returns(UUID before, Invented again) {
        UUID visit = QuarkusTransaction.requiringNew()
            .call(() -> booked(again, Visit.<Visit>findById(before).client.id, "demo again " + again.name()).id);
        inARequest(() -> answers.say(visit, again));
    }

    private Visit booked(Invented client) {
        var person = new Clients.Person(client.givenName(), client.familyName(), Optional.of(client.born()),
            Optional.of(mail(client)), Optional.of("01632 960 " + (200 + client.name().length())), client.language());
        return booked(client, clients.add(person).id, "demo " + client.name());
    }

    private Visit booked(Invented client, UUID id, String submission) {
        ZoneId zone = Salon.the().zoneId();
        LocalDateTime wall = open(today().plusDays(client.days())).atTime(client.hour(), 0);
        List<String> steps = knowledge.ruleSet().service(client.service()).orElseThrow().stepIds();
        return visits.book(new Booking(submission, id, wall, zone, wall.atZone(zone).toInstant(),
            DemoSalon.stylist(client.stylist()).id, List.of(new Booked(client.service(), steps))));
    }

    /** The salon is closed on Sundays. */
    private static LocalDate open(LocalDate day) {
        return day.getDayOfWeek() == DayOfWeek.SUNDAY ? day.plusDays(1) : day;
    }

    private static String mail(Invented client) {
        return client.givenName().toLowerCase(java.util.Locale.ROOT).replace("í", "i") + "@post.example";
    }

    private LocalDate today() {
        return clock.instant().atZone(Salon.the().zoneId()).toLocalDate();
    }

    /** Links to try are fresh at every start, since only their hashes are kept. */
    private void say() {
        notices.add("");
        notices.add("This is the demo: an invented salon, invented people, invented products.");
        notices.add("A client's phone:");
        List<Visit> open = QuarkusTransaction.requiringNew()
            .call(() -> Visit.<Visit>list("submission like 'demo %' and signedAt is null"));
        for (Visit visit : open) {
            if (visit.state.isAhead()) {
                notices.add(
                    "  %s  (born %s)  %s".formatted(visit.client.fullName(), visit.client.birthDate().orElseThrow(),
                        invitations.issueLink(visit.id, "server")));
            }
        }
        notices.add(
            "The salon, at /sign-in: " + String.join(", ", DemoSalon.LOGINS) + "; password: " + DemoSalon.PASSWORD);
        notices.add("Mails it would have sent: /demo");
        notices.add("");
    }

    private static void inARequest(Runnable work) {
        ManagedContext context = Arc.container().requestContext();
        if (context.isActive()) {
            work.run();
            return;
        }
        context.activate();
        try {
            work.run();
        } finally {
            context.terminate();
        }
    }
}
