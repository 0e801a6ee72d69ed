package foretress.consultation;

import foretress.alternative.Alternatives;
import foretress.assessment.Assessment;
import foretress.assessment.Weight;
import foretress.bench.OwedLine;
import foretress.bench.OwedLines;
import foretress.consent.Consents;
import foretress.consultation.VisitView.Paper;
import foretress.consultation.VisitView.Point;
import foretress.consultation.VisitView.Since;
import foretress.decision.DecisionText;
import foretress.decision.Difference;
import foretress.hair.StrandMap;
import foretress.hair.StrandSvg;
import foretress.intake.Assessments;
import foretress.intake.BookedChemistry;
import foretress.intake.EarlierFindings;
import foretress.intake.EarlierFindings.Earlier;
import foretress.intake.Intake;
import foretress.intake.KeptAssessment;
import foretress.intake.StrandMaps;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.questionnaire.Answers;
import foretress.salon.Menu;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.web.ChairTime;
import foretress.web.Language;
import foretress.web.StylistWords;
import foretress.web.WeightSaid;
import jakarta.enterprise.context.RequestScoped;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Turns a visit's answers and assessment into what the stylist reads. */
@RequestScoped
public class VisitViews {
    /** Room for what is read beside the standing, see {@link Point#lines}; the rest is one tap away. */
    private static final int SHOWN = 7;

    private final Intake intake;
    private final Assessments assessments;
    private final BookedChemistry chemistry;
    private final Consents consents;
    private final Visits visits;
    private final Points points;
    private final StrandMaps maps;
    private final EarlierFindings earlier;
    private final DecisionText text;
    private final OwedLines owedTests;
    private final Alternatives alternatives;
    private final AnswerChapters chapters;
    private final StillToAsk asks;
    private final OverReading over;
    private final Contradicted contradicted;
    private final Knowledge knowledge;
    private final Menu menu;
    private final Language language;
    private final StylistWords say;
    private final ChairTime time;

    VisitViews(Intake intake, Assessments assessments, BookedChemistry chemistry, Consents consents, Visits visits,
        Points points,
        StrandMaps maps, EarlierFindings earlier, DecisionText text, OwedLines owedTests, Alternatives alternatives,
        AnswerChapters chapters, StillToAsk asks, OverReading over, Contradicted contradicted, Knowledge knowledge,
        Menu menu, Language language, StylistWords say, ChairTime time) {
        this.intake = intake;
        this.assessments = assessments;
        this.chemistry = chemistry;
        this.consents = consents;
        this.visits = visits;
        this.points = points;
        this.maps = maps;
        this.earlier = earlier;
        this.text = text;
        this.owedTests = owedTests;
        this.alternatives = alternatives;
        this.chapters = chapters;
        this.asks = asks;
        this.over = over;
        this.contradicted = contradicted;
        this.knowledge = knowledge;
        this.menu = menu;
        this.language = language;
        this.say = say;
        this.time = time;
    }

    VisitView of(Visit visit) {
        Answers said = intake.said(visit);
        Assessment assessment = assessments.of(visit, said);
        boolean answered = !said.byQuestion().isEmpty() && intake.missing(visit, said).isEmpty();
        List<Earlier> before = earlier.of(visit, assessment);
        List<Point> all = points.of(visit, assessment, said, before);
        List<Point> heavy = heavier(all, true);
        int shown = shown(heavy);
        Weight standing =
            assessments.booked(visit, assessment).heavier(Weight.heaviest(all.stream().map(Point::weight).toList()));
        List<OwedLine> owed = owedTests.of(visit);
        StrandMap map = maps.map(visit, said, words());
        return new VisitView(visit.id.toString(), visit.client.id.toString(), visit.client.fullName(), facts(visit),
            time.dayAndTime(visit.startsThere()), over.of(visit), !said.byQuestion().isEmpty(), answered,
            standing, word(standing), services(visit), owedTests.follows(visit), heavy.subList(0, shown),
            heavy.subList(shown, heavy.size()), heavier(all, false),
            asks.of(visit, said), contradicted.of(said), StrandSvg.figure(map, StrandMaps.words(words()), "map"),
            StrandMaps.words(words()).length(map), owed, alternatives.of(visit, assessment, before),
            chapters.of(visit, said), chapters.brief(visit, said), papers(visit), since(visit, assessment, said));
    }

    /** Answers given both times that differ, and what is found otherwise; empty for a first visit. */
    private Optional<Since> since(Visit visit, Assessment assessment, Answers said) {
        Optional<Visit> last = visits.of(visit.client.id).stream()
            .filter(v -> v.state == State.CLOSED && v.startsAt.isBefore(visit.startsAt)).findFirst();
        return last.map(v -> {
            Answers then = intake.said(v);
            List<Difference> found = KeptAssessment.newest(v.id).map(assessments::read)
                .map(kept -> Difference.between(kept, assessment, chemistry.services(visit))).stream().toList();
            return new Since(time.day(v.startsThere()) + " " + v.startsThere().getYear(),
                text.answers(both(then, said), both(said, then)),
                found.stream().flatMap(d -> text.changes(d).stream()).toList());
        });
    }

    private static Answers both(Answers these, Answers others) {
        return new Answers(these.byQuestion().entrySet().stream().filter(e -> others.to(e.getKey()).isPresent())
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
    }

    private static List<Point> heavier(List<Point> all, boolean heavy) {
        return all.stream().filter(p -> (p.weight().compareTo(Weight.RESTRICTS) >= 0) == heavy).toList();
    }

    /** How many of them, from the first on, find room beside the standing. */
    private static int shown(List<Point> points) {
        int lines = 0;
        int shown = 0;
        while (shown < points.size() && lines + points.get(shown).lines() <= SHOWN) {
            lines += points.get(shown++).lines();
        }
        return shown;
    }

    private String services(Visit visit) {
        return String.join(" + ", visit.services.stream().map(s -> menu.name(s.serviceId, words())).toList());
    }

    private String facts(Visit visit) {
        List<String> facts = new ArrayList<>();
        visit.client.birthDate().ifPresent(born -> facts
            .add(say.consultation_age(Period.between(born, visit.startsThere().toLocalDate()).getYears())));
        facts.add(say.consultation_visit_number(visits.of(visit.client.id).size()));
        facts.add(visit.signed().map(at -> say.consultation_signed(time.dayAndTime(at.atZone(visit.zone()))))
            .orElseGet(say::consultation_not_signed));
        return String.join(" · ", facts);
    }

    private List<Paper> papers(Visit visit) {
        return consents.all(visit.id).stream()
            .map(c -> new Paper(c.versionNo(),
                say.consultation_paper(c.versionNo(), time.dayAndTime(c.signedAt().atZone(visit.zone())))))
            .toList();
    }

    private String word(Weight weight) {
        return WeightSaid.of(weight, say);
    }

    private Words words() {
        return knowledge.words(language.getTag());
    }
}
