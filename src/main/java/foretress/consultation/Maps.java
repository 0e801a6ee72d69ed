package foretress.consultation;

import foretress.assessment.HairTold;
import foretress.hair.HairHistory;
import foretress.hair.StrandMap;
import foretress.hair.StrandSvg;
import foretress.hair.StrandWords;
import foretress.hair.Treatment;
import foretress.intake.Assessments;
import foretress.knowledge.AnswerWords;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.visit.Visit;
import foretress.web.Language;
import foretress.web.Stylist;
import jakarta.enterprise.context.RequestScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The strand map of a visit, labelled in the staff's words. */
@RequestScoped
class Maps {
    private final Assessments assessments;
    private final Knowledge knowledge;
    private final Language language;

    Maps(Assessments assessments, Knowledge knowledge, Language language) {
        this.assessments = assessments;
        this.knowledge = knowledge;
        this.language = language;
    }

    String figure(Visit visit, Answers said) {
        return StrandSvg.figure(map(visit, said), strandWords(), "map");
    }

    /** The length it is drawn for and where that comes from. */
    String aside(Visit visit, Answers said) {
        return strandWords().length(map(visit, said));
    }

    private StrandMap map(Visit visit, Answers said) {
        HairHistory history = HairTold.of(assessments.situation(visit, said), knowledge.ruleSet().cues()).history();
        List<foretress.questionnaire.Treatment> listed = listed(said);
        List<Treatment> drawn = new ArrayList<>();
        for (Treatment treatment : history.treatments()) {
            // What the client listed comes first and in order; what only a cue betrays follows, at a time nobody said.
            drawn.add(drawn.size() < listed.size() ? labelled(treatment, where(listed.get(drawn.size()))) : labelled(treatment, ""));
        }
        return StrandMap.of(new HairHistory(history.length(), drawn, history.cuts(), history.growth()), visit.startsThere().toLocalDate());
    }

    private static List<foretress.questionnaire.Treatment> listed(Answers said) {
        return said.byQuestion().values().stream()
            .flatMap(a -> a instanceof Answer.Treatments t ? t.list().stream() : Stream.empty()).toList();
    }

    private String where(foretress.questionnaire.Treatment treatment) {
        return AnswerWords.text("zone", treatment.zone(), words()) + ", " + AnswerWords.say(treatment.when(), words());
    }

    private Treatment labelled(Treatment t, String said) {
        return new Treatment(t.id(), t.residue(), t.earliest(), t.latest(), t.zone(), t.repeated(), t.sure(), t.metalPossible(),
            AnswerWords.slip("treatment", t.id(), words()), said);
    }

    private Words words() {
        return knowledge.words(language.getTag());
    }

    private StrandWords strandWords() {
        return new StrandWords(language.locale(), key -> words().text("strand.texts." + key));
    }
}
