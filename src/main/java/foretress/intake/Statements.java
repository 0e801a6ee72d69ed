package foretress.intake;

import foretress.consent.ConsentText;
import foretress.consent.ConsentText.Line.Statement;
import foretress.consent.ConsentText.Part;
import foretress.consent.ConsentText.Section;
import foretress.web.Form;
import foretress.web.Mistake;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The statements of a consent, each with its own tick.
 *
 * @param truth what the signature itself says, under them; empty where it says nothing more
 * @param mistake why they are not all agreed to; empty while nobody tried
 */
public record Statements(String heading, List<Ticked> list, String truth, String mistake) {
    public record Ticked(Statement statement, boolean ticked) {}

    public static Statements of(ConsentText text, Form form, List<Mistake> mistakes) {
        Section agreed = text.sections().stream().filter(part -> part.part() == Part.STATEMENTS).findFirst()
            .orElse(new Section(Part.STATEMENTS, "", List.of()));
        String truth = agreed.lines().stream().filter(line -> !(line instanceof Statement))
            .map(ConsentText.Line::plain).collect(Collectors.joining(" "));
        return new Statements(agreed.heading(),
            text.statements().stream().map(one -> new Ticked(one, form.all("agree").contains(one.id()))).toList(),
            truth, at(mistakes, "statements"));
    }

    static String at(List<Mistake> mistakes, String field) {
        return mistakes.stream().filter(one -> one.field().equals(field)).map(Mistake::text).findFirst().orElse("");
    }
}
