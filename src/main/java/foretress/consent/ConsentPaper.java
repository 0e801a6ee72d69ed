package foretress.consent;

import foretress.consent.ConsentText.Line;
import foretress.consent.ConsentText.Part;
import foretress.consent.ConsentText.Section;
import foretress.consent.PaperFlow.Cell;
import foretress.invitation.Qr;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The signed consent on paper: black on white, room for the punch, every weight by shape and word. Its words are those of
 * the {@link ConsentText} and, around them, only the salon's name, the mark and how it was signed.
 */
public final class ConsentPaper {
    private static final float TEXT = 10.5f;
    private static final float TEXT_LEADING = 14.3f;
    private static final float STATEMENT = 12.5f;
    private static final float STATEMENT_LEADING = 16.4f;
    private static final float ANSWER = 10;
    private static final float ANSWER_LEADING = 13.5f;
    private static final float TOPIC = 104; // the first column of the answers
    private static final float SMALL = 8.5f;
    private static final float STRAND = 9.5f; // the list under the drawing, and how it was signed
    private static final float STRAND_LEADING = 12.5f;
    private static final float CODE = 68; // with its quiet zone 24 mm: a phone reads it from a hand's breadth

    private final ConsentInput input;
    private final ConsentText text;
    private final SignatureMark mark;
    private final HowSigned how;
    private final String verifyAt;
    private final PaperWords words;
    private int pages;
    private PaperFlow sheet;

    private ConsentPaper(ConsentInput input, ConsentText text, SignatureMark mark, HowSigned how,
        String verifyAt) {
        this.input = input;
        this.text = text;
        this.mark = mark;
        this.how = how;
        this.verifyAt = verifyAt;
        this.words = new PaperWords(input, text, how);
    }

    /**
     * The document's bytes; the same arguments give the same bytes.
     *
     * @param verifyAt where anybody can check the file
     */
    public static byte[] print(ConsentInput input, ConsentText text, SignatureMark mark, HowSigned how,
        PaperSize size, String verifyAt) {
        return new ConsentPaper(input, text, mark, how, verifyAt).print(size);
    }

    /** The name to save the document under; it tells the visit's day and nothing about health. */
    public static String fileName(ConsentInput input, HowSigned how) {
        String what = input.purpose() == ConsentInput.Purpose.SERVICE ? "consent" : "consent-chair";
        return "%s-%s-v%d.pdf".formatted(what, input.visit().startsAt().toLocalDate(), how.version());
    }

    /** Set twice: only after the first time it is known how many pages there are. */
    private byte[] print(PaperSize size) {
        ArchivePdf.rehearse(size,
            (document, writer) -> fill(new PaperFlow(size, words.direction(), document, writer, this::frame)));
        pages = sheet.pages();
        return new ArchivePdf(words.title(), input.salon().name(), text.language(), how.evidence().signedAt())
            .make(size,
                (document, writer) -> fill(new PaperFlow(size, words.direction(), document, writer, this::frame)));
    }

    private void fill(PaperFlow fresh) {
        sheet = fresh;
        title();
        for (Section section : text.sections()) {
            if (section.part() == afterSigning()) {
                signature();
                howSigned();
            }
            section(section);
        }
        check();
    }

    /** Where anybody can check the file, also for a phone's camera. */
    private void check() {
        Qr code = Qr.of(verifyAt);
        sheet.need(CODE + 8);
        sheet.down(8);
        float top = sheet.cursor();
        sheet.squares(code, sheet.width - CODE, CODE);
        float width = sheet.width - CODE - 12;
        sheet.down(12);
        sheet.row(Cell.of(0, width, FontFace.TEXT, SMALL, 12, words.say("how.check")));
        sheet.row(Cell.of(0, width, FontFace.TEXT, SMALL, 12, verifyAt));
        sheet.moveTo(top - CODE);
    }

    /** The part in front of which the client signs. */
    private Part afterSigning() {
        return input.purpose() == ConsentInput.Purpose.SERVICE ? Part.TAKE_BACK : Part.URGENT;
    }

    // Every page: masthead, punch marks, foot.

