package foretress.consultation;

import foretress.decision.DecisionText;
import foretress.intake.Guardians;
import foretress.intake.Intake;
import foretress.intake.Intake.Kept;
import foretress.intake.PaperForm;
import foretress.intake.PaperForms;
import foretress.intake.QuestionView;
import foretress.intake.Views;
import foretress.ledger.Ledger;
import foretress.picture.Paper;
import foretress.picture.RedrawnPhoto;
import foretress.questionnaire.Answers;
import foretress.questionnaire.FormReading;
import foretress.questionnaire.Question;
import foretress.questionnaire.Topic;
import foretress.salon.Staff;
import foretress.salon.Who;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistake;
import foretress.web.Mistakes;
import foretress.web.PictureWords;
import foretress.web.SentFile;
import foretress.web.TypedWords;
import foretress.web.Upload;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/** A client answered on the printed form: staff keep the signed paper, then type it in question by question, as such. */
@Path("/visits/{id}/paper")
public class PaperPages {

    @CheckedTemplate(basePath = "consultation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record PaperBegin(DecisionText.Head head, String day, boolean agreed, boolean signed,
        Optional<Guardians.Named> guardian, Mistakes mistakes)
        implements TemplateInstance {}

    @CheckedTemplate(basePath = "consultation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record PaperTopic(DecisionText.Head head, String typed, String topic, String title, List<QuestionView> questions,
        List<Mistake> mistakes, String submission,
        int version, String doneName) implements TemplateInstance {}

