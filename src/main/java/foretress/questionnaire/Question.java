package foretress.questionnaire;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One question of the questionnaire; its words live apart, under its id.
 *
 * @param options codes offered, in order; for {@link Kind#TREATMENTS} the kinds of treatment
 * @param unsure offers "don't know"
 * @param personal offers "rather not say"
 * @param askedFor chemistries of the booked steps that make it relevant; empty means every service
 * @param when earlier answers that open it: every named question must have one of the codes
 * @param required must be answered ("don't know" is an answer) before the answers can be signed
 * @param keeps how long the answer stays good
 * @param recordOnly read by the record alone; no fact is made of it
 * @param put what is particular about how it is put
 */
public record Question(String id, Kind kind, List<String> options, boolean unsure, boolean personal,
    Set<String> askedFor,
    Map<String, List<String>> when, boolean required, Keeps keeps, boolean recordOnly, Put put) {
    public static final String DONT_KNOW = "dont-know";
    public static final String RATHER_NOT_SAY = "rather-not-say";
    public static final String YES = "yes";
    /** In a several-of question this option excludes all others. */
    public static final String NONE = "none";
    /** The options that say no. */
    public static final List<String> NOES = List.of("no", "never", NONE);

    /** In place of a question's id: nobody is asked, it is not known. */
    public static final String NOT_KNOWN = "not-known";

    /** There is something for a list, which is made on the next page. */
    public static final String SOME = "some";

    /**
     * One row of a list of treatments to tick.
     *
     * @param head the kind it counts as until more is said: of several, the one that weighs most
     * @param kinds what it can turn out to be, the head among them
     * @param by who did it, where the row itself says so
     */
    public record Row(String head, List<String> kinds, Optional<String> by) {
        public Row {
            kinds = List.copyOf(kinds);
        }

        public static Row of(String kind) {
            return new Row(kind, List.of(kind), Optional.empty());
        }
    }

    /**
     * What is particular about how a question is put.
     *
     * @param orWhen earlier answers of which each alone opens it as well; empty where nothing else does
     * @param rows of {@link Kind#TREATMENTS}: what one ticks before anything is said about it
     * @param ifUnsure what it reads as, unasked, where its opener is not known: the answer to this question, or {@link #NOT_KNOWN};
     *     empty where it is asked all the same
     * @param yesIf later answers of which each alone means yes here, where this was not answered: told before there was this question
     * @param retired no longer put to anybody; what was answered before still counts and can still be changed
     */
    public record Put(Map<String, List<String>> orWhen, List<Row> rows, Optional<String> ifUnsure,
        Map<String, List<String>> yesIf, boolean retired) {}

    /** Put as ever, opened in one way; of treatments each kind is a row. */
    public Question(String id, Kind kind, List<String> options, boolean unsure, boolean personal, Set<String> askedFor,
        Map<String, List<String>> when, boolean required, Keeps keeps, boolean recordOnly) {
        this(id, kind, options, unsure, personal, askedFor, when, required, keeps, recordOnly, new Put(Map.of(),
            kind == Kind.TREATMENTS ? options.stream().map(Row::of).toList() : List.of(), Optional.empty(), Map.of(),
            false));
    }

    public Map<String, List<String>> orWhen() {
        return put.orWhen();
    }

    public List<Row> rows() {
        return put.rows();
    }

    public Optional<String> ifUnsure() {
        return put.ifUnsure();
    }

    public Map<String, List<String>> yesIf() {
        return put.yesIf();
    }

    public boolean retired() {
        return put.retired();
    }

    /** The row a treatment of this kind stands under. */
    public Optional<Row> row(String kind) {
        return rows().stream().filter(r -> r.kinds().contains(kind)).findFirst();
    }

    public enum Kind { ONE_OF, SEVERAL_OF, SAID_DATE, HAIR_LENGTH, TREATMENTS, MEDICINES, INGREDIENTS, NOTE }

    /** How long an answer stays good before it is asked again. */
    public enum Keeps {
        /** As {@link #THE_DAY}, and too soon to ask before the last days. */
        THE_DAY_ONLY, THE_DAY, THREE_MONTHS, SIX_MONTHS, TWELVE_MONTHS, FOR_GOOD
    }

    /** Whether a question is put, and if not, why not. The difference matters: only a closed question reads as its best class. */
    public enum Status {
        ASKED, CLOSED, NOT_FOR_SERVICE
    }

    /** Everything this question accepts as a code, the ways of not saying included. */
    public boolean offers(String code) {
        return options.contains(code) || unsure && DONT_KNOW.equals(code) || personal && RATHER_NOT_SAY.equals(code);
    }

    /** Asked only once the visit is near: what is so now says nothing of then. */
    public boolean onlyNear() {
        return keeps == Keeps.THE_DAY_ONLY;
    }

    boolean forSome(Set<String> chemistries) {
        return askedFor.isEmpty() || askedFor.stream().anyMatch(chemistries::contains);
    }
}
