package foretress.told;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.intake.Answering;
import foretress.intake.Knocking;
import foretress.picture.PhotoRedrawing;
import foretress.picture.Photos;
import foretress.salon.OpenSalon;
import foretress.skintest.Chair;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Photos that a client sends by her own link, through the real pages and without a script, and what staff see of them. */
@QuarkusTest
class SentPhotosTest {
    private static final String AT = "/answers/photos";
    private static final Map<String, String> BORN = Map.of("day", "4", "month", "3", "year", "1965");
    private static final Map<String, List<String>> BOX_DYE = Map.of("treatments.what", List.of("box-dye"));

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject Chair chair;
    UUID visit;

    @BeforeEach
    void aClientIsInvited() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
    }

    private void reads(String login, String tag) {
        salon.as(login).open("/password").send("#language", Map.of("language", tag)).expect(200);
    }

    private Walker signed(Map<String, List<String>> told) {
        return knocking.come(visit, told).agree().all().readBack().sign("Ottilie Brandt").walker();
    }

    private Walker agreed() {
        return knocking.come(visit, Map.of()).agree().walker().open(AT).expect(200);
    }

    /** The form of this thing on the page that is open, sent with this file. */
    private static Response sent(Walker phone, String of, byte[] file) {
        return sent(phone, of, phone.only("#of-" + of + " [name=submission]").val(), file);
    }

    private static Response sent(Walker phone, String of, String submission, byte[] file) {
        return RestAssured.given().redirects().follow(false).cookies(phone.cookies()).header("Accept", "text/html")
            .header("Origin", RestAssured.baseURI + ":" + RestAssured.port)
            .multiPart("csrf-token", phone.page().selectFirst("[name=csrf-token]").val())
            .multiPart("submission", submission).multiPart("of", of)
            .multiPart("photo", "IMG_1.jpg", file, "image/jpeg").post(AT + "/send");
    }

    /** Sends it and looks at the page again. */
    private static void sends(Walker phone, String of, byte[] file) {
        Response answer = sent(phone, of, file);
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(303);
        phone.open(AT).expect(200);
    }

    private static String mistake(Response answer, String of) {
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(422);
        Document page = Jsoup.parse(answer.asString());
        assertThat(page.select("#" + of + "[aria-invalid]")).as("the field itself").hasSize(1);
        return page.select("#" + of + "-mistake").text();
    }

    private static List<String> shown(Walker phone, String of) {
        return phone.page().select("#of-" + of + " .sent a").eachAttr("href");
    }

    private static BufferedImage picture(Walker walker, String path) throws IOException {
        Response answer = walker.open(path).expect(200).response();
        assertThat(answer.contentType()).isEqualTo("image/jpeg");
        assertThat(answer.header("Content-Security-Policy")).startsWith("sandbox");
        assertThat(answer.header("Cache-Control")).isEqualTo("no-store");
        return ImageIO.read(new ByteArrayInputStream(answer.asByteArray()));
    }

    private long rows(String condition) {
        return QuarkusTransaction.requiringNew().call(() -> ((Number) Visit.getEntityManager()
            .createNativeQuery("select count(*) from sent_photo where visit_id = :visit and " + condition)
            .setParameter("visit", visit).getSingleResult()).longValue());
    }

    @Test
    @DisplayName("a photo is sent without a script, shown small, opens large, comes out without where it was taken, and is kept sealed")
    void sentAndShown() throws IOException {
        Walker phone = agreed();
        assertThat(phone.text()).contains("Photos, if you like", "the front desk does not", "years after your last");
        assertThat(phone.page().select("input[type=file][accept='image/*'][name=photo]")).hasSize(5);
        assertThat(phone.page().select("img")).isEmpty();
        sends(phone, "front", Photos.withExif(900, 600, 6));
        assertThat(phone.only("#arrived").text()).isEqualTo("Photos that have arrived: 1");
        String photo = shown(phone, "front").get(0);
        assertThat(phone.only(".sent img").attr("src")).isEqualTo(photo + "/small");
        assertThat(phone.only(".sent img").attr("alt")).isEqualTo("Your hair from the front, photo 1");
        BufferedImage small = picture(phone, photo + "/small");
        assertThat(Math.max(small.getWidth(), small.getHeight())).isEqualTo(PhotoRedrawing.SMALL_SIDE);
        BufferedImage large = picture(phone, photo);
        assertThat(List.of(large.getWidth(), large.getHeight())).as("turned upright").containsExactly(600, 900);
        assertThat(new String(phone.response().asByteArray(), StandardCharsets.ISO_8859_1))
            .doesNotContain(Photos.WHERE, "Exif");
        assertThat(rows("shows not like '%FRONT%' and body <> small")).isOne();
    }

    @Test
    @DisplayName("the same form twice is one photo; of the hair the next one takes the place of the first; each can be taken back, and is deleted")
    void onceReplacedTakenBack() {
        Walker phone = agreed();
        String submission = phone.only("#of-back [name=submission]").val();
        assertThat(sent(phone, "back", submission, Photos.of("jpeg", 40, 30)).statusCode()).isEqualTo(303);
        assertThat(sent(phone, "back", submission, Photos.of("jpeg", 40, 30)).statusCode()).isEqualTo(303);
        assertThat(rows("1 = 1")).isOne();
        phone.open(AT);
        String first = shown(phone, "back").get(0);
        assertThat(phone.only("#of-back label").text()).startsWith("Choose or take another photo in its place");
        sends(phone, "back", Photos.of("png", 50, 30));
        assertThat(shown(phone, "back")).hasSize(1).doesNotContain(first);
        phone.open(first).expect(404);
        phone.open(AT).send("#of-back form[action$=/remove]", Map.of()).expect(200);
        assertThat(phone.at()).isEqualTo(AT);
        assertThat(shown(phone, "back")).isEmpty();
        assertThat(rows("1 = 1")).isZero();
        Walker edda = salon.as("edda").open("/owner").send("form.trail", Map.of("act", "by the client"));
        assertThat(edda.text()).contains("photo sent by the client", "photo replaced by the client",
            "photo taken back by the client");
    }

    @Test
    @DisplayName("what was taken back is not stored again by the same form, nor by one that another page still holds; nothing is lost unsaid")
    void takenBackItStaysAway() {
        byte[] box = Photos.of("jpeg", 40, 30);
        Walker phone = agreed();
        var tab = new Walker();
        phone.cookies().forEach(tab::with);
        tab.open(AT).expect(200);
        String old = phone.only("#of-box [name=submission]").val();
        sends(phone, "box", box);
        assertThat(sent(tab, "box", box).statusCode()).as("waited for the line in another tab: it is there")
            .isEqualTo(303);
        assertThat(mistake(sent(tab, "box", Photos.of("png", 50, 30)), "box")).as("another photo is not lost unsaid")
            .contains("has not arrived");
        assertThat(rows("1 = 1")).isOne();
        phone.send("#of-box form[action$=/remove]", Map.of()).expect(200);
        assertThat(mistake(sent(tab, "box", box), "box")).contains("has not arrived");
        assertThat(sent(phone, "box", old, box).statusCode()).isEqualTo(422);
        assertThat(rows("1 = 1")).isZero();
        sends(tab.open(AT).expect(200), "box", box);
        assertThat(rows("1 = 1")).as("chosen once more, it arrives").isOne();
    }

    @Test
    @DisplayName("what is no picture, empty, or one too many is refused with a sentence beside its own field")
    void whatIsRefused() {
        Walker phone = agreed();
        byte[] pdf = "%PDF-1.4 a letter called a photo".getBytes(StandardCharsets.US_ASCII);
        assertThat(mistake(sent(phone, "box", pdf), "box")).contains("That is no JPEG or PNG photo");
        assertThat(mistake(sent(phone, "side", new byte[0]), "side")).contains("That is no JPEG or PNG photo");
        assertThat(mistake(sent(phone, "side", new byte[PhotoRedrawing.MOST_BYTES + 1]), "side"))
            .contains("larger than 10 MB");
        for (int i = 0; i < 3; i++) {
            sends(phone, "ingredients", Photos.of("jpeg", 40, 30));
        }
        assertThat(shown(phone, "ingredients")).hasSize(3);
        assertThat(phone.page().select("#of-ingredients input[type=file]")).as("no room, no field").isEmpty();
        String another = UUID.randomUUID().toString();
        assertThat(mistake(sent(phone, "ingredients", another, Photos.of("jpeg", 40, 30)), "ingredients"))
            .contains("3 photos of this already");
        assertThat(rows("1 = 1")).isEqualTo(3);
        assertThat(sent(phone, "passport", another, Photos.of("jpeg", 40, 30)).statusCode()).isEqualTo(400);
        assertThat(sent(phone, "front", "no name", Photos.of("jpeg", 40, 30)).statusCode()).isEqualTo(400);
    }

    @Test
    @DisplayName("the stylist and the owner see them, counted and small, and large one at a time, which is noted; nobody else does")
    void whoSeesThem() throws IOException {
        Walker phone = agreed();
        sends(phone, "front", Photos.of("jpeg", 900, 600));
        sends(phone, "box", Photos.of("jpeg", 40, 30));
        String own = shown(phone, "front").get(0);
        Walker petra = salon.as("petra").open("/visits/" + visit).expect(200);
        assertThat(petra.only("details:has(.thumbs) > summary").text()).isEqualTo("Photos the client sent 2");
        assertThat(petra.page().select(".thumbs img[loading=lazy]")).hasSize(2);
        assertThat(petra.page().select(".thumbs a").text()).contains("Hair from the front", "Box or bottle");
        String large = petra.page().select(".thumbs a").get(0).attr("href");
        assertThat(picture(petra, large + "/small").getWidth()).isEqualTo(PhotoRedrawing.SMALL_SIDE);
        assertThat(picture(petra, large).getWidth()).isEqualTo(900);
        assertThat(salon.as("edda").open("/owner").send("form.trail", Map.of("act", "photo of the client")).text())
            .contains("photo of the client's seen", "Petra Lind");
        for (String path : List.of(large, large + "/small")) {
            salon.as("sanna").open(path).expect(403);
            assertThat(new Walker().open(path).response().contentType()).doesNotContain("image");
        }
        assertThat(salon.as("sanna").open("/desk/visits/" + visit).page().html()).doesNotContain("sent-photos");
        String card = petra.open("/visits/" + visit).only("a.name").attr("href");
        assertThat(petra.open(card).expect(200).page().select("article.visit a[href=" + large + "] img[loading=lazy]"))
            .as("kept of her, so it stands on her record card").hasSize(1);
        othersFindNothing(own, large);
    }

    private void othersFindNothing(String own, String large) {
        UUID hers = visit;
        visit = make.visit(LocalDate.of(1965, 3, 4));
        Walker other = agreed();
        other.open(own).expect(404);
        other.open(own + "/small").expect(404);
        other.open(AT).expect(200);
        other.post(own + "/remove", List.of(Map.entry("csrf-token",
            other.page().selectFirst("[name=csrf-token]").val()))).expect(200);
        salon.as("petra").open(large.replace(hers.toString(), visit.toString())).expect(404);
        salon.as("petra").open(large).expect(200);
        Walker second = new Walker().open(knocking.link(hers)).send(BORN);
        assertThat(second.open(AT).at()).as("another phone shows a code first").isEqualTo("/code");
        assertThat(second.open(own).at()).isEqualTo("/code");
    }

    @Test
    @DisplayName("a photo decides nothing: no answer, no finding, no signature changes")
    void nothingIsFoundInAPhoto() {
        Walker phone = signed(BOX_DYE);
        String before = standing();
        assertThat(phone.page().select("a[href=" + AT + "]").text()).as("where photos help, the way to them stands")
            .isEqualTo("Send photos");
        phone.open(AT);
        sends(phone, "ingredients", Photos.of("jpeg", 40, 30));
        assertThat(standing()).isEqualTo(before);
        assertThat(phone.open("/answers/done").expect(200).text()).contains("Send photos");
        assertThat(QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).state))
            .isEqualTo(State.SIGNED);
    }

    private String standing() {
        return chair.standing(visit);
    }

    @Test
    @DisplayName("whoever told of nothing in the hair reads no word more, and can send photos all the same")
    void nobodyIsAskedForPhotosWithoutNeed() {
        Walker phone = signed(Map.of());
        assertThat(phone.page().select("a[href=" + AT + "]")).isEmpty();
        sends(phone.open(AT).expect(200), "side", Photos.of("jpeg", 40, 30));
        assertThat(phone.open("/answers/done").page().select("a[href=" + AT + "]")).as("to take it back").hasSize(1);
    }

    @Test
    @DisplayName("nothing is taken before the notice was agreed to, nor on a tablet handed over for something else")
    void nothingBeforeTheNotice() {
        Walker phone = knocking.come(visit, Map.of()).walker();
        assertThat(phone.open(AT).at()).isEqualTo("/answers/notice");
        assertThat(sent(phone, "front", UUID.randomUUID().toString(), Photos.of("jpeg", 40, 30)).header("Location"))
            .endsWith("/answers");
        assertThat(rows("1 = 1")).isZero();
        UUID tested = chair.planned(Map.of());
        Walker tablet =
            salon.as("petra").open("/visits/" + tested + "/skin-test").send("form[action$=hand-over]", Map.of());
        assertThat(tablet.open(AT).at()).isEqualTo("/answers/skin-test");
    }

    @Test
    @DisplayName("the salon's own tablet in the client's hands takes photos, and shows none once it is given back")
    void onTheSalonsTablet() {
        Walker tablet = salon.as("sanna").open("/desk/visits/" + visit).send("form[action$=hand-over]", Map.of());
        Answering.on(tablet.send(BORN), Map.of()).agree().all().readBack().sign("Ottilie Brandt");
        tablet.open(AT).expect(200);
        sends(tablet, "box", Photos.of("jpeg", 40, 30));
        String photo = shown(tablet, "box").get(0);
        tablet.open("/answers/done").send("form[action$=give-back]", Map.of());
        tablet.open(photo).expect(403);
        tablet.open(AT).expect(403);
    }

    @Test
    @DisplayName("after the service photos can be taken back and no more be sent")
    void afterTheService() {
        Walker phone = signed(BOX_DYE).open(AT);
        sends(phone, "box", Photos.of("jpeg", 40, 30));
        make.is(visit, State.DECIDED);
        make.is(visit, State.CLOSED);
        Response late = sent(phone, "front", UUID.randomUUID().toString(), Photos.of("jpeg", 40, 30));
        assertThat(late.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(late.asString()).select("main").text()).contains("No more photos can be sent");
        assertThat(phone.open("/answers").at()).isEqualTo("/answers/after");
        phone.open(phone.only("a[href=" + AT + "]").attr("href")).expect(200);
        assertThat(phone.page().select("input[type=file]")).isEmpty();
        phone.send("#of-box form", Map.of()).expect(200);
        assertThat(rows("1 = 1")).isZero();
        assertThat(phone.open("/answers/after").page().select("a[href=" + AT + "]")).isEmpty();
    }

    @Test
    @DisplayName("a client who takes consent back takes all photos back with it")
    void withTheConsent() {
        Walker phone = signed(BOX_DYE).open(AT);
        sends(phone, "box", Photos.of("jpeg", 40, 30));
        String large = salon.as("petra").open("/visits/" + visit).page().select(".thumbs a").attr("href");
        phone.open("/answers/take-back").send(Map.of()).expect(200);
        assertThat(rows("1 = 1")).isZero();
        salon.as("petra").open(large).expect(404);
    }

    @ParameterizedTest
    @ValueSource(strings = { "es", "fr", "pl", "ar", "vi" })
    @DisplayName("the page speaks the client's language")
    void inEveryLanguage(String tag) {
        Walker phone = new Walker().open(knocking.link(visit)).send("form.tongues", Map.of("language", tag))
            .send("form[action$=birth-date]", BORN);
        Answering.on(phone, Map.of()).agree();
        phone.open(AT).expect(200);
        sends(phone, "box", Photos.of("jpeg", 40, 30));
        assertThat(phone.page().select("html").attr("lang")).isEqualTo(tag);
        assertThat(phone.page().select("main").html()).doesNotContain("Your hair", "Take back", "the front desk");
        assertThat(mistake(sent(phone, "side", new byte[0]), "side")).isNotBlank().doesNotContain("That is no");
    }

    @Test
    @DisplayName("staff who read Spanish read Spanish of them, in what templates say and in what code says")
    void staffReadTheirOwnLanguage() {
        sends(agreed(), "front", Photos.of("jpeg", 40, 30));
        reads("petra", "es");
        String fold = salon.as("petra").open("/visits/" + visit).expect(200).only("details:has(.thumbs)").text();
        reads("petra", "en");
        assertThat(fold).contains("Fotos enviadas por su enlace 1", "Pelo de frente");
    }
}
