package foretress.rights;

import foretress.invitation.Codes;
import foretress.invitation.Guest;
import foretress.ledger.Ledger;
import foretress.salon.Salon;
import foretress.web.DateWords;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Language;
import foretress.web.Mistakes;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.qute.i18n.Localized;
import io.quarkus.qute.i18n.MessageBundles;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** By her own link a client gets everything kept about her, after a one-use code, and asks for what is hers to ask. */
@Path(RightsPages.AT)
public class RightsPages {
    static final String AT = "/answers/rights";
    private static final int LONGEST = 4000;

    @CheckedTemplate(basePath = "rights", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record RightsPage(List<Shown> made, List<Choice> kinds, Form form, String submission, Mistakes mistakes)
        implements TemplateInstance {}

    public record Choice(String code, String words, boolean chosen) {}

    /**
     * A request as the client sees it.
     *
     * @param stands by when it must be answered; empty once it was
     * @param answered when it was; empty while it was not
     */
    public record Shown(String got, String kind, String words, String stands, String answered, String answer) {}

    private final Guest guest;
    private final Codes codes;
    private final Requests requests;
    private final RecordZip zip;
    private final Ledger ledger;
    private final Language language;

    RightsPages(Guest guest, Codes codes, Requests requests, RecordZip zip, Ledger ledger, Language language) {
        this.guest = guest;
        this.codes = codes;
        this.requests = requests;
        this.zip = zip;
        this.ledger = ledger;
        this.language = language;
    }

    private RightsWords say() {
        return MessageBundles.get(RightsWords.class, Localized.Literal.of(language.getTag()));
    }

    @GET
    public TemplateInstance show() {
        notOnTheTablet();
        return page(new Form(new MultivaluedHashMap<>()), UUID.randomUUID().toString(), new Mistakes());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response ask(MultivaluedMap<String, String> posted) {
        notOnTheTablet();
        var form = new Form(posted);
        UUID submission = submission(form);
        Optional<RequestKind> kind = RequestKind.of(form.one("kind"));
        String words = form.one("words");
        var mistakes = new Mistakes();
        mistakes.expect(kind.isPresent(), "kind", say().rights_kind_missing());
        if (mistakes.expect(!words.isEmpty(), "words", say().rights_words_missing())) {
            mistakes.expect(words.length() <= LONGEST, "words", say().rights_long());
        }
        if (!mistakes.isEmpty()) {
            return FormAgain.with(page(form, submission.toString(), mistakes));
        }
        requests.make(submission, guest.visitId(), kind.orElseThrow(), new Requests.Words(words, language.getTag()));
        return Response.seeOther(URI.create(AT)).build();
    }

    /** Whoever holds the salon's tablet may be anybody who works there. */
    private void notOnTheTablet() {
        if (guest.isOnHandedTablet()) {
            throw new NotFoundException();
        }
    }

    /** Soon after a code was shown in this very browser: whoever holds a link and a birth date alone gets nothing. */
    @GET
    @Path("/record")
    public Response everything() {
        notOnTheTablet();
        if (!codes.shownLately(guest)) {
            return Response.seeOther(URI.create("/code?record=yes")).build();
        }
        UUID client = guest.client().id;
        ledger.note("client", "everything about a client exported", client.toString());
        return RecordPages.answer(zip, client);
    }

    private static UUID submission(Form form) {
        try {
            return UUID.fromString(form.one("submission"));
        } catch (IllegalArgumentException notAnId) {
            throw new BadRequestException("a form without its name", notAnId);
        }
    }

    private TemplateInstance page(Form form, String submission, Mistakes mistakes) {
        return new RightsPage(
            requests.of(guest.client().id).stream().filter(this::mayBeShown).map(this::shown).toList(),
            Arrays.stream(RequestKind.values())
                .map(kind -> new Choice(kind.code(), kind.asked(say()), form.is("kind", kind.code()))).toList(),
            form, submission, mistakes);
    }

    /** What was asked through another visit's link is shown as its answers are. */
    private boolean mayBeShown(RightsRequest made) {
        return guest.seesEarlierVisits() || made.visitId().equals(guest.visitId());
    }

    private Shown shown(RightsRequest made) {
        DateWords dates = Salon.the().dates(language.getTag());
        return new Shown(say().rights_got(dates.fullAndHour(made.madeAt().atZone(Salon.the().zoneId()))),
            made.kind().asked(say()), requests.read(made).words(),
            made.closedAt().isPresent() ? "" : say().rights_due(Salon.the().name, dates.full(made.dueOn())),
            made.closedAt()
                .map(at -> say().rights_answered(dates.full(at.atZone(Salon.the().zoneId())))).orElse(""),
            requests.answer(made));
    }
}
