package foretress.salon;

import static foretress.salon.Right.anybody;
import static foretress.salon.Right.guest;
import static foretress.salon.Right.program;
import static foretress.salon.Right.staff;
import static foretress.salon.Role.DESK;
import static foretress.salon.Role.OWNER;
import static foretress.salon.Role.STYLIST;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The one table of who may do what: every route of every room, deny by default. A route that is missing here answers nobody,
 * and a test fails until it stands here; so does a line whose route is no more. Rooms by the alphabet.
 */
public final class Rights {
    private static final List<Right> TABLE = List.of(
        // alternative
        guest("GET /answers/instead"),
        guest("POST /answers/instead"),

        // api
        program("POST /api/v1/assess", "assess"),
        program("POST /api/v1/strand-map", "assess"),
        program("POST /api/v1/read-label", "read"),
        program("POST /api/v1/read-medicines", "read"),
        program("POST /api/v1/bench/dilution", "bench"),
        program("POST /api/v1/bench/elasticity", "bench"),
        program("POST /api/v1/bench/incompatibility", "bench"),
        program("POST /api/v1/bench/porosity", "bench"),
        program("GET /api/v1/questionnaire", ""),
        program("GET /api/v1/openapi", ""),
        staff("GET /programs", OWNER),
        staff("POST /programs", OWNER),
        staff("GET /programs/openapi", OWNER),
        staff("POST /programs/{id}/revoke", OWNER),

        // backup
        staff("POST /owner/backup", OWNER),

        // card
        staff("GET /clients/{id}/card", STYLIST, OWNER),
        staff("GET /clients/{id}/card/paper", STYLIST, OWNER),
        staff("GET /clients/{id}/card/paper/{visit}", STYLIST, OWNER),
        staff("GET /visits/{id}/hair", STYLIST, OWNER),
        staff("POST /visits/{id}/hair/photo", STYLIST, OWNER),
        staff("GET /visits/{id}/hair/photo/{photo}", STYLIST, OWNER),
        staff("POST /visits/{id}/hair/photo/{photo}/remove", STYLIST, OWNER),
        staff("GET /clients/{id}/merge", STYLIST, OWNER),
        staff("POST /clients/{id}/merge", STYLIST, OWNER),

        // consent
        staff("GET /desk/visits/{id}/paper-form", STYLIST, DESK, OWNER),

        // consultation
        staff("GET /day", STYLIST, OWNER),
        staff("GET /owner", OWNER),
        staff("GET /owner/breach", OWNER),
        staff("GET /owner/breach.csv", OWNER),
        staff("POST /owner/breach.csv", OWNER),
        staff("GET /owner/proof", OWNER),
        staff("POST /owner/proof", OWNER),
        staff("POST /owner/proof/check", OWNER),
        staff("GET /owner/proof/{last}", OWNER),
        staff("GET /owner/trail.csv", OWNER),
        staff("POST /owner/trail.csv", OWNER),
        staff("GET /owner/trail.json", OWNER),
        staff("POST /owner/trail.json", OWNER),
        staff("GET /visits/{id}/paper", STYLIST, OWNER),
        staff("POST /visits/{id}/paper", STYLIST, OWNER),
        staff("POST /visits/{id}/paper/answers", STYLIST, OWNER),
        staff("GET /visits/{id}/paper/picture", STYLIST, OWNER),
        staff("GET /visits/{id}", STYLIST, OWNER),
        staff("GET /visits/{id}/consent/{version}", STYLIST, OWNER),
        staff("GET /visits/{id}/consent/{version}/copy", STYLIST, OWNER),
        staff("GET /visits/{id}/today", STYLIST, OWNER),
        staff("POST /visits/{id}/today", STYLIST, OWNER),
        staff("GET /visits/{id}/refused", STYLIST, OWNER),
        staff("POST /visits/{id}/refused", STYLIST, OWNER),
        staff("GET /visits/{id}/decision", STYLIST, OWNER),
        staff("POST /visits/{id}/decision", STYLIST, OWNER),
        staff("POST /visits/{id}/decision/services", STYLIST, OWNER),
        staff("POST /visits/{id}/hand-over", STYLIST, OWNER),
        staff("GET /visits/{id}/closing", STYLIST, OWNER),
        staff("POST /visits/{id}/closing", STYLIST, OWNER),
        staff("GET /visits/{id}/noted", STYLIST, OWNER),
        staff("GET /visits/{id}/noted/{kind}", STYLIST, OWNER),
        staff("POST /visits/{id}/noted/{kind}", STYLIST, OWNER),
        staff("POST /visits/{id}/noted/{note}/strike", STYLIST, OWNER),
        staff("POST /visits/{id}/noted/{note}/paper", STYLIST, OWNER),
        staff("GET /visits/{id}/noted/{note}/papers/{paper}", STYLIST, OWNER),
        staff("GET /visits/{id}/look-up", STYLIST, OWNER),
        staff("POST /visits/{id}/look-up", STYLIST, OWNER),
        staff("GET /look-ups", STYLIST, OWNER),
        staff("POST /look-ups", STYLIST, OWNER),
        staff("POST /look-ups/{id}/withdraw", STYLIST, OWNER),
        staff("GET /visits/{id}/bench", STYLIST, OWNER),
        staff("GET /visits/{id}/bench/live", STYLIST, OWNER),
        staff("POST /visits/{id}/bench/hair-length", STYLIST, OWNER),
        staff("GET /visits/{id}/bench/elasticity-test", STYLIST, OWNER),
        staff("POST /visits/{id}/bench/elasticity-test", STYLIST, OWNER),
        staff("GET /visits/{id}/bench/elasticity-test/{test}", STYLIST, OWNER),
        staff("POST /visits/{id}/bench/elasticity-test/{test}", STYLIST, OWNER),
        staff("GET /visits/{id}/bench/incompatibility-test", STYLIST, OWNER),
        staff("POST /visits/{id}/bench/incompatibility-test", STYLIST, OWNER),
        staff("GET /visits/{id}/bench/incompatibility-test/{test}", STYLIST, OWNER),
        staff("GET /visits/{id}/bench/incompatibility-test/{test}/live", STYLIST, OWNER),
        staff("POST /visits/{id}/bench/incompatibility-test/{test}/mix", STYLIST, OWNER),
        staff("POST /visits/{id}/bench/incompatibility-test/{test}/start", STYLIST, OWNER),
        staff("POST /visits/{id}/bench/incompatibility-test/{test}/seen", STYLIST, OWNER),
        staff("POST /visits/{id}/bench/incompatibility-test/{test}/not-seen", STYLIST, OWNER),
        staff("POST /visits/{id}/bench/incompatibility-test/{test}/warmth", STYLIST, OWNER),
        staff("POST /visits/{id}/bench/incompatibility-test/{test}/end", STYLIST, OWNER),
        staff("POST /visits/{id}/bench/incompatibility-test/{test}/next-day", STYLIST, OWNER),
        staff("GET /visits/{id}/bench/porosity-test", STYLIST, OWNER),
        staff("POST /visits/{id}/bench/porosity-test", STYLIST, OWNER),
        staff("GET /visits/{id}/bench/porosity-test/{test}", STYLIST, OWNER),
        staff("POST /visits/{id}/bench/tests/{test}/strike", STYLIST, OWNER),
        staff("POST /visits/{id}/bench/tests/{test}/photo", STYLIST, OWNER),
        staff("GET /visits/{id}/bench/tests/{test}/photo/{photo}", STYLIST, OWNER),
        staff("GET /visits/{id}/bench/{kind}", STYLIST, OWNER),
        staff("POST /visits/{id}/bench/{kind}", STYLIST, OWNER),
        staff("GET /visits/{id}/bench/{kind}/{test}", STYLIST, OWNER),
        staff("POST /visits/{id}/bench/{kind}/{test}", STYLIST, OWNER),
        staff("GET /visits/{id}/bench/{kind}/{test}/live", STYLIST, OWNER),

        // demo
        anybody("GET /demo"),
        anybody("GET /parts"),
        anybody("GET /parts/chair"),

        // intake
        guest("GET /answers"),
        guest("GET /answers/notice"),
        guest("POST /answers/notice"),
        guest("GET /answers/notice/paper"),
        guest("GET /answers/last-time"),
        guest("POST /answers/last-time"),
        guest("GET /answers/care"),
        guest("GET /answers/read-back"),
        guest("POST /answers/read-back"),
        guest("GET /answers/sign"),
        guest("POST /answers/sign"),
        guest("GET /answers/tests"),
        guest("POST /answers/tests"),
        guest("GET /answers/done"),
        guest("GET /answers/copy"),
        guest("GET /answers/visit.ics"),
        guest("GET /answers/take-back"),
        guest("POST /answers/take-back"),
        guest("GET /answers/short-visit"),
        guest("GET /answers/{topic}"),
        guest("POST /answers/{topic}"),

        // invitation
        anybody("GET /i/{token}"),
        anybody("POST /i/{token}"),
        anybody("GET /i/{token}/birth-date"),
        anybody("POST /i/{token}/birth-date"),
        guest("GET /answers/stop"),
        guest("POST /answers/stop/forget"),
        guest("POST /answers/give-back"),
        guest("GET /answers/phone"),
        guest("POST /answers/phone"),
        guest("GET /code"),
        guest("POST /code"),
        guest("POST /code/mail"),
        staff("GET /desk/visits/{id}", STYLIST, DESK, OWNER),
        staff("POST /desk/visits/{id}/birth-date", STYLIST, DESK, OWNER),
        staff("POST /desk/visits/{id}/cancel", STYLIST, DESK, OWNER),
        staff("POST /desk/visits/{id}/code", STYLIST, DESK, OWNER),
        staff("POST /desk/visits/{id}/hand-over", STYLIST, DESK, OWNER),
        staff("POST /desk/visits/{id}/link", STYLIST, DESK, OWNER),
        staff("GET /desk/visits/{id}/link/{key}", STYLIST, DESK, OWNER),
        staff("POST /desk/visits/{id}/link/{key}/mail", STYLIST, DESK, OWNER),
        staff("POST /desk/visits/{id}/mail", STYLIST, DESK, OWNER),
        staff("POST /desk/visits/{id}/revoke", STYLIST, DESK, OWNER),
        staff("GET /desk/visits/{id}/slip/{key}", STYLIST, DESK, OWNER),
        staff("POST /desk/visits/{id}/unlock", STYLIST, DESK, OWNER),

        // seal
        anybody("GET /seal.pem"),
        anybody("GET /verify"),
        anybody("POST /verify"),

        // retention
        staff("GET /clients/{id}/erase", OWNER),
        staff("POST /clients/{id}/erase", OWNER),

        // rights
        guest("GET /answers/rights"),
        guest("POST /answers/rights"),
        guest("GET /answers/rights/record"),
        guest("GET /answers/withdraw"),
        guest("POST /answers/withdraw"),
        guest("GET /answers/withdraw/done"),
        staff("GET /clients/{id}/record", OWNER),
        staff("POST /clients/{id}/record", OWNER),
        staff("GET /requests", OWNER),
        staff("GET /requests/{request}", OWNER),
        staff("POST /requests/{request}/close", OWNER),

        // salon
        anybody("GET /"),
        anybody("GET /sign-in"),
        anybody("POST /sign-in"),
        anybody("GET /set-up/{code}"),
        anybody("POST /set-up/{code}"),
        staff("POST /sign-out", STYLIST, DESK, OWNER),
        staff("POST /my-language", STYLIST, DESK, OWNER),
        staff("GET /password", STYLIST, DESK, OWNER),
        staff("POST /password", STYLIST, DESK, OWNER),
        staff("GET /languages", OWNER),
        staff("GET /languages/{tag}", OWNER),
        staff("POST /languages/{tag}", OWNER),
        staff("POST /languages/{tag}/off", OWNER),
        staff("GET /policy", OWNER),
        staff("POST /policy", OWNER),
        staff("GET /products", OWNER),
        staff("POST /products", OWNER),
        staff("GET /products/{id}", OWNER),
        staff("POST /products/{id}", OWNER),
        staff("POST /products/{id}/retire", OWNER),
        staff("POST /products/{id}/return", OWNER),
        staff("GET /services", OWNER),
        staff("POST /services", OWNER),
        staff("POST /services/{id}/retire", OWNER),
        staff("POST /services/{id}/return", OWNER),
        staff("GET /salon", OWNER),
        staff("POST /salon", OWNER),
        staff("GET /staff", OWNER),
        staff("POST /staff", OWNER),
        staff("POST /staff/{id}/leave", OWNER),
        staff("POST /staff/{id}/return", OWNER),
        staff("POST /staff/{id}/code", OWNER),

        // skintest
        anybody("GET /a/{token}"),
        anybody("GET /a/{token}/look"),
        anybody("POST /a/{token}/look"),
        anybody("POST /a/{token}/photo"),
        anybody("GET /a/{token}/told"),
        staff("GET /desk/visits/{id}/test-visit", STYLIST, DESK, OWNER),
        staff("POST /desk/visits/{id}/test-visit", STYLIST, DESK, OWNER),
        staff("POST /desk/visits/{id}/test-visit/cancel", STYLIST, DESK, OWNER),
        staff("GET /visits/{id}/skin-test", STYLIST, OWNER),
        guest("GET /answers/skin-test"),
        guest("POST /answers/skin-test"),
        staff("POST /visits/{id}/skin-test/hand-over", STYLIST, OWNER),
        staff("GET /visits/{id}/skin-test/consent/{version}", STYLIST, OWNER),
        staff("POST /visits/{id}/skin-test/entries/{entry}/error", OWNER),
        staff("GET /visits/{id}/skin-test/photos/{photo}", STYLIST, OWNER),
        staff("GET /visits/{id}/skin-test/record", STYLIST, OWNER),
        staff("POST /visits/{id}/skin-test/record", STYLIST, OWNER),
        staff("POST /visits/{id}/skin-test/tests/{test}/link", STYLIST, OWNER),
        staff("GET /visits/{id}/skin-test/tests/{test}/read", STYLIST, OWNER),
        staff("POST /visits/{id}/skin-test/tests/{test}/read", STYLIST, OWNER),

        // told
        guest("GET /answers/after"),
        guest("GET /answers/complaint"),
        guest("POST /answers/complaint"),
        guest("GET /answers/photos"),
        guest("POST /answers/photos/send"),
        guest("GET /answers/photos/{photo}"),
        guest("GET /answers/photos/{photo}/small"),
        guest("POST /answers/photos/{photo}/remove"),
        guest("GET /answers/reaction"),
        guest("POST /answers/reaction/spot"),
        guest("GET /answers/reaction/tell"),
        guest("POST /answers/reaction/tell"),
        guest("GET /answers/reaction/told"),
        staff("GET /complaints/{complaint}", OWNER),
        staff("POST /complaints/{complaint}/acknowledge", OWNER),
        staff("POST /complaints/{complaint}/answer", OWNER),
        staff("GET /visits/{id}/sent-photos/{photo}", STYLIST, OWNER),
        staff("GET /visits/{id}/sent-photos/{photo}/small", STYLIST, OWNER),
        staff("GET /visits/{id}/told", STYLIST, OWNER),
        staff("POST /visits/{id}/told/{telling}/strike", OWNER),

        // visit
        staff("GET /desk", STYLIST, DESK, OWNER),
        staff("GET /desk/clients", STYLIST, DESK, OWNER),
        staff("GET /desk/clients/{id}", STYLIST, DESK, OWNER),
        staff("POST /desk/clients/{id}", STYLIST, DESK, OWNER),
        staff("GET /desk/new-visit", STYLIST, DESK, OWNER),
        staff("POST /desk/new-visit", STYLIST, DESK, OWNER),
        staff("POST /desk/tasks/{id}/done", STYLIST, DESK, OWNER),
        staff("GET /desk/visits/{id}/product", STYLIST, DESK, OWNER),
        staff("POST /desk/visits/{id}/product", STYLIST, DESK, OWNER),

        // web
        anybody("GET /language"),
        anybody("POST /language"));

    private static final Map<String, Right> BY_ROUTE =
        TABLE.stream().collect(Collectors.toUnmodifiableMap(Right::route, Function.identity()));

    private Rights() {}

    static Optional<Right> of(String route) {
        return Optional.ofNullable(BY_ROUTE.get(route));
    }

    static List<Right> table() {
        return TABLE;
    }
}
