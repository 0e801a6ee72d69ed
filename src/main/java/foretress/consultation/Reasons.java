package foretress.consultation;

import foretress.assessment.Assessment;
import foretress.assessment.Finding;
import foretress.assessment.Rule;
import foretress.assessment.Service;
import foretress.assessment.Source;
import foretress.assessment.Weight;
import foretress.card.EarlierFindings.Earlier;
import foretress.consultation.Reading.Reason;
import foretress.intake.BookedChemistry;
import foretress.intake.Intake;
import foretress.knowledge.AnswerWords;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.questionnaire.Answers;
import foretress.salon.SourceKinds;
import foretress.visit.Visit;
import foretress.web.DecisionWords;
import foretress.web.Language;
import foretress.web.Stylist;
import jakarta.enterprise.context.RequestScoped;
import java.util.List;
import java.util.stream.Stream;

/** Findings with the answers that caused them and the source behind each. */
@RequestScoped
class Reasons {
    private final Intake intake;
    private final BookedChemistry chemistry;
    private final Knowledge knowledge;
    private final Language language;
    private final Stylist say;
    private final DecisionWords decide;
    private final SourceKinds kinds;
    private final ChairTime time;

    Reasons(Intake intake, BookedChemistry chemistry, Knowledge knowledge, Language language, Stylist say, DecisionWords decide, SourceKinds kinds,
            ChairTime time) {
        this.intake = intake;
        this.chemistry = chemistry;
        this.knowledge = knowledge;
        this.language = language;
        this.say = say;
        this.decide = decide;
        this.kinds = kinds;
        this.time = time;
    }

    /** What weighs on the booked services, the heaviest first. */
    List<Reason> of(Visit visit, Assessment assessment, Answers said) {
        List<Service> booked = chemistry.services(visit);
        return assessment.findings().stream().filter(f -> f.speaksOn(booked)).map(f -> reason(visit, f, said))
            .sorted((a, b) -> b.weight().compareTo(a.weight())).toList();
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
        List<String> because = finding.causes().stream().flatMap(q -> because(q, said)).toList();
        String condition = knowledge.ruleSet().rule(finding.ruleId()).map(Rule::when).map(Object::toString).orElse("");
        return new Reason(finding.ruleId(), weight, WeightWord.of(weight, say), words.title(), first(words.do_()), words.do_().substring(first(words.do_()).length()).strip(), because,
            finding.onlyIfUnknown(), condition, finding.sources().stream().map(this::source).toList());
    }

    private static String first(String sentences) {
        int end = sentences.indexOf(". ");
        return end < 0 ? sentences : sentences.substring(0, end + 1);
    }

    private Stream<String> because(String questionId, Answers said) {
        return knowledge.questionnaire().question(questionId).stream().map(q -> {
            String label = words().question(questionId).short_();
            return said.to(questionId).map(a -> label + ": " + AnswerWords.say(q, a, words()))
                .orElseGet(() -> label + ": " + say.consultation_not_answered());
        });
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
