package foretress.skintest;

import foretress.salon.Who;
import foretress.visit.Clients;
import foretress.visit.Moments;
import foretress.visit.PlannedProducts;
import foretress.visit.Visit;
import foretress.visit.Visits;
import jakarta.enterprise.context.RequestScoped;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Instant;
import java.util.UUID;

/** Which visit and whose test a member of staff has before them. */
@RequestScoped
class SkinTestDoor {
    private final Visits visits;
    private final Clients clients;
    private final PlannedProducts planned;
    private final TestStore tests;
    private final Who who;
    private final Moments moments;

    SkinTestDoor(Visits visits, Clients clients, PlannedProducts planned, TestStore tests, Who who, Moments moments) {
        this.moments = moments;
        this.visits = visits;
        this.clients = clients;
        this.planned = planned;
        this.tests = tests;
        this.who = who;
    }

    Visit visit(UUID id) {
        return visits.find(id).orElseThrow(NotFoundException::new);
    }

    /** A test of this visit's client, whichever visit it was made for. */
    TestFile test(UUID visit, UUID test) {
        return tests.find(test).filter(one -> isOf(visit(visit), one.test().clientId()))
            .orElseThrow(NotFoundException::new);
    }

    /** Whether it was kept for this visit's client, under whichever of their records. */
    boolean isOf(Visit visit, UUID clientId) {
        return clients.everyId(visit.client.id).contains(clientId);
    }

    PlannedProducts.Planned product(Visit visit) {
        return planned.of(visit.id).orElseThrow(NotFoundException::new);
    }

    String moment(Instant at, Visit visit) {
        return moments.in(visit.zone()).moment(at);
    }

    UUID staff() {
        return who.staff().id;
    }

    static String address(Visit visit) {
        return "/visits/" + visit.id;
    }

    static Response back(Visit visit, String said) {
        return Response
            .seeOther(URI.create(address(visit) + "/skin-test" + (said.isEmpty() ? "" : "?said=" + said))).build();
    }
}
