package foretress.intake;

import foretress.assessment.Situation;
import foretress.hair.HairHistory;
import foretress.hair.StrandMap;
import foretress.hair.StrandWords;
import foretress.hair.Treatment;
import foretress.knowledge.AnswerWords;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.visit.Visit;
import jakarta.inject.Singleton;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The strand map of a visit, labelled in the words of whoever reads it. */
@Singleton
public class StrandMaps {
    private final Assessments assessments;
    private final Knowledge knowledge;

    StrandMaps(Assessments assessments, Knowledge knowledge) {
        this.assessments = assessments;
        this.knowledge = knowledge;
    }

    public StrandMap map(Visit visit, Answers said, Words words) {
        return map(assessments.situation(visit, said), knowledge, words);
    }

    /** The map on the day of the service. */
    public static StrandMap map(Situation situation, Knowledge knowledge, Words words) {
        HairHistory history = knowledge.told(situation).history();
        List<foretress.questionnaire.SaidTreatment> listed = new ArrayList<>(situation.known());
        listed.addAll(listed(situation.answers()));
        List<Treatment> drawn = new ArrayList<>();
        for (Treatment treatment : history.treatments()) {
            // What was done here comes first, then what the client listed, in order; what only a cue betrays follows, at a time nobody said.
            String where =
                drawn.size() < listed.size() ? AnswerWords.whereAndWhen(listed.get(drawn.size()), words) : "";
            drawn.add(treatment.labelled(AnswerWords.slip("treatment", treatment.id(), words), where));
        }
        return StrandMap.of(new HairHistory(history.length(), drawn, history.cuts(), history.growth()),
            situation.serviceDay());
    }

    public static StrandWords words(Words words) {
        return new StrandWords(Locale.forLanguageTag(words.language()), key -> words.text("strand.texts." + key));
    }

    private static List<foretress.questionnaire.SaidTreatment> listed(Answers said) {
        return said.byQuestion().values().stream()
            .flatMap(a -> a instanceof Answer.Treatments t ? t.list().stream() : Stream.empty()).toList();
    }
}
