package bare;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.event.Observes;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.util.List;
import java.util.stream.IntStream;

/** One read by its key, one page of about the size of a page of questions. */
@Path("/")
public class BarePage {
    /** So many rows make some fifteen thousand bytes. */
    private static final List<Integer> ROWS = IntStream.rangeClosed(1, 80).boxed().toList();

    @CheckedTemplate(basePath = "", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record Page(Line line, List<Integer> rows) implements TemplateInstance {}

    @Transactional
    void open(@Observes StartupEvent begins) {
        Line line = new Line();
        line.words = "What was done to your hair";
        line.persist();
    }

    @GET
    public TemplateInstance page() {
        return new Page(Line.findById(1L), ROWS);
    }
}
