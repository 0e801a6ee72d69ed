package foretress.salon;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Fuzz;
import foretress.UploadDoors;
import foretress.Walker;
import foretress.intake.Knocking;
import foretress.salon.Right.Kind;
import foretress.visit.VisitMaker;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.builder.MultiPartSpecBuilder;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Every form there is, from the table that another test holds against the code: whoever adds a route has it tried here. Each is sent
 * with every name that any field of ours has. The API of programs has no forms: it takes tokens in a header, and no cookie.
 */
@QuarkusTest
@DisplayName("R1: whatever form comes from a page of an earlier session, every word of it comes back with a token that is good")
class EveryFormIsKeptTest {
    /** What stands for each piece of an address. A route with a piece of another name fails until it stands here. */
    private static final Map<String, String> PIECES =
        Map.ofEntries(Map.entry("bench/{kind}", "bench/strand-test"), Map.entry("noted/{kind}", "noted/word"),
            Map.entry("{topic}", "reactions"), Map.entry("{token}", "t".repeat(43)),
            Map.entry("{code}", "c".repeat(43)), Map.entry("{key}", uuid()),
            Map.entry("{test}", uuid()), Map.entry("{photo}", uuid()), Map.entry("{note}", uuid()),
            Map.entry("{tag}", "es"), Map.entry("{entry}", uuid()), Map.entry("{complaint}", uuid()),
            Map.entry("{telling}", uuid()), Map.entry("{request}", uuid()));
    /** The code itself, and what must not wait for one: it shows nothing of an answer. */
    private static final List<String> NEEDS_NO_CODE = List.of("POST /code", "POST /answers/reaction");
    private static final Map<Role, String> LOGINS =
        Map.of(Role.STYLIST, "petra", Role.DESK, "sanna", Role.OWNER, "edda");
    /** Never shown again, whatever happens. */
    private static final Set<String> SECRETS = Set.of("password", "password-again", "current");
    /** Names that are made as the page is, one of each shape. */
    private static final List<String> NUMBERED =
        List.of("verdict-0", "product-11", "hair-length.cm", "treatments.when.precision", "kept", "ñ");

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    private UUID visit;

    private record Field(String name, String value) {}

    /** A form as a browser sends it. */
    private record Sent(Right right, String path, Map<String, String> cookies, String token, List<Field> typed) {
        /** The field of the file, for the few that take one. */
        Optional<String> file() {
            return Optional.ofNullable(UploadDoors.ALL.get(right.route().substring("POST ".length())));
        }
    }

