package foretress.assessment;

import foretress.questionnaire.Answer;
import foretress.questionnaire.Medicine;
import foretress.questionnaire.Medicine.Dose;
import foretress.questionnaire.Medicine.LastTaken;
import foretress.questionnaire.Medicine.Route;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * What the medicines mean. How much, by which way and when last taken may not be known; then the reading is the one that
 * hides a reaction. Nothing here ever suggests changing a medicine.
 */
final class MedicineFacts {
    /** Away from the places where skin tests are done: inside the elbow, behind the ear, the neck. */
    private static final Route AWAY = Route.SKIN_ELSEWHERE;
    private static final Set<Route> ON_SKIN = EnumSet.of(Route.SKIN, Route.SCALP, AWAY);
    private static final Set<Route> NOT_THROUGH_THE_BODY =
        EnumSet.of(Route.SKIN, Route.SCALP, AWAY, Route.INHALED, Route.EYE_NOSE);
    private static final Set<LastTaken> OVER_A_WEEK_AGO = EnumSet.of(LastTaken.MONTH, LastTaken.LONGER);
    private static final Set<Route> NOT_ON_SKIN =
        EnumSet.of(Route.INHALED, Route.EYE_NOSE, Route.MOUTH, Route.INJECTION);

    /** What a client who says "a low dose" has been told it means, in mg of prednisone a day. */
    private static final int LOW_DOSE_MG = 10;

    private final Asking asking;
    private final Lexicon lexicon;
    /** Classes that work where they are put on the skin, and not through the body. */
    private final List<String> putOnSkin;
    /** What the lexicon says is asked once a line: many facts look at the same medicines. */
    private final Map<Answer.Medicines, List<Taken>> single = new IdentityHashMap<>();

    /** One name of a line, with what the line says of it and the classes it stands in. */
    private record Taken(Medicine line, ReadAs read, Set<String> classes) {
        boolean isOneOf(Iterable<String> wanted) {
            for (String one : wanted) {
                if (classes.contains(one)) {
                    return true;
                }
            }
            return false;
        }

        boolean isOneOf(FactDef.Computation how) {
            return isOneOf(how.of()) || read.as().stream().anyMatch(how.medicines().names()::contains);
        }

        /** All it may have been read as is named there. */
        boolean isAmong(List<String> names) {
            return !read.as().isEmpty() && names.containsAll(read.as());
        }

        Route route() {
            return line.route();
        }

        Dose dose() {
            return line.dose();
        }

        LastTaken lastTaken() {
            return line.lastTaken();
        }
    }

    /** From the best to the worst class one medicine can mean. */
    private record Span(int best, int worst) {
        static final Span NONE = new Span(0, 0);

        static Span exactly(int ordinal) {
            return new Span(ordinal, ordinal);
        }

        Span heavier(Span other) {
            return new Span(Math.max(best, other.best), Math.max(worst, other.worst));
        }

        /** Last taken longer than a month ago: how long ago is not known, so it may count and may not. */
        Span ifLongAgo(Taken medicine) {
            return medicine.lastTaken() == LastTaken.LONGER ? new Span(0, worst) : this;
        }
    }

    MedicineFacts(Asking asking, Lexicon lexicon, List<String> putOnSkin) {
        this.asking = asking;
        this.lexicon = lexicon;
        this.putOnSkin = putOnSkin;
    }

    FactValue taken(FactDef def, FactDef.Computation how) {
        boolean longAgoCounts = how.pastMonths().map(months -> months.in(asking.policy()) > 1).orElse(true);
        Span longAgo = longAgoCounts ? new Span(0, 1) : Span.NONE;
        return value(def, medicine -> !medicine.isOneOf(how) || ointment(medicine, how) ? Span.NONE
            : medicine.lastTaken() == LastTaken.LONGER ? longAgo : Span.exactly(1));
    }

    /** Tacrolimus on the skin works there and not through the body: it counts among the creams, not here. */
    private boolean ointment(Taken medicine, FactDef.Computation how) {
        return ON_SKIN.contains(medicine.route()) && medicine.isOneOf(putOnSkin)
            && !medicine.isOneOf(putOnSkin.stream().filter(how.of()::contains).toList());
    }

