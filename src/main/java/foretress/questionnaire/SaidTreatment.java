package foretress.questionnaire;

import java.util.List;

/**
 * One earlier treatment of the hair, as the client says it.
 *
 * @param what code from the question's {@code what} list, for example {@code box-dye}, {@code restorer}
 * @param when when it was last done
 * @param zone where on the hair, one of {@link #ZONES}
 * @param by who did it, one of {@link #BY}
 * @param often one of {@link #OFTEN}
 * @param every how far apart, one of {@link #EVERY}; only asked when it was done more than once
 * @param since when it was first done; only asked when it was done more than once
 * @param extent how many cm of new growth or of the ends, one of {@link #EXTENTS}; only asked of these two zones
 */
public record SaidTreatment(String what, SaidDate when, String zone, String by, String often, String every,
    SaidDate since, String extent) {
    public static final String DONT_KNOW = "dont-know";
    public static final String ONCE = "once";
    public static final List<String> ZONES = List.of("whole", "regrowth", "lengths-ends", "ends", "strands", DONT_KNOW);
    public static final List<String> BY = List.of("home", "salon", DONT_KNOW);
    public static final List<String> OFTEN = List.of(ONCE, "several", "regularly", DONT_KNOW);
    public static final List<String> EVERY =
        List.of("weekly", "4-weeks", "6-weeks", "8-weeks", "12-weeks", "4-months", "6-months", "few-a-year", "yearly",
            DONT_KNOW);
    /** The zones of which one can say how many cm it was. Without a script the field stands open for every zone. */
    static final List<String> MEASURED = List.of("regrowth", "ends");
    /** Of the new growth, or of the ends: about so many cm. */
    public static final List<String> EXTENTS =
        List.of("1-cm", "2-cm", "3-cm", "5-cm", "10-cm", "15-cm", "20-cm", "30-cm", DONT_KNOW);

    /** In place of how often: only ticked, and nothing was said about it yet. It reads as a treatment of which nothing is known. */
    public static final String NOT_ASKED = "not-asked";

    static SaidTreatment ticked(String what) {
        return new SaidTreatment(what, new SaidDate.NotKnown(), DONT_KNOW, DONT_KNOW, NOT_ASKED);
    }

    /** Ticked, and nothing said about it yet. */
    public boolean onlyTicked() {
        return often.equals(NOT_ASKED);
    }

    /** How far apart and since when were not said. */
    public SaidTreatment(String what, SaidDate when, String zone, String by, String often) {
        this(what, when, zone, by, often, DONT_KNOW, new SaidDate.NotKnown());
    }

    /** How many cm of the zone was not said. */
    public SaidTreatment(String what, SaidDate when, String zone, String by, String often, String every,
        SaidDate since) {
        this(what, when, zone, by, often, every, since, DONT_KNOW);
    }

    public SaidTreatment reaching(String cm) {
        return new SaidTreatment(what, when, zone, by, often, every, since, cm);
    }

    /** Done more than once, or nobody knows. */
    public boolean repeated() {
        return !often.equals(ONCE);
    }
}
