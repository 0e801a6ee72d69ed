package foretress.intake;

import foretress.questionnaire.FormReader;
import foretress.questionnaire.Medicine;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.TickList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * One question as a page shows it: its words, what was said or typed before, and what needs a second look. What is absent is
 * an empty text, which a template reads as nothing.
 *
 * @param alone it is the only one on the page, so that its words are the page's heading
 * @param details the one treatment a page is about; none on other pages
 * @param wording its words
 * @param slips what one can choose, the ways of not saying at the end
 * @param fields what the fields hold, by name
 * @param entries treatments or medicines added so far, in words
 * @param mistakes sentences by field name
 */
public record QuestionView(Question question, boolean alone, Manner manner, List<Detail> details, Wording wording,
    List<Slip> slips,
    Map<String, List<String>> fields, List<String> entries, Map<String, String> mistakes, Choices choices) {

    /**
     * The words of a question.
     *
     * @param brief its short name, the label of a field
     * @param none on the slip that leaves a list empty
     */
    public record Wording(String ask, String hint, String why, String brief, String none) {
        /** As a row of a page: how it is to be answered stands with why it is asked. */
        Wording inARow(String row) {
            return new Wording(row, "", (hint + " " + why).strip(), brief, none);
        }
    }

    /** How it is put: in full; among others on a client's page, as a short row; as a list to tick; about one thing ticked. */
    public enum Manner {
        FULL, AMONG, TICKS, DETAIL
    }

    /**
     * One treatment that a page is about.
     *
     * @param at its place in the list, from 0
     * @param kinds what it can have been; none where its row says it
     * @param byToo whether to ask who did it
     */
    public record Detail(int at, String title, List<Slip> kinds, boolean byToo) {}

    /** One thing to choose: its code, the words on it, and whether it is chosen. */
    public record Slip(String code, String label, boolean chosen) {}

    private static final Set<Question.Kind> LISTS = Set.of(Question.Kind.TREATMENTS, Question.Kind.MEDICINES);

    /** Answers as short as this stand beside each other. */
    private static final int SHORT_LETTERS = 14;

    /** Where a page grows a list: the name its main button bears, which says that the list is whole; else empty. */
    public static String listed(List<QuestionView> asked) {
        return asked.stream().filter(QuestionView::growing).map(a -> a.name("act"))
            .findFirst()
            .orElse("");
    }

    /** The same on a page that has a heading of its own. */
    public QuestionView underAHeading() {
        return new QuestionView(question, false, Manner.FULL, details, wording, slips, fields,
            entries, mistakes,
            choices);
    }

    /** The same as a row of a page. */
    QuestionView inARow(String row) {
        return new QuestionView(question, false, Manner.AMONG, details, wording.inARow(row), slips, fields,
            entries, mistakes, choices);
    }

    /** Whether the page adds to a list one by one. */
    private boolean growing() {
        return LISTS.contains(question.kind()) && manner == Manner.FULL;
    }

    public String ask() {
        return wording.ask();
    }

    public String hint() {
        return wording.hint();
    }

    public String why() {
        return wording.why();
    }

    public String brief() {
        return wording.brief();
    }

    public String none() {
        return wording.none();
    }

    public String id() {
        return question.id();
    }

    public String kind() {
        return switch (manner) {
            case TICKS, DETAIL -> manner.name();
            case AMONG -> question.kind() == Kind.MEDICINES ? "SOME" : question.kind().name();
            case FULL -> question.kind().name();
        };
    }

    public boolean among() {
        return manner == Manner.AMONG;
    }

    /** The same as a list to tick: each row with its words, ticked where something under it is on the list. */
    QuestionView toTick(List<Slip> rows) {
        return new QuestionView(question, alone, Manner.TICKS, details, wording, rows, fields,
            entries, mistakes, choices);
    }

    /** The same about one treatment, with what its fields hold. */
    QuestionView about(Detail detail, Map<String, List<String>> hold) {
        return new QuestionView(question, alone, Manner.DETAIL, List.of(detail), wording, slips,
            hold, entries, mistakes, choices);
    }

    /** Whether something is on the list, or is about to be. */
    public boolean someSaid() {
        return !entries.isEmpty() || fields.getOrDefault(id(), List.of()).contains(Question.SOME);
    }

    /** Every code of the question as a row to tick, but the one that says no. */
    List<Slip> rows() {
        String no = TickList.no(question);
        return offered().stream().filter(s -> !s.code().equals(no)).toList();
    }

    /** The same with these words on what one can tick. */
    QuestionView labelled(UnaryOperator<String> words) {
        List<Slip> said = slips.stream().map(s -> new Slip(s.code(), words.apply(s.code()), s.chosen())).toList();
        return new QuestionView(question, alone, manner, details, wording, said, fields, entries,
            mistakes,
            choices);
    }

    boolean saysNo() {
        return fields.getOrDefault(id(), List.of()).contains(TickList.no(question));
    }

    public String inputKind() {
        return question.kind() == Kind.SEVERAL_OF ? "checkbox" : "radio";
    }

    /** How the slips lie: rows to tick; short answers in a row where several questions share a page; else below each other. */
    public String look() {
        if (question.kind() == Kind.SEVERAL_OF) {
            return "ticks";
        }
        boolean brief = slips.size() <= 3 && slips.stream().allMatch(s -> s.label().length() <= SHORT_LETTERS);
        return brief && !alone ? "pairs" : slips.size() > 5 ? "lists" : "";
    }

    /** The ways of not saying, for questions whose answer is typed. */
    public List<Slip> unsaid() {
        return slips.stream()
            .filter(s -> s.code().equals(Question.DONT_KNOW) || s.code().equals(Question.RATHER_NOT_SAY)).toList();
    }

    /** What one can choose besides not saying. */
    public List<Slip> offered() {
        return slips.stream().filter(s -> !unsaid().contains(s)).toList();
    }

    public int longest() {
        return question.kind() == Kind.INGREDIENTS ? FormReader.LONGEST_INGREDIENTS : FormReader.LONGEST_NOTE;
    }

    public String name(String part) {
        return part.isEmpty() ? id() : id() + "." + part;
    }

    public String name(String part, String piece) {
        return name(part.isEmpty() ? piece : part + "." + piece);
    }

    public String value(String part) {
        List<String> values = fields.getOrDefault(name(part), List.of());
        return values.isEmpty() ? "" : values.get(0);
    }

    public String value(String part, String piece) {
        return value(part.isEmpty() ? piece : part + "." + piece);
    }

    public boolean said(String part, String code) {
        return fields.getOrDefault(name(part), List.of()).contains(code);
    }

    public boolean said(String part, String piece, String code) {
        return said(part.isEmpty() ? piece : part + "." + piece, code);
    }

    /** The sentence beside a field, empty when it needs no second look. */
    public String mistake(String part) {
        return mistakes.getOrDefault(name(part), "");
    }

    public String mistake(String part, String piece) {
        return mistake(part.isEmpty() ? piece : part + "." + piece);
    }

    /** Room for so many medicines on the page. */
    public List<String> medicineRows() {
        return Medicine.ROWS;
    }

    public String text() {
        return value("");
    }

    /** Kinds of treatment to choose from, the not known one among them. */
    public List<Slip> choosable() {
        return slips.stream().filter(s -> question.options().contains(s.code())).toList();
    }

    /** The words for not knowing of the whole. */
    public String unsureWords() {
        return choices.unsure();
    }

    public boolean unsureSaid() {
        return fields.getOrDefault(id(), List.of()).contains(Question.DONT_KNOW);
    }

    public boolean noneSaid() {
        return fields.getOrDefault(id(), List.of()).contains(Question.NONE);
    }

    /** Whether the question as a whole can be left unsaid this way. */
    public boolean offersUnsaid(String code) {
        return code.equals(Question.DONT_KNOW) ? question.unsure() : question.personal();
    }
}
