package foretress.hair;

import foretress.hair.StrandDrawing.Ink;

/** The light colours, for a page whose style sheet is missing; with it, classes decide, in dark as well. */
final class Inks {
    private Inks() {}

    static String of(Ink ink) {
        return switch (ink) {
            case TEXT -> "#211C26";
            case QUIET -> "#5A4A3C";
            case HAIRLINE -> "#D5C7B3";
            case FAINT -> "#DDE0E6";
            case CUT -> "#8E2F4A";
        };
    }

    static String of(Residue residue) {
        return switch (residue.pattern()) {
            case HATCH -> "#3B4152";
            case LEAVES -> "#A2531F";
            case SOLID -> "#6F4B3A";
            case OPEN -> "#8B6A12";
            case STRIPES -> "#3D5C96";
            case WAVE -> "#4A6B55";
            case QUESTIONS -> "#4C4553";
        };
    }

    /** The residue's ink at 13 % on paper, mixed here so that it prints; the slip for lightened hair. */
    static String ground(Residue residue) {
        return switch (residue.pattern()) {
            case HATCH -> "#E2DFDB";
            case LEAVES -> "#EFE2D5";
            case SOLID -> "#6F4B3A";
            case OPEN -> "#FFFEFB";
            case STRIPES -> "#E2E3E4";
            case WAVE -> "#E4E5DC";
            case QUESTIONS -> "#E4E0DC";
        };
    }
}
