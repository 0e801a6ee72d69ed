package foretress.told;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.MovedClock;
import foretress.Walker;
import foretress.intake.Answering;
import foretress.intake.Knocking;
import foretress.salon.OpenSalon;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a client's own link opens in every state of a visit, through the real pages: always something that is so, and nothing new to answer once it is off. */
@QuarkusTest
class LinkStatesTest {
    private static final Map<String, String> BORN = Map.of("day", "4", "month", "3", "year", "1965");
    private static final String AFTER = "/answers/after";

    /** How far a client came before the visit stood as it stands. */
    enum Came { NOWHERE, AGREED, SIGNED }

    /**
     * Where a visit stands.
     *
     * <p>{@code at} is where its link leads whoever came in by it; {@code title} is what stands there.
     */
    enum Stands {
        INVITED(Came.NOWHERE, State.INVITED, "/answers/notice", "Before you answer"),
        ANSWERING(Came.AGREED, State.ANSWERING, "/answers/", ""),
        SIGNED(Came.SIGNED, State.SIGNED, "/answers/done", ""),
        DECIDED(Came.SIGNED, State.DECIDED, "/answers/done", ""),
        PUT_OFF(Came.SIGNED, State.DECIDED, "/answers/done", ""),
        DECLINED_UNSIGNED(Came.AGREED, State.DECIDED, AFTER, "About your visit"),
        DECIDED_UNSIGNED(Came.AGREED, State.DECIDED, AFTER, "About your visit"),
        CLOSED(Came.SIGNED, State.CLOSED, AFTER, "After your visit"),
        CLOSED_WITH_NOTHING_DONE(Came.SIGNED, State.CLOSED, AFTER, "Your visit is off"),
        CANCELLED_UNANSWERED(Came.NOWHERE, State.CANCELLED, AFTER, "Your visit is off"),
        CANCELLED_HALF_ANSWERED(Came.AGREED, State.CANCELLED, AFTER, "Your visit is off"),
        CANCELLED_SIGNED(Came.SIGNED, State.CANCELLED, AFTER, "Your visit is off"),
        WITHDRAWN(Came.SIGNED, State.WITHDRAWN, AFTER, "Taken back");

        static final Set<Stands> PUT = EnumSet.of(PUT_OFF, DECLINED_UNSIGNED, CLOSED_WITH_NOTHING_DONE);
        static final Set<Stands> OFF =
            EnumSet.of(CLOSED_WITH_NOTHING_DONE, CANCELLED_UNANSWERED, CANCELLED_HALF_ANSWERED, CANCELLED_SIGNED,
                WITHDRAWN);

        final Came came;
        final State state;
        final String at;
        final String title;

        Stands(Came came, State state, String at, String title) {
            this.came = came;
            this.state = state;
            this.at = at;
            this.title = title;
        }
    }

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject MovedClock clock;
    UUID visit;
    String link;