    /**
     * A low dose is at most 10 mg of prednisone a day, or as much of another (Levian 2021); a policy may call less than that low. An
     * amount that was typed counts beside the band that was chosen, and the heavier of the two wins.
     */
    FactValue steroidTablets(FactDef def, FactDef.Computation how) {
        return value(def, medicine -> {
            boolean through = medicine.isOneOf(how.of())
                && !NOT_THROUGH_THE_BODY.contains(medicine.route());
            return through ? throughTheBody(medicine).ifLongAgo(medicine) : Span.NONE;
        });
    }

    private Span throughTheBody(Taken medicine) {
        var typed = new SteroidDose(medicine.line().name(), medicine.read().as());
        boolean low = medicine.dose() == Dose.LOW && asking.policy().figure("steroid-low-dose-mg") >= LOW_DOSE_MG;
        if (!low || typed.above(LOW_DOSE_MG)) {
            return Span.exactly(2);
        }
        return typed.within(LOW_DOSE_MG) ? Span.exactly(1) : new Span(1, 2);
    }

    /** A test site must have been free of it for seven days (instructions of patch-test clinics). */
    FactValue skinSteroid(FactDef def, FactDef.Computation how) {
        return value(def, medicine -> {
            boolean cream = medicine.isOneOf(how.of()) && !NOT_ON_SKIN.contains(medicine.route());
            boolean onSkin = medicine.isOneOf(how.medicines().alsoOnSkin()) && ON_SKIN.contains(medicine.route());
            return cream || onSkin
                ? Span.exactly(OVER_A_WEEK_AGO.contains(medicine.lastTaken()) || medicine.route() == AWAY ? 1 : 2)
                : Span.NONE;
        });
    }

    /** Some of these are also taken, in small amounts, for other illnesses: then it may be chemotherapy and may not. */
    FactValue chemotherapy(FactDef def, FactDef.Computation how) {
        return value(def, medicine -> {
            if (!medicine.isOneOf(how.of()) || rubbedIn(medicine, how)) {
                return Span.NONE;
            }
            Span span = switch (medicine.lastTaken()) {
                case MONTH -> Span.exactly(2);
                case LONGER -> new Span(1, 2);
                case NOW, WEEK, DONT_KNOW, NOT_ASKED -> Span.exactly(3);
            };
            return medicine.classes().size() > 1 || medicine.isAmong(how.medicines().lighter())
                ? new Span(0, span.worst()) : span;
        });
    }

    /** A cream against rough patches of skin, used where it is put. */
    private static boolean rubbedIn(Taken medicine, FactDef.Computation how) {
        return ON_SKIN.contains(medicine.route()) && medicine.isOneOf(how.medicines().notOnSkin());
    }

    /**
     * Most of these may hide a reaction. Of those that rows name as {@code lighter} nobody has shown it, and nobody the contrary. A line
     * that may be either counts as the heavier.
     */
    FactValue immune(FactDef def, FactDef.Computation how) {
        return value(def, medicine -> {
            if (!medicine.isOneOf(how.of()) || ointment(medicine, how)) {
                return Span.NONE;
            }
            return Span.exactly(medicine.isAmong(how.medicines().lighter()) ? 1 : 2).ifLongAgo(medicine);
        });
    }

    /** On the skin it makes that skin tender; on the scalp, by mouth or who knows how it counts in full. */
    FactValue retinoid(FactDef def, FactDef.Computation how) {
        boolean longAgoCounts = how.pastMonths().map(months -> months.in(asking.policy()) > 1).orElse(true);
        return value(def, medicine -> {
            boolean skin = medicine.route() == Route.SKIN || medicine.route() == AWAY;
            boolean longAgo = medicine.lastTaken() == LastTaken.LONGER;
            if (!medicine.isOneOf(how.of()) || longAgo && (skin || !longAgoCounts)) {
                return Span.NONE;
            }
            return skin ? Span.exactly(1) : longAgo ? new Span(0, 2) : Span.exactly(2);
        });
    }

