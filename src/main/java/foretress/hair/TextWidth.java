package foretress.hair;

import java.util.ArrayList;
import java.util.List;

/** A cautious guess of how wide a text is drawn, for no font is at hand here; what is too long is wrapped, in the end cut off. */
final class TextWidth {
    private static final String NARROW = "ijl.,;:'|!()[]{}ftrI1 -·";
    private static final String WIDE = "mwMWQO@%—…";

    private TextWidth() {}

    static double of(String text, double size, boolean bold) {
        double em = text.codePoints().mapToDouble(TextWidth::em).sum();
        return em * size * (bold ? 1.06 : 1);
    }

    private static double em(int letter) {
        if (letter >= 0x1100 && letter <= 0xffdc && !(letter >= 0x1e00 && letter < 0x2100)) {
            return 1;
        }
        String one = Character.toString(letter);
        return NARROW.contains(one) ? 0.33 : WIDE.contains(one) ? 0.9 : Character.isUpperCase(letter) ? 0.67 : 0.56;
    }

    /** Broken at spaces into lines of this width, the first of another; a last line that is too long ends in an ellipsis. */
    static List<String> wrapped(String text, double firstWidth, double width, int mostLines, double size) {
        List<String> lines = new ArrayList<>();
        String rest = text.strip();
        while (!rest.isEmpty() && lines.size() < mostLines) {
            double room = lines.isEmpty() ? firstWidth : width;
            int end = lines.size() == mostLines - 1 ? rest.length() : lineEnd(rest, room, size);
            lines.add(fitted(rest.substring(0, end).stripTrailing(), room, size, false));
            rest = rest.substring(end).stripLeading();
        }
        return lines;
    }

    /** As many words as fit, one at least. */
    private static int lineEnd(String text, double width, double size) {
        int end = text.length();
        while (of(text.substring(0, end), size, false) > width) {
            int space = text.lastIndexOf(' ', end - 1);
            if (space <= 0) {
                return end;
            }
            end = space;
        }
        return end;
    }

    static String fitted(String text, double width, double size, boolean bold) {
        if (of(text, size, bold) <= width) {
            return text;
        }
        int letters = text.codePointCount(0, text.length());
        while (letters > 1) {
            letters--;
            String shorter = text.substring(0, text.offsetByCodePoints(0, letters)).stripTrailing() + "…";
            if (of(shorter, size, bold) <= width) {
                return shorter;
            }
        }
        return "…";
    }
}
