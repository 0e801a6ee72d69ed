package foretress.assessment;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * A lexicon that keeps what it read lately: one page asks for the same lines and labels dozens of times, and a damaged label takes
 * milliseconds. What it keeps may tell of somebody's health: no more than {@value #LINES} lines and {@value #LABELS} labels, in memory
 * alone, until as many others were read or {@link #forget} is called.
 */
public final class RecentReadings implements Lexicon {
    private static final int LINES = 128;
    private static final int LABELS = 32;

    private final Lexicon from;
    private final Map<String, Line> lines = newest(LINES);
    private final Map<String, Label> labels;
    private volatile LookingUp latest;

    /** The same lexicon with looked-up names, and what it read with these. */
    private record LookingUp(List<LookedUp> names, RecentReadings readings) {}

    public RecentReadings(Lexicon from) {
        this(from, newest(LABELS));
    }

    private RecentReadings(Lexicon from, Map<String, Label> labels) {
        this.from = from;
        this.labels = labels;
        this.latest = new LookingUp(List.of(), this);
    }

    private static <T> Map<String, T> newest(int most) {
        return Collections.synchronizedMap(new LinkedHashMap<>(2 * most, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<String, T> eldest) {
                return size() > most;
            }
        });
    }

    /** Keeps nothing of what was read until now. */
    public void forget() {
        lines.clear();
        labels.clear();
        latest = new LookingUp(List.of(), this);
    }

    @Override
    public Line line(String typed) {
        return read(lines, typed, from::line);
    }

    @Override
    public Label label(String text) {
        return read(labels, text, from::label);
    }

    /** Read outside the lock: two who come at once both read, and read the same. */
    private static <T> T read(Map<String, T> kept, String text, Function<String, T> reader) {
        T known = kept.get(text);
        if (known == null) {
            known = reader.apply(text);
            kept.put(text, known);
        }
        return known;
    }

    /** Other names looked up, and all lines are read anew; a label is read without them. */
    @Override
    public Lexicon with(List<LookedUp> lookedUp) {
        LookingUp known = lookedUp.isEmpty() ? new LookingUp(lookedUp, this) : latest;
        if (!known.names().equals(lookedUp)) {
            known = new LookingUp(List.copyOf(lookedUp), new RecentReadings(from.with(lookedUp), labels));
            latest = known;
        }
        return known.readings();
    }

    @Override
    public List<String> names(String typed) {
        return from.names(typed);
    }

    @Override
    public boolean isSure(String typed) {
        return from.isSure(typed);
    }

    @Override
    public Set<String> medicine(String typed) {
        return from.medicine(typed);
    }
}
