package foretress.knowledge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers everything that is wrong, so that one look mends it all. */
final class Complaints {
    private final List<Complaint> all = new ArrayList<>();

    void add(Complaint complaint) {
        if (!all.contains(complaint)) {
            all.add(complaint);
        }
    }

    List<Complaint> all() {
        return all.stream()
            .sorted(
                Comparator.comparing(Complaint::file).thenComparing(Complaint::line).thenComparing(Complaint::column))
            .toList();
    }

    void orThrow() {
        if (!all.isEmpty()) {
            throw new KnowledgeException(all());
        }
    }
}
