package foretress.skintest;

import foretress.ledger.ByStaff;
import foretress.visit.Visit;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** How the spot looks, read by staff. */
@Path("/visits/{id}/skin-test/tests/{test}/read")
public class SkinTestReadPages {
    private static final int LONGEST = 1000;

    @CheckedTemplate(basePath = "skintest", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ReadPage(String id, String address, String client, Overview.One test, List<Choice> signs, Form form,
        String submission, Mistakes mistakes)
        implements TemplateInstance {}

    public record Choice(String code, String words, boolean chosen) {}

    private final ByStaff byStaff;
    private final SkinTestDoor door;
    private final SkinTestRecord record;
    private final LookRecording looks;
    private final Overviews overviews;
    private final SkinWords say;

    SkinTestReadPages(SkinTestDoor door, SkinTestRecord record, LookRecording looks, Overviews overviews,
        SkinWords say, ByStaff byStaff) {
        this.byStaff = byStaff;
        this.door = door;
        this.record = record;
        this.looks = looks;
        this.overviews = overviews;
        this.say = say;
    }

    @GET
    public TemplateInstance look(@RestPath UUID id, @RestPath UUID test) {
        Visit visit = door.visit(id);
        byStaff.looked("skin test page read", id);
        return readPage(visit, door.test(id, test), new Form(new MultivaluedHashMap<>()),
            UUID.randomUUID().toString(),
            new Mistakes());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response read(@RestPath UUID id, @RestPath UUID test, MultivaluedMap<String, String> posted) {
        Visit visit = door.visit(id);
        TestFile told = door.test(id, test);
        var form = new Form(posted);
        UUID submission =
            FormIds.of(form.one("submission")).orElseThrow(() -> new BadRequestException("a form without its name"));
        if (SkinTestEntry.submitted(submission).isPresent()) {
            return SkinTestDoor.back(visit, "read");
        }
        var mistakes = new Mistakes();
        Optional<SkinLook> look = looked(visit, form, mistakes);
        look.ifPresent(seen -> kept(submission, told, seen, visit, mistakes));
        if (!mistakes.isEmpty()) {
            return FormAgain.with(readPage(visit, told, form, submission.toString(), mistakes));
        }
        return SkinTestDoor.back(visit, look.orElseThrow().nothing() ? "read" : "reacted");
    }

    private void kept(UUID submission, TestFile told, SkinLook look, Visit visit, Mistakes mistakes) {
        try {
            looks.read(submission, told.test().id(), look, door.staff());
        } catch (LookRecording.TooEarly early) {
            mistakes.add("signs", say.read_too_early(door.moment(early.from(), visit)));
        }
    }

    private Optional<SkinLook> looked(Visit visit, Form form, Mistakes mistakes) {
        List<String> ticked = form.all("sign");
        List<SkinSign> signs = ticked.stream().flatMap(code -> SkinSign.of(code).stream()).toList();
        mistakes.expect(!ticked.isEmpty() && signs.size() == ticked.size(), "signs", say.read_signs_missing());
        mistakes.expect(signs.size() < 2 || !signs.contains(SkinSign.NONE), "signs", say.read_none_and_more());
        mistakes.expect(form.one("words").length() <= LONGEST, "words", say.read_words_long());
        mistakes.expect(form.ticked("spot"), "spot", say.read_spot_missing());
        return mistakes.isEmpty()
            ? Optional.of(
                new SkinLook(signs, Optional.empty(), form.one("words"), record.masking(visit), form.ticked("mixing")))
            : Optional.empty();
    }

    private ReadPage readPage(Visit visit, TestFile told, Form form, String submission, Mistakes mistakes) {
        Overview.One one = overviews.of(visit).tests().stream()
            .filter(test -> test.id().equals(told.test().id().toString())).findFirst().orElseThrow();
        List<Choice> signs = new ArrayList<>();
        List.of(SkinSign.NONE, SkinSign.FAINT, SkinSign.REDNESS, SkinSign.SWELLING, SkinSign.BURNING, SkinSign.BLISTERS,
            SkinSign.ITCH, SkinSign.ELSEWHERE, SkinSign.FACE, SkinSign.BREATHING)
            .forEach(sign -> signs.add(new Choice(sign.code(), overviews.sign(sign), form.is("sign", sign.code()))));
        return new ReadPage(visit.id.toString(), SkinTestDoor.address(visit), visit.client.fullName(), one, signs, form,
            submission,
            mistakes);
    }
}
