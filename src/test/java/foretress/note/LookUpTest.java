package foretress.note;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.assessment.Weight;
import foretress.intake.Assessments;
import foretress.intake.Intake;
import foretress.intake.Knocking;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Medicine;
import foretress.questionnaire.Topic;
import foretress.salon.OpenSalon;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
@DisplayName("R36: a medicine's name that no list knows is looked up once, for every client, by a person with a source")
class LookUpTest {
    private static final LocalDate BORN = LocalDate.of(1965, 3, 4);
    private static final String PERM = "perm-alkaline";

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject Assessments assessments;
    @Inject Intake intake;
    @Inject LookUps lookUps;
    @Inject Clock clock;
    UUID visit;

    @BeforeEach
    void open() {
        salon.open();
    }

    private UUID takes(String name) {
        visit = make.visit(BORN);
        knocking.come(visit, Map.of()).agree().all().readBack().sign("Ottilie Brandt");
        QuarkusTransaction.requiringNew().run(() -> {
            Visit one = Visit.findById(visit);
            Topic topic = intake.topics(one, intake.said(one)).stream()
                .filter(t -> t.questions().stream().anyMatch(q -> q.id().equals("medicines"))).findFirst()
                .orElseThrow();
            intake.record(visit, topic, intake.said(one).with("medicines",
                new Answer.Medicines(List.of(new Medicine(name, Medicine.NOT_ASKED, "mouth", "now")))), "en");
        });
        return visit;
    }

    private List<String> found(UUID visit) {
        return QuarkusTransaction.requiringNew().call(() -> {
            Visit one = Visit.findById(visit);
            return assessments.of(one, intake.said(one)).findings().stream().map(f -> f.ruleId()).toList();
        });
    }

    private Weight standing(UUID visit, String service) {
        return QuarkusTransaction.requiringNew().call(() -> {
            Visit one = Visit.findById(visit);
            return assessments.of(one, intake.said(one)).standing(service).orElseThrow().weight();
        });
    }

    private Walker lookUp(String name, String means) {
        return salon.as("petra").open("/visits/" + visit + "/look-up").expect(200).send("form.form",
            Map.of("name", name, "means", means, "source", "Leaflet in the packet, part 6"));
    }

    private static String theirs(Walker walker, String name) {
        return walker.page().select("section.tail:has(h2:contains(" + name + "))").text();
    }

    @Test
    void oneLookUpSpeaksForEveryClientNamesWhoSaidSoAndCanBeTakenBack() {
        UUID other = takes("Quorvalex 20 mg");
        UUID first = takes("quorvalex");
        assertThat(found(first)).contains("medicine-not-recognised").doesNotContain("medicine-looked-up");
        Walker petra = salon.as("petra").open("/visits/" + first);
        assertThat(petra.page().select("a[href=/visits/" + first + "/look-up]").text()).contains("Look this name up");
        petra.open("/visits/" + first + "/look-up").expect(200);
        assertThat(petra.only("input[name=name][checked]").val()).isEqualTo("quorvalex");
        Walker after = lookUp("quorvalex", "no-difference").expect(200);
        assertThat(after.at()).isEqualTo("/visits/" + first);
        assertThat(after.text()).contains("“quorvalex” was looked up by", "in “Leaflet in the packet, part 6”",
            "makes no difference");
        for (UUID client : List.of(first, other)) {
            assertThat(found(client)).contains("medicine-looked-up").doesNotContain("medicine-not-recognised");
            assertThat(standing(client, PERM)).as("never nothing found").isEqualTo(Weight.NOTE);
        }
        Walker list = salon.as("petra").open("/look-ups").expect(200);
        String form = "section.tail:has(h2:contains(quorvalex)) form";
        list.send(form, Map.of("why", "")).expect(422);
        assertThat(list.only(".mistakes li").text()).contains("why it is taken back");
        list.send(form, Map.of("why", "Another product of that name")).expect(200);
        assertThat(theirs(list, "quorvalex")).contains("Taken back: Another product of that name",
            "Leaflet in the packet");
        assertThat(list.page().select(form)).as("it is taken back once").isEmpty();
        for (UUID client : List.of(first, other)) {
            assertThat(found(client)).contains("medicine-not-recognised").doesNotContain("medicine-looked-up");
        }
    }

