package foretress.note;

import foretress.assessment.Situation;
import foretress.assessment.TestFact;
import foretress.hair.Cut;
import foretress.hair.Growth;
import foretress.intake.ChairRecord;
import foretress.intake.Intake;
import foretress.knowledge.Knowledge;
import foretress.questionnaire.Answers;
import foretress.salon.ProductLine;
import foretress.salon.ProductLine.ParaGroup;
import foretress.salon.ProductLines;
import foretress.visit.PlannedProducts;
import foretress.visit.Visit;
import jakarta.inject.Singleton;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What staff wrote down, as an assessment takes it in. What was struck out says nothing. */
@Singleton
public class NotedFacts implements ChairRecord {
    private final Notes notes;
    private final ProductLines lines;
    private final PlannedProducts planned;
    private final Intake intake;
    private final Knowledge knowledge;

    NotedFacts(Notes notes, ProductLines lines, PlannedProducts planned, Intake intake, Knowledge knowledge) {
        this.notes = notes;
        this.lines = lines;
        this.planned = planned;
        this.intake = intake;
        this.knowledge = knowledge;
    }

    @Override
    public List<TestFact> tests(Visit visit) {
        Answers said = intake.said(visit);
        return standing(visit).flatMap(note -> test(visit, said, note).stream()).toList();
    }

    @Override
    public List<TestFact> words(Visit visit) {
        Answers said = intake.said(visit);
        return standing(visit).filter(note -> note.kind() == NotedKind.WORD)
            .flatMap(note -> test(visit, said, note).stream()).toList();
    }

    @Override
    public List<Cut> cuts(Visit visit) {
        return standing(visit).filter(note -> note.kind() == NotedKind.CUT)
            .map(note -> cut(notes.body(note, NotedBody.Cut.class))).toList();
    }

    /** The newest measure. */
    @Override
    public Optional<Growth> growth(Visit visit) {
        return standing(visit).filter(note -> note.kind() == NotedKind.GROWTH).findFirst()
            .map(note -> growth(notes.body(note, NotedBody.Growth.class)));
    }

    private Stream<Noted> standing(Visit visit) {
        return notes.of(visit.client.id).stream()
            .filter(note -> !note.struck() && !Visit.isTakenBack(note.visitId()));
    }

    private static Cut cut(NotedBody.Cut body) {
        return new Cut(body.day(), body.leftCm());
    }

    private static Growth growth(NotedBody.Growth body) {
        return Growth.measured(body.cm(), body.coloured(), body.measured());
    }

    private Optional<TestFact> test(Visit visit, Answers said, Noted note) {
        return switch (note.kind()) {
            case LETTER -> Optional.of(letter(visit, note, notes.body(note, NotedBody.Letter.class)));
            case WORD -> Optional.of(word(visit, said, note, notes.body(note, NotedBody.Word.class)));
            case CUT, GROWTH -> Optional.empty();
        };
    }

    private TestFact letter(Visit visit, Noted note, NotedBody.Letter body) {
        return new TestFact("dermatologist-letter", body.outcome(), body.written(), Optional.of(day(visit, note)), true,
            names(visit, body),
            note.visitId().equals(visit.id), false, false);
    }

    /** Whether the letter is about the very product that is planned, still made of the same dyes. */
    public boolean names(Visit visit, NotedBody.Letter letter) {
        Optional<ProductLine> then = letter.lineVersion().flatMap(lines::version);
        return planned.of(visit.id).filter(now -> then.filter(line -> same(line, now.line())).isPresent())
            .filter(now -> letter.shade().isEmpty() || letter.shade().equals(now.shade())).isPresent();
    }

    private boolean same(ProductLine then, ProductLine now) {
        return then.lineId.equals(now.lineId) && then.otherDyes.equals(now.otherDyes) && mayBeOpened(then)
            && mayBeOpened(now);
    }

    /** A dye without peroxide and without any of the group: nothing else can be opened by a letter. */
    public boolean mayBeOpened(ProductLine line) {
        return knowledge.chemistries().openedByLetter(line.kind) && line.paraGroup == ParaGroup.NO;
    }

    private TestFact word(Visit visit, Answers said, Noted note, NotedBody.Word body) {
        boolean here = note.visitId().equals(visit.id);
        return TestFact.advice(body.about(), body.outcome(), body.said(), here,
            here && (notes.overtaken(note, body.about(), said) || body.over(visit.startsThere().toLocalDate())));
    }

    private static LocalDate day(Visit visit, Noted note) {
        return note.notedAt().atZone(visit.zone()).toLocalDate();
    }

    /** The client as without this note. */
    public Situation without(Visit visit, Noted note, Situation with) {
        Answers said = intake.said(visit);
        List<TestFact> tests = new ArrayList<>(with.tests());
        List<Cut> cuts = new ArrayList<>(with.cuts());
        test(visit, said, note).ifPresent(tests::remove);
        if (note.kind() == NotedKind.CUT) {
            cuts.remove(cut(notes.body(note, NotedBody.Cut.class)));
        }
        return new Situation(with.today(), with.serviceDay(), with.birthDate(), with.bookedChemistries(),
            with.questionnaire(), with.answers(),
            with.policy(), tests, new Situation.OnFile(with.measuredLengthCm(), cuts, growthWithout(visit, note),
                with.known()),
            with.lookedUp());
    }

    private Growth growthWithout(Visit visit, Noted note) {
        return standing(visit).filter(other -> other.kind() == NotedKind.GROWTH && !other.id().equals(note.id()))
            .findFirst()
            .map(other -> growth(notes.body(other, NotedBody.Growth.class))).orElse(Growth.PUBLISHED);
    }
}
