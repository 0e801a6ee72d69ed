package foretress.intake;

import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Topic;
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
    static final URI CARE = URI.create("/answers/care");
    static final URI READ_BACK = URI.create("/answers/read-back");
    static final URI SIGN = URI.create("/answers/sign");
    static final URI DONE = URI.create("/answers/done");
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

    /** The first topic with something still open; reading back once there is none. */
    URI next(Visit visit, Answers said) {
        List<Question> missing = intake.missing(visit, said);
        return intake.topics(visit, said).stream()
            .filter(t -> t.questions().stream().anyMatch(missing::contains))
            .findFirst().map(t -> topic(t.id())).orElse(READ_BACK);
    }

    /** Where to begin again: reading back once everything is answered, or what was signed if nothing changed since. */
    URI resume(Visit visit, Answers said) {
        return visit.state == State.SIGNED ? DONE : next(visit, said);
    }

    /** After a saved page: the same one while a list grows or an answer opened another question, else onwards. */
    @Transactional
    URI after(UUID visitId, Topic topic, MultivaluedMap<String, String> form) {
        Visit visit = Visit.findById(visitId);
        Answers said = intake.said(visit);
        if (care.untold(visit)) {
            return CARE;
        }
        if (stays(form) || intake.missing(visit, said).stream().anyMatch(topic.questions()::contains)) {
            return topic(topic.id());
        }
        return form.containsKey("back-to-reading") ? next(visit, said) : following(visit, said, topic);
    }

    /** The topic after this one in order, so that nobody is thrown about; reading back after the last. */
    private URI following(Visit visit, Answers said, Topic topic) {
        List<Topic> topics = intake.topics(visit, said);
        int at = topics.indexOf(topic);
        return at + 1 < topics.size() ? topic(topics.get(at + 1).id()) : next(visit, said);
    }

    Optional<URI> before(Visit visit, Answers said, String page) {
        List<String> ids = intake.topics(visit, said).stream().map(Topic::id).toList();
        int at = page.equals("read-back") ? ids.size() : ids.indexOf(page);
        return at > 0 ? Optional.of(topic(ids.get(at - 1))) : Optional.empty();
    }

    Progress progress(Visit visit, Answers said, String page) {
        List<String> ids = intake.topics(visit, said).stream().map(Topic::id).toList();
        int of = ids.size() + AFTER_TOPICS;
        return switch (page) {
            case "read-back" -> new Progress(of - 1, of);
            case "sign" -> new Progress(of, of);
            default -> new Progress(ids.indexOf(page) + 1, of);
        };
    }

    private static boolean stays(MultivaluedMap<String, String> form) {
        return form.keySet().stream().anyMatch(name -> name.endsWith(".drop"))
            || form.entrySet().stream().anyMatch(e -> e.getKey().endsWith(".act") && e.getValue().contains("add"));
    }
}
