package foretress.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.knowledge.ShippedLexicon;
import foretress.lexicon.LabelReading.Found;
import foretress.lexicon.LabelReading.Sureness;
import foretress.lexicon.LabelReading.Unknown;
import foretress.lexicon.Substance.Risk;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Isolated("the default locale of the machine is changed for a moment")
class LabelLexiconTest {

    private static LabelReading read(String text) {
        return ShippedLexicon.LABELS.read(text);
    }

    private static List<String> names(String text) {
        return read(text).found().stream().map(f -> f.substance().name()).toList();
    }

    private static Risk risk(String text) {
        List<Found> found = read(text).found();
        assertThat(found).as(text).hasSize(1);
        return found.get(0).substance().risk();
    }

    /** PTD, its sulfate, p-aminophenol, ME-PPD, HE-PPD sulfate: Annex III 9a, 272, 292, 206 and published elicitation studies. */
    @ParameterizedTest
    @ValueSource(strings = { "95-70-5", "615-50-9", "123-30-8", "337906-36-2", "93841-25-9" })
    void relativesOfPpdAreOfItsGroup(String cas) {
        assertThat(risk(cas)).isEqualTo(Risk.PPD_GROUP_ALLERGEN);
    }

    /** Resorcinol and 1-naphthol: own allergens by structure; hydroquinone 0 of 80 (Picardo 1990); acid dyes 0 of 40 (Fautz 2002). */
    @ParameterizedTest
    @ValueSource(strings = { "Resorcinol", "1-Naphthol", "Hydroquinone", "CI 19140", "Acid Yellow 23", "C.I. 19140" })
    void othersAreNotOfThePpdGroup(String name) {
        assertThat(risk(name)).isNotEqualTo(Risk.PPD_GROUP_ALLERGEN);
    }

    /** Annex III/9a: the warning of the group stands on PTD too; a case published in 2025. */
    @Test
    void ppdFreeWithPtdIsStillOfThePpdGroup() {
        LabelReading reading = read("PPD-free! Aqua, Toluene-2,5-Diamine Sulfate");
        assertThat(reading.holds(Risk.PPD_GROUP_ALLERGEN)).isTrue();
        assertThat(reading.claims()).extracting(c -> c.substance().name()).containsExactly("P-PHENYLENEDIAMINE");
        assertThat(reading.found()).extracting(f -> f.substance().name()).containsExactly("AQUA",
            "TOLUENE-2,5-DIAMINE SULFATE");
    }

    /** Benzocaine 7.5 % of PPD patients (LaBerge 2011); lidocaine is an amide (structure, from memory). */
    @Test
    void benzocaineIsOfThePpdGroupLidocaineIsNot() {
        assertThat(read("benzocaine").holds(Risk.PPD_GROUP_ALLERGEN)).isTrue();
        assertThat(read("lidocaine").holds(Risk.PPD_GROUP_ALLERGEN)).isFalse();
    }

    /** Annex IV pigments. */
    @ParameterizedTest
    @ValueSource(strings = { "CI 77163", "Iron oxides", "CI 77491", "Bismuth oxychloride" })
    void pigmentsAreATraceNotAResidue(String name) {
        assertThat(risk(name)).isEqualTo(Risk.METAL_TRACE);
    }

