package foretress.alternative;

import foretress.assessment.Assessment;
import foretress.assessment.Finding;
import foretress.assessment.Rule;
import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.TestFact;
import foretress.assessment.Ways;
import foretress.assessment.Weight;
import foretress.hair.Cut;
import foretress.hair.StrandMap;
import foretress.knowledge.Knowledge;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

/**
 * What would have to happen for a service to be open to this client: asked of the assessor itself, with shorter hair.
 *
 * @param cut the longest the hair could be cut to so that least is in the way; empty where a cut changes nothing
 * @param heals skin must mend first, {@code recovers} hair must
 * @param word a doctor's or pharmacist's word is asked for
 * @param settled what nobody at the salon can change; empty where there is another door
 */
record Outlook(Optional<CutTo> cut, boolean heals, boolean recovers, boolean word, Optional<Finding> settled) {
    /**
     * @param cm whole centimetres, 1 or more
     * @param grown the month by which what is cut off there would have grown out at today's length
     * @param left what is still in the way then
     */
    record CutTo(int cm, Optional<YearMonth> grown, Optional<Finding> left) {}

    /** @param assess says what the rules say of these services for somebody who stands so */
    static Outlook of(Knowledge knowledge, BiFunction<Situation, List<Service>, Assessment> assess, Situation now,
        Service service, StrandMap map) {
        return new Search(knowledge, assess, now, service, map).outlook();
    }

    private record Search(Knowledge knowledge, BiFunction<Situation, List<Service>, Assessment> assess, Situation now,
        Service service, StrandMap map) {
        Outlook outlook() {
            List<Finding> inTheWay = inTheWay(now);
            Ways ways = knowledge.ways();
            Optional<CutTo> cut = inTheWay.isEmpty() ? Optional.empty() : cut(inTheWay);
            boolean heals = reads(inTheWay, ways.heals());
            boolean recovers = reads(inTheWay, ways.recovers());
            boolean word = inTheWay.stream().anyMatch(finding -> finding.demands().contains(TestFact.ADVICE));
            boolean closed = cut.isEmpty() && !heals && !recovers && !word;
            return new Outlook(cut, heals, recovers, word,
                inTheWay.stream().filter(finding -> closed && prevents(finding) && lasting(finding)).findFirst());
        }

        private static boolean reads(List<Finding> findings, Set<String> facts) {
            return findings.stream().anyMatch(finding -> finding.facts().stream().anyMatch(facts::contains));
        }

        private boolean prevents(Finding finding) {
            return finding.on(service) == Weight.PREVENTS;
        }

        private boolean lasting(Finding finding) {
            return knowledge.ruleSet().rule(finding.ruleId()).filter(Rule::lasting).isPresent();
        }

        /** What holds the service up, the heaviest first. */
        private List<Finding> inTheWay(Situation situation) {
            Assessment found = assess.apply(situation, List.of(service));
            return found.on(service).stream().filter(f -> f.on(service).atLeast(Weight.TEST_FIRST)).toList();
        }

        private Optional<CutTo> cut(List<Finding> inTheWay) {
            int length = (int) Math.ceil(knowledge.told(now).length().cm().orElse(0)) - 1;
            Set<String> most = ids(inTheWay);
            if (length < 1 || ids(inTheWay(cutTo(1))).containsAll(most)) {
                return Optional.empty();
            }
            int cm = longest(length, ids(inTheWay(cutTo(1))));
            return Optional.of(new CutTo(cm, grown(cm), inTheWay(cutTo(cm)).stream().findFirst()));
        }

        /** Shorter hair never holds more, so the longest that holds no more than the shortest is found by halving. */
        private int longest(int length, Set<String> least) {
            int good = 1;
            int bad = length + 1;
            while (bad - good > 1) {
                int middle = (good + bad) / 2;
                if (least.containsAll(ids(inTheWay(cutTo(middle))))) {
                    good = middle;
                } else {
                    bad = middle;
                }
            }
            return good;
        }

        private Situation cutTo(int cm) {
            List<Cut> cuts = new ArrayList<>(now.cuts());
            cuts.add(new Cut(now.today(), cm));
            return now.cut(cuts).tested(now.tests(), Optional.of(cm));
        }

        private Optional<YearMonth> grown(int cm) {
            return map.lanes().stream().filter(lane -> lane.cutToCm().filter(to -> to >= cm).isPresent())
                .map(lane -> lane.grownOut()).max(Comparator.naturalOrder());
        }

        private static Set<String> ids(List<Finding> findings) {
            return findings.stream().map(Finding::ruleId).collect(Collectors.toSet());
        }
    }
}
