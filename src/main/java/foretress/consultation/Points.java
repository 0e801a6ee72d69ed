package foretress.consultation;

import foretress.assessment.Acts;
import foretress.assessment.Assessment;
import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Weight;
import foretress.consultation.VisitView.Point;
import foretress.consultation.VisitView.Reason;
import foretress.intake.BookedChemistry;
import foretress.intake.EarlierFindings.Earlier;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.questionnaire.Answers;
import foretress.visit.Visit;
import foretress.web.Language;
import foretress.web.StylistWords;
import foretress.web.WeightSaid;
import jakarta.enterprise.context.RequestScoped;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** What weighs on the booked services, as it is read: finding by finding what is known, act by act what is not. */
@RequestScoped
class Points {
    /** Of the same weight what is known comes first, then what settles most. */
    private static final Comparator<Point> ORDER = Comparator.comparing(Point::weight).reversed()
        .thenComparing(Point::isUnsure).thenComparing(point -> -point.reasons().size());

    private final Reasons reasons;
    private final BookedChemistry chemistry;
    private final Knowledge knowledge;
    private final Language language;
    private final StylistWords say;

    Points(Reasons reasons, BookedChemistry chemistry, Knowledge knowledge, Language language, StylistWords say) {
        this.reasons = reasons;
        this.chemistry = chemistry;
        this.knowledge = knowledge;
        this.language = language;
        this.say = say;
    }

    /** The heaviest first. */
    List<Point> of(Visit visit, Assessment assessment, Answers said, List<Earlier> before) {
        List<Service> booked = chemistry.services(visit);
        List<Finding> findings = assessment.findings().stream().filter(f -> f.speaksOn(booked)).toList();
        Acts acts =
            Acts.of(findings, f -> Weight.heaviest(booked.stream().map(f::on).toList()), knowledge.questionnaire());
        Stream<Point> alone =
            Stream.concat(reasons.of(visit, acts.alone(), said).stream(), reasons.earlier(visit, before).stream())
                .map(Point::alone);
        Stream<Point> gathered = acts.acts().stream().map(act -> point(act, reasons.of(visit, act.findings(), said)));
        return Stream.concat(alone, gathered).sorted(ORDER).toList();
    }

    private Point point(Acts.Act act, List<Reason> settled) {
        List<String> asked = act.findings().stream().flatMap(f -> f.causes().stream()).distinct()
            .filter(q -> knowledge.questionnaire().question(q).isPresent()).map(q -> words().question(q).short_())
            .distinct().toList();
        return new Point(act.weight(), WeightSaid.of(act.weight(), say), title(act), reasons.brief(asked), settled);
    }

    private String title(Acts.Act act) {
        return switch (act.kind()) {
            case TEST -> words().test(act.id());
            case ASK -> say.consultation_ask_again(words().topic(act.id()));
        };
    }

    private Words words() {
        return knowledge.words(language.getTag());
    }
}
