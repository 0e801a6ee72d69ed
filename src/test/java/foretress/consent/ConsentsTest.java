package foretress.consent;

import static foretress.consent.Consenting.aConsent;
import static foretress.consent.Consenting.aDrawing;
import static foretress.consent.Consenting.evidenceFor;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foretress.api.Command;
import foretress.knowledge.Sha256;
import foretress.salon.OpenSalon;
import foretress.seal.SealCheck;
import foretress.seal.Seals;
import foretress.visit.Booked;
import foretress.visit.Booking;
import foretress.visit.Client;
import foretress.visit.Clients;
import foretress.visit.Visit;
import foretress.visit.Visits;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@QuarkusTest
class ConsentsTest {
    @Inject Consents consents;
    @Inject SealedPapers papers;
    @Inject Seals seals;
    @Inject Clients clients;
    @Inject Visits visits;
    @Inject DataSource store;
    @Inject OpenSalon salon;

    private Client client;
    private Visit visit;

    @BeforeEach
    void aVisit() {
        salon.open();
        client = clients
            .add(new Clients.Person("Ottilie", "Brandt", Optional.empty(), Optional.empty(), Optional.empty(), "en"));
        LocalDateTime wall = LocalDateTime.of(2026, 6, 11, 14, 0);
        visit = visits.book(new Booking(UUID.randomUUID().toString(), client.id, wall, Consenting.LONDON,
            wall.atZone(Consenting.LONDON).toInstant(), UUID.randomUUID(),
            List.of(new Booked("colour-whole", List.of("colour")))));
    }

    private Consenting ours() {
        return aConsent().at(visit.id, client.id);
    }

    private SignedConsent sign(Consenting consent, UUID submission) {
        return consents.sign(consent.input(), aDrawing(), evidenceFor(consent.text(), submission), PaperSize.A4,
            (v, c) -> {});
    }

    private SignedConsent sign(Consenting consent) {
        return sign(consent, UUID.randomUUID());
    }

    @Test
    @DisplayName("D10, C2: the stored text and the stored document are the ones that were read, byte for byte")
    void whatWasReadIsWhatIsKept() throws Exception {
        SignedConsent signed = sign(ours());
        assertThat(consents.text(signed)).isEqualTo(ours().text().canonical());
        byte[] pdf = consents.pdf(consents.latest(visit.id).orElseThrow());
        assertThat(Sha256.of(pdf)).isEqualTo(consents.evidence(signed).pdfSha256());
        try (PDDocument read = Loader.loadPDF(pdf)) {
            assertThat(read.getNumberOfPages()).isPositive();
        }
    }

    @Test
    @DisplayName("D12: the whole evidence comes back as it was given, with the mark itself")
    void theEvidenceIsKeptWhole() {
        Evidence evidence = evidenceFor(ours().text(), UUID.randomUUID());
        SignedConsent signed = consents.sign(ours().input(), aDrawing(), evidence, PaperSize.A4, (v, c) -> {});
        KeptEvidence kept = consents.evidence(signed);
        assertThat(kept.how().evidence()).isEqualTo(evidence);
        assertThat(kept.mark()).isEqualTo(aDrawing());
        assertThat(kept.pdfSha256()).isEqualTo(Sha256.of(consents.pdf(signed)));
    }

    @Test
    @DisplayName("D1, D3: what was signed is sealed once, stays PDF/A, and its own bytes are the beginning")
    void whatWasSignedIsSealedOnce() {
        SignedConsent signed = sign(ours());
        while (papers.sealDue() > 0) {
            assertThat(consents.pdf(signed)).isNotEmpty();
        }
        byte[] sealed = papers.of(signed), own = consents.pdf(signed);
        assertThat(Arrays.copyOf(sealed, own.length)).isEqualTo(own);
        assertThat(papers.of(signed)).isEqualTo(sealed);
        assertThat(SealCheck.of(sealed, seals.certificates())).isEqualTo(SealCheck.Verdict.UNCHANGED);
        assertThat(VeraPdf.brokenRules(sealed)).isEmpty();
    }

