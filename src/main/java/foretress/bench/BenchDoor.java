package foretress.bench;

import foretress.intake.Refusals;
import foretress.ledger.ByStaff;
import foretress.salon.Staff;
import foretress.salon.Who;
import foretress.visit.Visit;
import foretress.visit.Visits;
import jakarta.enterprise.context.RequestScoped;
import jakarta.ws.rs.ClientErrorException;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.RedirectionException;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.UUID;

/** Who stands at the bench, at whose, and before which test. */
@RequestScoped
public class BenchDoor {
    private final ByStaff byStaff;
    private final Visits visits;
    private final BenchRecords tests;
    private final Refusals refusals;
    private final Who who;

    BenchDoor(Visits visits, BenchRecords tests, Refusals refusals, Who who, ByStaff byStaff) {
        this.byStaff = byStaff;
        this.visits = visits;
        this.tests = tests;
        this.refusals = refusals;
        this.who = who;
    }

    public Visit visit(UUID id) {
        return visits.find(id).orElseThrow(NotFoundException::new);
    }

    /** A visit at which something may still be tried. */
    public Visit ahead(UUID id) {
        Visit visit = visit(id);
        if (!visit.state.isAhead()) {
            throw new ClientErrorException(Response.Status.CONFLICT);
        }
        return visit;
    }

    /** The same before a test is begun: nobody is tested against their word, so one that was refused leads to the talk about it. */
    Visit wanted(UUID id, BenchKind kind) {
        Visit visit = ahead(id);
        byStaff.looked("bench read", id);
        if (refusals.of(visit).contains(kind.code())) {
            throw new RedirectionException(Response.Status.SEE_OTHER, URI.create(RefusedPages.at(visit)));
        }
        return visit;
    }

    BenchRecord test(UUID visitId, UUID testId, BenchKind kind) {
        BenchRecord test = tests.find(visitId, testId, kind).orElseThrow(NotFoundException::new);
        byStaff.looked("bench read", visitId);
        return test;
    }

    BenchRecord test(UUID visitId, UUID testId) {
        return tests.find(visitId, testId).orElseThrow(NotFoundException::new);
    }

    public UUID staff() {
        return who.staff().id;
    }

    /** Whoever made it, and the owner, may say that it was entered in error; what shuts a service is the owner's alone. */
    BenchStrike strike(BenchRecord test) {
        return strike(test.madeBy(), tests.shuts(test));
    }

    /** The same of one thing seen. */
    BenchStrike strike(BenchRecord test, BenchSight sight) {
        return strike(sight.by(), tests.shutsBy(test, sight.id()));
    }

    private BenchStrike strike(UUID author, boolean opens) {
        if (!mayStrike(author)) {
            return BenchStrike.NO;
        }
        if (!opens) {
            return BenchStrike.WITH_A_REASON;
        }
        return who.isOwner() ? BenchStrike.WITH_THE_PASSWORD : BenchStrike.BY_THE_OWNER;
    }

    boolean mayStrike(UUID author) {
        return who.isOwner() || author.equals(staff());
    }

    public static String name(UUID staffId) {
        return Staff.nameOf(staffId);
    }

    static String at(Visit visit) {
        return "/visits/" + visit.id + "/bench";
    }

    static String at(BenchRecord test) {
        return "/visits/" + test.visitId() + "/bench/" + test.kind().code() + "/" + test.id();
    }

    public static Response go(String path) {
        return Response.seeOther(URI.create(path)).build();
    }
}
