package foretress.assessment;

import foretress.questionnaire.Answer;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What one client's answers say to a look for codes, in three values. A question answered with a listed code holds; answered
 * otherwise, or closed by an earlier answer that is known, it does not. Not known, not answered, not put, or closed by an
 * answer that is itself not known: unknown.
 */
final class Asking {
    private final Situation situation;
    private final Map<String, Asked> asked = new HashMap<>();

    Asking(Situation situation) {
        this.situation = situation;
    }

    /** One question as it stands for this client; what is looked at again and again is found once. */
    final class Asked {
        private final Question question;
        private final Optional<Answer> answer;
        private final List<String> codes;
        private final boolean unknown;
        private final Truth opened;
        private final Truth openedIfWell;
        private final boolean put;

        Asked(Question question) {
            this.question = question;
            this.answer = situation.answers().to(question.id());
            this.codes = answer.map(Answer::codes).orElse(List.of());
            this.unknown = answer.filter(Answer::unknown).isPresent();
            this.opened = opened(false);
            this.openedIfWell = opened(true);
            this.put = forSome(question) && (allPut(question.when())
                || question.orWhen().keySet().stream().anyMatch(opener -> asked(opener).put));
        }

        /** What is no longer put and was not answered is told of by other questions: it reads as closed. */
        private Truth opened(boolean notPutIsWell) {
            if (question.retired() && answer.isEmpty()) {
                return Truth.FALSE;
            }
            Truth opened = holds(question.when(), notPutIsWell);
            for (Map.Entry<String, List<String>> other : question.orWhen().entrySet()) {
                opened = opened.or(holds(Map.of(other.getKey(), other.getValue()), notPutIsWell));
            }
            return opened;
        }

        String id() {
            return question.id();
        }

        /** Closed by an earlier answer that is known: it reads as its best class. */
        private boolean closed() {
            return opened == Truth.FALSE;
        }

        /** Neither answered nor closed. */
        private boolean open() {
            return answer.isEmpty() && !closed();
        }

        /** Answered, or still to be. */
        boolean shown() {
            return answer.isPresent() || put && !closed();
        }

        private boolean allPut(Map<String, List<String>> openings) {
            return openings.keySet().stream().allMatch(opener -> asked(opener).put);
        }

        private boolean forSome(Question question) {
            return question.askedFor().isEmpty()
                || question.askedFor().stream().anyMatch(situation.bookedChemistries()::contains);
        }

        Truth says(List<String> wanted, int atLeast, boolean notPutIsWell) {
            Truth open = notPutIsWell ? openedIfWell : opened;
            if (open == Truth.FALSE) {
                return Truth.FALSE;
            }
            if (answer.isEmpty()) {
                return notPutIsWell && !put ? Truth.FALSE : Truth.UNKNOWN;
            }
            return open.and(matches(wanted, atLeast));
        }

        private Truth matches(List<String> wanted, int atLeast) {
            int found = 0;
            for (String code : codes) {
                found += wanted.contains(code) ? 1 : 0;
            }
            if (found >= (unknown ? 1 : atLeast)) {
                return Truth.TRUE;
            }
            return unknown ? Truth.UNKNOWN : Truth.FALSE;
        }
    }

    Asked asked(String id) {
        Asked known = asked.get(id);
        if (known == null) {
            known = new Asked(question(id));
            asked.put(id, known);
        }
        return known;
    }

    /** Whether every question has one of its codes; questions not put because of the booking may be taken as answered well. */
    Truth holds(Map<String, List<String>> when, boolean notPutIsWell) {
        return holds(when, 1, notPutIsWell);
    }

    /** The same, with at least so many of each question's codes chosen. */
    Truth holds(Map<String, List<String>> when, int atLeast, boolean notPutIsWell) {
        Truth truth = Truth.TRUE;
        for (Map.Entry<String, List<String>> entry : when.entrySet()) {
            truth = truth.and(asked(entry.getKey()).says(entry.getValue(), atLeast, notPutIsWell));
            if (truth == Truth.FALSE) {
                return truth;
            }
        }
        return truth;
    }

    List<Asked> asked(Collection<String> ids) {
        List<Asked> all = new ArrayList<>(ids.size());
        for (String id : ids) {
            all.add(asked(id));
        }
        return all;
    }

    /** Closed by an earlier answer that is known: it reads as its best class. */
    boolean closed(Question question) {
        return asked(question.id()).closed();
    }

    /** Whether the booked service has the question put, its openers included. */
    boolean put(Question question) {
        return asked(question.id()).put;
    }

    /** Those of the questions that were not put and are still open. */
    List<NotAsked> notAsked(List<Asked> questions) {
        List<NotAsked> notAsked = List.of();
        for (Asked one : questions) {
            if (one.open() && !one.put) {
                notAsked = with(notAsked, new NotAsked(one.id(), needs(one.question)));
            }
        }
        return notAsked;
    }

    /** Those of the questions that were put, are required and have no answer. */
    List<String> unanswered(List<Asked> questions) {
        List<String> unanswered = List.of();
        for (Asked one : questions) {
            if (one.question.required() && one.open() && one.put) {
                unanswered = with(unanswered, one.id());
            }
        }
        return unanswered;
    }

    private static <T> List<T> with(List<T> some, T one) {
        List<T> more = new ArrayList<>(some);
        more.add(one);
        return more;
    }

    /** The whole range of a fact that hangs on a question nobody answered, or answered with not knowing. */
    FactValue silent(FactDef def, Question question) {
        Asked here = asked(question.id());
        boolean notPut = here.answer.isEmpty() && !here.put;
        return new FactValue(def.id(), def.classes(), 0, def.worst(), notPut ? 0 : def.worst(), List.of(question.id()),
            notAsked(List.of(here)), unanswered(List.of(here)), List.of(), Optional.empty());
    }

    Policy policy() {
        return situation.policy();
    }

    Optional<Answer> answer(Question question) {
        return asked(question.id()).answer;
    }

    Question question(String id) {
        return situation.questionnaire().question(id)
            .orElseThrow(() -> new IllegalArgumentException("no question is called " + id));
    }

    List<Question> ofKind(Kind kind) {
        return situation.questionnaire().ofKind(kind);
    }

    private List<Set<String>> needs(Question question) {
        List<Set<String>> needs = new ArrayList<>();
        if (!question.askedFor().isEmpty()) {
            needs.add(question.askedFor());
        }
        question.when().keySet().forEach(opener -> needs.addAll(needs(question(opener))));
        return needs;
    }
}
