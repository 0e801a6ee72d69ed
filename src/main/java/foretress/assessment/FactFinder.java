package foretress.assessment;

import foretress.assessment.Asking.Asked;
import foretress.assessment.FactDef.Computation;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Finds every fact of one client. A fact that cannot be found is a fault in the facts, never a good class. */
public class FactFinder {
    private final RuleSet rules;
    private final Lexicon lexicon;
    /** By fact: the questions its rows look at, in order. */
    private final Map<String, List<String>> read = new HashMap<>();
    /** By the skin test that they hide a reaction to. */
    private final Map<Computation, Masks> masks = new IdentityHashMap<>();
    /** Classes of medicines that work where they are put on the skin, and not through the body. */
    private final List<String> putOnSkin;

    public FactFinder(RuleSet rules, Lexicon lexicon) {
        this.rules = rules;
        this.lexicon = lexicon;
        rules.facts().forEach(def -> read.put(def.id(), read(def)));
        computed(ComputedAs.SKIN_TEST).forEach(how -> masks.put(how, Masks.of(rules, how)));
        putOnSkin = computed(ComputedAs.SKIN_STEROID).flatMap(how -> how.of().stream()).toList();
    }

    private Stream<Computation> computed(ComputedAs as) {
        return rules.facts().stream().flatMap(def -> def.computation().stream()).filter(how -> how.as() == as);
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
            medicines = new MedicineFacts(asking, lexicon.with(situation.lookedUp()), putOnSkin);
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
            return switch (how.as()) {
                case ANY_OF -> AnyOf.find(def, id -> rules.fact(id).orElseThrow(), this::value);
                case AGE -> age.find(def);
                case HAIR_LENGTH -> hair.length(def);
                case METAL -> hair.metal(def, how);
                case LEFT -> hair.left(def, how);
                case LEFT_BY_AGE -> hair.leftByAge(def, how);
                case KIND_LEFT -> hair.kindLeft(def, how);
                case POLICY_ALLOWS -> policyAllows(def, how);
                case LETTER_OR_TEST -> tests.letterOr(def, value(rules.fact(how.of().get(0)).orElseThrow()));
                case MEDICINE -> medicines.taken(def, how);
                case STEROID_TABLETS -> medicines.steroidTablets(def, how);
                case SKIN_STEROID -> medicines.skinSteroid(def, how);
                case CHEMOTHERAPY ->
                    hair.notRegrown(def, medicines.chemotherapy(def, how).heavier(rows.find(def, read.get(def.id()))));
                case UNKNOWN_MEDICINE -> medicines.notRecognised(def);
                case LOOKED_UP_MEDICINE -> medicines.lookedUp(def, how);
                case IMMUNE_MEDICINE -> medicines.immune(def, how);
                case RETINOID -> medicines.retinoid(def, how);
                case SCALP_MEDICINE -> medicines.onScalp(def, how);
                case LABEL_METAL -> labels.metal(def);
                case LABEL_DYE_GROUP -> labels.dyeGroup(def);
                case LABEL_UNKNOWN -> labels.notRecognised(def);
                case SKIN_TEST ->
                    tests.skinTest(def, how, maskingNow(how)).leavingOpen(asking.unanswered(dates(how)));
                case MEDICAL_ADVICE -> tests.medicalAdvice(def, how.of());
                case METAL_TEST -> tests.metalTest(def);
                case CHAIR_TEST -> tests.chairTest(def, how);
            };
        }

        /** When something happened since a test is asked of nobody else's account: left open, it is missing here. */
        private List<Asked> dates(Computation how) {
            return how.overtakenBy().stream().flatMap(event -> event.dated().stream()).map(asking::asked).toList();
        }

        private FactValue policyAllows(FactDef def, Computation how) {
            boolean all = how.of().stream().allMatch(figure -> asking.policy().figure(figure) > 0);
            return FactValue.known(def, all ? 0 : def.worst(), List.of());
        }

        /** A fact named beside the skin test voids a negative one while it may have its worst class. */
        private List<String> maskingNow(Computation how) {
            return masks.get(how).now(id -> value(rules.fact(id).orElseThrow()));
        }
    }
}
