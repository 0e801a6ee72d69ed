package foretress.consent;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What the client reads before the first question: who holds the health answers, why, how long, and the client's rights.
 * Its elements are those of GDPR Art. 13(1) and (2); the consent asked for is that of Art. 9(2)(a), apart from any other.
 *
 * @param agree the sentence beside the one unticked box
 * @param refuse what happens when the client would rather not
 */
public record Notice(String language, String version, String heading, List<Element> elements, String agree, String refuse) {

    /** The elements in reading order. A missing one fails the test that lists them. */
    static final List<String> ELEMENTS = List.of(
        "controller", "purposes", "legal-basis", "recipients", "how-long", "rights", "withdrawal", "complaint",
        "must-i-answer", "who-decides");

    public Notice {
        elements = List.copyOf(elements);
    }

    /** One question a reader may have, and its answer. */
    public record Element(String id, String heading, String text) {}

    /**
     * What the salon's policy settles.
     *
     * @param keepYears how long answers are kept after the last visit, 1 to 30 years
     * @param authority who hears complaints where the salon is: {@code uk}, {@code eu}, {@code us} or {@code other}
     */
    public record Terms(int keepYears, String authority) {
        public Terms {
            if (keepYears < 1 || keepYears > 30) {
                throw new IllegalArgumentException("not a time to keep records: " + keepYears + " years");
            }
        }
    }

    public static Notice of(String language, ConsentInput.Salon salon, Terms terms, Wording words) {
        var places = Map.of(
            "salon", salon.name(), "address", salon.address() + ", " + salon.town(), "phone", salon.phone(),
            "email", salon.email(), "years", String.valueOf(terms.keepYears()),
            "authority", words.say("notice.authorities." + terms.authority()));
        var elements = ELEMENTS.stream().map(id -> new Element(id,
            Canonical.line(words.say("notice." + id + ".heading", places)),
            Canonical.line(words.say("notice." + id + ".text", places)))).toList();
        return new Notice(language, words.say("version"), words.say("notice.heading", places), elements,
            words.say("notice.agree", places), words.say("notice.refuse", places));
    }

    public String canonical() {
        var lines = new ArrayList<>(List.of(language + '\t' + version, heading));
        for (var element : elements) {
            lines.add(element.heading() + '\t' + element.text());
        }
        lines.add(agree);
        lines.add(refuse);
        return Canonical.text(String.join("\n", lines) + "\n");
    }

    /** SHA-256 of {@link #canonical()} in UTF-8, as 64 hexadecimal digits. */
    public String sha256() {
        return Canonical.sha256(canonical());
    }
}