    @BeforeEach
    void aClientIsInvited() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
        link = knocking.link(visit);
    }

    @AfterEach
    void backToNow() {
        clock.reset();
    }

    /** The client's own browser, with the visit as it stands. */
    private Walker stands(Stands how, String tag) {
        Walker phone = new Walker().open(link);
        if (!tag.equals("en")) {
            phone.send("form.tongues", Map.of("language", tag));
        }
        phone.send("form[action$=birth-date]", BORN).expect(200);
        switch (how.came) {
            case NOWHERE -> {}
            case AGREED -> Answering.on(phone, Map.of()).agree();
            case SIGNED -> Answering.on(phone, Map.of()).agree().all().readBack().sign("Ottilie Brandt");
        }
        become(how, phone);
        return phone;
    }

    private void become(Stands how, Walker phone) {
        switch (how.state) {
            case CANCELLED -> salon.as("sanna").open("/desk/visits/" + visit)
                .send("form[action$=cancel]", Map.of()).expect(200);
            case WITHDRAWN -> phone.open("/answers/take-back").send(Map.of()).expect(200);
            default -> make.is(visit, how.state);
        }
        if (Stands.PUT.contains(how)) {
            QuarkusTransaction.requiringNew().run(() -> Visit.<Visit>findById(visit).postpone(Optional.empty()));
        }
        assertThat(QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).state))
            .isEqualTo(how.state);
    }

    @Test
    @DisplayName("the table leaves no state of a visit out that has a link")
    void noStateIsLeftOut() {
        assertThat(Stream.of(Stands.values()).map(one -> one.state).collect(Collectors.toSet()))
            .isEqualTo(EnumSet.complementOf(EnumSet.of(State.BOOKED)));
    }

    @ParameterizedTest
    @EnumSource
    @DisplayName("in every state the link leads to a page, tells how to reach the salon, and to what can be told")
    void everyStateHasItsPage(Stands how) {
        Walker phone = stands(how, "en").open(link).expect(200);
        assertThat(phone.at()).startsWith(how.at);
        assertThat(phone.text()).contains(how.title);
        assertThat(phone.page().select("a[href^='tel:']").text()).contains("01632 960 114");
        boolean copy = how.came == Came.SIGNED;
        if (how.at.equals(AFTER)) {
            assertThat(phone.page().select("a[href=/answers/copy]")).hasSize(copy ? 1 : 0);
            assertThat(phone.text()).contains("3 Millrace Lane");
            tellsAndComplains(phone, how.came != Came.NOWHERE);
        }
        if (copy) {
            phone.open("/answers/copy").expect(200);
            assertThat(phone.response().contentType()).isEqualTo("application/pdf");
        }
    }

    /** Whoever never agreed to the notice was done nothing to, and is asked nothing about health. */
    private static void tellsAndComplains(Walker phone, boolean told) {
        assertThat(phone.page().select("a[href=/answers/reaction]")).hasSize(told ? 1 : 0);
        phone.open("/answers/reaction/tell").expect(200);
        assertThat(phone.at()).isEqualTo(told ? "/answers/reaction/tell" : AFTER);
        if (told) {
            phone.send(Map.of("felt", "itch-after", "began", "unknown")).expect(200);
            assertThat(phone.at()).isEqualTo("/answers/reaction/told");
        }
        phone.open("/answers/complaint").send(Map.of("words", "Nobody told me.")).expect(200);
        assertThat(phone.text()).contains("Your complaint arrived");
    }

    @ParameterizedTest
    @EnumSource
    @DisplayName("a visit that is off says who said so, and takes no answer, no signature, no photo any more")
    void nothingNewCanBeAnswered(Stands how) {
        if (!Stands.OFF.contains(how)) {
            return;
        }
        Walker phone = stands(how, "en");
        for (String shut : List.of("/answers", "/answers/notice", "/answers/read-back", "/answers/reactions",
            "/answers/sign", "/answers/done", "/answers/take-back", "/answers/last-time")) {
            assertThat(phone.open(shut).expect(200).at()).as(shut).isEqualTo(AFTER);
        }
        assertThat(phone.text()).contains(how == Stands.WITHDRAWN ? "You took your consent back"
            : "Alder & Wren called off your visit");
        assertThat(phone.open("/answers/photos").expect(200).page().select("input[type=file]")).isEmpty();
        assertThat(QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).state))
            .isEqualTo(how.state);
    }

    @ParameterizedTest
    @EnumSource(names = { "CANCELLED_HALF_ANSWERED", "CANCELLED_SIGNED", "WITHDRAWN", "CLOSED_WITH_NOTHING_DONE" })
    @DisplayName("another browser gives the birth date, and a code before it sees what was signed or written")
    void anotherBrowser(Stands how) {
        stands(how, "en");
        Walker other = new Walker().open(link).expect(200);
        assertThat(other.text()).as("what cannot wait first, and nothing of the visit").contains("Call 999 at once if")
            .doesNotContain("called off", "consent", "minutes");
        other.send("main form", BORN);
        assertThat(other.at()).as("what shows nothing that was said").isEqualTo(AFTER);
        for (String kept : List.of("/answers/copy", "/answers/complaint", "/answers/photos")) {
            assertThat(other.open(kept).at()).as(kept).isEqualTo("/code");
        }
        other.open("/answers/reaction").expect(200);
        assertThat(other.text()).as("what cannot wait waits for no code").contains("Call 999 at once if");
        String code = salon.as("sanna").open("/desk/visits/" + visit).send("form[action$=/code]", Map.of()).expect(200)
            .only("p.clock").text();
        assertThat(other.open("/code").send("main form:has([name=code])", Map.of("code", code)).expect(200).at())
            .as("read out at the desk").isEqualTo(AFTER);
        other.open("/answers/complaint").expect(200);
    }

    @Test
    @DisplayName("where nothing was answered before it was called off, no browser is asked for a code")
    void nothingToProtect() {
        stands(Stands.CANCELLED_UNANSWERED, "en");
        Walker other = new Walker().open(link).send("main form", BORN);
        assertThat(other.at()).isEqualTo(AFTER);
        other.open("/answers/complaint").send(Map.of("words", "Nobody told me.")).expect(200);
    }

    @Test
    @DisplayName("the link of a visit that is off ends as one of a visit that took place, and a tablet opens nothing")
    void itEnds() {
        Walker tablet = salon.as("sanna").open("/desk/visits/" + visit).send("form[action$=hand-over]", Map.of());
        tablet.send(BORN).expect(200);
        Walker phone = stands(Stands.CANCELLED_HALF_ANSWERED, "en");
        tablet.open("/answers").expect(403);
        clock.move(Duration.ofDays(90));
        phone.open(AFTER).expect(200);
        clock.move(Duration.ofDays(10));
        phone.open(AFTER).expect(403);
        new Walker().open(link).expect(200);
        clock.move(Duration.ofDays(7 * 365));
        new Walker().open(link).expect(404);
    }

    @ParameterizedTest
    @ValueSource(strings = { "es", "fr", "pl", "ar", "vi" })
    @DisplayName("it is said in her language, also when a visit is off")
    void inHerLanguage(String tag) {
        Walker phone = stands(Stands.CANCELLED_UNANSWERED, tag).open(link).expect(200);
        assertThat(phone.page().select("html").attr("lang")).isEqualTo(tag);
        assertThat(phone.text()).contains("Alder & Wren").doesNotContain("visit", "asked", "Complain", "reaction");
        make.is(visit, State.WITHDRAWN);
        visit = make.again(visit);
        link = knocking.link(visit);
        phone = stands(Stands.DECLINED_UNSIGNED, tag).open(link).expect(200);
        assertThat(phone.at()).isEqualTo(AFTER);
        assertThat(phone.text()).doesNotContain("visit", "put off", "Complain", "reaction");
    }
}
