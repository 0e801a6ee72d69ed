package foretress.consultation;

import foretress.assessment.Finding;
import foretress.assessment.Rule;
import foretress.assessment.Service;
import foretress.assessment.Source;
import foretress.assessment.Weight;
import foretress.consultation.VisitView.Reason;
import foretress.decision.DecisionWords;
import foretress.intake.BookedChemistry;
import foretress.intake.EarlierFindings.Earlier;
import foretress.intake.Intake;
import foretress.knowledge.AnswerWords;
import foretress.knowledge.Knowledge;
import foretress.knowledge.ReadWords;
import foretress.knowledge.Words;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.salon.SourceKinds;
import foretress.visit.Visit;
import foretress.web.ChairTime;
import foretress.web.Language;
import foretress.web.StylistWords;
import foretress.web.WeightSaid;
import jakarta.enterprise.context.RequestScoped;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Findings with the answers that caused them and the source behind each. */
@RequestScoped
class Reasons {
    /** Letters that fit into a line beside the shape. */
    private static final int BRIEF = 52;

    private final Intake intake;
    private final BookedChemistry chemistry;
    private final Knowledge knowledge;
    private final MeasuredLength measured;
    private final Language language;
    private final StylistWords say;
    private final DecisionWords decide;
    private final SourceKinds kinds;
    private final ChairTime time;

    Reasons(Intake intake, BookedChemistry chemistry, Knowledge knowledge, MeasuredLength measured, Language language,
        StylistWords say, DecisionWords decide,
        SourceKinds kinds, ChairTime time) {
        this.intake = intake;
        this.chemistry = chemistry;
        this.knowledge = knowledge;
        this.measured = measured;
        this.language = language;
        this.say = say;
        this.decide = decide;
        this.kinds = kinds;
        this.time = time;
    }

    /** In the order given. */
    List<Reason> of(Visit visit, List<Finding> findings, Answers said) {
        return findings.stream().map(f -> reason(visit, f, said)).toList();
    }

    /** What was found at other visits and still stands, with the answers of its own day. */
    List<Reason> earlier(Visit visit, List<Earlier> earlier) {
        return earlier.stream().map(e -> reason(visit, e.finding(), intake.said(e.visit()))
            .foundEarlier(decide.found_on(time.day(e.visit().startsThere()) + " " + e.visit().startsThere().getYear())))
            .filter(r -> r.weight() != Weight.NOTHING_FOUND).toList();
    }

    private Reason reason(Visit visit, Finding finding, Answers said) {
        List<Service> booked = chemistry.services(visit);
        Weight weight = Weight.heaviest(booked.stream().map(finding::on).toList());
        Words.FindingWords words = words().finding(finding, booked);
        List<String> because = Stream.concat(finding.causes().stream().flatMap(q -> because(visit, q, said)),
            ReadWords.say(finding.read(), words()).stream()).toList();
        String condition = knowledge.ruleSet().rule(finding.ruleId()).map(Rule::when).map(Object::toString).orElse("");
        return new Reason(finding.ruleId(), weight, WeightSaid.of(weight, say), words.title(), words.do_(), because,
            brief(visit, finding.causes(), said),
            finding.onlyIfUnknown(), condition, finding.sources().stream().map(this::source).toList(),
            lookUp(visit, finding));
    }

    /** A finding that says a medicine is not recognised: one that stands because a name was typed that nobody can read. */
    private static String lookUp(Visit visit, Finding finding) {
        boolean unread = finding.facts().contains("unknown-medicine")
            && finding.read().stream().anyMatch(read -> !read.sure() && read.as().isEmpty());
        return unread ? "/visits/" + visit.id + "/look-up" : "";
    }

    /** The first answer that fits into a line, whole, and how many more there are; all of them stand where one asks why. */
    private String brief(Visit visit, List<String> questions, Answers said) {
        return brief(
            questions.stream().flatMap(q -> line(q, question -> named(visit, question, said))).distinct().toList());
    }

    /** Of these lines the first that is short enough, and how many more there are. */
    String brief(List<String> lines) {
        String shown = lines.stream().filter(l -> l.length() <= BRIEF).findFirst().orElse("");
        int more = lines.size() - (shown.isEmpty() ? 0 : 1);
        String also = more == 0 ? ""
            : shown.isEmpty() ? say.consultation_because_more(more) : say.consultation_because_also(more);
        return Stream.of(shown, also).filter(part -> !part.isEmpty()).collect(Collectors.joining(" "));
    }

    /** An answer in a few words: of a list of treatments the names alone. */
    private String named(Visit visit, Question question, Answers said) {
        return said.to(question.id()).filter(Answer.Treatments.class::isInstance).map(Answer.Treatments.class::cast)
            .filter(list -> !list.list().isEmpty())
            .map(list -> list.list().stream().map(t -> AnswerWords.slip("treatment", t.what(), words())).distinct()
                .collect(Collectors.joining(", ")))
            .orElseGet(() -> measured.say(visit, question, said.to(question.id()), words()));
    }

    private Stream<String> because(Visit visit, String questionId, Answers said) {
        return line(questionId, q -> measured.say(visit, q, said.to(questionId), words()));
    }

    private Stream<String> line(String questionId, Function<Question, String> wording) {
        return knowledge.questionnaire().question(questionId).stream()
            .map(q -> words().question(questionId).short_() + ": " + wording.apply(q));
    }

    private String source(String key) {
        Source source = knowledge.ruleSet().sources().get(key);
        if (source == null) {
            return key;
        }
        String place = source.place().map(p -> ", " + p).orElse("");
        return source.title() + place + " (" + kinds.of(source.kind()) + ", " + status(source) + ")";
    }

    private String status(Source source) {
        return switch (source.status()) {
            case PUBLISHED -> say.source_published();
            case COMMON_PRACTICE -> say.source_common_practice();
            case FROM_MEMORY -> say.source_from_memory();
            case OWN_DECISION -> say.source_own_decision();
        };
    }

    private Words words() {
        return knowledge.words(language.getTag());
    }
}