    @Test
    @DisplayName("D9: a paper is checked from the file and the certificates alone, by the command")
    void theCommandChecksAPaper(@TempDir Path folder) throws Exception {
        byte[] sealed = papers.of(sign(ours()));
        Path certificates = folder.resolve("seal.pem");
        RestAssured.given().get("/seal.pem").then().statusCode(200);
        Files.write(certificates, RestAssured.given().get("/seal.pem").asByteArray());
        byte[] changed = sealed.clone();
        changed[sealed.length / 3] ^= 1;
        Path whole = Files.write(folder.resolve("whole.pdf"), sealed);
        Path other = Files.write(folder.resolve("changed.pdf"), changed);
        Path plain = Files.write(folder.resolve("plain.pdf"), consents.pdf(consents.latest(visit.id).orElseThrow()));
        assertThat(command(0, "--certificate", certificates, whole)).contains("not a byte changed since");
        assertThat(command(1, "--certificate", certificates, whole, other)).contains("changed.pdf: CHANGED");
        assertThat(command(1, "--certificate", certificates, plain)).contains("NOT SEALED");
        assertThat(command(2, "--certificate", whole, whole)).contains("holds no certificates");
        assertThat(command(2, "--certificate", certificates, folder.resolve("none.pdf"))).contains("cannot be read");
        assertThat(command(2, whole)).contains("--certificate");
    }

    private static String command(int status, Object... arguments) {
        String[] given = Stream.concat(Stream.of("verify-paper"), Stream.of(arguments).map(Object::toString))
            .toArray(String[]::new);
        var said = new ByteArrayOutputStream();
        var out = new PrintStream(said, true, StandardCharsets.UTF_8);
        assertThat(Command.run(given, InputStream.nullInputStream(), out, out, List.of())).isEqualTo(status);
        return said.toString(StandardCharsets.UTF_8);
    }

    @Test
    @DisplayName("C7, D7: a second signing supersedes the first, and both can still be read")
    void signingAgainSupersedesAndOverwritesNothing() {
        SignedConsent first = sign(ours());
        byte[] firstBytes = consents.pdf(first);
        SignedConsent second = sign(ours().testing());
        assertThat(second.versionNo()).isEqualTo(2);
        assertThat(second.supersedes()).contains(first.id());
        assertThat(consents.all(visit.id)).extracting(one -> one.id()).containsExactly(second.id(), first.id());
        assertThat(consents.pdf(consents.all(visit.id).get(1))).isEqualTo(firstBytes);
    }

    @Test
    @DisplayName("F7: pressing Sign twice signs once, and what goes along with it happens once")
    void theSameSubmissionSignsOnce() throws Exception {
        UUID submission = UUID.randomUUID();
        var along = new AtomicInteger();
        Evidence evidence = evidenceFor(ours().text(), submission);
        Callable<SignedConsent> press = () -> consents.sign(ours().input(), aDrawing(), evidence, PaperSize.A4,
            (v, c) -> along.incrementAndGet());
        ExecutorService hands = Executors.newFixedThreadPool(4);
        try {
            for (Future<SignedConsent> pressed : hands.invokeAll(IntStream.range(0, 8).mapToObj(i -> press).toList())) {
                assertThat(pressed.get().submission()).isEqualTo(submission);
            }
        } finally {
            hands.shutdown();
        }
        assertThat(consents.all(visit.id)).hasSize(1);
        assertThat(along).hasValue(1);
    }

    @Test
    @DisplayName("F6: two different signings at once stand in line, versions 1 and 2")
    void twoSigningsAtOnceAreNumbered() throws Exception {
        ExecutorService hands = Executors.newFixedThreadPool(4);
        try {
            Callable<SignedConsent> press = () -> sign(ours());
            for (Future<SignedConsent> pressed : hands.invokeAll(List.of(press, press, press, press))) {
                pressed.get();
            }
        } finally {
            hands.shutdown();
        }
        assertThat(consents.all(visit.id)).extracting(one -> one.versionNo()).containsExactly(4, 3, 2, 1);
    }

    @Test
    @DisplayName("D10: who read another text than the one that would be signed is asked to read again; nothing is kept")
    void aChangedTextIsNotSigned() {
        Evidence read = evidenceFor(ours().testing().text(), UUID.randomUUID());
        assertThatThrownBy(() -> consents.sign(ours().input(), aDrawing(), read, PaperSize.A4, (v, c) -> {}))
            .isInstanceOf(Consents.TextChanged.class);
        assertThat(consents.all(visit.id)).isEmpty();
    }

    @Test
    @DisplayName("D11: a statement without its own tick is not signed")
    void everyStatementIsTicked() {
        ConsentText text = ours().text();
        Evidence evidence = evidenceFor(text, UUID.randomUUID());
        Evidence oneLess = Evidences.with(evidence, "agreed", evidence.agreed().subList(1, evidence.agreed().size()));
        assertThatThrownBy(() -> consents.sign(ours().input(), aDrawing(), oneLess, PaperSize.A4, (v, c) -> {}))
            .isInstanceOf(Evidence.Missing.class);
        assertThat(consents.all(visit.id)).isEmpty();
    }

