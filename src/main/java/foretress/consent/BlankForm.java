package foretress.consent;

import com.lowagie.text.Document;
import com.lowagie.text.pdf.PdfWriter;
import foretress.consent.PaperFlow.Cell;
import foretress.knowledge.Words;
import foretress.questionnaire.Question;
import foretress.questionnaire.Questionnaire;
import foretress.questionnaire.Topic;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The same questions on paper, with boxes to tick and lines to write on, for whoever would rather not answer on a screen. */
public final class BlankForm {
    private static final float TEXT = 11;
    private static final float LEADING = 15.5f;
    private static final float LINE = 24;
    private static final float BOX = 9;
    private static final int TREATMENTS = 8;
    private static final int MEDICINES = 6;

    private final Asked asked;
    private final ConsentWords words;
    private final Dates dates;
    private final Map<String, String> places;
    private PaperFlow sheet;
    private int pages;
    /** By question id, as printed so far. */
    private final Map<String, Integer> numbers = new HashMap<>();

    private BlankForm(Asked asked) {
        this.asked = asked;
        this.words = ConsentWords.in(asked.language());
        this.dates = Dates.of(asked.language(), words.language());
        this.places = Map.of("salon", asked.salon().name(), "client", PageFrame.shortened(asked.client()),
            "date", dates.day(asked.visit().startsAt().toLocalDate()));
    }

    /**
     * What the form asks, of whom.
     *
     * @param chemistries those of the booked steps; questions for others are left out
     */
    public record Asked(String language, ConsentInput.Salon salon, String client, ConsentInput.Visit visit,
        Notice notice,
        Questionnaire questionnaire, Words words, Set<String> chemistries) {}

    /** The form as PDF/A-2b; the same arguments give the same bytes. */
    public static byte[] print(Asked asked, PaperSize size, Instant made) {
        return new BlankForm(asked).print(size, made);
    }

    private byte[] print(PaperSize size, Instant made) {
        ArchivePdf.rehearse(size, (document, writer) -> fill(sheet(size, document, writer)));
        pages = sheet.pages();
        return new ArchivePdf(say("title"), asked.salon().name(), words.language(), made)
            .make(size, (document, writer) -> fill(sheet(size, document, writer)));
    }

    private PaperFlow sheet(PaperSize size, Document document, PdfWriter writer) {
        return new PaperFlow(size, Direction.ofLanguage(Locale.forLanguageTag(words.language())), document, writer,
            this::frame);
    }

    private void frame(PaperFlow page, int at) {
        PageFrame.punchMarks(page);
        page.at(page.size.height - 46, Cell.of(0, page.width * 0.6f, FontFace.HEADING, 16, 18, asked.salon().name()));
        page.at(page.size.height - 46, Cell.of(page.width * 0.6f, page.width * 0.4f, FontFace.TEXT, 10.5f, 14,
            PageFrame.shortened(asked.client())).toEnd());
        page.moveTo(page.size.height - 74);
        PageFrame.mastheadRule(page);
        PageFrame.foot(page, say("foot"),
            words.say("paper.page", Map.of("page", String.valueOf(at), "pages", String.valueOf(pages))));
        page.down(18);
    }

    private void fill(PaperFlow fresh) {
        sheet = fresh;
        numbers.clear();
        sheet.row(Cell.of(0, sheet.width, FontFace.HEADING, 25, 29, say("title")));
        sheet.down(6);
        sheet.row(Cell.of(0, sheet.width, FontFace.TEXT, TEXT, LEADING, dates.weekday(asked.visit().startsAt()) + " · "
            + String.join(", ", asked.visit().services())));
        sheet.down(4);
        sheet.row(Cell.of(0, sheet.width, FontFace.TEXT, TEXT, LEADING, say("lead")));
        notice();
        asked.questionnaire().topics().forEach(this::topic);
        end();
    }

