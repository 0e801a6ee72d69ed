package foretress.consent;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.consent.PaperFlow.Cell;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class PaperFlowTest {
    private static byte[] sheet(Direction direction, Consumer<PaperFlow> what) {
        return new ArchivePdf("Sheet", "Alder & Wren", "en", Instant.EPOCH).make(PaperSize.A4, (document,
            writer) -> what.accept(new PaperFlow(PaperSize.A4, direction, document, writer, (page, number) -> {
                PageFrame.punchMarks(page);
                PageFrame.foot(page, "Foot", String.valueOf(number));
                page.moveTo(700);
            })));
    }

    private static Cell cell(float start, float width, String text) {
        return Cell.of(start, width, FontFace.TEXT, 11, 15, text);
    }

    @Test
    @DisplayName("A31: a right-to-left paper is the same paper mirrored: first column and punch on the right")
    void rightToLeftPaperIsMirrored() {
        byte[] pdf = ConsentPaperTest.shown("sheet-rtl", sheet(Direction.RIGHT_TO_LEFT, sheet -> {
            sheet.rule();
            for (String word : List.of("אחת", "one")) {
                sheet.row(cell(0, 100, word));
            }
            sheet.row(cell(200, 200, "two"));
        }));
        Map<String, Float> ends = Read.lineEnds(pdf);
        float edge = PaperSize.A4.width - PaperFlow.START_MARGIN;
        assertThat(ends.get("אחת")).isBetween(edge - 1, edge + 1);
        assertThat(ends.get("one")).isBetween(edge - 1, edge + 1);
        assertThat(ends.get("two")).isBetween(edge - 201, edge - 199);
    }

    @Test
    void aRightToLeftNameOnALeftToRightPaperStandsAtTheLeft() {
        byte[] pdf = sheet(Direction.LEFT_TO_RIGHT, sheet -> sheet.row(cell(50, 300, "אחת")));
        assertThat(Read.lineStarts(pdf).get("אחת")).isBetween(PaperFlow.START_MARGIN + 49, PaperFlow.START_MARGIN + 51);
    }

    @Test
    void aRowThatDoesNotFitStartsANewPageAndOneLongerThanAPageIsCarriedOver() {
        byte[] pdf = sheet(Direction.LEFT_TO_RIGHT, sheet -> {
            sheet.moveTo(PaperFlow.BOTTOM + 20);
            sheet.row(
                cell(0, 200, "does not fit in here, since it is so many words that they run over more than one line"));
            assertThat(sheet.pages()).isEqualTo(2);
            sheet.row(cell(0, 200, "long ".repeat(900)), cell(220, 100, "beside"));
            assertThat(sheet.pages()).isGreaterThan(3);
        });
        assertThat(Read.plain(Read.all(pdf)).split("long", -1)).hasSize(901);
    }

    @Test
    void nothingIsSetBelowTheFoot() {
        byte[] pdf = sheet(Direction.LEFT_TO_RIGHT, sheet -> sheet.row(cell(0, 200, "long ".repeat(900))));
        assertThat(Read.lowest(pdf, "long")).isGreaterThan(PaperFlow.BOTTOM - 6);
    }
}