    private void frame(PaperFlow page, int number) {
        PageFrame.punchMarks(page);
        Cell name = Cell.of(0, page.width * 0.62f, FontFace.HEADING, 16, 18, input.salon().name());
        page.at(page.size.height - 46, name);
        if (number == 1) {
            page.at(page.size.height - 65, Cell.of(0, page.width * 0.62f, FontFace.TEXT, TEXT, 14, words.address()));
            page.at(page.size.height - 46, atEnd(page, words.signedAt()));
            words.supersedes().ifPresent(line -> page.at(page.size.height - 60, atEnd(page, line)));
        } else {
            page.at(page.size.height - 46, atEnd(page, PageFrame.shortened(input.client().name())));
        }
        page.moveTo(page.size.height - (number == 1 ? 88 : 74));
        PageFrame.mastheadRule(page);
        PageFrame.foot(page, words.foot(), words.page(number, pages));
        page.down(number == 1 ? 20 : 18);
    }

    private static Cell atEnd(PaperFlow page, String line) {
        return Cell.of(page.width * 0.64f, page.width * 0.36f, FontFace.TEXT, 10.5f, 14, line).toEnd();
    }

    private void title() {
        sheet.row(Cell.of(0, sheet.width, FontFace.HEADING, 25, 29, text.title()));
        sheet.down(9);
    }

    private void section(Section section) {
        if (section.part() == Part.PARTICULARS) {
            particulars(section.lines().stream().map(Line.Pair.class::cast).toList());
            return;
        }
        if (section.part() == Part.URGENT) {
            urgent(section);
            return;
        }
        heading(section.heading(), section.part() == Part.STRAND ? strandHeight() : 30);
        switch (section.part()) {
            case STATEMENTS -> section.lines().forEach(this::statement);
            case FOUND -> found(section.lines());
            case STRAND -> strand(section.lines());
            case TESTS -> section.lines().forEach(line -> limits((Line.Pair) line));
            case ANSWERED -> table(() -> topics(section.lines()));
            default -> section.lines().forEach(line -> paragraph(line.plain()));
        }
    }

    private void heading(String heading, float withWhatFollows) {
        sheet.need(withWhatFollows + 40);
        sheet.gap(11);
        sheet.row(Cell.of(0, sheet.width, FontFace.HEADING, 15.5f, 19, heading));
        sheet.down(5);
    }

    /** Two columns of three, each read downwards: who, then what. */
    private void particulars(List<Line.Pair> pairs) {
        int half = (pairs.size() + 1) / 2;
        float column = sheet.width * 0.477f;
        float second = sheet.width - column;
        for (Integer side : List.of(0, 1)) {
            measureOrDraw(pairs.subList(side * half, Math.min(pairs.size(), (side + 1) * half)), side == 0 ? 0 : second,
                column);
        }
    }

    private float particularsTop;

    private void measureOrDraw(List<Line.Pair> pairs, float start, float column) {
        if (start == 0) {
            particularsTop = sheet.cursor();
        }
        float lowest = sheet.cursor();
        float label = labels(62, column / 2, 12, pairs.stream().map(Line.Pair::label));
        sheet.moveTo(particularsTop);
        for (ConsentText.Line.Pair pair : pairs) {
            sheet.rule(start, column, 0.75f, 0.6f);
            sheet.down(4.5f);
            sheet.row(
                Cell.of(start, label, FontFace.LABEL, 12, TEXT_LEADING, pair.label()),
                Cell.of(start + label + 1, column - label - 1,
                    pair == pairs.get(0) && start == 0 ? FontFace.STRONG : FontFace.TEXT, TEXT, TEXT_LEADING,
                    pair.value()));
            sheet.down(4);
        }
        sheet.moveTo(start == 0 ? sheet.cursor() : Math.min(lowest, sheet.cursor()));
    }

    /** Room for the longest of these labels in points: at least and at most so much. */
    private static float labels(float least, float most, float size, Stream<String> labels) {
        float longest = (float) labels.mapToDouble(label -> FontFace.LABEL.width(label, size) + 8).max().orElse(least);
        return Math.min(most, Math.max(least, longest));
    }

