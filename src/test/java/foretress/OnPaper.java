package foretress;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** A page as Chromium prints it on A4. */
public final class OnPaper {
    private static final String FAULTS = """
        () => {
          const seen = e => e.getClientRects().length > 0, { color, backgroundColor } = getComputedStyle(document.body);
          const pressed = [...document.querySelectorAll('button, .button, nav, .skip, .links, [href^="/language"]')].filter(seen);
          const inked = color === 'rgb(0, 0, 0)' && backgroundColor === 'rgb(255, 255, 255)';
          return [...pressed.map(e => 'on paper: ' + e.outerHTML.slice(0, 80)), ...(inked ? [] : ['ink ' + color + ' on ' + backgroundColor])];
        }""";

    private OnPaper() {}

    /** What stands on paper that cannot be pressed there, and ink that is not black on white. Leaves the page on the screen. */
    public static List<String> faults(Page page) {
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
        List<String> found = ((List<?>) page.evaluate(FAULTS)).stream().map(Object::toString).toList();
        page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN));
        return found;
    }

    /** The heading is there, and no more sheets than given are needed. */
    public static List<String> printed(Page page, int sheets) {
        List<String> found = new ArrayList<>();
        try (PDDocument paper = Loader.loadPDF(page.pdf(new Page.PdfOptions().setFormat("A4")))) {
            if (!oneLine(new PDFTextStripper().getText(paper)).contains(oneLine(page.locator("h1").innerText()))) {
                found.add("no heading on paper");
            }
            if (paper.getNumberOfPages() > sheets) {
                found.add(paper.getNumberOfPages() + " sheets");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return found;
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }
}
