package foretress.consent;

import com.lowagie.text.Chunk;
import com.lowagie.text.DocumentException;
import com.lowagie.text.Font;
import com.lowagie.text.Phrase;
import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** The faces of the paper. Each is a list of fonts: the first that has a letter prints it. */
enum FontFace {
    HEADING("Alegreya-SemiBold", "SourceSans3-SemiBold", "NotoNaskhArabic-Bold", "NotoSansHebrew-Bold",
        "NotoSansArmenian-Regular", "NotoSansGeorgian-Regular"),
    STATEMENT("Alegreya-Regular", "SourceSans3-Regular", "NotoNaskhArabic-Regular", "NotoSansHebrew-Regular",
        "NotoSansArmenian-Regular", "NotoSansGeorgian-Regular"),
    LABEL("Alegreya-Italic", "Alegreya-Regular", "SourceSans3-Regular", "NotoNaskhArabic-Regular",
        "NotoSansHebrew-Regular", "NotoSansArmenian-Regular", "NotoSansGeorgian-Regular"),
    TEXT("SourceSans3-Regular", "Alegreya-Regular", "NotoNaskhArabic-Regular", "NotoSansHebrew-Regular",
        "NotoSansArmenian-Regular", "NotoSansGeorgian-Regular"),
    STRONG("SourceSans3-SemiBold", "Alegreya-SemiBold", "NotoNaskhArabic-Bold", "NotoSansHebrew-Bold",
        "NotoSansArmenian-Regular", "NotoSansGeorgian-Regular");

    /** Naskh is drawn small in its square: beside Latin letters of the same size it looks two sizes smaller. */
    private static final float NASKH = 1.16f;

    private final List<BaseFont> fonts;

    FontFace(String... names) {
        fonts = Stream.of(names).map(FontFace::load).toList();
    }

    /** The text in this face; a letter that no font has stands as [U+XXXX]. */
    Phrase set(String text, float size) {
        var phrase = new Phrase();
        var run = new StringBuilder();
        BaseFont running = null;
        for (String letter : letters(text)) {
            BaseFont font = fontOf(letter, running);
            if (font != running && !run.isEmpty()) {
                phrase.add(chunk(run, running, size));
                run.setLength(0);
            }
            running = font;
            run.append(letter);
        }
        if (!run.isEmpty()) {
            phrase.add(chunk(run, running, size));
        }
        return phrase;
    }

    private static Chunk chunk(StringBuilder run, BaseFont font, float size) {
        boolean naskh = font.getPostscriptFontName().contains("Naskh");
        return new Chunk(run.toString(), new Font(font, naskh ? size * NASKH : size));
    }

    /** What the eye sees of the text: itself, with every letter that no font has spelled out. */
    String seen(String text) {
        var seen = new StringBuilder();
        letters(text).stream().filter(letter -> !invisible(letter.codePointAt(0))).forEach(seen::append);
        return seen.toString();
    }

    /** Width of one line of the text at the size, in points. */
    float width(String text, float size) {
        return letters(text).stream().map(letter -> fontOf(letter, null).getWidthPoint(letter, size)).reduce(0f,
            Float::sum);
    }

    private List<String> letters(String text) {
        var letters = new ArrayList<String>();
        Direction.embedded(text).codePoints().forEach(letter -> {
            if (invisible(letter) || fonts.stream().anyMatch(font -> font.charExists(letter))) {
                letters.add(Character.toString(letter));
            } else {
                "[U+%04X]".formatted(letter).chars().forEach(part -> letters.add(Character.toString(part)));
            }
        });
        return letters;
    }

    /** A letter without ink stays in the font of the letters before it, so that it parts no run. */
    private BaseFont fontOf(String letter, BaseFont running) {
        int code = letter.codePointAt(0);
        boolean stays = running != null && (invisible(code) || code == ' ' && running.charExists(code));
        return stays ? running
            : fonts.stream().filter(font -> font.charExists(code)).findFirst().orElse(fonts.get(0));
    }

    /** Format characters steer their neighbours and have no ink of their own. */
    private static boolean invisible(int letter) {
        return Character.getType(letter) == Character.FORMAT;
    }

    private static BaseFont load(String name) {
        return Loaded.FONTS.computeIfAbsent(name, FontFace::read);
    }

    private static BaseFont read(String name) {
        try (InputStream in = FontFace.class.getResourceAsStream("/fonts/" + name + ".ttf")) {
            BaseFont font = BaseFont.createFont(name + ".ttf", BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false,
                in.readAllBytes(), null);
            font.setIncludeCidSet(false); // the list OpenPDF writes is incomplete, which PDF/A-2 refuses (ISO 19005-2, 6.2.11.4.2)
            return font;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (DocumentException e) {
            throw new IllegalStateException("the font " + name + " cannot be read", e);
        }
    }

    /** Enum constants cannot reach a static map of their own class while they are made. */
    private static final class Loaded {
        static final Map<String, BaseFont> FONTS = new ConcurrentHashMap<>();
    }
}
