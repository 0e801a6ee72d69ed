package foretress.knowledge;

import foretress.assessment.Condition;
import foretress.assessment.Condition.Always;
import foretress.assessment.Condition.And;
import foretress.assessment.Condition.Compare;
import foretress.assessment.Condition.Not;
import foretress.assessment.Condition.Op;
import foretress.assessment.Condition.Or;
import foretress.assessment.FactDef;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads a condition that is right, by the grammar of {@link Condition}, in microseconds. It explains nothing: whatever it does not
 * follow is left to CEL, whose parser alone takes longer to load than all rules take here. {@code ConditionTest} holds the two to one reading.
 */
final class PlainConditions {
    private static final Pattern TOKEN = Pattern.compile("[ \\t\\r\\n]*([A-Za-z_]\\w*|&&|\\|\\||[=!<>]=|[<>!()])");
    private static final Map<String, Op> OPS =
        Arrays.stream(Op.values()).collect(Collectors.toMap(Op::sign, Function.identity()));

    /** By the name as conditions write it. */
    private final Map<String, FactDef> facts;

    PlainConditions(Map<String, FactDef> facts) {
        this.facts = facts;
    }

    /** Empty when this is no condition, or one written otherwise than usual. */
    Optional<Condition> read(String text) {
        try {
            return Optional.of(new Reading(tokens(text.strip())).whole());
        } catch (Unclear unclear) {
            return Optional.empty();
        }
    }

    private static List<String> tokens(String text) {
        List<String> tokens = new ArrayList<>();
        Matcher token = TOKEN.matcher(text);
        int at = 0;
        while (at < text.length() && token.find(at) && token.start() == at) {
            tokens.add(token.group(1));
            at = token.end();
        }
        if (at < text.length()) {
            throw new Unclear();
        }
        return tokens;
    }

    private static final class Unclear extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Unclear() {
            super(null, null, false, false);
        }
    }

    private final class Reading {
        private final List<String> tokens;
        private int at;

        Reading(List<String> tokens) {
            this.tokens = tokens;
        }

        Condition whole() {
            Condition condition = tokens.equals(List.of("true")) ? always() : or();
            if (at < tokens.size()) {
                throw new Unclear();
            }
            return condition;
        }

        private Condition always() {
            next();
            return new Always();
        }

        private Condition or() {
            List<Condition> parts = parts("||", this::and);
            return parts.size() == 1 ? parts.get(0) : new Or(flat(parts, Or.class, Or::parts));
        }

        private Condition and() {
            List<Condition> parts = parts("&&", this::not);
            return parts.size() == 1 ? parts.get(0) : new And(flat(parts, And.class, And::parts));
        }

        private List<Condition> parts(String sign, Supplier<Condition> part) {
            List<Condition> parts = new ArrayList<>(List.of(part.get()));
            while (goesOn(sign)) {
                parts.add(part.get());
            }
            return parts;
        }

        /** {@code a && (b && c)} is one list. */
        private static <T extends Condition> List<Condition> flat(List<Condition> parts, Class<T> same,
            Function<T, List<Condition>> inner) {
            return parts.stream()
                .flatMap(part -> same.isInstance(part) ? inner.apply(same.cast(part)).stream() : List.of(part).stream())
                .toList();
        }

        private Condition not() {
            if (!goesOn("!")) {
                return goesOn("(") ? inBrackets() : compare();
            }
            if (!goesOn("(")) {
                throw new Unclear();
            }
            return new Not(inBrackets());
        }

        private Condition inBrackets() {
            Condition inside = or();
            if (!goesOn(")")) {
                throw new Unclear();
            }
            return inside;
        }

        private Condition compare() {
            FactDef fact = known(facts.get(next()));
            Op op = known(OPS.get(next()));
            int ordinal = fact.classes().stream().map(ConditionReader::written).toList().indexOf(next());
            if (ordinal < 0) {
                throw new Unclear();
            }
            return new Compare(fact.id(), op, fact.classes().get(ordinal), ordinal);
        }

        private static <T> T known(T found) {
            return Optional.ofNullable(found).orElseThrow(Unclear::new);
        }

        private boolean goesOn(String sign) {
            boolean here = at < tokens.size() && tokens.get(at).equals(sign);
            at += here ? 1 : 0;
            return here;
        }

        private String next() {
            if (at == tokens.size()) {
                throw new Unclear();
            }
            return tokens.get(at++);
        }
    }
}
