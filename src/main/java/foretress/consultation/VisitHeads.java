package foretress.consultation;

import foretress.consultation.VisitView.Hair;
import foretress.consultation.VisitView.Head;
import foretress.hair.StrandMap;
import foretress.hair.StrandSvg;
import foretress.intake.StrandMaps;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.questionnaire.Answers;
import foretress.salon.Menu;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.web.ChairTime;
import foretress.web.Language;
import foretress.web.StylistWords;
import jakarta.enterprise.context.RequestScoped;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;

/** Whose visit it is, what is booked, and how the hair stands. */
@RequestScoped
class VisitHeads {
    private final Visits visits;
    private final StrandMaps maps;
    private final Menu menu;
    private final Knowledge knowledge;
    private final Language language;
    private final StylistWords say;
    private final ChairTime time;

    VisitHeads(Visits visits, StrandMaps maps, Menu menu, Knowledge knowledge, Language language, StylistWords say,
        ChairTime time) {
        this.visits = visits;
        this.maps = maps;
        this.menu = menu;
        this.knowledge = knowledge;
        this.language = language;
        this.say = say;
        this.time = time;
    }

    Head of(Visit visit) {
        return new Head(visit.id.toString(), visit.client.id.toString(), visit.client.fullName(), facts(visit),
            time.dayAndTime(visit.startsThere()), services(visit));
    }

    Hair hair(Visit visit, Answers said) {
        StrandMap map = maps.map(visit, said, words());
        return new Hair(StrandSvg.figure(map, StrandMaps.words(words()), "map"),
            StrandMaps.words(words()).length(map));
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

    private Words words() {
        return knowledge.words(language.getTag());
    }
}
