package foretress.bench;

import foretress.ledger.Ledger;
import foretress.visit.Visit;
import foretress.web.ChairTime;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import foretress.web.PictureWords;
import foretress.web.SentFile;
import foretress.web.Upload;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.OptionalLong;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/** What can be done with a test whatever its kind: strike it out, add a photo, look at one. */
@Path("/visits/{id}/bench/tests/{test}")
public class BenchRecordPages {
    @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record BenchAgain(BenchHead head, String name, String back, BenchTail tail, String typed, Mistakes mistakes)
        implements TemplateInstance {}

    private final BenchDoor door;
    private final BenchRecords tests;
    private final BenchTails tails;
    private final BenchStruck struck;
    private final Ledger ledger;
    private final BenchSay words;
    private final BenchWords say;
    private final PictureWords pictures;
    private final ChairTime time;

    BenchRecordPages(BenchDoor door, BenchRecords tests, BenchTails tails, BenchStruck struck, Ledger ledger,
        BenchSay words, BenchWords say, PictureWords pictures, ChairTime time) {
        this.door = door;
        this.tests = tests;
        this.tails = tails;
        this.struck = struck;
        this.ledger = ledger;
        this.words = words;
        this.say = say;
        this.pictures = pictures;
        this.time = time;
    }

    @POST
    @Path("/strike")
    public Response strike(@RestPath UUID id, @RestPath UUID test, MultivaluedMap<String, String> posted) {
        Visit visit = door.visit(id);
        BenchRecord found = door.test(id, test);
        var form = new Form(posted);
        var mistakes = new Mistakes();
        OptionalLong pause = struck.check(door.strike(found), form, "why", "password", mistakes);
        if (!mistakes.isEmpty()) {
            return FormAgain.with(pause, page(visit, found, form.one("why"), mistakes));
        }
        tests.strike(found, form.one("why"), door.staff());
        return back(found);
    }

    @POST
    @Path("/photo")
    public Response photo(@RestPath UUID id, @RestPath UUID test, @RestForm("photo") FileUpload photo) {
        Visit visit = door.ahead(id);
        BenchRecord found = door.test(id, test);
        var mistakes = new Mistakes();
        Upload.photo(photo, "photo", mistakes, pictures)
            .ifPresent(drawn -> mistakes.expect(tests.add(found, drawn, door.staff()), "photo",
                say.photo_enough(BenchRecords.MOST_PHOTOS)));
        return mistakes.isEmpty() ? back(found) : again(visit, found, "", mistakes);
    }

    @GET
    @Path("/photo/{photo}")
    public Response look(@RestPath UUID id, @RestPath UUID test, @RestPath UUID photo) {
        BenchRecord found = door.test(id, test);
        BenchPhoto kept = tests.photo(found, photo).orElseThrow(NotFoundException::new);
        ledger.note(door.staff().toString(), "bench photo seen", kept.id().toString());
        return kept.kept() == Keeping.REDRAWN ? SentFile.photo(tests.bytes(kept))
            : SentFile.download(tests.bytes(kept), "application/octet-stream", "photo");
    }

    private Response again(Visit visit, BenchRecord test, String typed, Mistakes mistakes) {
        return FormAgain.with(page(visit, test, typed, mistakes));
    }

    private BenchAgain page(Visit visit, BenchRecord test, String typed, Mistakes mistakes) {
        return new BenchAgain(BenchHead.of(visit, time), words.kind(test.kind()), address(test), tails.of(visit, test),
            typed, mistakes);
    }

    private static Response back(BenchRecord test) {
        return BenchDoor.go(address(test));
    }

    private static String address(BenchRecord test) {
        return test.kind() == BenchKind.LENGTH ? "/visits/" + test.visitId() + "/bench" : BenchDoor.at(test);
    }
}
