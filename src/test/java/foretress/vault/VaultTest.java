package foretress.vault;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.security.GeneralSecurityException;
import java.time.Clock;
import java.util.Base64;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
@DisplayName("B30: what a client said is sealed with the client's own key, in its own place")
class VaultTest {
    private static final byte[] SAID = "hives after a home dye".getBytes(UTF_8);
    private static final String PLACE = "topic_answers.body.7";

    @Inject Vault vault;
    @Inject Durable durable;
    @ConfigProperty(name = "foretress.master-key") String master;

    private final UUID client = UUID.randomUUID();

    private String sealed() {
        return QuarkusTransaction.requiringNew().call(() -> vault.seal(client, PLACE, SAID));
    }

    private byte[] opened(UUID client, String place, String sealed) {
        return QuarkusTransaction.requiringNew().call(() -> vault.open(client, place, sealed));
    }

    @Test
    void opensWhatItSealed() {
        assertThat(opened(client, PLACE, sealed())).isEqualTo(SAID);
    }

    @Test
    void theSameWordsNeverSealAlike() {
        assertThat(sealed()).isNotEqualTo(sealed());
    }

    @Test
    void holdsNoClearText() {
        assertThat(new String(Base64.getDecoder().decode(sealed().substring(1)), UTF_8)).doesNotContain("hives");
    }

    @Test
    @DisplayName("two servers that make a client's key at the same moment share one")
    void twoServersShareOneKey() throws Exception {
        var both = new CyclicBarrier(2);
        List<CompletableFuture<String>> servers =
            Stream.generate(() -> new ClientKeys(meeting(both), Clock.systemUTC()))
                .limit(2).map(keys -> CompletableFuture.supplyAsync(() -> sealedBy(keys))).toList();
        for (CompletableFuture<String> sealed : servers) {
            assertThat(opened(client, PLACE, sealed.get(30, TimeUnit.SECONDS))).isEqualTo(SAID);
        }
    }

    /** Makes its key only when the other server is about to make one too. */
    private MasterKey meeting(CyclicBarrier both) {
        try {
            return new MasterKey(master, Clock.systemUTC()) {
                @Override
                Wrapped newWrappedKey(UUID clientId) throws GeneralSecurityException {
                    try {
                        both.await(30, TimeUnit.SECONDS);
                    } catch (Exception alone) {
                        throw new IllegalStateException(alone);
                    }
                    return super.newWrappedKey(clientId);
                }
            };
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    private String sealedBy(ClientKeys keys) {
        return QuarkusTransaction.requiringNew().call(() -> keys.toSeal(client).seal(PLACE, SAID, SizeClass.DOCUMENT));
    }

    @Test
    void anotherRowDoesNotOpenIt() {
        String sealed = sealed();
        assertThatThrownBy(() -> opened(client, "topic_answers.body.8", sealed)).isInstanceOf(Unreadable.class);
    }

    @Test
    void anotherColumnDoesNotOpenIt() {
        String sealed = sealed();
        assertThatThrownBy(() -> opened(client, "assessment.body.7", sealed)).isInstanceOf(Unreadable.class);
    }

    @Test
    void anotherClientDoesNotOpenIt() {
        UUID other = UUID.randomUUID();
        QuarkusTransaction.requiringNew().run(() -> vault.seal(other, PLACE, SAID));
        String sealed = sealed();
        assertThatThrownBy(() -> opened(other, PLACE, sealed)).isInstanceOf(Unreadable.class);
    }

    @Test
    void anotherClientsWrappedKeyDoesNotUnwrapHere() {
        UUID other = UUID.randomUUID();
        QuarkusTransaction.requiringNew().run(() -> vault.seal(other, PLACE, SAID));
        String sealed = sealed();
        QuarkusTransaction.requiringNew()
            .run(() -> ClientKey.update(
                "wrapped = (select k.wrapped from ClientKey k where k.clientId = ?1) where clientId = ?2", client,
                other));
        assertThatThrownBy(() -> opened(other, PLACE, sealed)).isInstanceOf(Unreadable.class);
    }

    @Test
    void oneChangedByteDoesNotOpen() {
        byte[] bytes = Base64.getDecoder().decode(sealed().substring(1));
        bytes[bytes.length / 2] ^= 1;
        String altered = SizeClass.MARK + Base64.getEncoder().encodeToString(bytes);
        assertThatThrownBy(() -> opened(client, PLACE, altered)).isInstanceOf(Unreadable.class);
    }

    @Test
    void aForgottenClientsWordsNeverOpenAgain() {
        String sealed = sealed();
        QuarkusTransaction.requiringNew().run(() -> vault.forget(client));
        assertThatThrownBy(() -> opened(client, PLACE, sealed)).isInstanceOf(Unreadable.class);
    }

    @Test
    void aFailureTellsThePlaceAndNotTheWords() {
        assertThatThrownBy(() -> opened(client, PLACE, "not sealed at all")).hasMessageContaining(PLACE)
            .hasMessageNotContaining("not sealed");
    }

    @Test
    void aPlaceWithoutItsRowIsAMistakeInTheProgram() {
        assertThatThrownBy(
            () -> QuarkusTransaction.requiringNew().run(() -> vault.seal(client, "topic_answers.body", SAID)))
            .isInstanceOf(IllegalStateException.class);
    }

    @Test
    @DisplayName("R61: the length of what is sealed tells a few steps apart, not the words")
    void shortAndLongAnswersSealToOneLength() {
        assertThat(sealedLength(0)).isEqualTo(sealedLength(1)).isEqualTo(sealedLength(2000))
            .isLessThan(sealedLength(2100));
        assertThat(sealedLength(5000)).isEqualTo(sealedLength(8000));
    }

    /** Letters that no deflating shortens. */
    private int sealedLength(int letters) {
        byte[] bytes = new byte[letters];
        new Random(7).nextBytes(bytes);
        return QuarkusTransaction.requiringNew().call(() -> {
            String sealed = vault.seal(client, PLACE, bytes);
            assertThat(vault.open(client, PLACE, sealed)).isEqualTo(bytes);
            return sealed.length();
        });
    }

    @Test
    @DisplayName("R61: a code is the same for the same words, and another one for another column or client")
    void codesTellEqualWordsOfOneClientAndColumn() {
        UUID other = UUID.randomUUID();
        QuarkusTransaction.requiringNew().run(() -> {
            String code = vault.code(client, "read_back.answers_code", "yes");
            assertThat(code).hasSize(64).isEqualTo(vault.code(client, "read_back.answers_code", "yes"));
            assertThat(Set.of(code, vault.code(client, "read_back.answers_code", "no"),
                vault.code(client, "assessment.answers_code", "yes"),
                vault.code(other, "read_back.answers_code", "yes"))).hasSize(4);
        });
    }

    @Test
    @DisplayName("R61: a client's key deleted, the codes are nobody's any more")
    void aForgottenClientsCodesCannotBeMadeAgain() {
        String before = QuarkusTransaction.requiringNew().call(() -> vault.code(client, "task.open_as", "CALL"));
        QuarkusTransaction.requiringNew().run(() -> vault.forget(client));
        assertThat(QuarkusTransaction.requiringNew().call(() -> vault.code(client, "task.open_as", "CALL")))
            .isNotEqualTo(before);
    }

    @Test
    void nothingIsForcedInsideATransaction() {
        durable.force();
        assertThatThrownBy(() -> QuarkusTransaction.requiringNew().run(durable::force))
            .isInstanceOf(IllegalStateException.class);
    }
}