    @CheckedTemplate(basePath = "consultation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record PaperDone(DecisionText.Head head, String typed, boolean maySign) implements TemplateInstance {}

    private final Visits visits;
    private final Intake intake;
    private final PaperForms papers;
    private final Guardians guardians;
    private final Views views;
    private final DecisionText text;
    private final TypedWords say;
    private final PictureWords pictures;
    private final Ledger ledger;
    private final Who who;

    PaperPages(Visits visits, Intake intake, PaperForms papers, Guardians guardians, Views views, DecisionText text,
        TypedWords say,
        PictureWords pictures, Ledger ledger, Who who) {
        this.visits = visits;
        this.intake = intake;
        this.papers = papers;
        this.guardians = guardians;
        this.views = views;
        this.text = text;
        this.say = say;
        this.pictures = pictures;
        this.ledger = ledger;
        this.who = who;
    }

    @GET
    @Transactional
    public Response show(@RestPath UUID id) {
        Visit visit = found(id);
        ledger.read(who.staff().id.toString(), "answers on paper read", id.toString());
        Optional<PaperForm> paper = papers.of(id);
        if (paper.isEmpty() && !papers.mayType(visit)) {
            return Response.seeOther(URI.create("/visits/" + id)).build();
        }
        if (paper.isEmpty()) {
            return Response
                .ok(new PaperBegin(text.head(visit), "", false, false, guardian(visit, "", ""), new Mistakes()))
                .build();
        }
        Answers said = intake.said(visit);
        Optional<Topic> next = papers.mayType(visit) ? next(visit, said) : Optional.empty();
        return Response
            .ok(next
                .<TemplateInstance>map(topic -> page(visit, paper.get(), topic, said, Optional.empty(),
                    Optional.empty(), UUID.randomUUID().toString()))
                .orElseGet(() -> new PaperDone(text.head(visit), typed(paper.get()), visit.state.takesAnswers())))
            .build();
    }

    @POST
    public Response begin(@RestPath UUID id, @RestForm("paper") FileUpload file, @RestForm String day,
        @RestForm String agreed, @RestForm String signed, @RestForm("guardian-name") Optional<String> guardianName,
        @RestForm("guardian-relation") Optional<String> relation) {
        Visit visit = found(id);
        if (papers.of(id).isPresent() || !papers.mayType(visit)) {
            return here(id);
        }
        var mistakes = new Mistakes();
        Optional<LocalDate> on = day(day).filter(d -> !d.isAfter(intake.today(visit)));
        Optional<Paper> taken = Upload.paper(file, "paper", mistakes, pictures);
        mistakes.expect(on.isPresent(), "day", say.day_wrong());
        mistakes.expect("yes".equals(agreed), "agreed", say.agreed_missing());
        mistakes.expect("yes".equals(signed), "signed", say.signed_missing());
        Optional<Guardians.Named> guardian =
            guardian(visit, guardianName.orElse("").strip(), relation.orElse(""));
        guardian.ifPresent(one -> mistakes.expect(one.isWhole(), "guardian-name", say.guardian_missing()));
        if (!mistakes.isEmpty()) {
            return FormAgain.with(new PaperBegin(text.head(visit), Optional.ofNullable(day).orElse(""),
                "yes".equals(agreed), "yes".equals(signed), guardian, mistakes));
        }
        papers.begin(id, taken.orElseThrow(), on.orElseThrow(), guardian, who.staff().id);
        return here(id);
    }

    /** Who signed the paper too; empty where nobody needs to. */
    private Optional<Guardians.Named> guardian(Visit visit, String name, String relation) {
        return guardians.needed(visit) ? Optional.of(new Guardians.Named(name, relation)) : Optional.empty();
    }

    @POST
    @Path("/answers")
    public Response keep(@RestPath UUID id, MultivaluedMap<String, String> posted) {
        Visit visit = found(id);
        PaperForm paper = papers.of(id).orElseThrow(NotFoundException::new);
        if (!papers.mayType(visit)) {
            return here(id);
        }
        var form = new Form(posted);
        Topic topic = views.topic(form.one("topic")).orElseThrow(NotFoundException::new);
        Answers said = intake.said(visit);
        Kept kept = intake.typed(paper, topic,
            Intake.Page.of(posted, form.one("submission"), form.one("version"), visit.client.language),
            papers.pending(visit, topic, said), who.staff().id);
        return switch (kept.outcome()) {
            case CLEAN, AGAIN -> here(id);
            case MISTAKEN, OVERTAKEN -> FormAgain.with(page(visit, paper, topic, said, kept.reading(),
                kept.outcome() == Kept.Outcome.OVERTAKEN ? Optional.of(views.overtaken()) : Optional.empty(),
                form.one("submission")));
        };
    }

    @GET
    @Path("/picture")
    public Response look(@RestPath UUID id) {
        PaperForm paper = papers.of(found(id).id).orElseThrow(NotFoundException::new);
        ledger.note(who.staff().id.toString(), "paper form seen", id.toString());
        return paper.mediaType().equals(RedrawnPhoto.MEDIA_TYPE) ? SentFile.photo(papers.bytes(paper))
            : SentFile.download(papers.bytes(paper), paper.mediaType(), "paper-form.pdf");
    }

    /** The first topic on which something is not typed in yet. */
    private Optional<Topic> next(Visit visit, Answers said) {
        return intake.topics(visit, said).stream().filter(topic -> !papers.pending(visit, topic, said).isEmpty())
            .findFirst();
    }

    private TemplateInstance page(Visit visit, PaperForm paper, Topic topic, Answers said,
        Optional<FormReading> reading, Optional<Mistake> extra, String submission) {
        List<Question> due = papers.pending(visit, topic, said);
        List<QuestionView> asked = views.asked(due, said, reading).stream().map(QuestionView::underAHeading).toList();
        return new PaperTopic(text.head(visit), typed(paper), topic.id(), views.title(topic), asked,
            views.mistakes(asked, extra), submission, intake.version(visit, topic), QuestionView.listed(asked));
    }

    private String typed(PaperForm paper) {
        return say.typed(Staff.nameOf(paper.typedBy()),
            text.day(paper.typedAt().atZone(found(paper.visitId()).zone()).toLocalDate()), text.day(paper.signedOn()));
    }

    private Visit found(UUID id) {
        return visits.find(id).orElseThrow(NotFoundException::new);
    }

    private static Response here(UUID id) {
        return Response.seeOther(URI.create("/visits/" + id + "/paper")).build();
    }

    private static Optional<LocalDate> day(String typed) {
        try {
            return Optional.ofNullable(typed).map(LocalDate::parse).filter(d -> d.getYear() > 1999);
        } catch (DateTimeException notADay) {
            return Optional.empty();
        }
    }
}
