package foretress.intake;

import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Topic;
import foretress.questionnaire.Walk;
import foretress.visit.State;
import foretress.visit.Visit;
import jakarta.inject.Singleton;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.core.MultivaluedMap;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Where a client goes from where they are. */
@Singleton
class Way {
    static final URI START = URI.create("/answers");
    static final URI NOTICE = URI.create("/answers/notice");
    static final URI LAST_TIME = URI.create("/answers/last-time");
    static final URI CARE = URI.create("/answers/care");
    static final URI READ_BACK = URI.create("/answers/read-back");
    static final URI SIGN = URI.create("/answers/sign");
    static final URI DONE = URI.create("/answers/done");
    /** What stands where nothing can be answered any more. */
    static final URI AFTER = URI.create("/answers/after");
    /** Says in an address: only what an answer opened. */
    static final String OPENED = "opened";
    /** Says in an address and in a form: somebody came from reading back, and goes back there. */
    static final String AGAIN = "again";
    /** Pages after the last topic: reading back, signing. */
    private static final int AFTER_TOPICS = 2;

    private final Intake intake;
    private final Care care;

    Way(Intake intake, Care care) {
        this.intake = intake;
        this.care = care;
    }

    static URI topic(String id) {
        return URI.create("/answers/" + id);
    }

    /** Where a page is; one that asks only what came up since its topic was sent says so. */
    static URI page(Walk.Step step, boolean again) {
        return address(step.topic(), (step.opened() ? OPENED + "=yes&" : "") + (again ? AGAIN + "=yes&" : ""));
    }

    /**
     * Where a page is sent. Never its own address: a sending that breaks off would then take the page's place in the browser's
     * history, and Back would lead past everything typed on it.
     */
    static URI kept(Walk.Step step) {
        return address(step.topic(), (step.opened() ? OPENED + "=yes&" : "") + "kept=yes&");
    }

    private static URI address(Topic topic, String ways) {
        return URI.create(topic(topic.id()) + ("?" + ways).replaceAll(".$", ""));
    }

    /** The first page with a question that was not put yet; reading back once there is none. */
    URI next(Visit visit, Answers said) {
        return intake.walk(visit, said).next().map(step -> page(step, false)).orElse(READ_BACK);
    }

    /** Whether every question was put, so that the answers can be read back. */
    boolean walked(Visit visit, Answers said) {
        return intake.walk(visit, said).waiting().isEmpty();
    }

    /** Where to begin again: reading back once everything is answered, or what was signed if nothing changed since. */
    URI resume(Visit visit, Answers said) {
        return visit.state == State.SIGNED ? DONE : next(visit, said);
    }

    /** The page that asks what only the last days ask; empty before them, and once it is answered. */
    Optional<URI> lastDays(Visit visit, Answers said) {
        Walk walk = intake.walk(visit, said);
        return LastDays.waiting(walk).isEmpty() || !visit.state.takesAnswers() ? Optional.empty()
            : walk.next().map(step -> page(step, true));
    }

    /** What became of a page that was sent, and where the client goes on; nowhere when something needs a second look. */
    record Sent(Intake.Kept kept, Optional<URI> onwards) {}

    /** Keeps a page and looks for the next, in one transaction: what is read for the one is at hand for the other. */
    @Transactional
    Sent send(UUID visitId, Topic topic, Intake.Page page, MultivaluedMap<String, String> form) {
        Intake.Kept kept = intake.keep(visitId, topic, page);
        return new Sent(kept, switch (kept.outcome()) {
            case CLEAN, AGAIN -> Optional.of(after(Visit.findById(visitId), topic, form));
            case MISTAKEN, OVERTAKEN -> Optional.empty();
        });
    }

    /** After a saved page: the same one while a list grows, else what an answer opened in its topic, else onwards. */
    private URI after(Visit visit, Topic topic, MultivaluedMap<String, String> form) {
        Answers said = intake.said(visit);
        if (care.untold(visit)) {
            return CARE;
        }
        boolean again = form.containsKey(AGAIN);
        Walk walk = intake.walk(visit, said);
        if (stays(topic, form)) {
            return page(new Walk.Step(topic, List.of(), alone(topic, form, walk.open(topic))), again);
        }
        return (again ? walk.opened(topic).or(walk::next) : walk.after(topic))
            .filter(step -> visit.state != State.SIGNED || !walk.waiting().isEmpty()).map(step -> page(step, again))
            .orElse(visit.state == State.SIGNED ? DONE : READ_BACK);
    }

    /** Back from a page of questions: from what was opened to the rest of its topic, from a second look to reading back. */
    Optional<URI> before(Visit visit, Answers said, Walk.Step step, boolean again) {
        if (step.opened()) {
            return Optional.of(page(new Walk.Step(step.topic(), List.of(), false), again));
        }
        return again ? Optional.of(READ_BACK) : before(visit, said, step.topic().id());
    }

    Optional<URI> before(Visit visit, Answers said, String page) {
        List<String> ids = intake.walk(visit, said).topics().stream().map(Topic::id).toList();
        int at = page.equals("read-back") ? ids.size() : ids.indexOf(page);
        return at > 0 ? Optional.of(topic(ids.get(at - 1))) : Optional.empty();
    }

    Progress progress(Visit visit, Answers said, String page) {
        List<String> ids = intake.walk(visit, said).topics().stream().map(Topic::id).toList();
        int of = ids.size() + AFTER_TOPICS;
        return switch (page) {
            case "read-back" -> new Progress(of - 1, of);
            case "sign" -> new Progress(of, of);
            default -> new Progress(ids.indexOf(page) + 1, of);
        };
    }

    /** The list being made is on a page of its own: what is on it now, or it alone of several questions was sent. */
    private static boolean alone(Topic topic, MultivaluedMap<String, String> form, List<Question> open) {
        String asked = Optional.ofNullable(form.getFirst("asked")).orElse("");
        return makes(topic, form) || !asked.isEmpty() && asked.split(" ").length < open.size();
    }

    private static boolean makes(Topic topic, MultivaluedMap<String, String> form) {
        return topic.questions().stream().filter(q -> q.kind() == Question.Kind.MEDICINES)
            .anyMatch(q -> List.of(Question.SOME).equals(form.get(q.id())));
    }

    private static boolean stays(Topic topic, MultivaluedMap<String, String> form) {
        return makes(topic, form) || form.keySet().stream().anyMatch(name -> name.endsWith(".drop"))
            || form.entrySet().stream().anyMatch(e -> e.getKey().endsWith(".act") && e.getValue().contains("add"));
    }
}
