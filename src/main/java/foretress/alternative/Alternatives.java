package foretress.alternative;

import foretress.assessment.Assessment;
import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Standing;
import foretress.assessment.Weight;
import foretress.intake.Assessments;
import foretress.intake.EarlierFindings;
import foretress.intake.EarlierFindings.Earlier;
import foretress.intake.TakenBackElsewhere;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.salon.Menu;
import foretress.visit.Visit;
import foretress.web.Language;
import foretress.web.StylistWords;
import foretress.web.WeightSaid;
import jakarta.enterprise.context.RequestScoped;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Every other service the salon offers, lightest first: from this a gentler one is proposed. */
@RequestScoped
class Alternatives {
    private final Assessments assessments;
    private final EarlierFindings earlier;
    private final TakenBackElsewhere elsewhere;
    private final Knowledge knowledge;
    private final Menu menu;
    private final Language language;
    private final StylistWords say;

    Alternatives(Assessments assessments, EarlierFindings earlier, TakenBackElsewhere elsewhere, Knowledge knowledge,
        Menu menu, Language language,
        StylistWords say) {
        this.assessments = assessments;
        this.earlier = earlier;
        this.elsewhere = elsewhere;
        this.knowledge = knowledge;
        this.menu = menu;
        this.language = language;
        this.say = say;
    }

    List<Earlier> before(Visit visit, Assessment assessment) {
        return earlier.of(visit, assessment);
    }

    List<Alternative> of(Visit visit, Assessment assessment, List<Earlier> before) {
        List<String> booked = visit.services.stream().map(s -> s.serviceId).toList();
        return assessments.looked(visit).stream().filter(s -> !booked.contains(s.id()))
            .map(s -> other(s, assessment, before, elsewhere.on(visit, List.of(s))))
            .sorted(Comparator.comparing(Alternative::place).thenComparing(other -> !other.unsaid())).toList();
    }

    private Alternative other(Service service, Assessment assessment, List<Earlier> before, Weight takenBack) {
        Standing standing = assessment.standing(service.id()).orElseThrow();
        List<Finding> on =
            Stream.concat(assessment.spokenOn(service).stream(), before.stream().map(Earlier::finding)).toList();
        Weight weight =
            standing.weight().heavier(takenBack).heavier(Weight.heaviest(on.stream().map(f -> f.on(service)).toList()));
        String because = on.stream().filter(f -> weight != Weight.NOTHING_FOUND && f.on(service) == weight).findFirst()
            .map(this::title).orElse("");
        return new Alternative(service.id(), menu.name(service.id(), words()), weight, WeightSaid.of(weight, say),
            because,
            standing.notAsked() + standing.unanswered());
    }

    private String title(Finding finding) {
        return words().finding(finding.ruleId(), finding.onlyIfUnknown()).title();
    }

    private Words words() {
        return knowledge.words(language.getTag());
    }
}
