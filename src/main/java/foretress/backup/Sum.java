package foretress.backup;

import foretress.knowledge.Sha256;
import java.math.BigInteger;
import java.security.MessageDigest;

/**
 * Counts rows and adds up their SHA-256 modulo 2^256: the same whatever order the rows come in, since no order by text or uuid is the
 * same in both databases. It finds what was lost or changed by accident; against a forger the encryption stands.
 */
public final class Sum {
    private static final BigInteger ROUND = BigInteger.ONE.shiftLeft(256);

    /** @param sum 64 hexadecimal digits */
    public record Of(long rows, String sum) {
        static final Of NONE = new Of(0, "0".repeat(64));
    }

    private final MessageDigest digest = Sha256.begin();
    private long rows;
    private BigInteger sum = BigInteger.ZERO;

    void add(byte[] row, int length) {
        digest.update(row, 0, length);
        sum = sum.add(new BigInteger(1, digest.digest())).mod(ROUND);
        rows++;
    }

    Of done() {
        return new Of(rows, "%064x".formatted(sum));
    }
}
