package foretress.lexicon;

import java.util.Set;
import java.util.TreeSet;

/** How much of what is there was found, and how much of what was found is there. */
record Score(int there, int found, int right) {
    static final Score NONE = new Score(0, 0, 0);

    static Score of(Set<String> there, Set<String> found) {
        Set<String> right = new TreeSet<>(found);
        right.retainAll(there);
        return new Score(there.size(), found.size(), right.size());
    }

    Score plus(Score other) {
        return new Score(there + other.there, found + other.found, right + other.right);
    }

    double recall() {
        return there == 0 ? 1 : (double) right / there;
    }

    double precision() {
        return found == 0 ? 1 : (double) right / found;
    }
}
