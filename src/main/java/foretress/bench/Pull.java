package foretress.bench;

/**
 * One hair, pulled gently. Dry to the 20 % mark and no further, wet to the 30 % mark and no further: beyond that bonds are lost
 * for good (Robbins, from memory).
 *
 * @param restMm between the fingers before the pull; 10 to 500, kept to a tenth
 * @param stretchedMm as far as it went, or where it broke
 */
public record Pull(Part part, boolean wet, double restMm, double stretchedMm, Ending ending) {
    public static final double SHORTEST_MM = 10;
    public static final double LONGEST_MM = 500;
    /** How far to pull, in per cent: common practice for dry hair, our proposal for wet. */
    public static final int DRY_MARK = 20;
    public static final int WET_MARK = 30;

    private static final int DRY_FAIL = 10;
    private static final int WET_FAIL = 20;

    public enum Ending {
        /** Back to its rest length at once. */
        SPRANG_BACK,
        /** It stayed longer, limp or gummy. */
        STAYED_LONG,
        BROKE
    }

    /** @throws Impossible when no hair can have measured so */
    public Pull {
        restMm = tenths(Impossible.within(Impossible.Reason.REST_OUT_OF_RANGE, restMm, SHORTEST_MM, LONGEST_MM)) / 10.0;
        stretchedMm = Double.isFinite(stretchedMm) ? tenths(stretchedMm) / 10.0 : stretchedMm;
        if (!(stretchedMm >= restMm)) {
            throw new Impossible(Impossible.Reason.SHORTER_THAN_REST, stretchedMm, restMm);
        }
        if (stretchedMm > 2 * restMm) {
            throw new Impossible(Impossible.Reason.STRETCHED_TOO_FAR, stretchedMm, restMm);
        }
        if (stretchedMm == restMm && ending != Ending.BROKE) {
            throw new Impossible(Impossible.Reason.NOT_STRETCHED, stretchedMm, restMm);
        }
    }

    /** How much longer it became, in per cent of its rest length. */
    public double percent() {
        return 100.0 * (tenths(stretchedMm) - tenths(restMm)) / tenths(restMm);
    }

    public int mark() {
        return wet ? WET_MARK : DRY_MARK;
    }

    /** Where the mark lies on the rule for this hair, in whole mm, never short of it. */
    public int markMm() {
        return markMm(restMm, wet);
    }

    public static int markMm(double restMm, boolean wet) {
        return (int) ((tenths(restMm) * (100 + (wet ? WET_MARK : DRY_MARK)) + 999) / 1000);
    }

    public boolean reachedMark() {
        return atLeast(mark());
    }

    /** Pulled further than asked: the hair may have been harmed by the test itself. */
    public boolean beyondMark() {
        return tenths(stretchedMm) > 10L * markMm();
    }

    /**
     * Staying long fails at any stretch. Breaking early fails; breaking later is a caution. Back at once from the mark passes;
     * back from less than the mark says too little and is a caution.
     */
    public Strength strength() {
        return switch (ending) {
            case STAYED_LONG -> Strength.FAIL;
            case BROKE -> atLeast(wet ? WET_FAIL : DRY_FAIL) ? Strength.CAUTION : Strength.FAIL;
            case SPRANG_BACK -> reachedMark() ? Strength.PASS : Strength.CAUTION;
        };
    }

    /** In whole tenths, so that a hair exactly on a border lies on it. */
    private boolean atLeast(int percent) {
        return 100 * (tenths(stretchedMm) - tenths(restMm)) >= percent * tenths(restMm);
    }

    private static long tenths(double mm) {
        return Math.round(mm * 10);
    }
}
