package foretress.note;

import foretress.bench.BenchDoor;
import foretress.bench.BenchElasticityPages.Choice;
import foretress.bench.BenchHead;
import foretress.ledger.Ledger;
import foretress.picture.Paper;
import foretress.salon.ProductLines;
import foretress.visit.PlannedProducts;
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
import jakarta.ws.rs.ForbiddenException;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/** What only staff can write down: a letter, a doctor's word, a cut, the band of new growth; and what each of them changes. */
@Path("/visits/{id}/noted")
public class NotedPages {
    private static final int LONGEST_REASON = 500;

    @CheckedTemplate(basePath = "note", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record NotedPage(BenchHead head, String at, List<NotedLine> lines, boolean wordOwed, Mistakes mistakes)
        implements TemplateInstance {}

    @CheckedTemplate(basePath = "note", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record NotedForm(BenchHead head, String at, String kind, String title, Form form, List<Choice> products,
        List<Choice> subjects, String submission,
        Mistakes mistakes) implements TemplateInstance {}

    private final BenchDoor door;
    private final Notes notes;
    private final NotedLines lines;
    private final NotedReading reading;
    private final NotedSubjects subjects;
    private final ProductLines products;
    private final PlannedProducts planned;
    private final Ledger ledger;
    private final NoteWords say;
    private final PictureWords pictures;
    private final ChairTime time;
    private final Clock clock;

    NotedPages(BenchDoor door, Notes notes, NotedLines lines, NotedReading reading, NotedSubjects subjects,
        ProductLines products, PlannedProducts planned,
        Ledger ledger, NoteWords say, PictureWords pictures, ChairTime time, Clock clock) {
        this.door = door;
        this.notes = notes;
        this.lines = lines;
        this.reading = reading;
        this.subjects = subjects;
        this.products = products;
        this.planned = planned;
        this.ledger = ledger;
        this.say = say;
        this.pictures = pictures;
        this.time = time;
        this.clock = clock;
    }

    static String at(Visit visit) {
        return "/visits/" + visit.id + "/noted";
    }

    @GET
    public TemplateInstance show(@RestPath UUID id) {
        Visit visit = door.visit(id);
        ledger.read(door.staff().toString(), "notes read", id.toString());
        return page(visit, new Mistakes());
    }

    @GET
    @Path("/{kind: letter|word|cut|growth}")
    public TemplateInstance ask(@RestPath UUID id, @RestPath String kind) {
        Visit visit = door.ahead(id);
        ledger.read(door.staff().toString(), "notes read", id.toString());
        return form(visit, of(kind), new Form(new MultivaluedHashMap<>()), UUID.randomUUID().toString(),
            new Mistakes());
    }

    @POST
    @Path("/{kind: letter|word|cut|growth}")
    public Response keep(@RestPath UUID id, @RestPath String kind, MultivaluedMap<String, String> posted) {
        Visit visit = door.ahead(id);
        var form = new Form(posted);
        var mistakes = new Mistakes();
        Optional<Object> body = reading.read(of(kind), form, today(visit), mistakes);
        mistakes.expect(!form.one("submission").isEmpty(), "submission", say.form_incomplete());
        if (!mistakes.isEmpty()) {
            return FormAgain.with(form(visit, of(kind), form, form.one("submission"), mistakes));
        }
        notes.keep(visit.id, of(kind), form.one("submission"), body.orElseThrow(), door.staff());
        return BenchDoor.go(at(visit));
    }

    @POST
    @Path("/{note}/strike")
    public Response strike(@RestPath UUID id, @RestPath UUID note, MultivaluedMap<String, String> posted) {
        Visit visit = door.ahead(id);
        Noted found = found(visit, note);
        if (!lines.mayStrike(found)) {
            throw new ForbiddenException("only who wrote it down, or the owner");
        }
        String why = new Form(posted).one("why");
        var mistakes = new Mistakes();
        mistakes.expect(!why.isEmpty(), "why-" + note, say.strike_why_missing());
        mistakes.expect(why.length() <= LONGEST_REASON, "why-" + note, say.strike_why_long(LONGEST_REASON));
        if (!mistakes.isEmpty()) {
            return FormAgain.with(page(visit, mistakes));
        }
        notes.strike(found, why, door.staff());
        return BenchDoor.go(at(visit));
    }

    @POST
    @Path("/{note}/paper")
    public Response paper(@RestPath UUID id, @RestPath UUID note, @RestForm("paper") FileUpload paper) {
        Visit visit = door.ahead(id);
        Noted found = found(visit, note);
        var mistakes = new Mistakes();
        Upload.paper(paper, "paper-" + note, mistakes, pictures).ifPresent(kept -> mistakes
            .expect(notes.add(found, kept, door.staff()), "paper-" + note, say.paper_enough(Notes.MOST_PAPERS)));
        return mistakes.isEmpty() ? BenchDoor.go(at(visit)) : FormAgain.with(page(visit, mistakes));
    }

    @GET
    @Path("/{note}/papers/{paper}")
    public Response look(@RestPath UUID id, @RestPath UUID note, @RestPath UUID paper) {
        NotedPaper kept = notes.paper(found(door.visit(id), note), paper).orElseThrow(NotFoundException::new);
        ledger.note(door.staff().toString(), "letter seen", kept.id().toString());
        return switch (kept.kept()) {
            case REDRAWN -> SentFile.photo(notes.bytes(kept));
            case FILE -> SentFile.download(notes.bytes(kept), kept.mediaType(),
                kept.mediaType().equals(Paper.PDF) ? "letter.pdf" : "letter");
            case AS_SENT -> SentFile.download(notes.bytes(kept), "application/octet-stream", "letter");
        };
    }

    private Noted found(Visit visit, UUID note) {
        return notes.find(visit.client.id, note).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(Visit visit, Mistakes mistakes) {
        return new NotedPage(BenchHead.of(visit, time), at(visit), lines.of(visit), !subjects.owed(visit).isEmpty(),
            mistakes);
    }

    private TemplateInstance form(Visit visit, NotedKind kind, Form form, String submission, Mistakes mistakes) {
        return new NotedForm(BenchHead.of(visit, time), at(visit), kind.code(), title(kind), form,
            products(visit, form.one("line")),
            subjects.of(visit, form.one("about")), submission, mistakes);
    }

    /** The planned product is chosen already. */
    private List<Choice> products(Visit visit, String chosen) {
        String first = chosen.isEmpty() ? planned.of(visit.id).map(p -> p.line().lineId.toString()).orElse("") : chosen;
        return products.inUse().stream()
            .map(line -> new Choice(line.lineId.toString(), line.name, line.lineId.toString().equals(first))).toList();
    }

    private String title(NotedKind kind) {
        return switch (kind) {
            case LETTER -> say.letter();
            case WORD -> say.word();
            case CUT -> say.cut();
            case GROWTH -> say.growth();
        };
    }

    private LocalDate today(Visit visit) {
        return clock.instant().atZone(visit.zone()).toLocalDate();
    }

    private static NotedKind of(String kind) {
        return NotedKind.of(kind).orElseThrow(NotFoundException::new);
    }
}
