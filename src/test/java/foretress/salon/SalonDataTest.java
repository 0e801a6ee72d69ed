package foretress.salon;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.knowledge.Knowledge;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
@DisplayName("The owner's product lines, services and policy")
class SalonDataTest {
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject ProductLines lines;
    @Inject Policies policies;
    @Inject Menu menu;
    @Inject Knowledge knowledge;

    @BeforeEach
    void open() {
        salon.open();
    }

    @AfterEach
    void asItWas() {
        QuarkusTransaction.requiringNew().run(() -> {
            StricterFigure.deleteAll();
            MenuName.deleteAll();
            // what another test has booked stays on the menu, as it would in a salon
            MenuItem.delete("serviceId not in (select b.serviceId from BookedService b)");
        });
    }

    private static Map<String, String> leaflet(String name) {
        return new HashMap<>(Map.of("line-name", name, "kind", "oxidative-dye", "mixing", "MIXED", "site", "BEHIND_EAR",
            "leave-on", "45",
            "wait-hours", "48", "validity", "MONTHS", "validity-count", "3", "para-group", "YES", "shades",
            "2-0\n4-0"));
    }

    private ProductLine only(String name) {
        return QuarkusTransaction.requiringNew()
            .call(() -> lines.all().stream().filter(line -> line.name.equals(name)).findFirst().orElseThrow());
    }

    @Test
    void aLineIsAddedWithWhatItsLeafletAsks() {
        salon.as("edda").open("/products").send("#add", leaflet("Larkmoss")).expect(200);
        ProductLine line = only("Larkmoss");
        assertThat(line.leaflet().waitHours()).isEqualTo(48);
        assertThat(line.leaflet().validity().lastDay(LocalDate.of(2026, 1, 31))).contains(LocalDate.of(2026, 4, 30));
        assertThat(line.shades()).containsExactly("2-0", "4-0");
    }

    @Test
    void aLeafletLeftHalfBlankIsAskedForAgainAndNothingTypedIsLost() {
        Walker edda = salon.as("edda").open("/products")
            .send("#add", Map.of("line-name", "Rushlight", "wait-hours", "two days")).expect(422);
        assertThat(edda.page().select(".mistakes li").eachText()).hasSizeGreaterThan(5);
        assertThat(edda.page().selectFirst("[name=line-name]").val()).isEqualTo("Rushlight");
        assertThat(edda.page().selectFirst("[name=wait-hours]").val()).isEqualTo("two days");
    }

    @Test
    void aChangeIsANewVersionAndTheOldOneStaysReadable() {
        salon.as("edda").open("/products").send("#add", leaflet("Fernroot"));
        ProductLine first = only("Fernroot");
        salon.as("edda").open("/products/" + first.lineId).send("#change", Map.of("wait-hours", "72")).expect(200);
        List<ProductLine> versions = QuarkusTransaction.requiringNew().call(() -> lines.versions(first.lineId));
        assertThat(versions).extracting(line -> line.waitHours).containsExactly(72, 48);
        assertThat(QuarkusTransaction.requiringNew().call(() -> lines.version(first.id).orElseThrow().waitHours))
            .isEqualTo(48);
    }

    @Test
    void whoChangesALineThatSomebodyElseChangedIsTold() {
        salon.as("edda").open("/products").send("#add", leaflet("Sorrel"));
        UUID line = only("Sorrel").lineId;
        Walker slow = salon.as("edda").open("/products/" + line);
        salon.as("edda").open("/products/" + line).send("#change", Map.of("wait-hours", "72"));
        slow.send("#change", Map.of("wait-hours", "24")).expect(422);
        assertThat(only("Sorrel").waitHours).isEqualTo(72);
        assertThat(slow.page().selectFirst("#wait-hours-mistake").text()).isEqualTo("Kept now: 72");
        assertThat(slow.page().selectFirst("[name=wait-hours]").val()).isEqualTo("24");
        slow.send("#change", Map.of()).expect(200);
        assertThat(only("Sorrel").waitHours).as("who has seen both is taken at the next press").isEqualTo(24);
    }

    @Test
    void particularsChangedInAnotherTabAreSaidBesideWhatWasTypedAndTheNextPressIsTaken() {
        Walker slow = salon.as("edda").open("/salon");
        String phone = QuarkusTransaction.requiringNew().call(() -> Salon.the().phone);
        salon.as("edda").open("/salon").send("#particulars", Map.of("phone", "01632 960 777", "zone", "Europe/London"))
            .expect(200);
        slow.send("#particulars", Map.of("town", "Tarnbeck-on-Wyre", "zone", "Europe/London")).expect(422);
        assertThat(slow.page().selectFirst("#phone-mistake").text()).isEqualTo("Kept now: 01632 960 777");
        assertThat(slow.page().selectFirst("#town-mistake").text()).isEqualTo("Kept now: Tarnbeck");
        assertThat(slow.page().selectFirst("[name=town]").val()).isEqualTo("Tarnbeck-on-Wyre");
        slow.send("#particulars", Map.of("town", "Tarnbeck", "phone", phone, "zone", "Europe/London")).expect(200);
        assertThat(QuarkusTransaction.requiringNew().call(() -> Salon.the().phone)).isEqualTo(phone);
    }

