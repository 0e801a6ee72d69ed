package foretress.knowledge;

import dev.cel.common.CelAbstractSyntaxTree;
import dev.cel.common.CelIssue;
import dev.cel.common.CelValidationException;
import dev.cel.common.ast.CelConstant;
import dev.cel.common.ast.CelExpr;
import dev.cel.common.ast.CelExpr.ExprKind.Kind;
import dev.cel.common.types.SimpleType;
import dev.cel.compiler.CelCompiler;
import dev.cel.compiler.CelCompilerBuilder;
import dev.cel.compiler.CelCompilerFactory;
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
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reads conditions: one that is right by {@link PlainConditions}; anything else is parsed and type-checked by CEL, which says what is
 * wrong and where, and the checked tree becomes ours.
 *
 * <p>Facts and classes are whole numbers to CEL. Which number a class stands for depends on the fact beside it, so that is
 * settled here: a comparison has a fact on one side and a class of that very fact on the other.
 */
final class ConditionReader {
    private static final Map<String, Op> OPS =
        Arrays.stream(Op.values()).collect(Collectors.toMap(op -> "_" + op.sign() + "_", Function.identity()));
    /** So that every rule can be tried over all its facts' classes. */
    private static final int MOST_FACTS = 6;

    private final Map<String, FactDef> facts = new LinkedHashMap<>();
    private final Set<String> classes = new LinkedHashSet<>();
    private final PlainConditions plain = new PlainConditions(facts);
    /** Made for the first condition that needs it: in a start with nothing wrong, never. */
    private CelCompiler compiler;

    ConditionReader(Collection<FactDef> defs) {
        defs.forEach(def -> facts.put(written(def.id()), def));
        defs.forEach(def -> def.classes().forEach(c -> classes.add(written(c))));
    }

    private CelCompiler compiler() {
        if (compiler == null) {
            CelCompilerBuilder builder = CelCompilerFactory.standardCelCompilerBuilder().setResultType(SimpleType.BOOL);
            Stream.concat(facts.keySet().stream(), classes.stream()).distinct()
                .forEach(name -> builder.addVar(name, SimpleType.INT));
            compiler = builder.build();
        }
        return compiler;
    }

    /** How an id is written in a condition, where a hyphen would be a minus. */
    static String written(String id) {
        return id.replace('-', '_');
    }

    Condition read(Yaml yaml) {
        Condition condition = plain.read(yaml.text()).orElseGet(() -> readAsCel(yaml));
        if (condition.reads().size() > MOST_FACTS) {
            throw yaml.refuse("a condition reads at most %d facts; split the rule".formatted(MOST_FACTS));
        }
        return condition;
    }

    /** The same by CEL, with a complaint at the letter where it is none. */
    Condition readAsCel(Yaml yaml) {
        try {
            CelAbstractSyntaxTree parsed = compiler().parse(yaml.text()).getAst();
            var reading = new Reading(yaml, parsed);
            reading.namesAreKnown(parsed.getExpr());
            compiler().check(parsed).getAst();
            return reading.whole(parsed.getExpr());
        } catch (CelValidationException e) {
            e.getErrors().forEach(issue -> complain(yaml, issue));
            throw new Yaml.Refused(yaml.text());
        }
    }

    private static void complain(Yaml yaml, CelIssue issue) {
        String message = issue.getMessage().lines().findFirst().orElse("");
        yaml.complainInside(Math.max(0, issue.getSourceLocation().getColumn()), 1, "not a condition: " + message);
    }

    /** One condition being read, with the places of its parts. */
    private final class Reading {
        private final Yaml yaml;
        private final Map<Long, Integer> places;

        Reading(Yaml yaml, CelAbstractSyntaxTree tree) {
            this.yaml = yaml;
            this.places = tree.getSource().getPositionsMap();
        }