    private void statement(Line line) {
        if (line instanceof Line.Statement statement) {
            numbered(statement);
        } else {
            sheet.row(Cell.of(21, sheet.width - 21, FontFace.STATEMENT, STATEMENT, STATEMENT_LEADING, line.plain()));
            sheet.down(4);
        }
    }

    private void numbered(Line.Statement statement) {
        sheet.row(
            Cell.of(0, 20, FontFace.STRONG, 11.5f, STATEMENT_LEADING, String.valueOf(statement.number())),
            Cell.of(21, sheet.width - 21, FontFace.STATEMENT, STATEMENT, STATEMENT_LEADING, statement.text()));
        sheet.down(4);
    }

    private void table(Runnable rows) {
        rows.run();
        sheet.rule();
        sheet.down(2);
    }

    /** What was found; then, without a shape, what is not known yet. */
    private void found(List<Line> lines) {
        table(() -> lines.stream().filter(Line.Finding.class::isInstance).forEach(f -> finding((Line.Finding) f)));
        lines.stream().filter(line -> !(line instanceof Line.Finding)).forEach(line -> paragraph(line.plain()));
    }

    private void finding(Line.Finding finding) {
        Cell[] cells = new Cell[] {
            Cell.of(20, 98, FontFace.STRONG, TEXT, TEXT_LEADING, finding.word()),
            Cell.of(122, sheet.width - 122, FontFace.TEXT, TEXT, TEXT_LEADING, finding.text()) };
        ruled(cells, () -> WeightShapes.draw(sheet.ink, finding.weight(), sheet.left(0, 13), sheet.cursor() + 0.6f, 14,
            sheet.direction == Direction.RIGHT_TO_LEFT));
    }

    private float strandHeight() {
        return input.strand()
            .map(strand -> StrandPainter.height(sheet, strand.drawing()) + strand.words().size() * STRAND_LEADING)
            .orElse(0f);
    }

    private void strand(List<Line> words) {
        input.strand().ifPresent(strand -> StrandPainter.draw(sheet, strand.drawing()));
        sheet.down(6);
        words.forEach(line -> sheet.row(small(line.plain())));
    }

    private void ruled(Cell[] cells, Runnable beside) {
        sheet.need(sheet.height(cells) + 10);
        sheet.rule();
        sheet.down(5);
        beside.run();
        sheet.row(cells);
        sheet.down(5);
    }

    private void limits(Line.Pair test) {
        Cell limits = Cell.of(0, sheet.width, FontFace.TEXT, TEXT, TEXT_LEADING, test.value());
        sheet.need(TEXT_LEADING + sheet.height(limits));
        sheet.row(Cell.of(0, sheet.width, FontFace.STRONG, TEXT, TEXT_LEADING, test.label()));
        sheet.row(limits);
        sheet.down(5);
    }

    /** What was answered, a block for each topic: its name in the first column, question and answer in the other two. */
    private void topics(List<Line> lines) {
        int from = 0;
        for (int i = 1; i <= lines.size(); i++) {
            if (i == lines.size() || lines.get(i) instanceof Line.Topic) {
                topic((Line.Topic) lines.get(from), lines.subList(from + 1, i));
                from = i;
            }
        }
    }

    private void topic(Line.Topic topic, List<Line> answers) {
        Cell name = Cell.of(0, TOPIC - 10, FontFace.LABEL, 11, ANSWER_LEADING, topic.text());
        List<Cell[]> rows = answers.stream().map(this::answer).toList();
        float height = Math.max(sheet.height(name), (float) rows.stream().mapToDouble(sheet::height).sum()) + 9;
        sheet.need(height < sheet.tallest() ? height : 52);
        sheet.rule();
        sheet.down(4);
        float top = sheet.cursor();
        sheet.at(top, name);
        rows.forEach(sheet::row);
        if (sheet.cursor() <= top) {
            sheet.moveTo(Math.min(sheet.cursor(), top - sheet.height(name)));
        }
        sheet.down(5);
    }