    @BeforeEach
    void somebodyIsThere() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
    }

    private static String uuid() {
        return UUID.randomUUID().toString();
    }

    private static List<Right> forms() {
        return Rights.table().stream()
            .filter(right -> right.route().startsWith("POST ") && right.kind() != Kind.PROGRAM).toList();
    }

    private String path(Right right) {
        String path = right.route().substring("POST ".length());
        for (Map.Entry<String, String> piece : PIECES.entrySet()) {
            path = path.replace(piece.getKey(), piece.getValue());
        }
        path = path.replace("{id}", visit.toString());
        assertThat(path).as("what stands for each piece of %s", right.route()).doesNotContain("{");
        return path;
    }

    /** As nobody else typed it: with what HTML must escape, two lines, and one field that came twice. */
    private static List<Field> typed(Right right) {
        Stream<String> names = Stream.concat(Fuzz.names().stream(), NUMBERED.stream())
            .filter(name -> !name.equals("csrf-token") && !SECRETS.contains(name));
        ArrayList<Field> fields = new ArrayList<>(names.distinct()
            .map(name -> new Field(name, right.route() + " " + name + ": Ñandú — “yes” <b>&amp;\" \nand more"))
            .toList());
        fields.add(new Field("agree", "the second"));
        return fields;
    }

    private Sent sent(Right right, Map<String, String> cookies, String token) {
        return new Sent(right, path(right), Map.copyOf(cookies), token, typed(right));
    }

    private static String token(Walker walker) {
        return walker.page().selectFirst("[name=csrf-token]").val();
    }

    private static RequestSpecification request(Sent form) {
        RequestSpecification request =
            RestAssured.given().redirects().follow(false).cookies(form.cookies()).header("Accept", "text/html");
        if (form.file().isEmpty()) {
            request.contentType("application/x-www-form-urlencoded; charset=UTF-8")
                .formParam("csrf-token", form.token()).formParam("password", "never again");
            form.typed().stream().map(Field::name).distinct().forEach(name -> request.formParam(name,
                form.typed().stream().filter(f -> f.name().equals(name)).map(Field::value).toArray()));
            return request;
        }
        request.multiPart("csrf-token", form.token())
            .multiPart(form.file().get(), "spot.jpg", new byte[] { 1 }, "image/jpeg")
            .multiPart("password", "never again");
        expected(form).forEach(f -> request.multiPart(
            new MultiPartSpecBuilder(f.value()).controlName(f.name()).charset(StandardCharsets.UTF_8).build()));
        return request;
    }

    private static Response fromOurPage(Sent form) {
        return request(form).header("Sec-Fetch-Site", "same-origin").post(form.path());
    }

    private static List<Field> hidden(Element form, String prefix) {
        return form.select("input[type=hidden]").stream()
            .filter(i -> !i.attr("name").equals("csrf-token") && i.attr("name").startsWith(prefix))
            .map(i -> new Field(i.attr("name").substring(prefix.length()), i.val())).toList();
    }

    /** What comes back. The sender of several parts that this test uses writes plain names alone, and a file's field holds no words. */
    private static List<Field> expected(Sent form) {
        return form.typed().stream()
            .filter(f -> form.file().isEmpty() || !f.name().equals("ñ") && !f.name().equals(form.file().get()))
            .toList();
    }

    /** The page that answers holds the whole form, and one press sends it where it was meant to go. */
    private static void assertKept(Sent form, Response answer, int status, List<String> good) {
        String name = form.right().route();
        assertThat(answer.statusCode()).as(name).isEqualTo(status);
        Element kept = Jsoup.parse(answer.asString()).selectFirst("form[data-kept]");
        assertThat(kept).as("%s: %s", name, answer.asString()).isNotNull();
        assertThat(kept.attr("action")).as(name).isEqualTo(form.path());
        assertThat(hidden(kept, "")).as(name).containsExactlyInAnyOrderElementsOf(expected(form));
        assertThat(kept.select("input[type=password]").eachAttr("name")).as(name).containsExactly("password");
        assertThat(kept.select("input[type=file]").eachAttr("name")).as(name).isEqualTo(form.file().stream().toList());
        assertFresh(form, answer, kept, good);
    }

    private static void assertFresh(Sent form, Response answer, Element kept, List<String> good) {
        String fresh = kept.select("[name=csrf-token]").val();
        assertThat(fresh).as(form.right().route()).isNotBlank().isNotEqualTo(form.token());
        if (!good.isEmpty()) {
            assertThat(good).as("%s: this session's token", form.right().route()).contains(fresh);
        }
        assertThat(answer.asString()).doesNotContain("never again");
    }

    /** Signing in is asked for first; the form travels along. */
    private static void assertKeptWhileSigningIn(Sent form, Response answer, int status) {
        String name = form.right().route();
        assertThat(answer.statusCode()).as(name).isEqualTo(status);
        Element signIn = Jsoup.parse(answer.asString()).selectFirst("form[action=/sign-in]");
        assertThat(signIn).as("%s: %s", name, answer.asString()).isNotNull();
        assertThat(signIn.select("[name=kept-address]").val()).as(name).isEqualTo(form.path());
        assertThat(hidden(signIn, "kept:")).as(name).containsExactlyInAnyOrderElementsOf(expected(form));
        assertFresh(form, answer, signIn, List.of());
    }

    private static List<Right> of(Kind kind) {
        return forms().stream().filter(right -> right.kind() == kind).toList();
    }

    @Test
    void everyFormIsOfOneOfTheKindsTriedHere() {
        assertThat(forms()).hasSizeGreaterThan(80)
            .allSatisfy(right -> assertThat(right.kind()).as(right.route()).isIn(Kind.STAFF, Kind.GUEST, Kind.ANYBODY));
        assertThat(forms().stream().map(right -> right.route().substring("POST ".length())))
            .containsAll(UploadDoors.ALL.keySet());
    }

    @Test
    void staffWhoSignedInAgainMeanwhileSendItWithOnePress() {
        for (Role role : Role.values()) {
            String stale = token(salon.as(LOGINS.get(role)).open("/desk"));
            Walker now = salon.as(LOGINS.get(role)).open("/desk");
            List<String> good = List.of(token(now));
            of(Kind.STAFF).stream().filter(right -> right.allows(role)).map(right -> sent(right, now.cookies(), stale))
                .forEach(form -> assertKept(form, fromOurPage(form), 422, good));
        }
    }

    @Test
    void staffWhoseSessionIsOverSignInOnThatPage() {
        String stale = token(salon.as("edda").open("/desk"));
        of(Kind.STAFF).stream().map(right -> sent(right, Map.of(), stale))
            .forEach(form -> assertKeptWhileSigningIn(form, fromOurPage(form), 401));
    }

    @Test
    void whoMayNotDoItSeesWhereSomebodySignsInWhoMayAndKeepsWhatWasTyped() {
        String stale = token(salon.as("edda").open("/desk"));
        for (Role role : Role.values()) {
            Walker now = salon.as(LOGINS.get(role));
            of(Kind.STAFF).stream().filter(right -> !right.allows(role)).map(right -> sent(right, now.cookies(), stale))
                .forEach(form -> assertKeptWhileSigningIn(form, fromOurPage(form), 403));
        }
    }

    @Test
    void whoMayNotDoItIsRefusedPlainlyWhatTheirOwnPageSends() {
        Walker sanna = salon.as("sanna").open("/desk");
        of(Kind.STAFF).stream().filter(right -> !right.allows(Role.DESK))
            .map(right -> sent(right, sanna.cookies(), token(sanna)))
            .forEach(form -> assertNothingHappened(form, fromOurPage(form), 403));
    }

    @Test
    void aClientWhoCameThroughTheDoorAgainSendsItWithOnePress() {
        String stale = token(knocking.come(visit, Map.of()).walker());
        Walker now = knocking.come(visit, Map.of()).walker();
        List<String> good = List.of(token(now));
        of(Kind.GUEST).stream().map(right -> sent(right, now.cookies(), stale))
            .forEach(form -> assertKept(form, fromOurPage(form), 422, good));
    }

    @Test
    void aClientWhoseDoorIsShutKeepsItUntilTheLinkIsOpenAgain() {
        String stale = token(knocking.come(visit, Map.of()).walker());
        of(Kind.GUEST).stream().map(right -> sent(right, Map.of(), stale))
            .forEach(form -> assertKept(form, fromOurPage(form), 403, List.of()));
    }

    @Test
    void aClientOnASecondPhoneKeepsItUntilTheCodeIsTyped() {
        Walker second = knocking.come(visit, Map.of()).walker();
        String typedThere = token(second);
        knocking.come(visit, Map.of()).agree().page();
        assertThat(second.open("/answers").at()).isEqualTo("/code");
        of(Kind.GUEST).stream().filter(right -> NEEDS_NO_CODE.stream().noneMatch(right.route()::startsWith))
            .map(right -> sent(right, second.cookies(), typedThere)).forEach(form -> {
                Element kept = Jsoup.parse(fromOurPage(form).asString()).selectFirst("form[data-kept]");
                assertThat(kept).as(form.right().route()).isNotNull();
                assertThat(hidden(kept, "")).as(form.right().route())
                    .containsExactlyInAnyOrderElementsOf(expected(form));
            });
    }

    @Test
    void whereNobodyIsAskedWhoTheyAreABrowserThatLostItsCookieSendsItWithOnePress() {
        String stale = token(new Walker().open("/sign-in"));
        Walker now = new Walker().open("/sign-in");
        List<String> good = List.of(token(now));
        of(Kind.ANYBODY).stream().map(right -> sent(right, now.cookies(), stale))
            .forEach(form -> assertKept(form, fromOurPage(form), 422, good));
        of(Kind.ANYBODY).stream().map(right -> sent(right, Map.of(), stale))
            .forEach(form -> assertKept(form, fromOurPage(form), 422, List.of()));
    }

    private static void assertNothingHappened(Sent form, Response answer, int status) {
        assertThat(answer.statusCode()).as(form.right().route()).isEqualTo(status);
        assertThat(answer.cookies()).as(form.right().route()).doesNotContainKeys("staff", "door");
        assertThat(answer.asString()).as(form.right().route()).doesNotContain("Ñandú");
    }

    @Test
    void whatAnotherSiteSendsDoesNothingAndIsNotShown() {
        Walker edda = salon.as("edda").open("/desk");
        Walker client = knocking.come(visit, Map.of()).walker();
        for (Right right : forms()) {
            Walker walker = right.kind() == Kind.GUEST ? client : edda;
            Sent form = sent(right, walker.cookies(), token(walker));
            assertNothingHappened(form, request(form).header("Sec-Fetch-Site", "cross-site").post(form.path()), 403);
        }
    }

    @Test
    void whatNothingVouchesForDoesNothingAndIsNotShown() {
        for (Right right : forms()) {
            Sent form = sent(right, Map.of(), "made elsewhere");
            assertNothingHappened(form, request(form).post(form.path()), 400);
        }
    }
}
