package foretress.bench;

import foretress.picture.Paper;

/** How a photo or a letter is kept. Only what was redrawn is shown in a page; the rest is handed out as a download. */
public enum Keeping {
    /** By a version that did not look into files; the next start does. */
    AS_SENT,
    /** Drawn anew from its pixels. */
    REDRAWN,
    /** A PDF, or what could not be drawn. */
    FILE;

    public static Keeping of(Paper paper) {
        return paper.mediaType().equals(Paper.PDF) ? FILE : REDRAWN;
    }
}
