package foretress.salon;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/** A hash as an earlier release with less effort might have left it. */
final class OldHash {
    private OldHash() {}

    static String of(String password) {
        byte[] salt = "some salt here..".getBytes(StandardCharsets.US_ASCII);
        var argon = new Argon2BytesGenerator();
        argon.init(new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id).withMemoryAsKB(8192).withIterations(1)
            .withParallelism(1).withSalt(salt).build());
        byte[] hash = new byte[32];
        argon.generateBytes(password.getBytes(StandardCharsets.UTF_8), hash);
        Base64.Encoder encoder = Base64.getEncoder().withoutPadding();
        return "$argon2id$v=19$m=8192,t=1,p=1$%s$%s".formatted(encoder.encodeToString(salt),
            encoder.encodeToString(hash));
    }
}
