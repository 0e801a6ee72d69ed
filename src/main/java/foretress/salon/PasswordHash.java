package foretress.salon;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.text.Normalizer;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/**
 * A password's Argon2id hash with everything needed to check it, written in the usual form
 * {@code $argon2id$v=19$m=19456,t=2,p=1$salt$hash}. Memory in KiB; the least OWASP's Password Storage sheet allows is 19 MiB, t=2, p=1.
 */
record PasswordHash(int memoryKiB, int rounds, int lanes, byte[] salt, byte[] hash) {
    private static final Pattern FORM =
        Pattern.compile("\\$argon2id\\$v=19\\$m=(\\d+),t=(\\d+),p=(\\d+)\\$([^$]+)\\$([^$]+)");
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int MEMORY_KIB = 19 * 1024;
    private static final int ROUNDS = 2;
    private static final int LANES = 1;
    private static final int HASH_BYTES = 32;

    static PasswordHash of(String password) {
        byte[] salt = random(16);
        return new PasswordHash(MEMORY_KIB, ROUNDS, LANES, salt,
            hash(password, MEMORY_KIB, ROUNDS, LANES, salt, HASH_BYTES));
    }

    /** One that no password has, as slow to check as any other; made without hashing. */
    static PasswordHash ofNobody() {
        return new PasswordHash(MEMORY_KIB, ROUNDS, LANES, random(16), random(HASH_BYTES));
    }

    private static byte[] random(int bytes) {
        byte[] random = new byte[bytes];
        RANDOM.nextBytes(random);
        return random;
    }

    /** @throws IllegalArgumentException when it is not such a hash */
    static PasswordHash parse(String text) {
        Matcher m = FORM.matcher(text);
        if (!m.matches()) {
            throw new IllegalArgumentException("not an Argon2id hash");
        }
        Base64.Decoder decoder = Base64.getDecoder();
        return new PasswordHash(Integer.parseInt(m.group(1)), Integer.parseInt(m.group(2)),
            Integer.parseInt(m.group(3)),
            decoder.decode(m.group(4)), decoder.decode(m.group(5)));
    }

    boolean matches(String password) {
        return MessageDigest.isEqual(hash, hash(password, memoryKiB, rounds, lanes, salt, hash.length));
    }

    /** Made with less effort than is asked today. */
    boolean isOutdated() {
        return memoryKiB < MEMORY_KIB || rounds < ROUNDS;
    }

    /** The same letter composed or with its accent apart is the same password (NFC); otherwise every character counts. */
    private static byte[] hash(String password, int memoryKiB, int rounds, int lanes, byte[] salt, int length) {
        var argon = new Argon2BytesGenerator();
        argon.init(
            new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id).withVersion(Argon2Parameters.ARGON2_VERSION_13)
                .withMemoryAsKB(memoryKiB).withIterations(rounds).withParallelism(lanes).withSalt(salt).build());
        byte[] hash = new byte[length];
        argon.generateBytes(Normalizer.normalize(password, Normalizer.Form.NFC).getBytes(StandardCharsets.UTF_8), hash);
        return hash;
    }

    @Override
    public String toString() {
        Base64.Encoder encoder = Base64.getEncoder().withoutPadding();
        return "$argon2id$v=19$m=%d,t=%d,p=%d$%s$%s".formatted(memoryKiB, rounds, lanes, encoder.encodeToString(salt),
            encoder.encodeToString(hash));
    }
}