    private Cell[] answer(Line line) {
        if (line instanceof Line.Pair pair) {
            float split = TOPIC + (sheet.width - TOPIC) * 0.51f;
            return new Cell[] {
                Cell.of(TOPIC, split - TOPIC - 8, FontFace.TEXT, ANSWER, ANSWER_LEADING, pair.label()),
                Cell.of(split, sheet.width - split, FontFace.STRONG, ANSWER, ANSWER_LEADING, pair.value()) };
        }
        return new Cell[] {
            Cell.of(TOPIC, sheet.width - TOPIC, FontFace.TEXT, ANSWER, ANSWER_LEADING, line.plain()) };
    }

    private void paragraph(String paragraph) {
        sheet.row(Cell.of(0, sheet.width, FontFace.TEXT, TEXT, TEXT_LEADING, paragraph));
        sheet.down(3);
    }

    /** The one framed part: whoever holds the paper in a hurry must find it. */
    private void urgent(Section section) {
        float inset = 14f;
        List<Cell> cells = section.lines().stream()
            .map(line -> Cell.of(inset, sheet.width - 2 * inset, FontFace.TEXT, TEXT, TEXT_LEADING, line.plain()))
            .toList();
        Cell heading = Cell.of(inset, sheet.width - 2 * inset, FontFace.HEADING, 15.5f, 19, section.heading());
        float height =
            (float) cells.stream().mapToDouble(cell -> sheet.height(cell) + 2).sum() + sheet.height(heading) + 18;
        sheet.need(height + 14);
        sheet.gap(11);
        sheet.frame(height, 1.4f);
        sheet.down(8);
        sheet.row(heading);
        sheet.down(4);
        for (Cell cell : cells) {
            sheet.row(cell);
            sheet.down(2);
        }
    }

    private void signature() {
        float beside = sheet.width * 0.54f;
        heading(words.say("signature"), 130);
        float top = sheet.cursor();
        MarkDrawing.draw(sheet, mark, sheet.width * 0.49f);
        Hairline.draw(sheet.ink, sheet.left(0, 0), sheet.cursor(),
            sheet.width * 0.49f * (sheet.direction == Direction.RIGHT_TO_LEFT ? -1 : 1));
        sheet.down(6);
        Cell caption = Cell.of(0, sheet.width * 0.49f, FontFace.TEXT, TEXT, TEXT_LEADING, words.caption(mark));
        if (input.purpose() == ConsentInput.Purpose.SERVICE
            && text.sections().stream().anyMatch(section -> section.part() == Part.TESTS)) {
            Cell owed = Cell.of(beside, sheet.width - beside, FontFace.TEXT, TEXT, TEXT_LEADING, words.say("owed"));
            float bottom = sheet.cursor() - sheet.height(caption);
            sheet.at(Math.min(top, bottom + sheet.height(owed)), owed);
        }
        sheet.row(caption);
        how.evidence().guardian().ifPresent(this::signature);
    }

    /** The second signature, under the first. */
    private void signature(Evidence.Guardian guardian) {
        sheet.need(120);
        sheet.down(8);
        MarkDrawing.draw(sheet, guardian.mark(), sheet.width * 0.49f);
        Hairline.draw(sheet.ink, sheet.left(0, 0), sheet.cursor(),
            sheet.width * 0.49f * (sheet.direction == Direction.RIGHT_TO_LEFT ? -1 : 1));
        sheet.down(6);
        sheet.row(Cell.of(0, sheet.width, FontFace.TEXT, TEXT, TEXT_LEADING, words.caption(guardian)));
    }

    private Cell small(String words) {
        return Cell.of(0, sheet.width, FontFace.TEXT, STRAND, STRAND_LEADING, words);
    }

    private void howSigned() {
        String story = words.story(mark);
        heading(words.say("how.heading"), sheet.height(small(story)) + 66);
        sheet.row(small(story));
        sheet.down(5);
        float label = labels(72, sheet.width / 4, 10, words.prints().stream().map(Map.Entry::getKey));
        for (Map.Entry<String, String> print : words.prints()) {
            sheet.row(
                Cell.of(0, label, FontFace.LABEL, 10, 12, print.getKey()),
                Cell.of(label + 1, sheet.width - label - 1, FontFace.TEXT, SMALL, 12, print.getValue()));
        }
    }
}