    /** Common practice: henna without a list counts as compound henna. */
    @Test
    void hennaAloneMayHoldMetalWithItsPlantNameItIsThePlant() {
        assertThat(read("henna").holds(Risk.METAL_RESIDUE)).isTrue();
        assertThat(read("Black henna").holds(Risk.METAL_RESIDUE)).isTrue();
        assertThat(read("Lawsonia inermis leaf powder").holds(Risk.METAL_RESIDUE)).isFalse();
        assertThat(read("Lawsonia inermis (henna) leaf powder, Indigofera tinctoria, Emblica officinalis")
            .holds(Risk.METAL_RESIDUE)).isFalse();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "p-phenylenediamine | P-PHENYLENEDIAMINE", "P-PHENYLENE DIAMINE | P-PHENYLENEDIAMINE",
        "para-phenylenediamine | P-PHENYLENEDIAMINE",
        "Paraphenylenediamine | P-PHENYLENEDIAMINE", "para phenylene diamine | P-PHENYLENEDIAMINE",
        "PPD | P-PHENYLENEDIAMINE",
        "1,4-diaminobenzene | P-PHENYLENEDIAMINE", "1, 4-diaminobenzene | P-PHENYLENEDIAMINE",
        "Ｐ－ＰＨＥＮＹＬＥＮＥＤＩＡＭＩＮＥ | P-PHENYLENEDIAMINE",
        "phenylenediamines | PHENYLENEDIAMINES", "p‑phenylene\u00addiamine | P-PHENYLENEDIAMINE",
        "Toluene-2,5-diamine sulphate | TOLUENE-2,5-DIAMINE SULFATE",
        "TOLUENE 2 5 DIAMINE SULFATE | TOLUENE-2,5-DIAMINE SULFATE",
        "toluenediamines | TOLUENEDIAMINES",
        "N,N-Bis(2-Hydroxyethyl)-p-Phenylenediamine Sulfate | 'N,N-BIS(2-HYDROXYETHYL)-P-PHENYLENEDIAMINE SULFATE'",
        "meta-aminophenol | M-AMINOPHENOL", "m-Aminophenol | M-AMINOPHENOL", "HC Red No. 3 | HC RED NO. 3",
        "HC RED NO 3 | HC RED NO. 3", "hc red 3 | HC RED NO. 3",
        "2-Amino-4-Hydroxyethylaminoanisole Sulphate | 2-AMINO-4-HYDROXYETHYLAMINOANISOLE SULFATE",
        "copper sulphate | COPPER SULFATE",
        "Lead (II) acetate | LEAD ACETATE", "plumbi acetas | LEAD ACETATE", "cupric sulphate | COPPER SULFATE",
        "CI77491 | IRON OXIDES (RED)",
        "p-aminophenol hydrochloride | P-AMINOPHENOL HCL", "amoníaco | AMMONIA",
        "Paraphenylenediamine dihydrochloride | P-PHENYLENEDIAMINE HCL" })
    void spellingsOfOneSubstance(String written, String name) {
        assertThat(names(written)).as(written).containsExactly(name.replace("'", ""));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|',
        value = { "p-phenylendiamine | P-PHENYLENEDIAMINE", "p-phenylenediamin | P-PHENYLENEDIAMINE",
            "resorcinl | RESORCINOL",
            "bismut citrate | BISMUTH CITRATE", "silver nitrat | SILVER NITRATE",
            "toluene-2,5-diamne sulfate | TOLUENE-2,5-DIAMINE SULFATE",
            "p-Pheny1enediamine | P-PHENYLENEDIAMINE", "ammonium persulfat | AMMONIUM PERSULFATE",
            "m-amnophenol | M-AMINOPHENOL", "o-aminophenl | O-AMINOPHENOL" })
    void slipsAreForgivenWithinBounds(String written, String name) {
        assertThat(names(written)).as(written).containsExactly(name);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|',
        value = { "toluene-2,4-diamine | TOLUENE-2,5-DIAMINE", "sodium sulfate | SODIUM SULFITE",
            "sodium chloride | SODIUM CHLORITE",
            "2-methylresorcinol | RESORCINOL", "sodium bromide | SODIUM BROMATE", "cetyl alcohol | CINNAMYL ALCOHOL",
            "cocamide MEA | ETHANOLAMINE" })
    void aNeighbourIsNotTheSubstance(String written, String not) {
        assertThat(names(written)).doesNotContain(not);
    }

    @Test
    void aDamagedNameIsReadAndStillPutBeforeTheStylist() {
        LabelReading reading = read("glicerinn, cetearyl alcohll");
        assertThat(reading.found()).extracting(f -> f.substance().name()).containsExactly("GLYCERIN",
            "CETEARYL ALCOHOL");
        assertThat(reading.found()).extracting(Found::sureness).containsOnly(Sureness.SPELLING_SLIP);
        assertThat(reading.allSure()).isFalse();
    }

    /** Sulfite, sulfate or sulfide: it may be each, so it is none, and all are kept in view. */
    @Test
    void whatMayBeOneOfSeveralIsNoneOfThemAndAllAreShown() {
        LabelReading reading = read("Aqua, sodium sulfte");
        assertThat(reading.found()).extracting(f -> f.substance().name()).containsExactly("AQUA");
        assertThat(reading.unknown()).hasSize(1);
        assertThat(reading.unknown().get(0).near()).extracting(Substance::name).contains("SODIUM SULFITE",
            "SODIUM SULFATE");
    }

    @Test
    void placesAreThoseOfThePastedText() {
        String text = "Ingredients: AQUA,\n  Resorcinol (1.25 %); somethingelse, CAS 813-93-4.";
        LabelReading reading = read(text);
        assertThat(reading.found())
            .allSatisfy(f -> assertThat(text.substring(f.from(), f.to())).isEqualTo(f.written()));
        assertThat(reading.found()).extracting(Found::written).containsExactly("AQUA", "Resorcinol", "813-93-4");
        assertThat(reading.found()).extracting(Found::sureness).containsExactly(Sureness.NAME, Sureness.NAME,
            Sureness.CAS_NUMBER);
        assertThat(reading.unknown()).extracting(Unknown::written).containsExactly("somethingelse");
    }

    @Test
    void aMisprintedNumberIsKeptAsUnknown() {
        assertThat(read("3299-91-7").found()).isEmpty();
        assertThat(read("3299-91-7").unknown()).extracting(Unknown::written).containsExactly("3299-91-7");
    }

    @ParameterizedTest
    @ValueSource(strings = { "ammonia-free", "Ammonia free", "free of ammonia", "free from ammonia",
        "contains no ammonia", "Without ammonia", "no ammonia",
        "does not contain ammonia", "0% ammonia", "0 % ammonia", "sin amoníaco", "sans ammoniaque", "ohne Ammoniak",
        "free from ammonia, PPD and resorcinol",
        "Contains no PPD or ammonia", "lead-free", "PPD-free, PTD-free" })
    void aClaimIsNotASubstance(String claim) {
        assertThat(read(claim).found()).as(claim).isEmpty();
        assertThat(read(claim).claims()).as(claim).isNotEmpty();
        assertThat(names(claim + ". Aqua, m-aminophenol")).as(claim).containsExactly("AQUA", "M-AMINOPHENOL");
    }

    @ParameterizedTest
    @ValueSource(strings = { "Free from parabens, Aqua, Resorcinol", "Contains resorcinol",
        "Aqua, Resorcinol, HC Red No. 3", "2.0 % resorcinol",
        "Resorcinol. Free from parabens", "no rinse needed. Resorcinol", "Aqua, Resorcinol\nfree from ammonia",
        "0.0% ammonia, resorcinol",
        "free-flowing powder: resorcinol", "no ammonia\nresorcinol", "Ammonia-free: aqua, resorcinol" })
    void aClaimNeverSwallowsTheListAfterIt(String text) {
        assertThat(names(text)).as(text).contains("RESORCINOL");
    }

    @Test
    void whatItMayContainCounts() {
        LabelReading reading = read("Mica, Talc [+/- CI 77491, CI 77492, 77499, Silver]");
        assertThat(reading.found()).filteredOn(Found::mayContain).extracting(f -> f.substance().name())
            .containsExactly("IRON OXIDES (RED)", "IRON OXIDES (YELLOW)", "IRON OXIDES (BLACK)", "SILVER");
        assertThat(reading.holds(Risk.METAL_RESIDUE)).isTrue();
        assertThat(read("Talc. May contain: bismuth citrate").found()).last().extracting(Found::mayContain)
            .isEqualTo(true);
    }

    @Test
    void aCompoundOfAMetalNotListedByNameCountsAsTheMetal() {
        assertThat(names("lead stearate")).containsExactly("LEAD COMPOUND");
        assertThat(names("silver lactate, copper lactate")).containsExactly("SILVER COMPOUND", "COPPER COMPOUND");
        assertThat(names("bismuth subgallate")).containsExactly("BISMUTH COMPOUND");
    }

    @Test
    void aShadeOrASentenceIsNotAMetal() {
        assertThat(read("Silver Blonde shampoo. May lead to reactions. Copper shade. Aqua").holds(Risk.METAL_RESIDUE))
            .isFalse();
        assertThat(read("Aqua, Silver, Glycerin").holds(Risk.METAL_RESIDUE)).isTrue();
        assertThat(read("Lead").holds(Risk.METAL_RESIDUE)).isTrue();
    }

    @Test
    void aNameBrokenOverTwoLinesIsRead() {
        assertThat(names("Aqua, p-phenylene-\ndiamine, toluene-2,5-\ndiamine sulfate")).contains("P-PHENYLENEDIAMINE",
            "TOLUENE-2,5-DIAMINE SULFATE");
    }

    @Test
    void nothingIsFoundInNothing() {
        for (String text : new String[] { "", " ", ",,,;", "%%%", "\n\n", "12 34", "🧴" }) {
            assertThat(read(text).found()).isEmpty();
        }
    }

    @Test
    void readsTheSameUnderTurkishLetters() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertThat(names("SILVER NITRATE, P-PHENYLENEDIAMINE, BISMUTH CITRATE"))
                .containsExactly("SILVER NITRATE", "P-PHENYLENEDIAMINE", "BISMUTH CITRATE");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void everyNameAndNumberShippedIsReadAsItself() {
        for (Substance substance : ShippedLexicon.SUBSTANCES) {
            assertThat(read(substance.name()).found()).as(substance.name()).isNotEmpty()
                .allSatisfy(f -> assertThat(f.substance().risk()).isGreaterThanOrEqualTo(substance.risk()));
            substance.cas()
                .ifPresent(cas -> assertThat(names(cas.number())).as(cas.number()).containsExactly(substance.name()));
            substance.otherNames().forEach(name -> assertThat(read(name).found()).as(name)
                .anySatisfy(f -> assertThat(f.substance().risk()).isGreaterThanOrEqualTo(substance.risk())));
        }
    }

    @Test
    void inAnyOrderAndCaseTheSameIsFound() {
        var lot = new Random(7);
        List<Substance> all =
            new java.util.ArrayList<>(ShippedLexicon.SUBSTANCES.stream().filter(s -> !Groups.isGroup(s.name()))
                .filter(s -> !LabelWords.countsOnlyAlone(
                    String.join("", LabelToken.of(s.name()).stream().map(LabelToken::folded).toList())))
                .toList());
        for (int round = 0; round < 30; round++) {
            java.util.Collections.shuffle(all, lot);
            List<Substance> some = all.subList(0, 40);
            String list = String.join(round % 2 == 0 ? ", " : "; ", some.stream().map(Substance::name).toList());
            assertThat(names(round % 3 == 0 ? list : list.toLowerCase(Locale.ROOT)))
                .containsAll(some.stream().map(Substance::name).toList());
        }
    }

    /** No time is asserted, only the number of letters compared would grow; a text of the full length is read to its end. */
    @Test
    void tenThousandCharactersAreReadToTheEnd() {
        for (String part : new String[] { "Aqua, ", "zzyzx ", "p-phenylendiamin, ", "1 ", "no ", "free of a ", "2,5-",
            "mi " }) {
            String text = part.repeat(10_000 / part.length()) + "; bismuth citrate";
            assertThat(read(text).found()).as(part).last().extracting(f -> f.substance().name())
                .isEqualTo("BISMUTH CITRATE");
        }
    }
}
