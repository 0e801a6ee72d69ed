package foretress.hair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class StrandSvgTest {
    private static final Treatment LOTION = StrandSample.ago(Residue.METAL, 24, Zone.WHOLE);

    private static Document parsed(String xml) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
    }

    @ParameterizedTest
    @ValueSource(doubles = { 1, 4, 11.9, 12, 38.5, 60, 61, 120, 300 })
    void everyLengthIsDrawnInsideItsFrame(double cm) throws Exception {
        StrandMap map = StrandSample.many(cm, 30);
        for (StrandLayout layout : new StrandLayout[] { StrandLayout.WIDE, StrandLayout.TABLET, StrandLayout.PHONE,
            StrandLayout.PAPER }) {
            StrandDrawing drawing = StrandDrawing.of(map, StrandSample.words("en"), layout);
            assertThat(points(drawing)).allMatch(p -> p.x() >= -1 && p.x() <= layout.width() + 1
                && p.y() >= 0 && p.y() <= drawing.height());
        }
    }

    private static java.util.List<StrandDrawing.Point> points(StrandDrawing drawing) {
        return drawing.shapes().stream().flatMap(shape -> {
            if (shape instanceof StrandDrawing.Line line) {
                return line.points().stream();
            }
            if (shape instanceof StrandDrawing.Area area) {
                return area.points().stream();
            }
            return shape instanceof StrandDrawing.Band band ? band.points().stream()
                : java.util.stream.Stream.of(((StrandDrawing.Text) shape).at());
        }).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = { "en", "es" })
    void isWellFormedAndHasNoStyleOfItsOwn(String language) throws Exception {
        String figure = StrandSvg.figure(StrandSample.many(90, 30), StrandSample.words(language), "map");
        parsed(figure);
        assertThat(figure).doesNotContain("style=", "<style", "NaN", "Infinity", "<script").contains("&lt;b&gt;");
    }

    @Test
    void idsAreUniqueAndEveryReferenceIsKept() throws Exception {
        String figure = StrandSvg.figure(StrandSample.many(90, 30), StrandSample.words("en"), "map");
        Set<String> ids = new HashSet<>();
        Pattern.compile(" id=\"([^\"]+)\"").matcher(figure).results()
            .forEach(m -> assertThat(ids.add(m.group(1))).as(m.group(1)).isTrue());
        assertThat(ids)
            .containsAll(Pattern.compile("url\\(#([^)]+)\\)").matcher(figure).results().map(m -> m.group(1)).toList());
        assertThatThrownBy(() -> StrandSvg.figure(StrandSample.many(9, 1), StrandSample.words("en"), "a b"))
            .hasMessageContaining("not an id");
    }

    @Test
    void nothingDoneSaysSo() throws IOException {
        assertThat(StrandSvg.figure(StrandSample.map(HairLength.measured(38)), StrandSample.words("en"), "map"))
            .contains("No earlier treatment").contains("38\u00a0cm").doesNotContain("-band\"");
    }

    @Test
    void theListSaysWhatTheDrawingSays() throws IOException {
        StrandMap map = StrandSample.map(HairLength.measured(42), LOTION);
        StrandWords words = StrandSample.words("en");
        assertThat(words.list(map)).first().isEqualTo("Hair 42 cm long, measured");
        assertThat(words.list(map)).contains("cut to 9 cm: free of metal");
        assertThat(words.list(map).get(2)).startsWith("METAL 24, said").contains("chance any is left: certain")
            .contains("goes to the ends").endsWith("gone if cut to 9 cm");
        assertThat(StrandSvg.draw(map, words, StrandLayout.WIDE, "m")).contains("certain", "gone if cut to 9 cm",
            "cut to 9 cm: free of metal");
    }

    @Test
    void anUnknownLengthIsSaidToBeAssumed() throws IOException {
        StrandMap map = StrandSample.map(HairLength.notKnown(), LOTION);
        for (StrandLayout layout : new StrandLayout[] { StrandLayout.WIDE, StrandLayout.PHONE }) {
            assertThat(StrandSvg.draw(map, StrandSample.words("en"), layout, "m"))
                .contains("Length not known, drawn as 60 cm", "not known", "counts as still there")
                .doesNotContain(">certain<");
        }
    }

    @Test
    void grownOutByTheFiguresButNotMeasuredNeverReadsAsNone() throws IOException {
        Treatment longAgo = StrandSample.ago(Residue.METAL, 200, Zone.WHOLE);
        StrandWords words = StrandSample.words("en");
        StrandMap said = StrandSample.map(HairLength.said(20), longAgo);
        assertThat(words.chance(said, said.lanes().get(0))).isEqualTo("not known");
        assertThat(words.end(said, said.lanes().get(0))).isEqualTo("counts until measured");
        StrandMap unsure = StrandSample.map(HairLength.measured(20), longAgo.unsure());
        assertThat(words.end(unsure, unsure.lanes().get(0))).isEqualTo("counts, last use not sure");
        StrandMap sure = StrandSample.map(HairLength.measured(20), longAgo);
        assertThat(words.chance(sure, sure.lanes().get(0))).isEqualTo("none left");
    }

    private static final Treatment TOUCHED_UP = StrandSample.ago(Residue.OXIDATIVE, 2, Zone.REGROWTH)
        .since(StrandSample.TODAY.minusYears(3), StrandSample.TODAY.minusYears(2), 1.6)
        .labelled("Box colour", "the new growth, about every 6 weeks, two to three years ago to April 2026");

    /** Every word beside a band, over however many lines, and nothing of it cut off. */
    @Test
    void sinceWhenAndHowFarApartStandBesideTheBandAndInTheList() throws IOException {
        StrandMap map = StrandSample.map(HairLength.measured(60), TOUCHED_UP);
        StrandWords words = StrandSample.words("en");
        assertThat(words.list(map))
            .anyMatch(line -> line.startsWith("Box colour, " + TOUCHED_UP.said() + "; chance any is left: certain"));
        for (StrandLayout layout : new StrandLayout[] { StrandLayout.WIDE, StrandLayout.TABLET, StrandLayout.PHONE,
            StrandLayout.PAPER }) {
            String drawn = StrandDrawing.of(map, words, layout).shapes().stream()
                .flatMap(s -> s instanceof StrandDrawing.Text t && t.ink() == StrandDrawing.Ink.QUIET
                    ? java.util.stream.Stream.of(t.text()) : java.util.stream.Stream.of())
                .collect(java.util.stream.Collectors.joining(" "));
            assertThat(drawn).as("%s", layout).contains("two to three years", "April", "2026").doesNotContain("…");
        }
    }

    @Test
    void noBandMeetsTheWordsAboveItOrTheLaneBelow() throws IOException {
        StrandMap map = StrandSample.map(HairLength.measured(60), TOUCHED_UP, LOTION, TOUCHED_UP);
        StrandDrawing drawing = StrandDrawing.of(map, StrandSample.words("en"), StrandLayout.PHONE);
        List<StrandDrawing.Text> texts = drawing.shapes().stream().filter(StrandDrawing.Text.class::isInstance)
            .map(StrandDrawing.Text.class::cast).toList();
        drawing.shapes().stream().filter(StrandDrawing.Band.class::isInstance).map(StrandDrawing.Band.class::cast)
            .forEach(band -> {
                double top = band.points().stream().mapToDouble(StrandDrawing.Point::y).min().orElseThrow();
                double bottom = band.points().stream().mapToDouble(StrandDrawing.Point::y).max().orElseThrow();
                assertThat(texts).noneMatch(t -> t.at().y() > top && t.at().y() - t.size() < bottom);
            });
    }

    /** A day nobody knows gives no figure: each day the same chance would be our word, not the client's. */
    @Test
    void aTimeNobodyKnowsIsNoNumber() throws IOException {
        Treatment ever = Treatment
            .once(Residue.METAL, StrandSample.TODAY.minusYears(35), StrandSample.TODAY, Zone.NOT_KNOWN, "Lotion")
            .unsure();
        StrandMap map = StrandSample.map(HairLength.measured(42), ever);
        StrandWords words = StrandSample.words("en");
        assertThat(map.lanes().get(0).chanceLeft()).isBetween(0.2, 0.9);
        assertThat(words.chance(map, map.lanes().get(0))).isEqualTo("not known");
        assertThat(words.list(map).get(1)).contains("chance any is left: not known");
    }

    @Test
    void rightToLeftIsTheMirrorImage() throws IOException {
        StrandMap map = StrandSample.many(40, 5);
        StrandDrawing left = StrandDrawing.of(map, StrandSample.words("en"), StrandLayout.PHONE);
        StrandDrawing right = StrandDrawing.of(map, StrandSample.mirrored(), StrandLayout.PHONE);
        assertThat(right.rightToLeft()).isTrue();
        assertThat(right.mirrored().shapes().stream().filter(s -> s instanceof StrandDrawing.Band).toList())
            .usingRecursiveComparison()
            .withComparatorForType((a, b) -> Math.abs(a - b) < 1e-6 ? 0 : Double.compare(a, b), Double.class)
            .isEqualTo(left.shapes().stream().filter(s -> s instanceof StrandDrawing.Band).toList());
        assertThat(StrandSvg.draw(map, StrandSample.mirrored(), StrandLayout.PHONE, "m")).contains("direction=\"rtl\"");
    }

    @Test
    void everyWordIsThereInBothLanguages() throws IOException {
        for (String language : new String[] { "en", "es" }) {
            StrandWords words = StrandSample.words(language);
            assertThat(StrandWords.KEYS).allSatisfy(key -> assertThat(words.say(key)).isNotBlank());
        }
    }
}