    /** By mouth, as a jab, in the eyes or breathed in it is no scalp treatment; "on the skin" may be the scalp and may not. */
    FactValue onScalp(FactDef def, FactDef.Computation how) {
        return value(def, medicine -> {
            if (!medicine.isOneOf(how.of()) || NOT_ON_SKIN.contains(medicine.route())) {
                return Span.NONE;
            }
            boolean somewhere = medicine.route() == Route.SKIN || medicine.route() == AWAY;
            return (somewhere ? new Span(0, 1) : Span.exactly(1)).ifLongAgo(medicine);
        });
    }

    /**
     * Names that no lexicon knows and somebody has looked up: all of them, or those that count as what is looked for. Where no name
     * was given none was looked up, which is known; what the client may take is for the other facts.
     */
    FactValue lookedUp(FactDef def, FactDef.Computation how) {
        FactValue found = value(def, medicine -> how.of().isEmpty() && medicine.read().lookedUp().isPresent()
            || medicine.isOneOf(how.of()) ? Span.exactly(1) : Span.NONE);
        return found.isKnown() ? found : FactValue.known(def, 0, List.of());
    }

    /** The class of medicine by which a looked-up name counts towards a fact; none where no medicine makes that fact. */
    static Optional<String> classOf(FactDef def) {
        return def.computation().filter(how -> ofMedicines(how.as())).map(how -> how.of().get(0));
    }

    private static boolean ofMedicines(ComputedAs as) {
        return switch (as) {
            case MEDICINE, IMMUNE_MEDICINE, SCALP_MEDICINE, RETINOID, STEROID_TABLETS, SKIN_STEROID, CHEMOTHERAPY ->
                true;
            default -> false;
        };
    }

    /** Asked of the whole line, for what is said around a name ("stopped", "not on") is something to ask about too. */
    FactValue notRecognised(FactDef def) {
        return value(def, Answer.Medicines::list, line -> line(line).sure() ? Span.NONE : Span.exactly(1),
            line -> line(line).names().stream().map(Lexicon.Named::read).toList());
    }

    private Lexicon.Line line(Medicine medicine) {
        return lexicon.line(medicine.name());
    }

    private FactValue value(FactDef def, Function<Taken, Span> meaning) {
        return value(def, medicines -> single.computeIfAbsent(medicines, this::oneByOne), meaning,
            medicine -> List.of(medicine.read()));
    }

    private <T> FactValue value(FactDef def, Function<Answer.Medicines, List<T>> parts, Function<T, Span> meaning,
        Function<T, List<ReadAs>> words) {
        List<Question> questions = asking.ofKind(Kind.MEDICINES);
        FactValue value = FactValue.known(def, 0, List.of());
        for (Question question : questions) {
            value = value.heavier(asking.closed(question) ? FactValue.known(def, 0, List.of())
                : said(def, question, parts, meaning, words));
        }
        return value;
    }

    private <T> FactValue said(FactDef def, Question question, Function<Answer.Medicines, List<T>> parts,
        Function<T, Span> meaning,
        Function<T, List<ReadAs>> words) {
        Optional<Answer> answer = asking.answer(question);
        List<String> cause = List.of(question.id());
        if (answer.isPresent() && answer.get() instanceof Answer.Medicines medicines) {
            List<T> list = parts.apply(medicines);
            List<Span> spans = list.stream().map(meaning).toList();
            Span span = Span.NONE;
            for (Span one : spans) {
                span = span.heavier(one);
            }
            Set<ReadAs> read = new LinkedHashSet<>();
            for (int i = 0; i < list.size() && span.worst() > 0; i++) {
                if (spans.get(i).worst() == span.worst()) {
                    read.addAll(words.apply(list.get(i)));
                }
            }
            return FactValue.between(def, span.best(), span.worst(), cause).reading(List.copyOf(read));
        }
        return asking.silent(def, question);
    }

    private List<Taken> oneByOne(Answer.Medicines medicines) {
        List<Taken> all = new ArrayList<>();
        for (Medicine medicine : medicines.list()) {
            line(medicine).names().forEach(name -> all.add(new Taken(medicine, name.read(), name.classes())));
        }
        return all;
    }
}
