package foretress.lexicon;

import java.util.Random;

/**
 * Damages a text as copying, reading by machine and typing do: each character is hit with the given chance. A letter becomes one
 * that looks like it (l, I, 1; O, 0; rn, m) or another, is lost, doubled, swapped with the next, or broken over two lines with or
 * without a hyphen; a separator is lost, alone or with its blank, or becomes a line break.
 */
final class Noise {
    private final Random lot;
    private final double rate;

    Noise(long seed, double rate) {
        this.lot = new Random(seed);
        this.rate = rate;
    }

    String damaged(String text) {
        var out = new StringBuilder();
        int at = 0;
        while (at < text.length()) {
            at += lot.nextDouble() < rate ? hit(text, at, out) : kept(text, at, out);
        }
        return out.toString();
    }

    private static int kept(String text, int at, StringBuilder out) {
        out.append(text.charAt(at));
        return 1;
    }

    /** Returns how many characters of the text it used up. */
    private int hit(String text, int at, StringBuilder out) {
        char c = text.charAt(at);
        if (Character.isLetter(c)) {
            return letter(text, at, out);
        }
        if (Character.isDigit(c)) {
            return digit(text, at, out);
        }
        return separator(text, at, out);
    }

    private int letter(String text, int at, StringBuilder out) {
        char c = text.charAt(at);
        boolean inside = at + 1 < text.length() && Character.isLetter(text.charAt(at + 1));
        switch (lot.nextInt(6)) {
            case 0, 1 -> {
                return another(text, at, out);
            }
            case 2 -> {}
            case 3 -> out.append(c).append(c);
            case 4 -> {
                out.append(inside ? text.charAt(at + 1) : c).append(c);
                return inside ? 2 : 1;
            }
            default -> out.append(c).append(inside ? lot.nextBoolean() ? "-\n" : "\n" : "");
        }
        return 1;
    }

    private int another(String text, int at, StringBuilder out) {
        char c = text.charAt(at);
        if ((c == 'r' || c == 'R') && at + 1 < text.length() && Character.toLowerCase(text.charAt(at + 1)) == 'n') {
            out.append(c == 'r' ? 'm' : 'M');
            return 2;
        }
        switch (c) {
            case 'l', 'I' -> out.append(c == 'l' ? lot.nextBoolean() ? 'I' : '1' : lot.nextBoolean() ? 'l' : '1');
            case 'm', 'M' -> out.append(c == 'm' ? "rn" : "RN");
            case 'o', 'O' -> out.append('0');
            default -> out.append((char) ((Character.isUpperCase(c) ? 'A' : 'a') + lot.nextInt(26)));
        }
        return 1;
    }

    private int digit(String text, int at, StringBuilder out) {
        char c = text.charAt(at);
        boolean next = at + 1 < text.length() && Character.isDigit(text.charAt(at + 1));
        switch (lot.nextInt(4)) {
            case 0 -> out.append(c == '1' ? 'l' : c == '0' ? 'O' : c);
            case 1 -> {}
            case 2 -> out.append(c).append(c);
            default -> {
                out.append(next ? text.charAt(at + 1) : c).append(next ? c + "" : "");
                return next ? 2 : 1;
            }
        }
        return 1;
    }

    private int separator(String text, int at, StringBuilder out) {
        boolean blank = at + 1 < text.length() && text.charAt(at + 1) == ' ';
        switch (lot.nextInt(4)) {
            case 0, 1 -> {}
            case 2 -> {
                return blank ? 2 : 1;
            }
            default -> out.append('\n');
        }
        return 1;
    }
}
