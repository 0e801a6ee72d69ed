package foretress.demo;

import foretress.consent.ConsentInput;
import foretress.consent.ConsentText;
import foretress.consent.ConsentWords;
import foretress.consent.Evidence;
import foretress.consent.SignatureMark;
import foretress.demo.Invented.Told;
import foretress.intake.ConsentDraft;
import foretress.intake.Guardians;
import foretress.intake.Intake;
import foretress.intake.NoticeConsent;
import foretress.intake.PageViews;
import foretress.intake.Signing;
import foretress.invitation.Entrance;
import foretress.invitation.Invitation;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Topic;
import foretress.questionnaire.Walk;
import foretress.salon.Staff;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.web.Language;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.RequestScoped;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;

/** Lets an invented client answer, read back and sign, through the same doors that a real one's pages use. */
@RequestScoped
public class DemoAnswers {
    private final Intake intake;
    private final NoticeConsent notices;
    private final ConsentDraft draft;
    private final Signing signing;
    private final Guardians guardians;
    private final PageViews shown;
    private final Language language;
    private final Clock clock;

    DemoAnswers(Intake intake, NoticeConsent notices, ConsentDraft draft, Signing signing, Guardians guardians,
        PageViews shown,
        Language language, Clock clock) {
        this.intake = intake;
        this.notices = notices;
        this.draft = draft;
        this.signing = signing;
        this.guardians = guardians;
        this.shown = shown;
        this.language = language;
        this.clock = clock;
    }

    void say(UUID visitId, Invented client) {
        language.use(client.language());
        QuarkusTransaction.requiringNew().run(() -> {
            begin(visitId, client);
            int topics = client.told() == Told.HALF ? 4 : 30;
            while (topics > 0 && sayNext(visitId, client)) {
                topics--;
            }
        });
        if (client.told() != Told.HALF) {
            sign(visitId, client);
        }
    }

    private void begin(UUID visitId, Invented client) {
        Visit visit = Visit.findById(visitId);
        visit.moveTo(State.INVITED);
        visit.moveTo(State.ANSWERING);
        notices.give(visitId, client.language(), guardian(visit).map(one -> new Guardians.Named(one.name(), "parent")));
    }

    /** Answers the first topic that is open; false once there is none. */
    private boolean sayNext(UUID visitId, Invented client) {
        Visit visit = Visit.findById(visitId);
        Answers said = intake.said(visit);
        Optional<Topic> open = intake.walk(visit, said).next().map(Walk.Step::topic);
        open.ifPresent(topic -> {
            shown.page(visit, topic.id());
            intake.record(visitId, topic, answered(visit, topic, said, client), client.language());
        });
        return open.isPresent();
    }

    private Answers answered(Visit visit, Topic topic, Answers said, Invented client) {
        Answers all = said;
        for (Question question : intake.put(visit, topic, said)) {
            Optional<Answer> answer = Sayings.answer(question, client);
            all = answer.isPresent() ? all.with(question.id(), answer.get()) : all;
        }
        return all;
    }

    private void sign(UUID visitId, Invented client) {
        Visit visit = QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visitId));
        Answers said = QuarkusTransaction.requiringNew().call(() -> readBack(visit, client));
        ConsentInput input = QuarkusTransaction.requiringNew().call(() -> draft.of(visit, said));
        ConsentText text = ConsentText.of(input, ConsentWords.in(input.language()));
        signing.sign(visit, said, input, new SignatureMark.Typed(client.name()),
            new Signing.Act(UUID.randomUUID(), text.sha256(),
                text.statements().stream().map(ConsentText.Line.Statement::id).toList(), entrance(), guardian(visit),
                Optional.empty()));
    }

    private Answers readBack(Visit visit, Invented client) {
        Answers all = intake.said(visit);
        if (!intake.missing(visit, all).isEmpty()) {
            throw new IllegalStateException("%s left open: %s".formatted(client.name(), intake.missing(visit, all)));
        }
        shown.page(visit, "read-back");
        intake.readBack(visit, all);
        shown.page(visit, "sign");
        return all;
    }

    /** An invented parent of an invented child. */
    private Optional<Evidence.Guardian> guardian(Visit visit) {
        String name = "Solveig " + visit.client.familyName;
        return guardians.needed(visit)
            ? Optional.of(new Evidence.Guardian(name, "Mother or father", new SignatureMark.Typed(name)))
            : Optional.empty();
    }

    private Entrance entrance() {
        String sanna = QuarkusTransaction.requiringNew().call(() -> Staff.byLogin("sanna").orElseThrow().id.toString());
        return new Entrance(UUID.randomUUID(), Invitation.Way.SHOWN, sanna, clock.instant(), clock.instant(), true, 1,
            false, false);
    }
}