    @Test
    void aFigureMadeStricterInAnotherTabIsNotTakenBackUnseen() {
        Walker slow = salon.as("edda").open("/policy");
        salon.as("edda").open("/policy").send("#figures", Map.of("skin-test-wait-hours", "72")).expect(200);
        slow.send("#figures", Map.of("minimum-age", "18")).expect(422);
        assertThat(slow.page().selectFirst("#skin-test-wait-hours-mistake").text()).isEqualTo("Kept now: 72");
        assertThat(QuarkusTransaction.requiringNew().call(() -> policies.own())).containsEntry("skin-test-wait-hours",
            72);
        slow.send("#figures", Map.of("skin-test-wait-hours", "72")).expect(200);
        assertThat(QuarkusTransaction.requiringNew().call(() -> policies.own())).containsEntry("minimum-age", 18)
            .containsEntry("skin-test-wait-hours", 72);
    }

    @Test
    void aLineOutOfUseIsNoLongerOfferedForAVisit() {
        salon.as("edda").open("/products").send("#add", leaflet("Weldbright"));
        UUID visit = make.visit(LocalDate.of(1965, 3, 4));
        Walker sanna = salon.as("sanna").open("/desk/visits/" + visit + "/product");
        assertThat(sanna.text()).contains("Weldbright");
        sanna.send(Map.of("line", only("Weldbright").lineId.toString(), "shade", "2-0")).expect(200);
        assertThat(sanna.text()).contains("Weldbright, 2-0");
        salon.as("edda").open("/products").send("form[action$=" + only("Weldbright").lineId + "/retire]", Map.of());
        assertThat(salon.as("sanna").open("/desk/visits/" + visit + "/product").text()).doesNotContain("Weldbright");
    }

    @Test
    void aVisitsProductNeedsALineAndAShade() {
        UUID visit = make.visit(LocalDate.of(1965, 3, 4));
        Walker sanna =
            salon.as("sanna").open("/desk/visits/" + visit + "/product").send(Map.of("shade", "")).expect(422);
        assertThat(sanna.page().select(".mistakes li")).hasSize(2);
    }

    /** Regulation (EC) 1223/2009 and the federation's rule in the policy: 48 hours, six months, sixteen years. */
    @Test
    void aLaxerFigureIsRefusedWithTheLawsOwnAndItsSource() {
        Walker edda = salon.as("edda").open("/policy").send(Map.of("skin-test-wait-hours", "24", "minimum-age", "18"))
            .expect(422);
        assertThat(edda.page().select(".mistakes li")).hasSize(1);
        assertThat(edda.only(".mistakes li").text()).contains("24 is laxer", "at least 48",
            "Trade rule", knowledge.ruleSet().sources().get("uk-skin-test-rule").title());
        assertThat(edda.page().selectFirst("[name=minimum-age]").val()).isEqualTo("18");
        assertThat(effective("minimum-age")).as("nothing was kept").isEqualTo(16);
    }

    @Test
    void aStricterFigureHoldsAndABlankOneIsTheLaws() {
        salon.as("edda").open("/policy").send(Map.of("skin-test-wait-hours", "72", "skin-test-validity-months", "0"))
            .expect(200);
        assertThat(effective("skin-test-wait-hours")).isEqualTo(72);
        assertThat(effective("skin-test-validity-months")).isZero();
        assertThat(effective("minimum-age")).isEqualTo(16);
        salon.as("edda").open("/policy").send(Map.of("skin-test-wait-hours", "", "skin-test-validity-months", ""))
            .expect(200);
        assertThat(effective("skin-test-wait-hours")).isEqualTo(48);
        assertThat(effective("skin-test-validity-months")).isEqualTo(6);
    }

    /** What each figure does is tried in PolicySettingsTest; here, that the owner can reach every one of them on its stricter side only. */
    @ParameterizedTest
    @CsvSource({ "relaxer-weeks, 7, 9, overlap", "keratin-weeks, 25, 27, keratin", "perm-allergen-months, 2, 4, perm",
        "retinoid-months, 5, 7, retinoid",
        "steroid-low-dose-mg, 11, 5, medicines", "chemotherapy-months, 5, 7, chemotherapy" })
    void aFigureThatNoLawSetsIsAlsoOnlyEverStricter(String figure, String laxer, int stricter, String source) {
        int before = effective(figure);
        Walker edda = salon.as("edda").open("/policy").send(Map.of(figure, laxer)).expect(422);
        assertThat(edda.only(".mistakes li").text()).contains(laxer + " is laxer").containsIgnoringCase(source);
        assertThat(edda.page().selectFirst("[name=" + figure + "]").val()).isEqualTo(laxer);
        assertThat(effective(figure)).isEqualTo(before);
        salon.as("edda").open("/policy").send(Map.of(figure, Integer.toString(stricter))).expect(200);
        assertThat(effective(figure)).isEqualTo(stricter);
        salon.as("edda").open("/policy").send(Map.of(figure, "")).expect(200);
        assertThat(effective(figure)).isEqualTo(before);
    }

