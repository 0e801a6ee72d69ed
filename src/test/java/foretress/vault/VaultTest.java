package foretress.vault;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Base64;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
@DisplayName("B30: what a client said is sealed with the client's own key, in its own place")
class VaultTest {
    private static final byte[] SAID = "hives after a home dye".getBytes(UTF_8);
    private static final String PLACE = "topic_answers.body.7";

    @Inject Vault vault;
    @Inject Durable durable;

    private final UUID client = UUID.randomUUID();

    private String sealed() {
        return QuarkusTransaction.requiringNew().call(() -> vault.seal(client, PLACE, SAID));
    }

    private byte[] opened(UUID client, String place, String sealed) {
        return QuarkusTransaction.requiringNew().call(() -> vault.open(client, place, sealed));
    }

    @Test void opensWhatItSealed() {
        assertThat(opened(client, PLACE, sealed())).isEqualTo(SAID);
    }

    @Test void theSameWordsNeverSealAlike() {
        assertThat(sealed()).isNotEqualTo(sealed());
    }

    @Test void holdsNoClearText() {
        assertThat(new String(Base64.getDecoder().decode(sealed()), UTF_8)).doesNotContain("hives");
    }

    @Test void anotherRowDoesNotOpenIt() {
        var sealed = sealed();
        assertThatThrownBy(() -> opened(client, "topic_answers.body.8", sealed)).isInstanceOf(Unreadable.class);
    }

    @Test void anotherColumnDoesNotOpenIt() {
        var sealed = sealed();
        assertThatThrownBy(() -> opened(client, "assessment.body.7", sealed)).isInstanceOf(Unreadable.class);
    }

    @Test void anotherClientDoesNotOpenIt() {
        var other = UUID.randomUUID();
        QuarkusTransaction.requiringNew().run(() -> vault.seal(other, PLACE, SAID));
        var sealed = sealed();
        assertThatThrownBy(() -> opened(other, PLACE, sealed)).isInstanceOf(Unreadable.class);
    }

    @Test void anotherClientsWrappedKeyDoesNotUnwrapHere() {
        var other = UUID.randomUUID();
        QuarkusTransaction.requiringNew().run(() -> vault.seal(other, PLACE, SAID));
        var sealed = sealed();
        QuarkusTransaction.requiringNew().run(() ->
            ClientKey.update("wrapped = (select k.wrapped from ClientKey k where k.clientId = ?1) where clientId = ?2", client, other));
        assertThatThrownBy(() -> opened(other, PLACE, sealed)).isInstanceOf(Unreadable.class);
    }

    @Test void oneChangedByteDoesNotOpen() {
        var bytes = Base64.getDecoder().decode(sealed());
        bytes[bytes.length / 2] ^= 1;
        var altered = Base64.getEncoder().encodeToString(bytes);
        assertThatThrownBy(() -> opened(client, PLACE, altered)).isInstanceOf(Unreadable.class);
    }

    @Test void aForgottenClientsWordsNeverOpenAgain() {
        var sealed = sealed();
        QuarkusTransaction.requiringNew().run(() -> vault.forget(client));
        assertThatThrownBy(() -> opened(client, PLACE, sealed)).isInstanceOf(Unreadable.class);
    }

    @Test void aFailureTellsThePlaceAndNotTheWords() {
        assertThatThrownBy(() -> opened(client, PLACE, "not sealed at all")).hasMessageContaining(PLACE).hasMessageNotContaining("not sealed");
    }

    @Test void aPlaceWithoutItsRowIsAMistakeInTheProgram() {
        assertThatThrownBy(() -> QuarkusTransaction.requiringNew().run(() -> vault.seal(client, "topic_answers.body", SAID)))
            .isInstanceOf(IllegalStateException.class);
    }

    @Test void nothingIsForcedInsideATransaction() {
        durable.force();
        assertThatThrownBy(() -> QuarkusTransaction.requiringNew().run(durable::force)).isInstanceOf(IllegalStateException.class);
    }
}
