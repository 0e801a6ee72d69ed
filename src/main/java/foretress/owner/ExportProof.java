package foretress.owner;

import foretress.salon.ProveAgain;
import foretress.salon.Who;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.inject.Singleton;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import java.util.OptionalLong;

/** What leaves the house as a file is given to an owner who has just proved once more who they are (ASVS 5.0, 7.5.3). */
@Singleton
class ExportProof {
    /** @param back the page it was asked for on */
    @CheckedTemplate(basePath = "owner", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ExportPage(String address, String back, Mistakes mistakes) implements TemplateInstance {}

    private final ProveAgain proveAgain;
    private final Who who;
    private final TrailWords say;

    ExportProof(ProveAgain proveAgain, Who who, TrailWords say) {
        this.proveAgain = proveAgain;
        this.who = who;
        this.say = say;
    }

    /** @param address of the file, with the search it is of */
    static TemplateInstance ask(String address, String back) {
        return new ExportPage(address, back, new Mistakes());
    }

    /** The page again where it was not proved; empty where the file may go out. */
    Optional<Response> refusal(String address, String back, MultivaluedMap<String, String> posted) {
        ProveAgain.Outcome proof = proveAgain.with(who.staff(), new Form(posted).exact("password"));
        OptionalLong seconds = proof.seconds();
        var mistakes = new Mistakes();
        mistakes.expect(proof.proved(), "password", seconds.isPresent()
            ? say.export_password_wait(seconds.getAsLong()) : say.export_password_wrong());
        return mistakes.isEmpty() ? Optional.empty()
            : Optional.of(FormAgain.with(seconds, new ExportPage(address, back, mistakes)));
    }
}
