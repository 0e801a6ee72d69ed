package foretress.knowledge;

import java.util.List;
import java.util.stream.Collectors;

/** The knowledge cannot be used; it says everything that is wrong with it. */
public class KnowledgeException extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient List<Complaint> complaints;

    public KnowledgeException(List<Complaint> complaints) {
        super(complaints.stream().map(Complaint::toString)
            .collect(Collectors.joining("\n", "the knowledge cannot be used:\n", "")));
        this.complaints = List.copyOf(complaints);
    }

    public List<Complaint> complaints() {
        return complaints;
    }
}
