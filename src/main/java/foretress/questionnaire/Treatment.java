package foretress.questionnaire;

/**
 * One earlier treatment of the hair, as the client says it.
 *
 * @param what code from the question's {@code what} list, for example {@code box-dye}, {@code restorer}
 * @param when when it was last done
 * @param zone where on the hair: whole, regrowth, lengths-ends, ends, strands, dont-know
 * @param by home, salon or dont-know
 * @param often once, several or regularly
 */
public record Treatment(String what, SaidDate when, String zone, String by, String often) {
    public static final String DONT_KNOW = "dont-know";
}
