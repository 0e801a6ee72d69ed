package foretress.consent;

import foretress.knowledge.Sha256;
import foretress.ledger.Ledger;
import foretress.vault.Vault;
import foretress.visit.Visit;
import foretress.web.PublicAddress;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import jakarta.persistence.LockModeType;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;

/** The signed consents: signing, and reading what was signed. */
@Singleton
public class Consents {
    private static final String TEXT = "signed_consent.text_code", PDF = "signed_consent.pdf_code";

    private final Vault vault;
    private final Ledger ledger;
    private final PublicAddress address;

    Consents(Vault vault, Ledger ledger, PublicAddress address) {
        this.address = address;
        this.vault = vault;
        this.ledger = ledger;
    }

    /**
     * Signs, once for a submission however often it comes. When this returns, the document is on the device, so that a page
     * may say "signed". Call it outside a transaction.
     *
     * @param along what must be true together with the signing, e.g. the visit's next state; runs in the same transaction,
     *     with the visit locked, and only for a new signing
     * @throws TextChanged when the client read another text than the one that would be signed now
     * @throws OtherVisit when the form was made for another one
     * @throws Evidence.Missing when not every statement of the text was agreed to
     */
    public SignedConsent sign(ConsentInput input, SignatureMark mark, Evidence evidence, PaperSize size,
        BiConsumer<Visit, SignedConsent> along) {
        return QuarkusTransaction.requiringNew().call(() -> {
            Visit visit = locked(input.visit().id());
            return SignedConsent.submitted(evidence.submissionId())
                .map(earlier -> sameVisit(earlier, visit))
                .orElseGet(() -> {
                    SignedConsent fresh = keep(input, checked(input, evidence), mark, evidence, size);
                    along.accept(visit, fresh);
                    return fresh;
                });
        });
    }

    /** Two signings of one visit stand in line, so that each knows which one it supersedes. */
    private static Visit locked(UUID visitId) {
        return Visit.<Visit>find("id", visitId).withLock(LockModeType.PESSIMISTIC_WRITE).singleResult();
    }

    /** When consent to the service was signed first, by visit; a visit without one is not in it. */
    public Map<UUID, Instant> firstSigned(Collection<UUID> visits) {
        if (visits.isEmpty()) {
            return Map.of();
        }
        return SignedConsent.getEntityManager().createQuery(
            "select c.visitId, min(c.signedAt) from SignedConsent c where c.visitId in ?1 and c.purpose = ?2 group by c.visitId",
            Object[].class).setParameter(1, visits).setParameter(2, ConsentInput.Purpose.SERVICE).getResultList()
            .stream()
            .collect(Collectors.toMap(row -> (UUID) row[0], row -> (Instant) row[1]));
    }

    /**
     * Stands in the first line of a text for this visit and on its paper, so that nobody can tell a text from its hash alone by trying,
     * and everybody can who holds the paper.
     *
     * @return 32 hexadecimal digits, the same each time
     */
    public String salt(UUID clientId, UUID visitId) {
        return vault.code(clientId, "signed_consent.salt", visitId.toString()).substring(0, 32);
    }

    /** The signing that holds now; empty before the first. */
    public Optional<SignedConsent> latest(UUID visitId) {
        return all(visitId).stream().findFirst();
    }

    /** Every signing of the visit before its service, newest first. */
    public List<SignedConsent> all(UUID visitId) {
        return all(visitId, ConsentInput.Purpose.SERVICE);
    }

    /** Has those of each of these visits at hand. */
    public void ready(Collection<UUID> visits) {
        SignedConsent.ready(visits, ConsentInput.Purpose.SERVICE);
    }

    public List<SignedConsent> all(UUID visitId, ConsentInput.Purpose purpose) {
        return SignedConsent.ofVisit(visitId, purpose);
    }

    /**
     * The very bytes that were signed.
     *
     * @throws Altered when they are not
     */
    public byte[] pdf(SignedConsent consent) {
        return unaltered(consent, open(consent, "pdf", consent.pdf), consent.pdfCode, "document", PDF);
    }

