package foretress.salon;

import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import foretress.web.NameCharacters;
import foretress.web.SpokenLanguages;
import foretress.web.StaffLanguage;
import foretress.web.Supported;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestPath;

/** The owner's drafted languages: read side by side, on paper too, and then shown to clients in a named person's name. */
@Path("/languages")
@Produces(MediaType.TEXT_HTML)
public class LanguageReviewPages {
    private static final int LONGEST = 120;

    @CheckedTemplate(basePath = "salon", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record LanguagesPage(List<Draft> drafts) implements TemplateInstance {}

    @CheckedTemplate(basePath = "salon", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record LanguageSheet(Draft draft, List<Chapter> chapters, Form form, Mistakes mistakes)
        implements TemplateInstance {}

    /** @param dir which way its script runs */
    public record Draft(String tag, String name, String ownName, String dir, boolean chosen, boolean shown,
        Optional<Read> read,
        int missing) {}

    /** @param changed sentences that are no longer as they were then */
    public record Read(String reader, String day, int changed) {}

    public record Chapter(String name, List<Line> lines) {}

    /** @param again changed since the draft was read */
    public record Line(String english, String own, boolean again) {}

    private final LanguageReviews reviews;
    private final SpokenLanguages spoken;
    private final SettingsWords words;
    private final Who who;
    private final StaffLanguage staff;

    LanguageReviewPages(LanguageReviews reviews, SpokenLanguages spoken, SettingsWords words, Who who,
        StaffLanguage staff) {
        this.staff = staff;
        this.reviews = reviews;
        this.spoken = spoken;
        this.words = words;
        this.who = who;
    }

    @GET
    @Transactional
    public TemplateInstance all() {
        return new LanguagesPage(drafts().map(tag -> draft(tag, reviews.sentences(tag))).toList());
    }

    private static Stream<String> drafts() {
        return Supported.TAGS.stream().filter(tag -> !tag.equals(Supported.ORIGINAL));
    }

    private Draft draft(String tag, ClientSentences sentences) {
        Locale locale = Locale.forLanguageTag(tag);
        return new Draft(tag, locale.getDisplayLanguage(staff.locale()), locale.getDisplayLanguage(locale),
            Supported.dir(tag), Salon.the().languageTags().contains(tag), spoken.tags().contains(tag),
            LanguageReview.of(tag).map(review -> read(review, sentences)), sentences.missing().size());
    }

    private Read read(LanguageReview review, ClientSentences sentences) {
        return new Read(review.reader(),
            Salon.the().dates(staff.tag()).full(review.madeAt().atZone(Salon.the().zoneId())),
            sentences.changedSince(review.marks()).size());
    }

    @GET
    @Path("/{tag}")
    @Transactional
    public TemplateInstance sheet(@RestPath String tag) {
        return sheet(drafted(tag), new Form(new MultivaluedHashMap<>()), new Mistakes());
    }

    private TemplateInstance sheet(String tag, Form form, Mistakes mistakes) {
        ClientSentences sentences = reviews.sentences(tag);
        Map<String, String> marks = LanguageReview.of(tag).map(LanguageReview::marks).orElse(Map.of());
        List<String> changed = marks.isEmpty() ? List.of() : sentences.changedSince(marks);
        List<Chapter> chapters = sentences.chapters().entrySet().stream().map(chapter -> new Chapter(chapter.getKey(),
            chapter.getValue().stream().map(one -> new Line(one.english(), one.own(), changed.contains(one.path())))
                .toList()))
            .toList();
        return new LanguageSheet(draft(tag, sentences), chapters, form, mistakes);
    }

    @POST
    @Path("/{tag}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response read(@RestPath String tag, MultivaluedMap<String, String> fields) {
        var form = new Form(fields);
        var mistakes = new Mistakes();
        String reader = form.one("reader");
        mistakes.expect(!reader.isEmpty() && reader.length() <= LONGEST && NameCharacters.plain(reader), "reader",
            words.languages_reader_missing());
        mistakes.expect(form.one("stands").equals("yes"), "stands", words.languages_stands_missing());
        if (!mistakes.isEmpty()) {
            return FormAgain.with(sheet(drafted(tag), form, mistakes));
        }
        reviews.read(drafted(tag), reader, who.staff().id);
        return Response.seeOther(URI.create("/languages")).build();
    }

    @POST
    @Path("/{tag}/off")
    public Response off(@RestPath String tag) {
        reviews.takeBack(drafted(tag), who.staff().id);
        return Response.seeOther(URI.create("/languages")).build();
    }

    private static String drafted(String tag) {
        return drafts().filter(tag::equals).findFirst().orElseThrow(NotFoundException::new);
    }
}