    @Test
    void whereADoctorIsToBeAskedTheWordIsWrittenDownAndOpensIt() {
        takes("Belquorin");
        lookUp("Belquorin", "ask-a-doctor").expect(200);
        assertThat(found(visit)).contains("medicine-asks-a-doctor");
        assertThat(standing(visit, PERM)).isEqualTo(Weight.TEST_FIRST);
        Walker noted = salon.as("petra").open("/visits/" + visit + "/noted");
        assertThat(noted.text()).contains("asks for a doctor’s word");
        noted.open("/visits/" + visit + "/noted/word").send("form.form",
            Map.of("about", "medicine-to-ask", "outcome", "with-care", "who", "doctor", "by", "Practice Invented",
                "way", "phone", "says", "The perm of this visit", "said",
                LocalDate.ofInstant(clock.instant(), ZoneId.of("UTC")).toString()))
            .expect(200);
        assertThat(standing(visit, PERM)).isEqualTo(Weight.RESTRICTS);
    }

    @ParameterizedTest
    @CsvSource({ "methotrexate, read this as methotrexate", "methotrexte, read this as methotrexate",
        "Quorvine and Zemplin, one name alone", "stopped Zemplin, one name alone", "20 mg, one name alone",
        "'', put in the name" })
    void aNameTheListsKnowOrMayKnowAndWhatIsNoNameAreRefused(String name, String said) {
        Walker edda = salon.as("edda").open("/look-ups").expect(200).send("#add",
            Map.of("name", name, "means", "no-difference", "source", "A pharmacist"));
        edda.expect(422);
        assertThat(edda.only(".mistakes li").text()).contains(said);
        assertThat(edda.only("#add #name").val()).isEqualTo(name);
        assertThat(edda.only("#add #source").val()).isEqualTo("A pharmacist");
        assertThat(edda.only("#add input[name=means][checked]").val()).isEqualTo("no-difference");
    }

    @Test
    void withoutAMeaningOrASourceNothingIsKeptAndAClassNeedsItsKind() {
        Walker edda = salon.as("edda").open("/look-ups");
        assertThat(edda.send("#add", Map.of("name", "Vexilorin")).expect(422).page().select(".mistakes li")).hasSize(2);
        Map<String, String> one =
            new HashMap<>(Map.of("name", "Vexilorin", "means", "class", "source", "A pharmacist"));
        assertThat(edda.send("#add", one).expect(422).only(".mistakes li a").attr("href")).isEqualTo("#towards");
        one.put("towards", "blood-thinner");
        assertThat(theirs(edda.send("#add", one).expect(200), "Vexilorin")).contains("Blood thinner");
    }

    @Test
    void theSameNameIsLookedUpOnceAndADoubleTapMakesOne() {
        Walker edda = salon.as("edda").open("/look-ups");
        List<Map.Entry<String, String>> fields = new ArrayList<>(edda.fields("#add").stream()
            .filter(f -> !List.of("name", "means", "source", "towards").contains(f.getKey())).toList());
        fields.add(Map.entry("name", "Tarnolix"));
        fields.add(Map.entry("means", "no-medicine"));
        fields.add(Map.entry("towards", ""));
        fields.add(Map.entry("source", "The packet"));
        edda.post("/look-ups", fields);
        edda.post("/look-ups", fields);
        assertThat(QuarkusTransaction.requiringNew().call(() -> lookUps.all().stream().map(lookUps::body)
            .filter(body -> body.name().equals("Tarnolix")).toList())).hasSize(1);
        Walker again = salon.as("edda").open("/look-ups").send("#add",
            Map.of("name", "TARNOLIX", "means", "no-difference", "source", "The packet"));
        assertThat(again.expect(422).only(".mistakes li").text()).contains("looked up already");
    }

    @Test
    void whoeverHasOnlyTheDatabaseReadsNoName() {
        salon.as("edda").open("/look-ups").send("#add",
            Map.of("name", "Ombrevane", "means", "no-difference", "source", "The packet")).expect(200);
        List<?> rows = QuarkusTransaction.requiringNew().call(() -> Visit.getEntityManager()
            .createNativeQuery("select body from look_up").getResultList());
        assertThat(rows).isNotEmpty().allSatisfy(
            row -> assertThat(row.toString()).doesNotContainIgnoringCase("ombrevane").doesNotContain("packet"));
    }

    @Test
    void onlyWhoLookedItUpOrTheOwnerTakesItBack() {
        salon.as("edda").open("/look-ups").send("#add",
            Map.of("name", "Cindrolate", "means", "no-difference", "source", "The packet")).expect(200);
        Walker petra = salon.as("petra").open("/look-ups").expect(200);
        assertThat(theirs(petra, "Cindrolate")).doesNotContain("Take it back");
    }
}
