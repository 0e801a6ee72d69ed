package foretress.note;

import foretress.assessment.LookedUp;
import foretress.bench.BenchElasticityPages.Choice;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.web.Form;
import foretress.web.Language;
import jakarta.enterprise.context.RequestScoped;
import java.util.List;
import java.util.UUID;

/** The fields under a looked-up name, and its meanings in words. */
@RequestScoped
class LookUpFields {
    /** What a page shows of them. */
    public record Asked(String at, Form form, List<Choice> means, List<Choice> towards, String submission) {}

    private final Knowledge knowledge;
    private final NoteWords say;
    private final Language language;

    LookUpFields(Knowledge knowledge, NoteWords say, Language language) {
        this.knowledge = knowledge;
        this.say = say;
        this.language = language;
    }

    Asked asked(String at, Form form) {
        String submission = form.one("submission").isEmpty() ? UUID.randomUUID().toString() : form.one("submission");
        List<Choice> means = List.of(choice(form, LookedUp.NO_DIFFERENCE, say.lookup_no_difference()),
            choice(form, LookedUp.NO_MEDICINE, say.lookup_no_medicine()),
            choice(form, "immune-medicine", say.lookup_masks()),
            choice(form, LookedUp.ASK_A_DOCTOR, say.lookup_ask_a_doctor()),
            choice(form, LookUpReading.A_CLASS, say.lookup_class()));
        List<Choice> towards = LookedUp.towards(knowledge.ruleSet()).keySet().stream()
            .map(fact -> new Choice(fact, words().fact(fact), form.is("towards", fact))).toList();
        return new Asked(at, form, means, towards, submission);
    }

    private static Choice choice(Form form, String code, String word) {
        return new Choice(code, word, form.is("means", code));
    }

    String means(String code) {
        return words().find("answers.looked-up." + code).orElseGet(() -> words().fact(code));
    }

    private Words words() {
        return knowledge.words(language.getTag());
    }
}
