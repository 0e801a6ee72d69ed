package foretress.intake;

import foretress.consent.ConsentInput;
import foretress.consent.ConsentText;
import foretress.consent.ConsentText.Line.Statement;
import foretress.consent.ConsentText.Part;
import foretress.consent.ConsentText.Section;
import foretress.consent.ConsentWords;
import foretress.consent.Consents;
import foretress.consent.Evidence;
import foretress.consent.SignatureMark;
import foretress.invitation.Guest;
import foretress.questionnaire.Answers;
import foretress.visit.Visit;
import foretress.web.Caller;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistake;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The consent built for this visit and these answers: read, agreed to line by line, and signed by drawing or typing. */
@Path("/answers/sign")
public class SignPages {
    @CheckedTemplate(basePath = "intake", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record SignPage(Progress progress, ConsentText text, Statements statements, boolean mayRefuse, ConsentPart found,
        List<ConsentPart> rest, MarkShown mark, Optional<Guardians.Asked> guardian, List<Mistake> mistakes,
        String submission)
        implements TemplateInstance {}

    private final Guest guest;
    private final Intake intake;
    private final Way way;
    private final ConsentDraft draft;
    private final Signing signing;
    private final Guardians guardians;
    private final PageViews shown;
    private final ClientLanguage speech;
    private final Caller caller;

    SignPages(Guest guest, Intake intake, Way way, ConsentDraft draft, Signing signing, Guardians guardians,
        PageViews shown,
        ClientLanguage speech,
        Caller caller) {
        this.guest = guest;
        this.intake = intake;
        this.way = way;
        this.draft = draft;
        this.signing = signing;
        this.guardians = guardians;
        this.shown = shown;
        this.speech = speech;
        this.caller = caller;
    }

    @GET
    public Response show() {
        Visit visit = guest.visit();
        Answers said = intake.said(visit);
        if (!ready(visit, said)) {
            return Response.seeOther(Way.READ_BACK).build();
        }
        shown.page(visit, "sign");
        return Response
            .ok(page(visit, said, new Form(new MultivaluedHashMap<>()), SignatureMark.Kind.DRAWN, List.of(),
                UUID.randomUUID().toString()))
            .build();
    }

    @POST
    public Response sign(MultivaluedMap<String, String> posted, @HeaderParam("User-Agent") String agent) {
        var form = new Form(posted);
        Visit visit = guest.visit();
        Optional<UUID> submission = uuid(form.one("submission"));
        if (submission.filter(s -> signing.alreadySigned(visit.id, s)).isPresent()) {
            return Response.seeOther(Way.DONE).build();
        }
        Answers said = intake.said(visit);
        if (!ready(visit, said)) {
            return Response.seeOther(Way.READ_BACK).build();
        }
        List<Mistake> mistakes = new ArrayList<>();
        Optional<SignatureMark> mark = MarkField.of(form).read(mistakes, speech.say());
        Optional<Evidence.Guardian> guardian = guardians.signed(visit, form, mistakes, speech.say());
        ConsentInput input = draft.of(visit, said);
        if (!asked(input).equals(form.all("agree"))) {
            mistakes.add(0, new Mistake("statements", speech.say().sign_agree_all()));
        }
        if (!mistakes.isEmpty() || submission.isEmpty()) {
            return again(visit, said, form, mistakes);
        }
        try {
            signing.sign(visit, said, input, mark.orElseThrow(),
                new Signing.Act(submission.get(), form.one("text"), form.all("agree"),
                    guest.entrance(), guardian,
                    Optional.of(new Evidence.Device(caller.address(), Optional.ofNullable(agent).orElse("not told")))));
            return Response.seeOther(Way.DONE).build();
        } catch (Consents.OtherVisit forged) {
            throw new BadRequestException(forged);
        } catch (Consents.TextChanged changed) {
            return again(visit, said, form, List.of(new Mistake("main", speech.say().sign_again())));
        }
    }

    /** Nothing is signed that was not read back as it stands now. */
    private boolean ready(Visit visit, Answers said) {
        return HealthConsent.given(visit.id) && way.walked(visit, said)
            && ReadBack.of(visit.id, intake.code(visit, ReadBack.ANSWERS, said)).isPresent();
    }

    private static List<String> asked(ConsentInput input) {
        return ConsentText.of(input, ConsentWords.in(input.language())).statements().stream().map(Statement::id)
            .toList();
    }

    private Response again(Visit visit, Answers said, Form form, List<Mistake> mistakes) {
        shown.page(visit, "sign");
        return FormAgain
            .with(page(visit, said, form, MarkField.of(form).kind(), mistakes,
                uuid(form.one("submission")).orElseGet(UUID::randomUUID).toString()));
    }

    private SignPage page(Visit visit, Answers said, Form form, SignatureMark.Kind kind, List<Mistake> mistakes,
        String submission) {
        ConsentInput input = draft.of(visit, said);
        ConsentText text = ConsentText.of(input, ConsentWords.in(input.language()));
        List<ConsentPart> rest =
            text.sections().stream().filter(s -> s.part() != Part.STATEMENTS && s.part() != Part.FOUND)
                .map(ConsentPart::of).toList();
        return new SignPage(way.progress(visit, said, "sign"), text, Statements.of(text, form, mistakes),
            mayRefuse(visit, input), ConsentPart.of(part(text, Part.FOUND)), rest,
            MarkShown.of(input.client().name(), form, kind, mistakes), guardians.asked(visit, form, mistakes), mistakes,
            submission);
    }

    private static boolean mayRefuse(Visit visit, ConsentInput input) {
        return visit.state.takesAnswers()
            && (!input.refused().isEmpty() || input.tests().stream().anyMatch(test -> !test.isAdvice()));
    }

    private static Section part(ConsentText text, Part part) {
        return text.sections().stream().filter(s -> s.part() == part).findFirst()
            .orElse(new Section(part, "", List.of()));
    }

    private static Optional<UUID> uuid(String text) {
        try {
            return Optional.of(UUID.fromString(text));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