        /** Every name in it is a fact or a class; checked before the types, for our hint is the better one. */
        void namesAreKnown(CelExpr expr) {
            List<CelExpr> unknown = names(expr)
                .filter(e -> !facts.containsKey(e.ident().name()) && !classes.contains(e.ident().name())).toList();
            unknown.forEach(e -> complain(e,
                "there is no fact or class '%s'%s".formatted(e.ident().name(), Nearest.hint(e.ident().name(), all()))));
            if (!unknown.isEmpty()) {
                throw new Yaml.Refused("unknown names");
            }
        }

        private Stream<CelExpr> names(CelExpr expr) {
            return switch (expr.getKind()) {
                case IDENT -> Stream.of(expr);
                case CALL ->
                    Stream.concat(expr.call().target().stream(), expr.call().args().stream()).flatMap(this::names);
                default -> Stream.empty();
            };
        }

        /** "true" by itself holds for everybody; as a part of anything else it would say nothing. */
        Condition whole(CelExpr expr) {
            boolean always =
                expr.getKind() == Kind.CONSTANT && expr.constant().getKind() == CelConstant.Kind.BOOLEAN_VALUE
                    && expr.constant().booleanValue();
            return always ? new Always() : condition(expr);
        }

        Condition condition(CelExpr expr) {
            if (expr.getKind() != Kind.CALL) {
                throw refuse(expr, "a comparison such as 'fact >= class' belongs here");
            }
            String function = expr.call().function();
            List<CelExpr> args = expr.call().args();
            return switch (function) {
                case "_&&_" -> new And(flat("_&&_", args));
                case "_||_" -> new Or(flat("_||_", args));
                case "!_" -> new Not(condition(args.get(0)));
                default -> compare(expr, OPS.get(function), args);
            };
        }

        /** CEL nests a && b && c as it likes; here it is one list. */
        private List<Condition> flat(String function, List<CelExpr> args) {
            List<Condition> parts = new ArrayList<>();
            for (CelExpr arg : args) {
                boolean same = arg.getKind() == Kind.CALL && arg.call().function().equals(function);
                parts.addAll(same ? flat(function, arg.call().args()) : List.of(condition(arg)));
            }
            return parts;
        }

        private Condition compare(CelExpr expr, Op op, List<CelExpr> args) {
            if (op == null || args.size() != 2) {
                throw refuse(expr, "only && || ! and comparisons of a fact with one of its classes are allowed");
            }
            FactDef def = facts.get(name(args.get(0)));
            if (def == null) {
                throw refuse(args.get(0), "a fact belongs here, and '%s' is none%s".formatted(name(args.get(0)),
                    Nearest.hint(name(args.get(0)), facts.keySet())));
            }
            String className = name(args.get(1));
            List<String> own = def.classes().stream().map(ConditionReader::written).toList();
            if (!own.contains(className)) {
                String hint = Nearest.hint(className, own);
                throw refuse(args.get(1), "'%s' has no class '%s'%s".formatted(written(def.id()), className,
                    hint.isEmpty() ? "; its classes: " + String.join(", ", own) : hint));
            }
            int ordinal = own.indexOf(className);
            return new Compare(def.id(), op, def.classes().get(ordinal), ordinal);
        }

        private String name(CelExpr expr) {
            if (expr.getKind() != Kind.IDENT) {
                throw refuse(expr, "the name of a fact or class belongs here");
            }
            return expr.ident().name();
        }

        private Yaml.Refused refuse(CelExpr expr, String message) {
            complain(expr, message);
            return new Yaml.Refused(message);
        }

        private void complain(CelExpr expr, String message) {
            int width = expr.getKind() == Kind.IDENT ? expr.ident().name().length() : 1;
            yaml.complainInside(places.getOrDefault(expr.id(), 0), width, message);
        }

        private Set<String> all() {
            Set<String> all = new LinkedHashSet<>(facts.keySet());
            all.addAll(classes);
            return all;
        }
    }
}
