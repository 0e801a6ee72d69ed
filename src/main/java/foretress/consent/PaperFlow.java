package foretress.consent;

import com.lowagie.text.Document;
import com.lowagie.text.DocumentException;
import com.lowagie.text.Element;
import com.lowagie.text.Phrase;
import com.lowagie.text.pdf.ColumnText;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfWriter;
import foretress.invitation.Qr;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

/**
 * Paper with a cursor that goes down: a piece that does not fit starts a new page, one longer than a page is carried over.
 * Places are points from the reading-start edge of the type area, so that a right-to-left paper is the same paper mirrored.
 */
final class PaperFlow {
    static final float START_MARGIN = 76.5f; // 27 mm, room for the punch
    static final float END_MARGIN = 56.7f; // 20 mm
    static final float BOTTOM = 66;
    private static final float ASCENT = 0.76f; // of the leading: where the first base line stands

    final PaperSize size;
    final Direction direction;
    final float width;
    final PdfContentByte ink;
    private final Document document;
    private final BiConsumer<PaperFlow, Integer> frame;
    private int page;
    private float cursor;
    private float top;

    /**
     * @param frame draws what every page carries and leaves the cursor where the text begins
     */
    PaperFlow(PaperSize size, Direction direction, Document document, PdfWriter writer,
        BiConsumer<PaperFlow, Integer> frame) {
        this.size = size;
        this.direction = direction;
        this.width = size.width - START_MARGIN - END_MARGIN;
        this.document = document;
        this.ink = writer.getDirectContent();
        this.frame = frame;
        turn();
    }

    /** A piece of text in a row: where it starts, how wide it may be, how it is set. */
    record Cell(float start, float width, Phrase words, float leading, boolean atEnd, Direction direction) {
        static Cell of(float start, float width, FontFace face, float size, float leading, String text) {
            return new Cell(start, width, face.set(text, size), leading, false, Direction.of(text));
        }

        Cell toEnd() {
            return new Cell(start, width, words, leading, true, direction);
        }
    }

    int pages() {
        return page;
    }

    float cursor() {
        return cursor;
    }

    void moveTo(float y) {
        cursor = y;
    }

    void down(float points) {
        cursor -= points;
    }

    /** White above a piece; at the top of a page there is enough of it already. */
    void gap(float points) {
        if (cursor < top) {
            cursor -= points;
        }
    }

    /** What fits on one page. */
    float tallest() {
        return top - BOTTOM;
    }

    /** A new page unless this much room is left on this one. */
    void need(float points) {
        if (cursor - points < BOTTOM && cursor < top) {
            turn();
        }
    }

    /** The cells side by side; the cursor goes under the longest. */
    void row(Cell... cells) {
        float height = height(cells);
        if (height <= top - BOTTOM) {
            need(height);
        }
        carry(List.of(cells));
    }

    float height(Cell... cells) {
        float highest = 0f;
        for (Cell cell : cells) {
            ColumnText column = column(cell);
            column.setSimpleColumn(0, -100_000, cell.width(), 0);
            go(column, true);
            highest = Math.max(highest, -column.getYLine());
        }
        return highest;
    }

    /** A line across part of the type area. */
    void rule(float start, float length, float thickness, float grey) {
        ink.saveState();
        ink.setGrayFill(grey);
        ink.rectangle(left(start, length), cursor - thickness / 2, length, thickness);
        ink.fill();
        ink.restoreState();
    }

    /** A frame round the next so many points of the type area. */
    void frame(float height, float thickness) {
        ink.saveState();
        ink.setGrayStroke(0);
        ink.setLineWidth(thickness);
        ink.rectangle(left(0, width), cursor - height, width, height);
        ink.stroke();
        ink.restoreState();
    }

    /** A QR code whose dark modules are filled, hanging from the cursor. */
    void squares(Qr code, float start, float side) {
        float module = side / code.size();
        float x = left(start, side);
        ink.saveState();
        ink.setGrayFill(0);
        code.runs().forEach(run -> ink.rectangle(x + run.x() * module, cursor - (run.y() + 1) * module,
            run.length() * module, module));
        ink.fill();
        ink.restoreState();
    }

    void rule() {
        rule(0, width, 0.75f, 0.6f);
    }

    /** The page's own x of something this long that starts here. */
    float left(float start, float length) {
        return direction == Direction.RIGHT_TO_LEFT ? size.width - START_MARGIN - start - length : START_MARGIN + start;
    }

    /** Text on its own, away from the cursor: mastheads and feet. */
    void at(float y, Cell cell) {
        ColumnText column = column(cell);
        place(column, cell, y, -100_000);
        go(column, false);
    }

    private void turn() {
        if (page > 0) {
            document.newPage();
        }
        page++;
        frame.accept(this, page);
        top = cursor;
    }

    private void carry(List<Cell> cells) {
        ArrayList<ColumnText> columns = new ArrayList<>(cells.stream().map(this::column).toList());
        for (boolean more = true; more;) {
            more = false;
            float lowest = cursor;
            for (int i = 0; i < columns.size(); i++) {
                place(columns.get(i), cells.get(i), cursor, BOTTOM - 4);
                more |= ColumnText.hasMoreText(go(columns.get(i), false));
                lowest = Math.min(lowest, columns.get(i).getYLine() - lift(cells.get(i)));
            }
            cursor = lowest;
            if (more) {
                turn();
            }
        }
    }

    private void place(ColumnText column, Cell cell, float y, float bottom) {
        float x = left(cell.start(), cell.width());
        column.setSimpleColumn(x, bottom, x + cell.width(), y + lift(cell));
    }

    private static float lift(Cell cell) {
        return cell.leading() * (1 - ASCENT);
    }

    private ColumnText column(Cell cell) {
        var column = new ColumnText(ink);
        column.setRunDirection(cell.direction() == Direction.RIGHT_TO_LEFT
            ? PdfWriter.RUN_DIRECTION_RTL : PdfWriter.RUN_DIRECTION_LTR);
        boolean rightEdge = (direction == Direction.RIGHT_TO_LEFT) != cell.atEnd();
        // in a right-to-left column OpenPDF means "start" when it says left
        boolean mirrored = cell.direction() == Direction.RIGHT_TO_LEFT;
        column.setAlignment(rightEdge != mirrored ? Element.ALIGN_RIGHT : Element.ALIGN_LEFT);
        column.setLeading(cell.leading());
        column.setText(cell.words());
        return column;
    }

    private static int go(ColumnText column, boolean simulate) {
        try {
            return column.go(simulate);
        } catch (DocumentException e) {
            throw new IllegalStateException("a piece of the paper cannot be set", e);
        }
    }
}
