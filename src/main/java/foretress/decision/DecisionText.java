package foretress.decision;

import foretress.assessment.Service;
import foretress.assessment.Weight;
import foretress.knowledge.AnswerWords;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.salon.Menu;
import foretress.salon.Role;
import foretress.salon.Staff;
import foretress.visit.Visit;
import foretress.web.ChairTime;
import foretress.web.DateWords;
import foretress.web.Language;
import foretress.web.StylistWords;
import foretress.web.WeightSaid;
import jakarta.enterprise.context.RequestScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;

/** Findings, changes and people as the pages around a decision say them. What is absent is an empty text. */
@RequestScoped
public class DecisionText {
    private final Knowledge knowledge;
    private final Menu menu;
    private final Language language;
    private final StylistWords stylist;
    private final DecisionWords say;
    private final ChairTime time;

    DecisionText(Knowledge knowledge, Menu menu, Language language, StylistWords stylist, DecisionWords say,
        ChairTime time) {
        this.knowledge = knowledge;
        this.menu = menu;
        this.language = language;
        this.stylist = stylist;
        this.say = say;
        this.time = time;
    }

    /** Whose visit a page is about. */
    public record Head(String id, String client, String when) {
        public String address() {
            return "/visits/" + id;
        }
    }

    /** A finding that weighs on a planned service; {@code who} says who can go against it, {@code found} when it is an earlier visit's. */
    public record Weighs(Weight weight, String word, String title, String todo, String found, String who) {}

    /** A finding that weighs otherwise than before. */
    public record Changed(String title, Weight before, String beforeWord, Weight now, String nowWord) {}

    /** An answer that is no longer what it was. */
    public record Said(String label, String before, String now) {}

    public Head head(Visit visit) {
        return new Head(visit.id.toString(), visit.client.fullName(), time.dayAndTime(visit.startsThere()));
    }

    Weighs weighs(Gate.Weighing weighing, Service service) {
        Words.FindingWords text = words().finding(weighing.finding(), List.of(service));
        String who = weighing.lasting() ? say.nobody() : weighing.inTheWay() ? say.only_owner(owners()) : "";
        return new Weighs(weighing.weight(), word(weighing.weight()), text.title(), text.do_(),
            weighing.foundOn().map(day -> say.found_on(day(day))).orElse(""), who);
    }

    public List<Changed> changes(Difference difference) {
        return difference.changes().stream().map(
            c -> new Changed(title(c.ruleId(), c.unsure()), c.before(), word(c.before()), c.after(), word(c.after())))
            .toList();
    }

    /** Answers that differ, in the order of the questionnaire; one that was not given is said so. */
    public List<Said> answers(Answers before, Answers now) {
        return knowledge.questionnaire().questions().stream().filter(q -> !before.to(q.id()).equals(now.to(q.id())))
            .map(q -> new Said(words().question(q.id()).short_(), answer(q, before), answer(q, now))).toList();
    }

    public String answer(Question question, Answers said) {
        return said.to(question.id()).map((Answer a) -> AnswerWords.say(question, a, words()))
            .orElseGet(stylist::consultation_not_answered);
    }

    String title(String rule, boolean unsure) {
        return words().finding(rule, unsure).title();
    }

    String word(Weight weight) {
        return WeightSaid.of(weight, stylist);
    }

    public String service(String id) {
        return menu.name(id, words());
    }

    String owners() {
        return Staff.atWork().stream().filter(s -> s.role == Role.OWNER).map(s -> s.name)
            .collect(Collectors.joining(", "));
    }

    public String day(LocalDate day) {
        return new DateWords(language.locale()).date(day);
    }

    Words words() {
        return knowledge.words(language.getTag());
    }
}
