package foretress.consent;

import com.lowagie.text.Document;
import com.lowagie.text.pdf.PdfWriter;
import foretress.consent.ConsentText.Line;
import foretress.consent.PaperFlow.Cell;
import java.time.Instant;
import java.util.List;
import java.util.Locale;

/** The record card on paper: black on white, room for the punch, weights by shape and word, to be filed beside the older paper cards. */
public final class RecordPaper {
    private static final float TEXT = 10.5f;
    private static final float LEADING = 14.2f;
    private static final float STRAND_LEADING = 13;
    private static final float LABELS = 0.3f;

    private final RecordText text;
    private int pages;
    private PaperFlow sheet;

    private RecordPaper(RecordText text) {
        this.text = text;
    }

    /** PDF/A-2b; the same arguments give the same bytes. */
    public static byte[] print(RecordText text, PaperSize size, Instant made) {
        return new RecordPaper(text).print(size, made);
    }

    /** Set twice: only after the first time it is known how many pages there are. */
    private byte[] print(PaperSize size, Instant made) {
        ArchivePdf.rehearse(size, (document, writer) -> fill(sheet(size, document, writer)));
        pages = sheet.pages();
        return new ArchivePdf(text.title(), text.salon(), text.language(), made)
            .make(size, (document, writer) -> fill(sheet(size, document, writer)));
    }

    private PaperFlow sheet(PaperSize size, Document document, PdfWriter writer) {
        return new PaperFlow(size, Direction.ofLanguage(Locale.forLanguageTag(text.language())), document, writer,
            this::frame);
    }

    private void frame(PaperFlow page, int number) {
        PageFrame.punchMarks(page);
        page.at(page.size.height - 46, Cell.of(0, page.width * 0.6f, FontFace.HEADING, 16, 18, text.salon()));
        if (number == 1) {
            page.at(page.size.height - 65, Cell.of(0, page.width * 0.6f, FontFace.TEXT, TEXT, 14, text.address()));
            for (int i = 0; i < text.corner().size(); i++) {
                page.at(page.size.height - 46 - 14 * i, atEnd(page, text.corner().get(i)));
            }
        } else {
            page.at(page.size.height - 46, atEnd(page, PageFrame.shortened(text.client())));
        }
        page.moveTo(page.size.height - (number == 1 ? 88 : 74));
        PageFrame.mastheadRule(page);
        PageFrame.foot(page, text.foot(),
            text.pages().replace("{page}", String.valueOf(number)).replace("{pages}", String.valueOf(pages)));
        page.down(number == 1 ? 20 : 18);
    }

    private static Cell atEnd(PaperFlow page, String line) {
        return Cell.of(page.width * 0.62f, page.width * 0.38f, FontFace.TEXT, 10, 14, line).toEnd();
    }

    private void fill(PaperFlow fresh) {
        sheet = fresh;
        sheet.row(Cell.of(0, sheet.width, FontFace.HEADING, 25, 29, text.title()));
        sheet.down(8);
        particulars();
        text.sections().forEach(this::section);
    }

    /** Two columns, read row by row. */
    private void particulars() {
        float column = sheet.width * 0.477f;
        for (int i = 0; i < text.particulars().size(); i += 2) {
            List<ConsentText.Line.Pair> row = text.particulars().subList(i, Math.min(i + 2, text.particulars().size()));
            sheet.rule(0, column, 0.75f, 0.6f);
            sheet.rule(sheet.width - column, column, 0.75f, 0.6f);
            sheet.down(4.5f);
            sheet.row(row.size() == 1 ? cells(row.get(0), 0, column) : both(row, column));
            sheet.down(4);
        }
    }

    private Cell[] both(List<Line.Pair> row, float column) {
        Cell[] first = cells(row.get(0), 0, column);
        Cell[] second = cells(row.get(1), sheet.width - column, column);
        return new Cell[] { first[0], first[1], second[0], second[1] };
    }

    private static Cell[] cells(Line.Pair pair, float start, float column) {
        return new Cell[] {
            Cell.of(start, 74, FontFace.LABEL, 11.5f, LEADING, pair.label()),
            Cell.of(start + 76, column - 76, FontFace.STRONG, TEXT, LEADING, pair.value()) };
    }

    private void section(RecordText.Section section) {
        Float strand = section.strand()
            .map(drawn -> StrandPainter.height(sheet, drawn.drawing()) + drawn.words().size() * STRAND_LEADING)
            .orElse(44f);
        sheet.need(strand + 46);
        sheet.gap(15);
        sheet.row(Cell.of(0, sheet.width, FontFace.HEADING, 15.5f, 19, section.heading()));
        sheet.down(5);
        section.strand().ifPresent(this::strand);
        section.lines().forEach(this::line);
        if (!section.lines().isEmpty()) {
            sheet.rule();
            sheet.down(2);
        }
    }

    private void strand(ConsentInput.Strand strand) {
        StrandPainter.draw(sheet, strand.drawing());
        sheet.down(6);
        strand.words().forEach(line -> sheet.row(Cell.of(0, sheet.width, FontFace.TEXT, 9.5f, STRAND_LEADING, line)));
        sheet.down(4);
    }

    private void line(Line line) {
        if (line instanceof Line.Topic topic) {
            topic(topic);
        } else if (line instanceof Line.Finding finding) {
            finding(finding);
        } else if (line instanceof Line.Pair pair) {
            pair(pair);
        } else {
            ruled(Cell.of(0, sheet.width, FontFace.TEXT, TEXT, LEADING, line.plain()));
        }
    }

    private void topic(Line.Topic topic) {
        sheet.need(56);
        sheet.rule(0, sheet.width, 1.1f, 0);
        sheet.down(7);
        sheet.row(Cell.of(0, sheet.width, FontFace.STRONG, 11.5f, LEADING, topic.text()));
        sheet.down(4);
    }

    private void finding(Line.Finding finding) {
        Cell[] cells = new Cell[] {
            Cell.of(20, 118, FontFace.STRONG, TEXT, LEADING, finding.word()),
            Cell.of(142, sheet.width - 142, FontFace.TEXT, TEXT, LEADING, finding.text()) };
        start(cells);
        WeightShapes.draw(sheet.ink, finding.weight(), sheet.left(0, 13), sheet.cursor() + 0.4f, 13,
            sheet.direction == Direction.RIGHT_TO_LEFT);
        sheet.row(cells);
        sheet.down(4);
    }

    private void pair(Line.Pair pair) {
        float split = sheet.width * LABELS;
        ruled(Cell.of(0, split - 10, FontFace.TEXT, TEXT, LEADING, pair.label()),
            Cell.of(split, sheet.width - split, FontFace.STRONG, TEXT, LEADING, pair.value()));
    }

    private void ruled(Cell... cells) {
        start(cells);
        sheet.row(cells);
        sheet.down(4);
    }

    private void start(Cell... cells) {
        sheet.need(Math.min(sheet.height(cells) + 9, sheet.size.height / 2));
        sheet.rule();
        sheet.down(4.5f);
    }
}
