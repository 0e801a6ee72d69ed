package foretress.told;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foretress.Walker;
import foretress.intake.Knocking;
import foretress.post.Sender;
import foretress.salon.OpenSalon;
import foretress.salon.Staff;
import foretress.visit.Client;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.mailer.Mail;
import io.quarkus.mailer.MockMailbox;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who hears by mail of a complaint, how often, and what no mail says. */
@QuarkusTest
class ComplaintLettersTest {
    private static final String SALON = "hello@alderandwren.example", CLIENT = "ottilie@post.example";

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject ComplaintsMade complaints;
    @Inject ComplaintLetters letters;
    @Inject Sender sender;
    @Inject MockMailbox mails;
    UUID visit;

    @BeforeEach
    void aClientIsInvited() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
        sendAll();
        mails.clear();
    }

    /** Also what other tests left, a batch at a time. */
    private void sendAll() {
        while (sender.sendDue() > 0) {
            // on to the next batch
        }
    }

    private List<Mail> sent(String to) {
        sendAll();
        return mails.getMailsSentTo(to);
    }

    private UUID complaint() {
        return QuarkusTransaction.requiringNew().call(() -> ComplaintMade.ofVisit(visit).get(0).id());
    }

    private UUID edda() {
        return QuarkusTransaction.requiringNew().call(() -> Staff.byLogin("edda").orElseThrow().id);
    }

    private void complain(UUID submission) {
        complaints.make(submission, visit, new ComplaintsMade.Words("The dye burnt my <scalp>.", "en"));
    }

    @Test
    @DisplayName("of a complaint the owner hears by mail, once however often it is sent, without a name or a word of what it is about")
    void theOwnerHears() {
        Walker phone = knocking.come(visit, Map.of()).walker();
        phone.open("/answers/complaint").send(Map.of("words", "The dye burnt my <scalp>.")).expect(200);
        List<Mail> sent = sent(SALON);
        assertThat(sent).hasSize(1);
        assertThat(sent.get(0).getSubject()).isEqualTo("A client has written to you");
        assertThat(sent.get(0).getText()).contains("Open your page", "/owner");
        assertThat((sent.get(0).getText() + sent.get(0).getHtml()).toLowerCase()).doesNotContain("ottilie", "brandt",
            "complain", "dye", "scalp", "burn", "colour");
        assertThat(sent(CLIENT)).as("she reads on the page that it arrived").isEmpty();
        UUID again = UUID.randomUUID();
        complain(again);
        complain(again);
        assertThat(sent(SALON)).as("one more complaint, sent twice").hasSize(2);
    }

    @Test
    @DisplayName("the client hears once that it was acknowledged and once that it was answered, however often the owner presses")
    void theClientHears() {
        complain(UUID.randomUUID());
        UUID edda = edda();
        complaints.acknowledge(complaint(), edda);
        complaints.acknowledge(complaint(), edda);
        assertThat(sent(CLIENT)).hasSize(1);
        complaints.answer(complaint(), "We looked: the tube was old.", edda);
        complaints.answer(complaint(), "Another word.", edda);
        List<Mail> sent = sent(CLIENT);
        assertThat(sent).hasSize(2);
        assertThat(sent.get(1).getText()).contains("Hello Ottilie,", "there is a message for you", "01632 960 114");
        assertThat((sent.get(1).getSubject() + sent.get(1).getText()).toLowerCase()).doesNotContain("complain", "tube",
            "dye", "edda");
    }

    @Test
    @DisplayName("answered at once it is one mail, not one for each thing it says")
    void oneMailAnAct() {
        complain(UUID.randomUUID());
        complaints.answer(complaint(), "We looked.", edda());
        assertThat(sent(CLIENT)).hasSize(1);
    }

    @Test
    @DisplayName("what was rolled back sends nothing")
    void nothingOfWhatDidNotHappen() {
        assertThatThrownBy(() -> QuarkusTransaction.requiringNew().run(() -> {
            letters.toOwner(Visit.findById(visit));
            letters.toClient(Visit.findById(visit));
            throw new IllegalStateException("the line broke");
        })).hasMessageContaining("the line broke");
        assertThat(sent(SALON)).isEmpty();
        assertThat(sent(CLIENT)).isEmpty();
    }

    @Test
    @DisplayName("a client without an address gets no mail, and the answer stands all the same")
    void withoutAnAddress() {
        visit = make.visit(Optional.of(LocalDate.of(1965, 3, 4)), Optional.empty());
        complain(UUID.randomUUID());
        complaints.answer(complaint(), "We looked.", edda());
        assertThat(sent(CLIENT)).isEmpty();
        assertThat(QuarkusTransaction.requiringNew().call(() -> complaints.answer(ComplaintMade.findById(complaint()))))
            .isEqualTo("We looked.");
    }

    @ParameterizedTest
    @CsvSource({ "es,hay un mensaje", "fr,un message vous attend", "pl,czeka wiadomość", "ar,لدينا رسالة لكم",
        "vi,có tin nhắn" })
    @DisplayName("it is in her language")
    void inHerLanguage(String tag, String words) {
        QuarkusTransaction.requiringNew().run(() -> Client.<Client>findById(
            Visit.<Visit>findById(visit).client.id).reads(tag));
        complain(UUID.randomUUID());
        complaints.answer(complaint(), "We looked.", edda());
        assertThat(sent(CLIENT).get(0).getText()).contains(words);
        assertThat(sent(CLIENT).get(0).getHeaders().get("Content-Language")).containsExactly(tag);
    }

    @Test
    @DisplayName("the owner who reads Spanish is written to in Spanish")
    void inTheOwnersLanguage() {
        salon.as("edda").open("/password").send("#language", Map.of("language", "es")).expect(200);
        complain(UUID.randomUUID());
        List<Mail> sent = sent(SALON);
        salon.as("edda").open("/password").send("#language", Map.of("language", "en")).expect(200);
        assertThat(sent.get(0).getText()).contains("Le ha escrito un cliente");
    }

    @Test
    @DisplayName("what waits to be acknowledged stands once on the owner's page, by its name")
    void onceOnTheOwnersPage() {
        complain(UUID.randomUUID());
        Walker edda = salon.as("edda").open("/owner");
        assertThat(edda.page().select("a[href=/complaints/" + complaint() + "]")).hasSize(1);
        assertThat(edda.page().select("a[href=/desk/visits/" + visit + "]")).isEmpty();
        assertThat(salon.as("sanna").open("/desk").text()).as("the desk keeps its own line")
            .contains("A complaint: the owner acknowledges it");
    }
}