    private void notice() {
        heading(asked.notice().heading());
        for (Notice.Element element : asked.notice().elements()) {
            Cell answer = Cell.of(126, sheet.width - 126, FontFace.TEXT, 9.5f, 13, element.text());
            sheet.row(Cell.of(0, 118, FontFace.LABEL, 10.5f, 13, element.heading()), answer);
            sheet.down(3);
        }
        sheet.down(3);
        box(asked.notice().agree(), 0, sheet.width);
    }

    private void topic(Topic topic) {
        List<Question> questions = topic.questions().stream().filter(question -> !question.retired())
            .filter(question -> question.askedFor().isEmpty()
                || question.askedFor().stream().anyMatch(asked.chemistries()::contains))
            .toList();
        if (!questions.isEmpty()) {
            heading(asked.words().topic(topic.id()));
            questions.forEach(this::question);
        }
    }

    private void heading(String heading) {
        sheet.need(90);
        sheet.gap(14);
        sheet.row(Cell.of(0, sheet.width, FontFace.HEADING, 15.5f, 19, heading));
        sheet.down(5);
    }

    private void question(Question question) {
        Words.QuestionWords own = asked.words().question(question.id());
        Cell ask = Cell.of(21, sheet.width - 21, FontFace.STATEMENT, 13, 17, own.ask());
        sheet.need(sheet.height(ask) + 52);
        question.when().forEach(this::onlyIf);
        sheet.row(Cell.of(0, 20, FontFace.STRONG, TEXT, 17, String.valueOf(numberOf(question))), ask);
        if (!own.hint().isEmpty()) {
            sheet.row(Cell.of(21, sheet.width - 21, FontFace.TEXT, 9.5f, 13, own.hint()));
        }
        sheet.down(3);
        answer(question);
        sheet.down(7);
    }

    private int numberOf(Question question) {
        numbers.put(question.id(), numbers.size() + 1);
        return numbers.size();
    }

    private void onlyIf(String earlier, List<String> codes) {
        if (!numbers.containsKey(earlier)) {
            return;
        }
        List<String> options = codes.stream().map(code -> asked.words().option(earlier, code)).toList();
        String listed = options.stream()
            .reduce((before, last) -> words.say("blank.or", Map.of("before", before, "last", last))).orElse("");
        sheet.row(Cell.of(21, sheet.width - 21, FontFace.LABEL, TEXT, 15, words.say("blank.only-if",
            Map.of("options", listed, "number", String.valueOf(numbers.get(earlier))))));
    }

    private void answer(Question question) {
        switch (question.kind()) {
            case ONE_OF -> boxes(question);
            case SEVERAL_OF -> {
                if (asked.words().question(question.id()).hint().isEmpty()) {
                    sheet.row(Cell.of(21, sheet.width - 21, FontFace.TEXT, 9.5f, 13, say("several")));
                }
                boxes(question);
            }
            case SAID_DATE -> labelled(question, say("when"));
            case HAIR_LENGTH -> labelled(question, say("length"));
            case TREATMENTS -> {
                sheet.row(Cell.of(21, sheet.width - 21, FontFace.TEXT, 9.5f, 13, kinds(question)));
                grid(TREATMENTS, "what", "date", "where", "by", "again");
            }
            case MEDICINES -> grid(MEDICINES, "medicine", "dose", "route", "last");
            case INGREDIENTS, NOTE -> lines(3);
        }
    }

    private String kinds(Question question) {
        return question.options().stream().flatMap(code -> asked.words().find("answers.treatment." + code).stream())
            .collect(Collectors.joining(" · "));
    }

    private List<String> codes(Question question) {
        ArrayList<String> codes = new ArrayList<>(question.options());
        if (question.unsure() && !codes.contains(Question.DONT_KNOW)) {
            codes.add(Question.DONT_KNOW);
        }
        if (question.personal() && !codes.contains(Question.RATHER_NOT_SAY)) {
            codes.add(Question.RATHER_NOT_SAY);
        }
        return codes;
    }

