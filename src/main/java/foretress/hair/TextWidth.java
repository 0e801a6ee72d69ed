package foretress.hair;

/** A cautious guess of how wide a text is drawn, for no font is at hand here; a line too long ends in an ellipsis. */
final class TextWidth {
    private static final String NARROW = "ijl.,;:'|!()[]{}ftrI1 -·";
    private static final String WIDE = "mwMWQO@%—…";

    private TextWidth() {
    }

    static double of(String text, double size, boolean bold) {
        double em = text.codePoints().mapToDouble(TextWidth::em).sum();
        return em * size * (bold ? 1.06 : 1);
    }

    private static double em(int letter) {
        if (letter >= 0x1100 && letter <= 0xffdc && !(letter >= 0x1e00 && letter < 0x2100)) {
            return 1;
        }
        String one = Character.toString(letter);
        return NARROW.contains(one) ? 0.31 : WIDE.contains(one) ? 0.85 : Character.isUpperCase(letter) ? 0.64 : 0.53;
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
