package foretress.skintest;

import foretress.ledger.Ledger;
import foretress.salon.Staff;
import foretress.vault.SealedJson;
import foretress.visit.Task;
import foretress.visit.Tasks;
import foretress.visit.Visit;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Language;
import foretress.web.Mistakes;
import foretress.web.PictureWords;
import foretress.web.Upload;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.qute.i18n.Localized;
import io.quarkus.qute.i18n.MessageBundles;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/**
 * The client tells how the skin looks. What cannot wait stands first, before anything is checked or asked, on a link that is
 * known and on one that is not. Nothing that was ever answered is shown here.
 */
@Path("/a/{token}")
public class AftercarePages {
    private static final int LONGEST = 1000;
    private static final int MOST_PHOTOS = 3;

    @CheckedTemplate(basePath = "skintest", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record UrgentPage(String onward) implements TemplateInstance {}

    @CheckedTemplate(basePath = "skintest", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record LookPage(String token, List<Choice> signs, List<Choice> began, Form form, String submission,
        Mistakes mistakes) implements TemplateInstance {}

    @CheckedTemplate(basePath = "skintest", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ToldPage(String token, boolean urgent, boolean nothing, String promise, boolean photo, boolean photoKept,
        Mistakes mistakes)
        implements TemplateInstance {}

    @CheckedTemplate(basePath = "skintest", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record NoLinkPage() implements TemplateInstance {}

    public record Choice(String code, String words, boolean chosen) {}

    private final Ledger ledger;
    private final Links links;
    private final LookRecording looks;
    private final SealedJson sealed;
    private final Tasks tasks;
    private final Language language;

    @Context HttpHeaders headers;

    AftercarePages(Links links, LookRecording looks, SealedJson sealed, Tasks tasks, Language language, Ledger ledger) {
        this.ledger = ledger;
        this.links = links;
        this.looks = looks;
        this.sealed = sealed;
        this.tasks = tasks;
        this.language = language;
    }

    @GET
    public TemplateInstance urgentSigns(@RestPath String token) {
        links.behind(token).ifPresent(this::speak);
        return new UrgentPage("/a/" + token + "/look");
    }

    @GET
    @Path("/look")
    public Response look(@RestPath String token) {
        return with(token,
            test -> Response
                .ok(page(token, new Form(new MultivaluedHashMap<>()), UUID.randomUUID().toString(), new Mistakes()))
                .build());
    }

    @POST
    @Path("/look")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response told(@RestPath String token, MultivaluedMap<String, String> posted) {
        return with(token, test -> {
            var form = new Form(posted);
            UUID submission = FormIds.of(form.one("submission"))
                .orElseThrow(() -> new BadRequestException("a form without its name"));
            var mistakes = new Mistakes();
            List<SkinSign> signs = signs(form, mistakes);
            Optional<Onset> began = began(form, signs, mistakes);
            mistakes.expect(form.one("words").length() <= LONGEST, "words", say().look_words_long());
            if (!mistakes.isEmpty()) {
                return FormAgain.with(page(token, form, submission.toString(), mistakes));
            }
            looks.report(submission, test.id(), new SkinLook(signs, began, form.one("words"), List.of(), false));
            return Response.seeOther(URI.create("/a/" + token + "/told")).build();
        });
    }

    /** What was ticked; empty when something was that is not offered here. */
    private List<SkinSign> signs(Form form, Mistakes mistakes) {
        List<String> ticked = form.all("sign");
        List<SkinSign> signs =
            ticked.stream().flatMap(code -> SkinSign.of(code).stream()).filter(sign -> sign != SkinSign.FAINT).toList();
        boolean known = !ticked.isEmpty() && signs.size() == ticked.size();
        if (mistakes.expect(known, "signs", say().look_missing())) {
            mistakes.expect(signs.size() < 2 || !signs.contains(SkinSign.NONE), "signs", say().look_none_and_more());
        }
        return known ? signs : List.of();
    }

    private Optional<Onset> began(Form form, List<SkinSign> signs, Mistakes mistakes) {
        if (signs.isEmpty() || signs.contains(SkinSign.NONE)) {
            return Optional.empty();
        }
        Optional<Onset> began = Onset.of(form.one("began"));
        mistakes.expect(began.isPresent(), "began", say().look_began_missing());
        return began;
    }

    @GET
    @Path("/told")
    public Response told(@RestPath String token) {
        return with(token,
            test -> newest(test).map(entry -> Response.ok(toldPage(token, test, entry, new Mistakes())).build())
                .orElseGet(() -> Response.seeOther(URI.create("/a/" + token)).build()));
    }

    @POST
    @Path("/photo")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response photo(@RestPath String token, @RestForm("photo") FileUpload photo) {
        return with(token, test -> newest(test).map(entry -> keep(token, test, entry, photo))
            .orElseGet(() -> Response.seeOther(URI.create("/a/" + token)).build()));
    }

    private Response keep(String token, TestApplied test, SkinTestEntry entry, FileUpload photo) {
        var mistakes = new Mistakes();
        if (mistakes.expect(Photo.ofEntry(entry.id()).size() < MOST_PHOTOS, "photo", say().photo_enough(MOST_PHOTOS))) {
            Upload.photo(photo, "photo", mistakes, pictureWords()).ifPresent(drawn -> looks.photo(entry, drawn));
        }
        if (!mistakes.isEmpty()) {
            return FormAgain.with(toldPage(token, test, entry, mistakes));
        }
        return Response.seeOther(URI.create("/a/" + token + "/told")).build();
    }

    private PictureWords pictureWords() {
        return MessageBundles.get(PictureWords.class, Localized.Literal.of(language.getTag()));
    }

    private TemplateInstance toldPage(String token, TestApplied test, SkinTestEntry entry, Mistakes mistakes) {
        SkinLook look = sealed.open(entry, SkinLook.class);
        int photos = Photo.ofEntry(entry.id()).size();
        return new ToldPage(token, look.urgent(), look.nothing(), look.nothing() ? "" : promise(test),
            photos < MOST_PHOTOS, photos > 0, mistakes);
    }

    private String promise(TestApplied test) {
        Visit visit = Visit.findById(test.visitId());
        return tasks.open(test.visitId(), Task.Kind.SPEAK_AT_ONCE).map(task -> {
            String until = TestMails.moment(task.dueAt, visit);
            return task.owner().flatMap(Staff::byId).map(staff -> say().told_promise(staff.name, until))
                .orElseGet(() -> say().told_promise_desk(until));
        }).orElseGet(() -> say().told_spoken());
    }

    private static Optional<SkinTestEntry> newest(TestApplied test) {
        return SkinTestEntry.ofTest(test.id()).stream().filter(entry -> entry.kind() == SkinTestEntry.Kind.REPORT)
            .reduce((before, after) -> after);
    }

    private TemplateInstance page(String token, Form form, String submission, Mistakes mistakes) {
        List<Choice> signs = new ArrayList<>();
        Arrays.stream(SkinSign.values()).filter(sign -> sign != SkinSign.FAINT)
            .forEach(sign -> signs.add(new Choice(sign.code(), words(sign), form.is("sign", sign.code()))));
        List<Choice> began = Arrays.stream(Onset.values())
            .map(one -> new Choice(one.code(), words(one), form.is("began", one.code()))).toList();
        return new LookPage(token, signs, began, form, submission, mistakes);
    }

    private String words(SkinSign sign) {
        return switch (sign) {
            case NONE, FAINT -> say().look_none();
            case REDNESS -> say().look_redness();
            case SWELLING -> say().look_swelling();
            case BURNING -> say().look_burning();
            case BLISTERS -> say().look_blisters();
            case ITCH -> say().look_itch();
            case ELSEWHERE -> say().look_elsewhere();
            case FACE -> say().look_face();
            case BREATHING -> say().look_breathing();
        };
    }

    private String words(Onset began) {
        return switch (began) {
            case WITHIN_TWO_HOURS -> say().began_within_two_hours();
            case SAME_DAY -> say().began_same_day();
            case NEXT_DAYS -> say().began_next_days();
            case WITHIN_A_WEEK -> say().began_within_a_week();
            case LATER -> say().began_later();
            case UNKNOWN -> say().began_unknown();
        };
    }

    private Response with(String token, Function<TestApplied, Response> page) {
        Optional<TestApplied> test = links.behind(token);
        test.ifPresent(found -> {
            speak(found);
            ledger.read("client", "aftercare link opened", found.id().toString());
        });
        return test.map(page).orElseGet(() -> Response.status(404).entity(new NoLinkPage()).build());
    }

    /** The client's language, unless this browser was told another. */
    private void speak(TestApplied test) {
        if (!headers.getCookies().containsKey(Language.COOKIE)) {
            language.use(Visit.<Visit>findById(test.visitId()).client.language);
        }
    }

    private AftercareWords say() {
        return TestMails.in(language.getTag());
    }
}
