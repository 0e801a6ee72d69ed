package foretress.consent;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Reads a document back with a library that did not write it. */
public final class Read {
    private Read() {}

    static <T> T from(byte[] pdf, Function<PDDocument, T> what) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return what.apply(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The text page by page, without what every page carries: masthead before it, foot after it. */
    public static String body(byte[] pdf) {
        return from(pdf, document -> {
            try {
                return new Body().getText(document);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    static String all(byte[] pdf) {
        return from(pdf, document -> {
            try {
                return new PDFTextStripper().getText(document);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    static List<PDFont> fonts(byte[] pdf) {
        return from(pdf, document -> {
            var fonts = new ArrayList<PDFont>();
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    try {
                        fonts.add(page.getResources().getFont(name));
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                }
            }
            return fonts;
        });
    }

    /** Letters only, in one spelling, so that line breaks and shaped letters do not matter. */
    public static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFKC).replaceAll("[\\s\\p{Cf}]+", "");
    }

    /** Letters that stand further out than the margins. */
    static String outside(byte[] pdf, float left, float right) {
        return from(pdf, document -> {
            var out = new StringBuilder();
            try {
                new PDFTextStripper() {
                    @Override
                    protected void processTextPosition(TextPosition letter) {
                        float width = letter.getPageWidth();
                        if (!letter.getUnicode().isBlank()
                            && (letter.getX() < left || letter.getX() + letter.getWidth() > width - right)) {
                            out.append(letter.getUnicode());
                        }
                    }
                }.getText(document);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return out.toString();
        });
    }

    /** Where each word ends, in points from the left edge. */
    static Map<String, Float> lineEnds(byte[] pdf) {
        return words(pdf, letters -> (float) letters.stream().mapToDouble(letter -> letter.getX() + letter.getWidth())
            .max().orElse(0));
    }

    static Map<String, Float> lineStarts(byte[] pdf) {
        return words(pdf, letters -> (float) letters.stream().mapToDouble(TextPosition::getX).min().orElse(0));
    }

    /** How far above the lower edge the lowest such word stands. */
    static float lowest(byte[] pdf, String word) {
        return from(pdf, document -> {
            float[] lowest = new float[] { Float.MAX_VALUE };
            read(document, (text, letters) -> {
                if (text.contains(word)) {
                    lowest[0] = Math.min(lowest[0], letters.get(0).getPageHeight() - letters.get(0).getY());
                }
            });
            return lowest[0];
        });
    }

    private static Map<String, Float> words(byte[] pdf, Function<List<TextPosition>, Float> where) {
        return from(pdf, document -> {
            var words = new HashMap<String, Float>();
            read(document, (text, letters) -> words.put(text.strip(), where.apply(letters)));
            return words;
        });
    }

    private static void read(PDDocument document, BiConsumer<String, List<TextPosition>> each) {
        try {
            new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> letters) {
                    each.accept(text, letters);
                }
            }.getText(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Points of the page that are neither black, white nor grey. */
    static Set<Integer> colours(byte[] pdf, int page) {
        BufferedImage picture = picture(pdf, page);
        return IntStream.range(0, picture.getWidth() * picture.getHeight())
            .map(i -> picture.getRGB(i % picture.getWidth(), i / picture.getWidth()) & 0xFFFFFF)
            .filter(rgb -> (rgb >> 16) != (rgb & 0xFF) || (rgb >> 8 & 0xFF) != (rgb & 0xFF))
            .boxed().collect(Collectors.toSet());
    }

    static BufferedImage picture(byte[] pdf, int page) {
        return from(pdf, document -> {
            try {
                return new PDFRenderer(document).renderImageWithDPI(page, 96);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    /** Leaves out what stands in the top or bottom margin. */
    private static final class Body extends PDFTextStripper {
        private float height;

        @Override
        protected void startPage(PDPage page) throws IOException {
            height = page.getMediaBox().getHeight();
            super.startPage(page);
        }

        @Override
        protected void processTextPosition(TextPosition letter) {
            boolean first = getCurrentPageNo() == 1;
            float y = letter.getY();
            if (y > (first ? 90 : 76) && y < height - 58) {
                super.processTextPosition(letter);
            }
        }
    }
}
