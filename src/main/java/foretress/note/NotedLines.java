package foretress.note;

import foretress.bench.BenchDoor;
import foretress.bench.BenchNumber;
import foretress.salon.Who;
import foretress.visit.Visit;
import foretress.web.ChairTime;
import foretress.web.DateWords;
import foretress.web.Language;
import jakarta.enterprise.context.RequestScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/** Puts what was written down into words. */
@RequestScoped
class NotedLines {
    private final Notes notes;
    private final NotedFacts facts;
    private final NotedChanges changes;
    private final NotedSubjects subjects;
    private final NoteWords say;
    private final ChairTime time;
    private final Language language;
    private final Who who;

    NotedLines(Notes notes, NotedFacts facts, NotedChanges changes, NotedSubjects subjects, NoteWords say,
        ChairTime time, Language language, Who who) {
        this.notes = notes;
        this.facts = facts;
        this.changes = changes;
        this.subjects = subjects;
        this.say = say;
        this.time = time;
        this.language = language;
        this.who = who;
    }

    /** The newest first. */
    List<NotedLine> of(Visit visit) {
        List<Noted> all = notes.of(visit.client.id);
        return all.stream().map(note -> line(visit, note, note.equals(all.get(0)))).toList();
    }

    private NotedLine line(Visit visit, Noted note, boolean newest) {
        String href = NotedPages.at(visit) + "/" + note.id();
        List<NotedLine.Paper> papers = notes.papers(note).stream()
            .map(p -> new NotedLine.Paper(href + "/papers/" + p.id(), say.paper_of(at(visit, p.keptAt())))).toList();
        String struck = note.struckAt()
            .map(
                at -> say.struck(notes.struckWhy(note), note.struckBy().map(BenchDoor::name).orElse(""), at(visit, at)))
            .orElse("");
        boolean open = !note.struck() && visit.state.isAhead();
        return new NotedLine(href, title(note), says(visit, note),
            say.made_by(BenchDoor.name(note.notedBy()), at(visit, note.notedAt())), hint(visit, note), struck,
            open && mayStrike(note), open && mayCarry(note) && papers.size() < Notes.MOST_PAPERS,
            papers, changes.of(visit, note), newest);
    }

    private static boolean mayCarry(Noted note) {
        return note.kind() == NotedKind.LETTER || note.kind() == NotedKind.WORD;
    }

    /** Whoever wrote it down, and the owner, may say that it was entered in error. */
    boolean mayStrike(Noted note) {
        return who.isOwner() || note.notedBy().equals(who.staff().id);
    }

    private String title(Noted note) {
        return switch (note.kind()) {
            case LETTER -> outcome(notes.body(note, NotedBody.Letter.class));
            case WORD -> outcome(notes.body(note, NotedBody.Word.class));
            case CUT -> say.cut_line();
            case GROWTH -> say.growth_line();
        };
    }

    private String outcome(NotedBody.Letter letter) {
        return letter.outcome().equals("names-product") ? say.letter_names_line() : say.letter_against_line();
    }

    private String outcome(NotedBody.Word word) {
        String about = subjects.name(word.about());
        return word.outcome().equals("with-care") ? say.word_care_line(about) : say.word_against_line(about);
    }

    private List<String> says(Visit visit, Noted note) {
        return switch (note.kind()) {
            case LETTER -> says(notes.body(note, NotedBody.Letter.class));
            case WORD -> says(visit, note, notes.body(note, NotedBody.Word.class));
            case CUT -> says(notes.body(note, NotedBody.Cut.class));
            case GROWTH -> says(notes.body(note, NotedBody.Growth.class));
        };
    }

    private List<String> says(NotedBody.Letter letter) {
        String product =
            letter.product().isEmpty() ? say.letter_any_product() : letter.shade().isEmpty() ? letter.product()
                : say.letter_shade_line(letter.product(), letter.shade());
        return List.of(product, say.by_on(letter.by(), day(letter.written())));
    }

    private List<String> says(Visit visit, Noted note, NotedBody.Word word) {
        Stream<String> other = note.visitId().equals(visit.id) ? Stream.of() : Stream.of(say.word_other_visit());
        Stream<String> said = Stream.of(word.says().isEmpty() ? "" : say.word_says_line(word.says()),
            say.by_on(word.by(), day(word.said())), way(word),
            word.until().map(last -> say.word_until_line(day(last))).orElse(""));
        return Stream.concat(said, other).filter(line -> !line.isEmpty()).toList();
    }

    private String way(NotedBody.Word word) {
        return switch (word.way()) {
            case "letter" -> say.word_way_letter();
            case "phone" -> say.word_way_phone();
            case "client" -> say.word_way_client();
            default -> "";
        };
    }

    private List<String> says(NotedBody.Cut cut) {
        return List.of(say.cut_left_line(BenchNumber.say(cut.leftCm()), day(cut.day())));
    }

    private List<String> says(NotedBody.Growth band) {
        return List.of(say.growth_band_line(BenchNumber.say(band.cm()), day(band.coloured()), day(band.measured())));
    }

    /** A letter that counts for nothing yet says what is missing. */
    private String hint(Visit visit, Noted note) {
        boolean names = note.kind() == NotedKind.LETTER && !note.struck()
            && notes.body(note, NotedBody.Letter.class).outcome().equals("names-product");
        return names && !facts.names(visit, notes.body(note, NotedBody.Letter.class)) ? say.letter_not_planned() : "";
    }

    String day(LocalDate day) {
        return new DateWords(language.locale()).date(day);
    }

    private String at(Visit visit, Instant moment) {
        return time.dayAndTime(moment.atZone(visit.zone()));
    }
}
