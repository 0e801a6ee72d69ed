package foretress.assessment;

import foretress.assessment.FactDef.Computation;
import foretress.questionnaire.Question;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Finds every fact of one client. A fact that cannot be found is a fault in the facts, never a good class. */
public final class FactFinder {
    private final RuleSet rules;
    private final Lexicon lexicon;
    /** By fact: the questions its rows look at, in order. */
    private final Map<String, List<String>> read = new HashMap<>();

    public FactFinder(RuleSet rules, Lexicon lexicon) {
        this.rules = rules;
        this.lexicon = lexicon;
        rules.facts().forEach(def -> read.put(def.id(), read(def)));
    }

    private static List<String> read(FactDef def) {
        return def.rows().stream().flatMap(row -> row.when().keySet().stream()).distinct().toList();
    }

    public Facts find(Situation situation) {
        return new Search(situation).all();
    }

    /** One situation being read; what several facts share is made once. */
    private final class Search {
        private final Asking asking;
        private final RowFacts rows;
        private final AgeFact age;
        private final HairFacts hair;
        private final MedicineFacts medicines;
        private final LabelFacts labels;
        private final TestFacts tests;
        private final Map<String, FactValue> found = new LinkedHashMap<>();

        Search(Situation situation) {
            asking = new Asking(situation);
            rows = new RowFacts(asking);
            age = new AgeFact(situation);
            labels = new LabelFacts(asking, lexicon);
            hair = new HairFacts(situation, asking, new HairTold(situation, asking, rules.treatments(), labels));
            medicines = new MedicineFacts(asking, lexicon.with(situation.lookedUp()));
            tests = new TestFacts(situation, asking);
        }

        Facts all() {
            rules.facts().forEach(this::value);
            return new Facts(found);
        }

        private FactValue value(FactDef def) {
            FactValue known = found.get(def.id());
            if (known == null) {
                known = found(def);
                found.put(def.id(), known);
            }
            return known;
        }

        private FactValue found(FactDef def) {
            try {
                FactValue fromRows = rows.find(def, read.get(def.id()));
                return def.computation().map(how -> computed(def, how))
                    .map(value -> def.rows().isEmpty() ? value : value.heavier(fromRows)).orElse(fromRows);
            } catch (RuntimeException fault) {
                return FactValue.faulty(def, String.valueOf(fault.getMessage()));
            }
        }

        private FactValue computed(FactDef def, Computation how) {
            return switch (how.name()) {
                case "age" -> age.find(def);
                case "hair-length" -> hair.length(def);
                case "metal" -> hair.metal(def, how);
                case "left" -> hair.left(def, how);
                case "left-by-age" -> hair.leftByAge(def, how);
                case "kind-left" -> hair.kindLeft(def, how);
                case "policy-allows" -> policyAllows(def, how);
                case "letter-or-test" -> tests.letterOr(def, value(rules.fact(how.of().get(0)).orElseThrow()));
                case "medicine" -> medicines.taken(def, how);
                case "steroid-tablets" -> medicines.steroidTablets(def);
                case "skin-steroid" -> medicines.skinSteroid(def);
                case "chemotherapy" ->
                    hair.notRegrown(def, medicines.chemotherapy(def, how).heavier(rows.find(def, read.get(def.id()))));
                case "unknown-medicine" -> medicines.notRecognised(def);
                case "looked-up-medicine" -> medicines.lookedUp(def, how);
                case "immune-medicine" -> medicines.immune(def, how);
                case "retinoid" -> medicines.retinoid(def, how);
                case "scalp-medicine" -> medicines.onScalp(def, how);
                case "label-metal" -> labels.metal(def);
                case "label-dye-group" -> labels.dyeGroup(def);
                case "label-unknown" -> labels.notRecognised(def);
                case "skin-test" ->
                    tests.skinTest(def, how, maskingNow(how)).leavingOpen(asking.unanswered(dates(how)));
                case "medical-advice" -> tests.medicalAdvice(def, how.of());
                case "metal-test" -> tests.metalTest(def);
                case "test-cutting" -> tests.testCutting(def);
                case "elasticity" -> tests.elasticity(def, "elasticity-test");
                case "root-elasticity" -> tests.elasticity(def, "elasticity-of-roots");
                case "porosity" -> tests.porosity(def, "porosity-test");
                case "root-porosity" -> tests.porosity(def, "porosity-of-roots");
                case "resistant-hair" -> tests.resistant(def);
                default -> throw new IllegalArgumentException("there is no computation " + how.name());
            };
        }

        /** When something happened since a test is asked of nobody else's account: left open, it is missing here. */
        private List<Question> dates(Computation how) {
            return how.overtakenBy().stream().flatMap(event -> event.dated().stream()).map(asking::question).toList();
        }

        private FactValue policyAllows(FactDef def, Computation how) {
            boolean all = how.of().stream().allMatch(figure -> asking.policy().figure(figure) > 0);
            return FactValue.known(def, all ? 0 : def.worst(), List.of());
        }

        /** A fact named beside the skin test voids a negative one while it may have its worst class. */
        private List<String> maskingNow(Computation how) {
            return new Masks(rules, how).now(id -> value(rules.fact(id).orElseThrow()));
        }
    }
}
