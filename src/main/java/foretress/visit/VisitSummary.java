package foretress.visit;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** What came of a visit's answers and is shown in lists: sealed as one text, so that from outside none can be told from another. */
record VisitSummary(Optional<String> standing, Optional<Visit.Owed> owed) {
    static final VisitSummary NOTHING = new VisitSummary(Optional.empty(), Optional.empty());

    VisitSummary standing(String code) {
        return new VisitSummary(Optional.of(code), owed);
    }

    VisitSummary owing(Optional<Visit.Owed> now) {
        return new VisitSummary(standing, now);
    }

    /** Three lines: the standing, what is owed, the latest instant for it; each may be empty. */
    String write() {
        return String.join("\n", standing.orElse(""), owed.map(Visit.Owed::what).orElse(""),
            owed.flatMap(Visit.Owed::by).map(Instant::toString).orElse(""));
    }

    static VisitSummary read(String written) {
        List<String> lines = List.of(written.split("\n", -1));
        Optional<Instant> by = given(lines.get(2)).map(Instant::parse);
        return new VisitSummary(given(lines.get(0)), given(lines.get(1)).map(what -> new Visit.Owed(what, by)));
    }

    private static Optional<String> given(String line) {
        return Optional.of(line).filter(some -> !some.isEmpty());
    }
}