    /** As many columns as the longest option leaves room for, three at most. */
    private void boxes(Question question) {
        List<String> options = codes(question).stream().map(code -> asked.words().option(question.id(), code)).toList();
        float longest =
            options.stream().map(option -> FontFace.TEXT.width(option, TEXT)).max(Float::compare).orElse(0f) + 26;
        int columns = Math.max(1, Math.min(3, (int) ((sheet.width - 21) / longest)));
        float width = (sheet.width - 21) / columns;
        for (int first = 0; first < options.size(); first += columns) {
            sheet.need(LEADING);
            float top = sheet.cursor();
            for (int i = first; i < Math.min(first + columns, options.size()); i++) {
                if (i > first) {
                    sheet.moveTo(top);
                }
                box(options.get(i), 21 + (i - first) * width, width);
            }
            sheet.down(3);
        }
    }

    private void box(String text, float start, float width) {
        Cell words = Cell.of(start + 17, width - 17, FontFace.TEXT, TEXT, LEADING, text);
        sheet.need(sheet.height(words));
        sheet.ink.saveState();
        sheet.ink.setLineWidth(0.9f);
        sheet.ink.setGrayStroke(0);
        sheet.ink.rectangle(sheet.left(start + 1, BOX), sheet.cursor() - BOX - 3, BOX, BOX);
        sheet.ink.stroke();
        sheet.ink.restoreState();
        sheet.row(words);
    }

    private void labelled(Question question, String label) {
        Cell words = Cell.of(21, sheet.width * 0.6f, FontFace.TEXT, TEXT, LEADING, label);
        float written = 21 + Math.min(sheet.width * 0.6f, FontFace.TEXT.width(label, TEXT)) + 8;
        sheet.need(LINE);
        sheet.down(4);
        sheet.row(words);
        sheet.rule(written, sheet.width - written, 0.75f, 0.4f);
        sheet.down(6);
        if (question.unsure() || question.personal()) {
            List<String> rest =
                Stream.concat(question.unsure() ? Stream.of(Question.DONT_KNOW) : Stream.<String>empty(),
                    question.personal() ? Stream.of(Question.RATHER_NOT_SAY) : Stream.<String>empty()).toList();
            rest.forEach(code -> box(asked.words().option(question.id(), code), 21, sheet.width - 21));
        }
    }

    private void lines(int many) {
        for (int i = 0; i < many; i++) {
            sheet.need(LINE);
            sheet.down(LINE);
            sheet.rule(21, sheet.width - 21, 0.75f, 0.6f);
        }
    }

    private void grid(int rows, String... columns) {
        float width = (sheet.width - 21) / columns.length;
        Cell[] heads = new Cell[columns.length];
        for (int i = 0; i < columns.length; i++) {
            heads[i] = Cell.of(21 + i * width, width - 8, FontFace.LABEL, TEXT, 14, say(columns[i]));
        }
        sheet.row(heads);
        sheet.rule(21, sheet.width - 21, 0.75f, 0);
        for (int row = 0; row < rows; row++) {
            sheet.need(LINE);
            sheet.down(LINE);
            for (int i = 0; i < columns.length; i++) {
                sheet.rule(21 + i * width, width - 8, 0.75f, 0.6f);
            }
        }
    }

    private void end() {
        sheet.need(110);
        sheet.gap(18);
        sheet.rule(0, sheet.width, 2, 0);
        sheet.down(12);
        box(say("sign"), 0, sheet.width);
        sheet.down(46);
        sheet.rule(0, sheet.width * 0.6f, 0.9f, 0);
        sheet.rule(sheet.width * 0.66f, sheet.width * 0.34f, 0.9f, 0);
        sheet.down(3);
        sheet.row(Cell.of(0, sheet.width * 0.6f, FontFace.TEXT, TEXT, LEADING, say("signature")),
            Cell.of(sheet.width * 0.66f, sheet.width * 0.34f, FontFace.TEXT, TEXT, LEADING, say("on")));
    }

    private String say(String key) {
        return words.say("blank." + key, places);
    }
}
