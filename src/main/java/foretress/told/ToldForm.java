package foretress.told;

import foretress.skintest.AftercareWords;
import foretress.web.Form;
import foretress.web.Mistakes;
import java.util.List;
import java.util.Optional;

/** What a client ticked and wrote about a reaction; no more is known of it than was said. */
record ToldForm(Form form) {
    static final String UNKNOWN = "unknown";
    private static final int LONGEST = 1000;

    /** Empty when something must be put right first. */
    Optional<Telling> read(Mistakes mistakes, AftercareWords say, String language) {
        List<Felt> felt = form.all("felt").stream().flatMap(code -> Felt.of(code).stream()).toList();
        List<Where> where = form.all("where").stream().flatMap(code -> Where.of(code).stream()).toList();
        mistakes.expect(!felt.isEmpty() && felt.size() == form.all("felt").size(), "felt", say.reaction_missing());
        Optional<Showed> began = Showed.of(form.one("began"));
        mistakes.expect(began.isPresent() || form.is("began", UNKNOWN), "began", say.look_began_missing());
        mistakes.expect(form.one("words").length() <= LONGEST, "words", say.look_words_long());
        return mistakes.isEmpty() ? Optional.of(new Telling(felt, began, where, form.one("words"), language))
            : Optional.empty();
    }
}
