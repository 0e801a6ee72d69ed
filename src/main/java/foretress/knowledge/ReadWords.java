package foretress.knowledge;

import foretress.assessment.LookedUp;
import foretress.assessment.ReadAs;
import foretress.questionnaire.SaidDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says how typed or copied words were read: what is sure name by name, and what is not in one sentence. */
public final class ReadWords {
    /** So many are named of each kind; all of them stand in the answer itself. */
    private static final int SHOWN = 12;

    private ReadWords() {}

    /** Whole sentences; none where nothing was read. */
    public static List<String> say(List<ReadAs> read, Words words) {
        List<String> sure = said(read, true, one -> one.lookedUp().map(by -> lookedUp(by, one, words))
            .orElseGet(() -> named("as", one, words)));
        List<String> unsure = said(read, false, one -> named(one.as().isEmpty() ? "typed" : "perhaps", one, words));
        List<String> sentences = new ArrayList<>(sure.subList(0, Math.min(SHOWN, sure.size())));
        if (sure.size() > SHOWN) {
            sentences.add(text("more-read", words).replace("{count}", sure.size() - SHOWN + ""));
        }
        if (!unsure.isEmpty()) {
            sentences.add(text("not-every-word", words).replace("{words}", listed(unsure, words)));
        }
        return sentences;
    }

    /** The same after a text that stands before it. */
    public static String after(String text, List<ReadAs> read, Words words) {
        return Stream.concat(Stream.of(text), say(read, words).stream()).collect(Collectors.joining(" "));
    }

    private static List<String> said(List<ReadAs> read, boolean sure, Function<ReadAs, String> wording) {
        return List.copyOf(read.stream().filter(one -> one.sure() == sure).map(wording)
            .collect(Collectors.toCollection(LinkedHashSet::new)));
    }

    private static String named(String wording, ReadAs one, Words words) {
        String names = String.join(text("or", words), one.as());
        return text(wording, words).replace("{names}", names).replace("{typed}", plain(one.typed()));
    }

    /** Whose word it is, of which day, and where it was found: the finding is theirs, not the lexicon's. */
    private static String lookedUp(LookedUp by, ReadAs one, Words words) {
        String means = words.find("answers.looked-up." + by.means()).orElseGet(() -> words.fact(by.means()));
        return text("looked-up", words).replace("{means}", means)
            .replace("{day}", AnswerWords.say(new SaidDate.OnDay(by.on()), words)).replace("{by}", plain(by.by()))
            .replace("{source}", plain(by.source())).replace("{typed}", plain(one.typed()));
    }

    /** In one line, and without marks that would turn the words around it. */
    private static String plain(String typed) {
        return typed.replaceAll("[\\u202A-\\u202E\\u2066-\\u2069]", "").strip().replaceAll("\\s+", " ");
    }

    private static String listed(List<String> unsure, Words words) {
        String shown = unsure.stream().limit(SHOWN).collect(Collectors.joining(text("joint", words)));
        return unsure.size() <= SHOWN ? shown
            : text("more", words).replace("{count}", unsure.size() - SHOWN + "").replace("{words}", shown);
    }

    private static String text(String key, Words words) {
        return words.text("answers.read." + key);
    }
}
