package foretress.knowledge;

import foretress.assessment.TreatmentKind;
import foretress.assessment.TreatmentKind.Proof;
import foretress.hair.Residue;
import foretress.questionnaire.Code;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.Questionnaire;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads what each treatment a client can list leaves in or on the hair. */
final class TreatmentsReader {
    private static final Map<String, Residue> RESIDUES = Arrays.stream(Residue.values())
        .collect(Collectors.toUnmodifiableMap(Code::of,
            Function.identity()));
    /** What always may hold metal: nobody has to say so again. */
    private static final Set<Residue> METAL = Set.of(Residue.METAL, Residue.UNKNOWN);

    private final Map<String, Question> offered = new LinkedHashMap<>();
    private final QuestionnaireReader questions;
    private final Map<String, TreatmentKind> kinds = new LinkedHashMap<>();
    private final Set<String> named = new HashSet<>();

    TreatmentsReader(Questionnaire questionnaire, QuestionnaireReader questions) {
        this.questions = questions;
        offered(questionnaire).forEach((code, question) -> offered.put(code, question));
    }

    /** Every treatment that can be listed, with the first question that offers it. */
    static Map<String, Question> offered(Questionnaire questionnaire) {
        Map<String, Question> offered = new LinkedHashMap<>();
        questionnaire.questions().stream().filter(question -> question.kind() == Kind.TREATMENTS)
            .forEach(question -> question.options().forEach(code -> offered.putIfAbsent(code, question)));
        return offered;
    }

    void read(Yaml file) {
        file.each(this::kind);
    }

    private TreatmentKind kind(Yaml entry) {
        entry.only("id", "leaves", "may-hold-metal", "proved-by", "without-proof");
        String id = entry.at("id").oneOf(offered.keySet(), "treatment");
        named.add(id);
        Residue leaves = entry.at("leaves").oneOf(RESIDUES, "residue");
        var kind = new TreatmentKind(id, leaves, METAL.contains(leaves) || entry.yes("may-hold-metal"), proof(entry));
        if (kinds.putIfAbsent(id, kind) != null) {
            entry.at("id").complain("what '%s' leaves is said twice".formatted(id));
        }
        return kind;
    }

    private Optional<Proof> proof(Yaml entry) {
        return entry.maybe("proved-by").map(by -> new Proof(IdSyntax.read(by),
            entry.at("without-proof").oneOf(offered.keySet(), "treatment")));
    }

    /** One that was left out would be drawn and weighed as nobody meant it. */
    void checkAllAreThere() {
        offered.forEach((code, question) -> {
            if (!named.contains(code)) {
                questions.complain(question.id(),
                    "'%s' is offered here; say in treatments.yaml what it leaves".formatted(code));
            }
        });
    }

    List<TreatmentKind> kinds() {
        return List.copyOf(kinds.values());
    }
}
