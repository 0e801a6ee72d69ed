package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.consent.ConsentText.Part;
import foretress.consent.Consents;
import foretress.consent.Read;
import foretress.consent.SignedConsent;
import foretress.salon.OpenSalon;
import foretress.visit.VisitMaker;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
class PageTextTest {
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject Consents consents;

    @Test
    @DisplayName("D10: what stands on the sign page is the text that is hashed and kept, word for word, and all of it is on the paper")
    void thePageTheTextAndThePaperSayTheSame() {
        salon.open();
        UUID visit = make.visit(LocalDate.of(1965, 3, 4));
        Answering client = knocking
            .come(visit, Map.of("darkening-lotion", List.of("some-time-ago"), "colour-reaction", List.of("dont-know")))
            .agree().all().readBack();
        Document page = client.walker().page();
        client.sign("Ottilie Brandt");
        SignedConsent signed = consents.latest(visit).orElseThrow();
        String text = consents.text(signed);
        String[] first = text.lines().findFirst().orElseThrow().split("\t");
        assertThat(first).startsWith(page.select("html").attr("lang"), signed.textVersion()).hasSize(3);
        assertThat(first[2]).as("the salt, on the paper alone").matches("[0-9a-f]{32}");
        assertThat(Read.plain(Read.body(consents.pdf(signed)))).contains(first[2]);
        assertThat(onThePage(page))
            .isEqualTo(text.lines().skip(1).filter(line -> !line.isEmpty()).map(PageTextTest::oneSpace).toList());
        onThePaper(text, Read.plain(Read.body(consents.pdf(signed))));
    }

    private static void onThePaper(String text, String paper) {
        assertThat(text.lines().skip(1).flatMap(line -> line.lines().flatMap(l -> List.of(l.split("\t")).stream()))
            .map(Read::plain))
            .allSatisfy(words -> assertThat(paper).contains(words));
    }

    private static String oneSpace(String line) {
        return line.replaceAll("[\\s\\u00A0]+", " ").strip();
    }

    /** The page's lines in the order of the text; the page shows what is to be agreed to last, beside the button. */
    private static List<String> onThePage(Document page) {
        ArrayList<String> lines = new ArrayList<>(List.of(page.selectFirst("main > .lead").text()));
        for (Part part : Part.values()) {
            if (part == Part.STATEMENTS) {
                statements(page.selectFirst("#statements"), lines);
            } else {
                page.select("section[data-part=" + part.id() + "]")
                    .forEach(section -> section.children().forEach(line -> lines.add(oneSpace(line.text()))));
            }
        }
        return lines;
    }

    private static void statements(Element fieldset, List<String> lines) {
        lines.add(fieldset.selectFirst("legend").text());
        List<String> labels = fieldset.select("label").eachText();
        for (int i = 0; i < labels.size(); i++) {
            lines.add(i + 1 + " " + oneSpace(labels.get(i)));
        }
        lines.add(oneSpace(fieldset.selectFirst(".truth").text()));
    }
}
