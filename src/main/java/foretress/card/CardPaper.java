package foretress.card;

import foretress.card.CardView.DoneView;
import foretress.card.CardView.VisitView;
import foretress.closing.ClosingWords;
import foretress.consent.ConsentText.Line;
import foretress.consent.RecordText;
import foretress.consent.RecordText.Section;
import foretress.intake.Intake;
import foretress.knowledge.AnswerWords;
import foretress.questionnaire.Answers;
import foretress.salon.Salon;
import foretress.told.ToldWords;
import foretress.visit.State;
import foretress.visit.Visit;
import jakarta.enterprise.context.RequestScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The record card, or one visit of it, as it is printed. */
@RequestScoped
class CardPaper {
    private final CardVisits cards;
    private final Intake intake;
    private final CardText text;
    private final ClosingWords closing;
    private final ToldWords told;
    private final CardWords say;

    CardPaper(CardVisits cards, Intake intake, CardText text, ClosingWords closing, ToldWords told,
        CardWords say) {
        this.told = told;
        this.cards = cards;
        this.intake = intake;
        this.text = text;
        this.closing = closing;
        this.say = say;
    }

    RecordText whole(CardView card, Instant now) {
        List<Section> sections = new ArrayList<>();
        map(card).ifPresent(sections::add);
        sections.add(tests(card));
        card.visits()
            .forEach(visit -> sections.add(new Section(say.visit_of(visit.when()), lines(visit), Optional.empty())));
        return paper(card, say.title(), now, sections);
    }

    /** With every answer as it stands: what was asked and answered, tested, decided and done. */
    RecordText visit(CardView card, Visit visit, Instant now) {
        VisitView shown = cards.of(visit);
        List<Section> sections =
            new ArrayList<>(List.of(new Section(say.visit_of(shown.when()), lines(shown), Optional.empty())));
        if (visit.state != State.WITHDRAWN) {
            answers(visit).ifPresent(sections::add);
        }
        return paper(card, say.title(), now, sections);
    }

    private RecordText paper(CardView card, String title, Instant now, List<Section> sections) {
        Salon salon = Salon.the();
        List<Line.Pair> particulars = new ArrayList<>(List.of(new Line.Pair(say.client(), card.client())));
        card.particulars().forEach(line -> particulars.add(new Line.Pair(line.label(), line.value())));
        List<String> corner = new ArrayList<>(List.of(say.printed(text.moment(now))));
        if (!card.merged().isEmpty()) {
            corner.add(card.merged());
        }
        return new RecordText(text.locale().getLanguage(), title, salon.name, salon.address + ", " + salon.town, corner,
            card.client(),
            say.foot(card.client(), text.day(now.atZone(salon.zoneId()).toLocalDate())),
            say.page_of("{page}", "{pages}"), particulars, sections);
    }

    private Optional<Section> map(CardView card) {
        return card.strand()
            .map(strand -> new Section(say.map(), List.of(new Line.Paragraph(card.mapAside())), Optional.of(strand)));
    }

    private Section tests(CardView card) {
        List<Line> lines = new ArrayList<>();
        card.tests().forEach(t -> lines.add(new Line.Pair(t.name(), t.outcome() + ", " + t.days())));
        if (lines.isEmpty()) {
            lines.add(new Line.Paragraph(say.tests_none()));
        }
        return new Section(say.tests(), lines, Optional.empty());
    }

    private List<Line> lines(VisitView visit) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line.Pair(say.visit_services(), visit.services()));
        lines.add(new Line.Pair(say.visit_with(), visit.stylist() + ", " + visit.state()));
        visit.standing().ifPresent(standing -> lines.add(new Line.Finding(standing, visit.word(), say.standing())));
        visit.findings().forEach(f -> lines.add(new Line.Finding(f.weight(), f.word(), f.title())));
        visit.decisions().forEach(d -> lines.add(new Line.Pair(d.by(), String.join(". ", d.lines()))));
        visit.done().forEach(done -> done(done, lines));
        visit.told().forEach(line -> lines.add(new Line.Pair(told.said(), line)));
        visit.papers().forEach(p -> lines.add(new Line.Pair(say.documents(), p.label())));
        return lines;
    }

    private void done(DoneView done, List<Line> lines) {
        lines.add(new Line.Topic(say.done()));
        pair(closing.why(), done.why(), lines);
        lines.add(new Line.Pair(done.by(), String.join(". ", done.services())));
        done.products().forEach(product -> lines.add(new Line.Pair(say.product(), product)));
        pair(say.strand_test(), done.strandTest(), lines);
        done.wrong().forEach(line -> lines.add(new Line.Pair(closing.wrong(), line)));
        pair(say.at_end(), done.condition(), lines);
        pair(say.next_time(), done.notes(), lines);
    }

    private static void pair(String label, String value, List<Line> lines) {
        if (!value.isEmpty()) {
            lines.add(new Line.Pair(label, value));
        }
    }

    private Optional<Section> answers(Visit visit) {
        Answers said = intake.said(visit);
        List<Line> lines = new ArrayList<>();
        intake.topics(visit, said).forEach(topic -> {
            List<Line> own = intake.put(visit, topic, said).stream().filter(q -> said.to(q.id()).isPresent())
                .map(q -> (Line) new Line.Pair(text.words().question(q.id()).short_(),
                    AnswerWords.say(q, said.to(q.id()).orElseThrow(), text.words())))
                .toList();
            if (!own.isEmpty()) {
                lines.add(new Line.Topic(text.words().topic(topic.id())));
                lines.addAll(own);
            }
        });
        return lines.isEmpty() ? Optional.empty() : Optional.of(new Section(say.answers(), lines, Optional.empty()));
    }
}