    /** The text as the client read it, in its canonical spelling. */
    public String text(SignedConsent consent) {
        byte[] bytes = unaltered(consent, open(consent, "body", consent.body), consent.textCode, "text", TEXT);
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /** What is known of how it was signed; for the owner and for an export, never for a list. */
    public KeptEvidence evidence(SignedConsent consent) {
        return KeptEvidence.read(open(consent, "evidence", consent.evidence));
    }

    private static ConsentText checked(ConsentInput input, Evidence evidence) {
        ConsentText text = ConsentText.of(input, ConsentWords.in(input.language()));
        if (!text.sha256().equals(evidence.text().textSha256())) {
            throw new TextChanged();
        }
        List<String> asked = text.statements().stream().map(ConsentText.Line.Statement::id).toList();
        if (!List.copyOf(evidence.agreed()).equals(asked)) {
            throw new Evidence.Missing(
                "every statement has its own tick; asked %s, ticked %s".formatted(asked, evidence.agreed()));
        }
        return text;
    }

    private static SignedConsent sameVisit(SignedConsent earlier, Visit visit) {
        if (!earlier.visitId().equals(visit.id)) {
            throw new OtherVisit();
        }
        return earlier;
    }

    private SignedConsent keep(ConsentInput input, ConsentText text, SignatureMark mark, Evidence evidence,
        PaperSize size) {
        Optional<SignedConsent> before = all(input.visit().id(), input.purpose()).stream().findFirst();
        var how = new HowSigned(UUID.randomUUID(), before.map(one -> one.versionNo()).orElse(0) + 1,
            before.map(one -> new HowSigned.Superseded(one.id(), one.versionNo(), one.signedAt())), evidence);
        byte[] pdf = ConsentPaper.print(input, text, mark, how, size, address.link("/verify"));
        var fresh = new SignedConsent(input, text, mark, how);
        fresh.papers(paper(fresh, "body", text.canonical().getBytes(StandardCharsets.UTF_8)),
            paper(fresh, "evidence", new KeptEvidence(how, mark, Sha256.of(pdf)).bytes()), seal(fresh, "pdf", pdf));
        fresh.named(vault.code(fresh.clientId(), TEXT, text.sha256()),
            vault.code(fresh.clientId(), PDF, Sha256.of(pdf)));
        fresh.persist();
        ledger.note("client",
            input.purpose() == ConsentInput.Purpose.SERVICE ? "consent signed" : "consent to a skin test signed",
            fresh.id().toString());
        return fresh;
    }

    private String paper(SignedConsent row, String part, byte[] plain) {
        return vault.sealPaper(row.clientId(), row.place(part), plain);
    }

    private String seal(SignedConsent row, String part, byte[] plain) {
        return vault.seal(row.clientId(), row.place(part), plain);
    }

    private byte[] open(SignedConsent row, String part, String sealed) {
        return vault.open(row.clientId(), row.place(part), sealed);
    }

    private byte[] unaltered(SignedConsent row, byte[] bytes, String code, String what, String column) {
        if (!vault.code(row.clientId(), column, Sha256.of(bytes)).equals(code)) {
            throw new Altered(row.id(), what);
        }
        return bytes;
    }

    /** The text would not be the one the client read: show it anew and ask again. */
    public static final class TextChanged extends IllegalStateException {
        TextChanged() {
            super("something changed since this page was shown: read it once more, then sign");
        }
    }

    /** The form was made for another visit: no browser sends that by itself. */
    public static final class OtherVisit extends IllegalArgumentException {
        OtherVisit() {
            super("this form was made for another visit");
        }
    }

    /** What is stored is not what was signed. */
    public static final class Altered extends IllegalStateException {
        Altered(UUID id, String what) {
            super("the %s of the signed consent %s is not the one that was signed".formatted(what, id));
        }
    }
}
