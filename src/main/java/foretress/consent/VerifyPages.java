package foretress.consent;

import foretress.consent.SealedPapers.Standing;
import foretress.salon.Salon;
import foretress.seal.SealCheck;
import foretress.seal.Seals;
import foretress.web.Caller;
import foretress.web.ClientWords;
import foretress.web.FormAgain;
import foretress.web.Language;
import foretress.web.Mistakes;
import foretress.web.RateLimiter;
import foretress.web.Upload;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.qute.i18n.Localized;
import io.quarkus.qute.i18n.MessageBundles;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/** Anybody who holds a paper can hold it against the salon's seal. Nothing of it is kept, and nothing is said that is not in it. */
@Path("/verify")
public class VerifyPages {
    /**
     * @param verdict the code of what was found, for whoever reads the page by program
     * @param stands it is the salon's, unchanged and current
     * @param lines the same in words, the first the gravest
     */
    public record Found(String verdict, boolean stands, List<String> lines) {}

    /** @param found empty before a file was sent */
    @CheckedTemplate(basePath = "consent", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record VerifyPage(Optional<Found> found, Mistakes mistakes) implements TemplateInstance {}

    private final Seals seals;
    private final SealedPapers papers;
    private final RateLimiter brake;
    private final Caller caller;
    private final Language language;

    VerifyPages(Seals seals, SealedPapers papers, RateLimiter brake, Caller caller, Language language) {
        this.seals = seals;
        this.papers = papers;
        this.brake = brake;
        this.caller = caller;
        this.language = language;
    }

    @GET
    public TemplateInstance ask() {
        return new VerifyPage(Optional.empty(), new Mistakes());
    }

    @POST
    public Response check(@RestForm("paper") FileUpload paper) {
        brake.stranger(RateLimiter.Door.PAPER, caller.address())
            .ifPresent(wait -> { throw RateLimiter.tooOften(wait); });
        byte[] file = Upload.unread(paper);
        var mistakes = new Mistakes();
        return mistakes.expect(file.length > 0, "paper", say().verify_missing())
            ? Response.ok(new VerifyPage(Optional.of(found(file)), mistakes)).build()
            : FormAgain.with(new VerifyPage(Optional.empty(), mistakes));
    }

    private Found found(byte[] file) {
        SealCheck.Verdict verdict = SealCheck.of(file, seals.certificates());
        if (verdict == SealCheck.Verdict.UNCHANGED) {
            return unchanged(papers.standing(file));
        }
        return new Found(verdict.name(), false, List.of(switch (verdict) {
            case UNCHANGED, ADDED_TO -> say().verify_added(Salon.the().name);
            case CHANGED -> say().verify_changed();
            case OTHER_SEAL -> say().verify_other();
            case NOT_SEALED -> say().verify_not_sealed();
            case UNREADABLE -> say().verify_unreadable();
        }));
    }

    private Found unchanged(Optional<Standing> standing) {
        String sealed = say().verify_unchanged(Salon.the().name);
        String since = standing.map(this::said).orElseGet(() -> say().verify_gone());
        boolean stands = standing.filter(Standing.NEWEST::equals).isPresent();
        return new Found(SealCheck.Verdict.UNCHANGED.name(), stands,
            stands ? List.of(sealed, since) : List.of(since, sealed));
    }

    private String said(Standing standing) {
        return switch (standing) {
            case NEWEST -> say().verify_newest();
            case SUPERSEDED -> say().verify_superseded();
            case TAKEN_BACK -> say().verify_taken_back();
        };
    }

    private ClientWords say() {
        return MessageBundles.get(ClientWords.class, Localized.Literal.of(language.getTag()));
    }
}
