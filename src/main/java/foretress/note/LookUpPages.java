package foretress.note;

import foretress.bench.BenchDoor;
import foretress.ledger.Ledger;
import foretress.note.LookUpFields.Asked;
import foretress.salon.Salon;
import foretress.salon.Who;
import foretress.web.ChairTime;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.ForbiddenException;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** Every medicine that staff have looked up, what stands and what was taken back; another one is looked up here too. */
@Path("/look-ups")
public class LookUpPages {
    private static final int LONGEST_REASON = 500;
    private static final String LIST = "/look-ups";

    @CheckedTemplate(basePath = "note", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record LookUpsPage(List<Line> lines, boolean owner, Asked asked, Mistakes mistakes) implements TemplateInstance {}

    /**
     * One look-up in the list.
     *
     * @param said what it came to, and where that was found
     * @param taken why, by whom and when it was taken back; empty while it stands
     */
    public record Line(String id, String name, String said, String made, String taken, boolean mayWithdraw) {
        public String whyField() {
            return "why-" + id;
        }
    }

    private final LookUps lookUps;
    private final LookUpReading reading;
    private final LookUpFields fields;
    private final Ledger ledger;
    private final NoteWords say;
    private final ChairTime time;
    private final Who who;

    LookUpPages(LookUps lookUps, LookUpReading reading, LookUpFields fields, Ledger ledger, NoteWords say,
        ChairTime time, Who who) {
        this.lookUps = lookUps;
        this.reading = reading;
        this.fields = fields;
        this.ledger = ledger;
        this.say = say;
        this.time = time;
        this.who = who;
    }

    @GET
    @Transactional
    public TemplateInstance show() {
        ledger.read(who.staff().id.toString(), "look-ups read", "");
        return list(blank(), new Mistakes());
    }

    @POST
    public Response add(MultivaluedMap<String, String> posted) {
        var form = new Form(posted);
        var mistakes = new Mistakes();
        Optional<LookUps.Body> body = reading.read(form, mistakes);
        if (body.isEmpty()) {
            return FormAgain.with(list(form, mistakes));
        }
        lookUps.keep(form.one("submission"), body.get(), who.staff().id);
        return BenchDoor.go(LIST);
    }

    @POST
    @Path("/{id}/withdraw")
    public Response withdraw(@RestPath UUID id, MultivaluedMap<String, String> posted) {
        LookUp found = lookUps.find(id).orElseThrow(NotFoundException::new);
        if (!mayWithdraw(found)) {
            throw new ForbiddenException("only who looked it up, or the owner");
        }
        String why = new Form(posted).one("why");
        var mistakes = new Mistakes();
        mistakes.expect(!why.isEmpty(), "why-" + id, say.lookup_why_missing());
        mistakes.expect(why.length() <= LONGEST_REASON, "why-" + id, say.strike_why_long(LONGEST_REASON));
        if (!mistakes.isEmpty()) {
            return FormAgain.with(list(blank(), mistakes));
        }
        lookUps.withdraw(id, why, who.staff().id);
        return BenchDoor.go(LIST);
    }

    private static Form blank() {
        return new Form(new MultivaluedHashMap<>());
    }

    private TemplateInstance list(Form form, Mistakes mistakes) {
        return new LookUpsPage(lookUps.all().stream().map(this::line).toList(), who.isOwner(),
            fields.asked(LIST, form), mistakes);
    }

    private Line line(LookUp one) {
        LookUps.Body body = lookUps.body(one);
        String taken = one.withdrawnAt().map(at -> say.lookup_taken(lookUps.withdrawnWhy(one),
            one.withdrawnBy().map(BenchDoor::name).orElse(""), at(at))).orElse("");
        return new Line(one.id().toString(), body.name(), say.lookup_said(fields.means(body.means()), body.source()),
            say.made_by(BenchDoor.name(one.madeBy()), at(one.madeAt())), taken, one.stands() && mayWithdraw(one));
    }

    /** Whoever looked it up, and the owner. */
    private boolean mayWithdraw(LookUp one) {
        return who.isOwner() || one.madeBy().equals(who.staff().id);
    }

    private String at(Instant moment) {
        return time.dayAndTime(moment.atZone(Salon.the().zoneId()));
    }
}
