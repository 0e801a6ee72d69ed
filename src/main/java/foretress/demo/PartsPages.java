package foretress.demo;

import foretress.assessment.Weight;
import foretress.closing.ClosingForm.Cell;
import foretress.closing.ClosingView.Ask;
import foretress.closing.ClosingView.Option;
import foretress.intake.ClientLanguage;
import foretress.web.ClientWords;
import foretress.web.Mistake;
import io.quarkus.arc.profile.IfBuildProfile;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.util.Arrays;
import java.util.List;

/** Every part that pages are made of, each in its states, for whoever changes one. In development and in the tests only. */
@IfBuildProfile(anyOf = { "dev", "test" })
@Path("/parts")
public class PartsPages {
    private static final String CLIENT = "Ottilie Brandt";
    private static final String SAID = "3024";
    private static final int AT = 3;
    private static final int OF = 8;
    private static final List<String> ZONES = List.of("whole", "regrowth", "lengths-ends", "ends", "strands");

    @CheckedTemplate(basePath = "demo", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record PartsClient(int at, int of, String client, String said, String where, List<String> zones,
        List<String> statements,
        List<Mistake> mistakes) implements TemplateInstance {}

    @CheckedTemplate(basePath = "demo", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record PartsStaff(double share, String client, String said, List<Weight> weights, Weight heaviest, String word,
        Ask question,
        List<Cell> cells) implements TemplateInstance {}

    private final ClientLanguage speech;

    PartsPages(ClientLanguage speech) {
        this.speech = speech;
    }

    /** What a client's pages are made of. */
    @GET
    public TemplateInstance client() {
        ClientWords say = speech.say();
        return new PartsClient(AT, OF, CLIENT, SAID, say.topic_step(AT, OF), ZONES,
            List.of(say.door_unsure_text(), say.birth_lead(), say.sign_agree_all()),
            List.of(new Mistake("wrong", say.birth_ahead()), new Mistake("wrong-one", say.mistake_required_when())));
    }

    /** What the staff's pages are made of. */
    @GET
    @Path("/chair")
    public TemplateInstance staff() {
        Weight heaviest = Weight.TEST_FIRST;
        return new PartsStaff(0.48, CLIENT, SAID, Arrays.asList(Weight.values()), heaviest, heaviest.code(),
            asked("asked"),
            List.of(cell("as-planned", "30", false), cell("other", "40", true)));
    }

    private Ask asked(String name) {
        ClientWords say = speech.say();
        return new Ask(name, say.treatments_by(), say.door_unsure_text(),
            List.of(new Option("yes", say.list_yes(), true), new Option("no", say.list_no(), false)));
    }

    private Cell cell(String name, String value, boolean differs) {
        return new Cell(name, speech.say().length_number(), value, "g", differs ? "ratio" : "amount",
            differs ? "30 g" : "", differs, true);
    }
}
