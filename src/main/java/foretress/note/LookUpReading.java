package foretress.note;

import foretress.assessment.Lexicon;
import foretress.assessment.LookedUp;
import foretress.assessment.ReadAs;
import foretress.knowledge.Knowledge;
import foretress.lexicon.MedicineReading;
import foretress.lexicon.MedicineReading.Said;
import foretress.lexicon.MedicineReading.Sureness;
import foretress.lexicon.MedicineRow;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.web.Form;
import foretress.web.Mistakes;
import jakarta.enterprise.context.RequestScoped;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads a look-up from its form. A name that the list knows, or may know, is never looked up: that could only make it lighter. */
@RequestScoped
class LookUpReading {
    static final int LONGEST_NAME = 80;
    static final int LONGEST_SOURCE = 200;
    private static final String UNKNOWN = "Qvorxzul";
    /** The choice after which the fact is chosen from a list. */
    static final String A_CLASS = "class";

    private final LookUps lookUps;
    private final Knowledge knowledge;
    private final NoteWords say;

    LookUpReading(LookUps lookUps, Knowledge knowledge, NoteWords say) {
        this.lookUps = lookUps;
        this.knowledge = knowledge;
        this.say = say;
    }

    /** What this client typed that nobody can read, each name once. */
    List<String> unknown(Answers said) {
        Lexicon lexicon = knowledge.lexicon(lookUps.lookedUp());
        return said.byQuestion().values().stream().filter(Answer.Medicines.class::isInstance)
            .flatMap(answer -> ((Answer.Medicines) answer).list().stream())
            .flatMap(medicine -> lexicon.line(medicine.name()).names().stream()).map(one -> one.read())
            .filter(read -> !read.sure() && read.as().isEmpty()).map(ReadAs::typed).distinct()
            .filter(name -> name.length() <= LONGEST_NAME && mistake(name).isEmpty()).toList();
    }

    /** @return empty when there are mistakes */
    Optional<LookUps.Body> read(Form form, Mistakes mistakes) {
        String name = form.one("name");
        String means = form.is("means", A_CLASS) ? form.one("towards") : form.one("means");
        boolean chosen = LookedUp.OWN.contains(means) || LookedUp.towards(knowledge.ruleSet()).containsKey(means);
        mistakes.expect(name.length() <= LONGEST_NAME, "name", say.lookup_name_long(LONGEST_NAME));
        mistake(name).filter(text -> mistakes.at("name").isEmpty()).ifPresent(text -> mistakes.add("name", text));
        mistakes.expect(chosen, form.is("means", A_CLASS) ? "towards" : "means", say.lookup_means_missing());
        mistakes.expect(!form.one("source").isEmpty(), "source", say.lookup_source_missing());
        mistakes.expect(form.one("source").length() <= LONGEST_SOURCE, "source", say.by_long(LONGEST_SOURCE));
        mistakes.expect(!form.one("submission").isEmpty(), "submission", say.form_incomplete());
        return mistakes.isEmpty() ? Optional.of(new LookUps.Body(name, means, form.one("source"))) : Optional.empty();
    }

    private Optional<String> mistake(String name) {
        if (name.isEmpty()) {
            return Optional.of(say.lookup_name_missing());
        }
        List<MedicineReading.Name> names = knowledge.medicines().read(name).names();
        if (names.size() != 1 || names.get(0).said() != Said.TAKEN || isAround(name)) {
            return Optional.of(say.lookup_name_one());
        }
        if (names.get(0).sureness() != Sureness.NOT_RECOGNISED) {
            return Optional.of(say.lookup_name_known(names.get(0).rows().stream().map(MedicineRow::name).distinct()
                .collect(Collectors.joining(", "))));
        }
        boolean taken = knowledge.lexicon(lookUps.lookedUp()).line(name).names().stream()
            .anyMatch(one -> one.read().lookedUp().isPresent());
        return taken ? Optional.of(say.lookup_name_taken()) : Optional.empty();
    }

    /** Only words that stand around names, such as a dose: behind a word that is surely an unknown name they add nothing to it. */
    private boolean isAround(String name) {
        return knowledge.medicines().read(UNKNOWN + " " + name).names().stream()
            .allMatch(one -> one.typed().equals(UNKNOWN));
    }
}
