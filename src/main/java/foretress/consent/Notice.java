package foretress.consent;

import foretress.assessment.Policy;
import foretress.knowledge.Sha256;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What the client reads before the first question: who holds the health answers, why, how long, and the client's rights.
 * Its elements are those of GDPR Art. 13(1) and (2); the consent asked for is that of Art. 9(2)(a), apart from any other.
 *
 * @param agree the sentence beside the one unticked box
 * @param refuse what happens when the client would rather not
 */
public record Notice(String language, String version, String heading, List<Element> brief, List<Element> elements,
    String agree, String refuse) {
    /** What everybody reads: four lines, each said in full further down. */
    static final List<String> BRIEF = List.of("controller", "purposes", "recipients", "how-long");

    /** The elements in reading order. A missing one fails the test that lists them. */
    static final List<String> ELEMENTS = List.of(
        "controller", "purposes", "legal-basis", "also-kept", "recipients", "how-long", "rights", "withdrawal",
        "complaint",
        "must-i-answer", "who-decides");

    public Notice {
        brief = List.copyOf(brief);
        elements = List.copyOf(elements);
    }

    /** One question a reader may have, and its answer. */
    public record Element(String id, String heading, String text) {}

    /**
     * What the salon's policy settles.
     *
     * @param keepYears how long answers are kept after the last visit, 1 to 30 years
     * @param minorAge the age in years to which a minor's are kept at least, 18 to 30
     * @param authority who hears complaints where the salon is, and whose law speaks of rights: {@code uk}, {@code eu}, {@code us} or {@code other}
     */
    public record Terms(int keepYears, int minorAge, String authority) {
        public Terms {
            if (keepYears < 1 || keepYears > 30) {
                throw new IllegalArgumentException("not a time to keep records: " + keepYears + " years");
            }
            if (minorAge < 18 || minorAge > 30) {
                throw new IllegalArgumentException("not an age to keep a minor's records to: " + minorAge + " years");
            }
        }

        public static Terms of(Policy policy) {
            return new Terms(policy.retentionYears(), policy.minorRetentionAge(), policy.jurisdiction());
        }
    }

    public static Notice of(String language, ConsentInput.Salon salon, Terms terms, ConsentSentences words) {
        Map<String, String> places = Map.of(
            "salon", salon.name(), "address", salon.address() + ", " + salon.town(), "phone", salon.phone(),
            "email", salon.email(), "years", String.valueOf(terms.keepYears()), "age", String.valueOf(terms.minorAge()),
            "authority", words.say("notice.authorities." + terms.authority()));
        List<Element> brief = BRIEF.stream()
            .map(id -> element(id, "notice.brief." + id, "notice.brief." + id + ".text", words, places)).toList();
        List<Element> elements = ELEMENTS.stream()
            .map(id -> element(id, "notice." + id, text(id, terms, words), words, places)).toList();
        return new Notice(language, words.say("version"), words.say("notice.heading", places), brief, elements,
            words.say("notice.agree", places), words.say("notice.refuse", places));
    }

    private static Element element(String id, String heading, String text, ConsentSentences words,
        Map<String, String> places) {
        return new Element(id, Canonical.line(words.say(heading + ".heading", places)),
            Canonical.line(words.say(text, places)));
    }

    /** What the law of the place settles is said per place; the rest is the same everywhere. */
    private static String text(String id, Terms terms, ConsentSentences words) {
        String here = "notice." + id + "." + terms.authority();
        return words.has(here) ? here : "notice." + id + ".text";
    }

    public String canonical() {
        ArrayList<String> lines = new ArrayList<>(List.of(language + '\t' + version, heading));
        Stream.concat(brief.stream(), elements.stream())
            .forEach(element -> lines.add(element.heading() + '\t' + element.text()));
        lines.add(agree);
        lines.add(refuse);
        return Canonical.text(String.join("\n", lines) + "\n");
    }

    /** SHA-256 of {@link #canonical()} in UTF-8, as 64 hexadecimal digits. */
    public String sha256() {
        return Sha256.of(canonical());
    }
}