    @Test
    void whatFailsAlongsideLeavesNothingSigned() {
        assertThatThrownBy(
            () -> consents.sign(ours().input(), aDrawing(), evidenceFor(ours().text(), UUID.randomUUID()),
                PaperSize.A4, (v, c) -> {
                    throw new IllegalStateException("the visit was cancelled meanwhile");
                }))
            .isInstanceOf(RuntimeException.class);
        assertThat(consents.all(visit.id)).isEmpty();
    }

    @Test
    void aSubmissionOfAnotherVisitIsRefused() {
        UUID submission = UUID.randomUUID();
        sign(ours(), submission);
        aVisit();
        assertThatThrownBy(() -> sign(ours(), submission)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    @DisplayName("C7: a signed consent has no way of being changed")
    void changingAStoredRowChangesNothing() {
        SignedConsent signed = sign(ours());
        QuarkusTransaction.requiringNew().run(() -> {
            SignedConsent stored = SignedConsent.findById(signed.id());
            stored.pdfCode = "0".repeat(64);
            stored.markKind = SignatureMark.Kind.TYPED;
        });
        SignedConsent after = QuarkusTransaction.requiringNew().call(() -> SignedConsent.findById(signed.id()));
        assertThat(after.pdfCode).isEqualTo(signed.pdfCode);
        assertThat(after.markKind).isEqualTo(SignatureMark.Kind.DRAWN);
    }

    @Test
    @DisplayName("D8: a document that is not the signed one is never handed out")
    void anAlteredDocumentIsNotHandedOut() throws SQLException {
        SignedConsent signed = sign(ours());
        try (Connection connection = store.getConnection();
            PreparedStatement update =
                connection.prepareStatement("update signed_consent set pdf_code = ? where id = ?")) {
            update.setString(1, "0".repeat(64));
            update.setObject(2, signed.id());
            update.executeUpdate();
        }
        SignedConsent stored = QuarkusTransaction.requiringNew().call(() -> SignedConsent.findById(signed.id()));
        assertThatThrownBy(() -> consents.pdf(stored)).isInstanceOf(Consents.Altered.class);
    }

    @Test
    @DisplayName("R61: no hash of the text or the document lies open in the row")
    void noHashLiesOpen() throws SQLException {
        SignedConsent signed = sign(ours());
        KeptEvidence evidence = consents.evidence(signed);
        for (String value : values(signed)) {
            assertThat(value).doesNotContain(ours().text().sha256(), evidence.pdfSha256());
        }
    }

    @Test
    @DisplayName("R61: a text hashes differently in every visit, and its salt stands on the paper beside the hash")
    void theHashOnPaperIsSaltedByThePaper() throws Exception {
        ConsentInput salted = ours().input().salted(consents.salt(client.id, visit.id));
        ConsentText text = ConsentText.of(salted, ConsentWords.in("en"));
        assertThat(text.sha256()).isNotEqualTo(ours().text().sha256());
        assertThat(consents.salt(client.id, visit.id)).isEqualTo(text.salt())
            .isNotEqualTo(consents.salt(client.id, UUID.randomUUID()));
        SignedConsent signed =
            consents.sign(salted, aDrawing(), evidenceFor(text, UUID.randomUUID()), PaperSize.A4, (v, c) -> {});
        String printed = Read.plain(Read.body(consents.pdf(signed)));
        assertThat(printed).contains(text.sha256(), text.salt());
        assertThat(Sha256.of(consents.text(signed))).isEqualTo(text.sha256());
    }

    private List<String> values(SignedConsent signed) throws SQLException {
        try (Connection connection = store.getConnection();
            PreparedStatement query = connection.prepareStatement("select * from signed_consent where id = ?")) {
            query.setObject(1, signed.id());
            ResultSet row = query.executeQuery();
            row.next();
            var values = new ArrayList<String>();
            for (int column = 1; column <= row.getMetaData().getColumnCount(); column++) {
                values.add(String.valueOf(row.getString(column)));
            }
            return values;
        }
    }

    @Test
    @DisplayName("B30: no name and no answer lies open in the row")
    void theRowHoldsNoClearText() throws SQLException {
        SignedConsent signed = sign(ours());
        try (Connection connection = store.getConnection();
            PreparedStatement query = connection.prepareStatement("select * from signed_consent where id = ?")) {
            query.setObject(1, signed.id());
            ResultSet row = query.executeQuery();
            assertThat(row.next()).isTrue();
            for (int column = 1; column <= row.getMetaData().getColumnCount(); column++) {
                String value = String.valueOf(row.getString(column));
                assertThat(value).doesNotContain("Brandt", "henna", "Henna", "skin", "Drawn", "points");
            }
        }
    }
}
