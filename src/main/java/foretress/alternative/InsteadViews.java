package foretress.alternative;

import foretress.assessment.Assessment;
import foretress.assessment.Service;
import foretress.assessment.Standing;
import foretress.assessment.Weight;
import foretress.intake.Assessments;
import foretress.intake.BookedChemistry;
import foretress.intake.EarlierFindings.Earlier;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.salon.Menu;
import foretress.visit.Visit;
import foretress.web.Language;
import foretress.web.StylistWords;
import foretress.web.WeightSaid;
import jakarta.enterprise.context.RequestScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Turns the alternatives of a visit into what the stylist reads: first what reaches the booked aim more gently. */
@RequestScoped
public class InsteadViews {
    private final Alternatives alternatives;
    private final OpenWays open;
    private final GentlerWays gentlerWays;
    private final NeedViews needs;
    private final Wishes wishes;
    private final BookedChemistry chemistry;
    private final Assessments assessments;
    private final Knowledge knowledge;
    private final Menu menu;
    private final Language language;
    private final StylistWords stylist;
    private final InsteadWords say;

    InsteadViews(Alternatives alternatives, OpenWays open, GentlerWays gentlerWays, NeedViews needs, Wishes wishes,
        BookedChemistry chemistry, Assessments assessments, Knowledge knowledge, Menu menu, Language language,
        StylistWords stylist, InsteadWords say) {
        this.alternatives = alternatives;
        this.open = open;
        this.gentlerWays = gentlerWays;
        this.needs = needs;
        this.wishes = wishes;
        this.chemistry = chemistry;
        this.assessments = assessments;
        this.knowledge = knowledge;
        this.menu = menu;
        this.language = language;
        this.stylist = stylist;
        this.say = say;
    }

    public Instead of(Visit visit, Assessment assessment) {
        return of(visit, assessment, alternatives.before(visit, assessment));
    }

    public Instead of(Visit visit, Assessment assessment, List<Earlier> before) {
        List<Alternative> all = alternatives.of(visit, assessment, before);
        List<Service> booked = chemistry.services(visit);
        List<Service> asked = booked.stream().filter(s -> !knowledge.chemistries().dry(s.chemistries())).toList();
        List<Service> shown = asked.isEmpty() ? booked : asked;
        List<String> aims = shown.stream().flatMap(service -> service.aims().stream()).distinct().toList();
        return new Instead(shown.stream().map(service -> booked(visit, service, assessment, all)).toList(),
            other(visit, aims, all), Alternative.Count.of(all),
            wishes.of(visit).map(id -> say.asked(menu.name(id, words()))).orElse(""));
    }

    private Instead.Booked booked(Visit visit, Service service, Assessment assessment, List<Alternative> all) {
        List<Service> order = open.order(visit, service, assessment);
        List<GentlerWay> gentler = gentlerWays.ways(visit, open.gentler(order, service), assessment, all);
        List<GentlerWay> stronger = gentlerWays.ways(visit, open.stronger(order, service), assessment, all);
        Weight weight = assessment.standing(service.id()).map(Standing::weight).orElse(Weight.COULD_NOT_BE_ASSESSED);
        return new Instead.Booked(menu.name(service.id(), words()), aims(service), weight,
            WeightSaid.of(weight, stylist), gentler.stream().filter(way -> !way.off()).toList(),
            gentler.stream().filter(GentlerWay::off).toList(), stronger, needs.of(visit, service, weight),
            gentlerWays.source(gentler));
    }

    private String aims(Service service) {
        return service.aims().stream().map(words()::aim).collect(Collectors.joining(" · "));
    }

    private List<Instead.Aim> other(Visit visit, List<String> booked, List<Alternative> all) {
        List<Instead.Aim> other = new ArrayList<>();
        List<Service> services = assessments.looked(visit);
        for (String aim : knowledge.aims()) {
            List<Alternative> ways = booked.contains(aim) ? List.of()
                : all.stream().filter(one -> services.stream()
                    .anyMatch(s -> s.id().equals(one.id()) && s.aims().contains(aim))).toList();
            if (!ways.isEmpty()) {
                other.add(new Instead.Aim(words().aim(aim), ways));
            }
        }
        return other;
    }

    private Words words() {
        return knowledge.words(language.getTag());
    }
}
