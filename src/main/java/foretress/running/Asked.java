package foretress.running;

import io.quarkus.arc.Arc;
import io.quarkus.arc.ManagedContext;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.WeakHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.hibernate.engine.spi.SessionImplementor;

/**
 * What one HTTP request has asked already, so that it asks once. Forgotten whenever the request writes or locks anything; what was read in
 * one session is told in that one only. Elsewhere, as in what is done by the clock, everything is asked every time.
 */
@RequestScoped
public class Asked {
    private final Map<Object, Map<Object, Object>> bySession = new WeakHashMap<>();
    private final Map<Object, Object> reckoned = new HashMap<>();
    private boolean remembers;

    @Inject EntityManager store;

    /** Something reckoned, or why it cannot be. */
    @FunctionalInterface
    public interface Reckoning<T, E extends Exception> {
        T reckon() throws E;
    }

    /** Here begins an HTTP request. */
    void begin() {
        remembers = true;
    }

    /**
     * What the store says; the same objects as long as nothing is written. A condition on what changes in memory before it is written
     * belongs behind this, as a filter: objects that are remembered no longer meet it. What a unique column parts is asked without it: only a
     * question to the store has the old row written before the new one.
     *
     * @param what names the question, with all that is asked for
     */
    public static <T> T once(Object what, Supplier<T> ask) {
        Asked here = here();
        return here == null ? ask.get() : here.asked(what, ask);
    }

    /**
     * The answers to many questions that were asked in one: whoever asks one of them in this request is told its part.
     *
     * @param all of what it was asked
     * @param question names the question about one of them, as {@link #once} does
     * @param about which of them an answer is about
     */
    public static <K, T> void together(Collection<K> all, Function<K, Object> question, Function<T, K> about,
        Function<Collection<K>, List<T>> ask) {
        Asked here = here();
        if (here != null && !all.isEmpty()) {
            Map<K, List<T>> parts = ask.apply(all).stream().collect(Collectors.groupingBy(about));
            Map<Object, Object> known = here.ofSession();
            all.forEach(one -> known.put(question.apply(one), parts.getOrDefault(one, List.of())));
        }
    }

    /** What the store would say now, known to whoever has just written it there. */
    public static void known(Object what, Object answer) {
        Asked here = here();
        if (here != null) {
            here.ofSession().put(what, answer);
        }
    }

    /**
     * What is reckoned from nothing but these values; nothing that is written makes it another.
     *
     * @param from what is reckoned, and from which values that never change
     */
    @SuppressWarnings("unchecked")
    public static <T, E extends Exception> T reckoned(Object from, Reckoning<T, E> sum) throws E {
        Asked here = here();
        if (here == null) {
            return sum.reckon();
        }
        Object before = here.reckoned.get(from);
        if (before != null) {
            return (T) before;
        }
        T answer = sum.reckon();
        here.reckoned.put(from, answer);
        return answer;
    }

    /** Asking writes what waits to be written, and so empties the memory; the answer is of what was written then. */
    @SuppressWarnings("unchecked")
    private <T> T asked(Object what, Supplier<T> ask) {
        Object before = ofSession().get(what);
        if (before != null) {
            return (T) before;
        }
        T answer = ask.get();
        ofSession().put(what, answer);
        return answer;
    }

    /** What waits to be written would be found by a question to the store. */
    private Map<Object, Object> ofSession() {
        SessionImplementor session = store.unwrap(SessionImplementor.class);
        if (session.getActionQueue().areInsertionsOrDeletionsQueued()) {
            bySession.clear();
        }
        return bySession.computeIfAbsent(session, any -> new HashMap<>());
    }

    /** Whether what is asked here is remembered. */
    public static boolean isRemembered() {
        return here() != null;
    }

    /** The store is no longer what was read. */
    public static void forget() {
        Asked here = here();
        if (here != null) {
            here.bySession.clear();
        }
    }

    private static Asked here() {
        ManagedContext request = Arc.container() == null ? null : Arc.container().requestContext();
        if (request == null || !request.isActive()) {
            return null;
        }
        Asked here = Arc.container().instance(Asked.class).get();
        return here.remembers() ? here.itself() : null;
    }

    boolean remembers() {
        return remembers;
    }

    /** Not the proxy that stands for the one of this request. */
    Asked itself() {
        return this;
    }
}
