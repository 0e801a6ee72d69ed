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
 */
public record Treatment(String what, SaidDate when, String zone, String by, String often) {
    public static final String DONT_KNOW = "dont-know";
    public static final List<String> ZONES = List.of("whole", "regrowth", "lengths-ends", "ends", "strands", DONT_KNOW);
    public static final List<String> BY = List.of("home", "salon", DONT_KNOW);
    public static final List<String> OFTEN = List.of("once", "several", "regularly", DONT_KNOW);
}
