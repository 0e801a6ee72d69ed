package foretress.intake;

import foretress.assessment.Weight;
import foretress.consent.ConsentText.Line;
import foretress.consent.ConsentText.Section;
import java.util.List;

/** A part of the consent as the page shows it, line by line; the words are the text's own. */
public record ConsentPart(String id, String heading, List<Shown> lines) {

    /** @param kind paragraph, topic, pair, finding or statement */
    public record Shown(String kind, String label, String text, Weight weight) {}

    public static ConsentPart of(Section section) {
        return new ConsentPart(section.part().id(), section.heading(),
            section.lines().stream().map(ConsentPart::shown).toList());
    }

    private static Shown shown(Line line) {
        if (line instanceof Line.Pair pair) {
            return new Shown("pair", pair.label(), pair.value(), Weight.NOTHING_FOUND);
        }
        if (line instanceof Line.Finding finding) {
            return new Shown("finding", finding.word(), finding.text(), finding.weight());
        }
        return new Shown(line instanceof Line.Topic ? "topic" : "paragraph", "", line.plain(), Weight.NOTHING_FOUND);
    }
}