    @Test
    void aYesOrNoOfThePolicyIsChosenAndOnlyTheStricterSideChangesAnything() {
        Walker edda = salon.as("edda").open("/policy");
        assertThat(edda.page().select("select[name=sting-is-a-reaction] option")).extracting(o -> o.text())
            .containsExactly("Leave as it is", "Yes", "No");
        edda.send(Map.of("sting-is-a-reaction", "1", "letter-counts", "0", "lash-tint-allowed", "0",
            "chemotherapy-regrown-cm", "3")).expect(200);
        assertThat(List.of(effective("sting-is-a-reaction"), effective("letter-counts"), effective("lash-tint-allowed"),
            effective("chemotherapy-regrown-cm")))
            .containsExactly(1, 0, 0, 3);
        assertThat(edda.page().selectFirst("select[name=letter-counts] option[selected]").val()).isEqualTo("0");
        salon.as("edda").open("/policy").send(Map.of("sting-is-a-reaction", "", "letter-counts", "",
            "lash-tint-allowed", "", "chemotherapy-regrown-cm", "")).expect(200);
        assertThat(List.of(effective("sting-is-a-reaction"), effective("letter-counts"), effective("lash-tint-allowed"),
            effective("chemotherapy-regrown-cm")))
            .containsExactly(0, 1, 1, 0);
        Walker two = salon.as("edda").open("/policy").send(Map.of("letter-counts", "2")).expect(422);
        assertThat(two.only(".mistakes li").text()).contains("up to 1");
    }

    private int effective(String figure) {
        return QuarkusTransaction.requiringNew().call(() -> policies.effective().figure(figure));
    }

    @Test
    void aServiceOfTheSalonsOwnIsBookedAndNamedInEveryLanguage() {
        Walker edda = salon.as("edda").open("/services");
        ArrayList<Map.Entry<String, String>> fields = new ArrayList<>(edda.fields("#add"));
        fields.removeIf(field -> field.getKey().startsWith("name-"));
        fields.addAll(List.of(Map.entry("name-en", "Moss gloss"), Map.entry("name-es", "Brillo de musgo"),
            Map.entry("step", "tone"),
            Map.entry("step", "lighten")));
        edda.post("/services", fields).expect(200);
        String id = QuarkusTransaction.requiringNew().call(() -> menu.offered().get(menu.offered().size() - 1).id());
        assertThat(QuarkusTransaction.requiringNew().call(() -> menu.service(id).orElseThrow().stepIds()))
            .containsExactly("lighten", "tone");
        assertThat(QuarkusTransaction.requiringNew().call(() -> menu.name(id, knowledge.words("es"))))
            .isEqualTo("Brillo de musgo");
        assertThat(salon.as("sanna").open("/desk/new-visit").page().select("input[name=service]").eachAttr("value"))
            .contains(id);
    }

    @Test
    void aServiceWithoutStepsOrNameIsAskedForAgain() {
        Walker edda = salon.as("edda").open("/services").send("#add", Map.of()).expect(422);
        assertThat(edda.page().select(".mistakes li")).hasSize(2);
    }

    @Test
    void aServiceTakenOffTheListIsNotBookedAnyMoreButWhatIsBookedKeepsItsName() {
        UUID visit = make.visit(LocalDate.of(1965, 3, 4));
        salon.as("edda").open("/services").send("form[action$=/services/colour-whole/retire]", Map.of()).expect(200);
        assertThat(salon.as("sanna").open("/desk/new-visit").page().select("input[name=service]").eachAttr("value"))
            .doesNotContain("colour-whole");
        assertThat(salon.as("sanna").open("/desk/visits/" + visit).text()).contains("Permanent colour, whole hair");
        salon.as("edda").open("/services").send("form[action$=/services/colour-whole/return]", Map.of());
        assertThat(salon.as("sanna").open("/desk/new-visit").page().select("input[name=service]").eachAttr("value"))
            .contains("colour-whole");
    }

    @Test
    void onlyTheOwnerSeesThesePages() {
        for (String path : List.of("/products", "/services", "/policy")) {
            salon.as("petra").open(path).expect(403);
            salon.as("sanna").open(path).expect(403);
        }
    }
}
