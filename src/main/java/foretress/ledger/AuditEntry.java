package foretress.ledger;

import foretress.knowledge.Sha256;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * One line of the audit chain.
 *
 * @param number counts from 1 without a gap
 * @param subject keyed pseudonym of the record, hexadecimal; empty for none
 * @param previous hash of the entry before, 64 zeros before the first
 */
record AuditEntry(long number, Instant at, String actor, String what, String subject, String previous) {
    static final String NOTHING_BEFORE = "0".repeat(64);

    AuditEntry {
        at = at.truncatedTo(ChronoUnit.MILLIS); // both databases give back exactly this
    }

    /** SHA-256 over the hash before and every field, each with its length in front, so that no two entries write alike. */
    String sha256() {
        MessageDigest sha = Sha256.begin();
        for (String field : new String[] { previous, Long.toString(number), Long.toString(at.toEpochMilli()), actor,
            what,
            subject }) {
            byte[] bytes = field.getBytes(StandardCharsets.UTF_8);
            sha.update(ByteBuffer.allocate(4).putInt(bytes.length).array());
            sha.update(bytes);
        }
        return Sha256.end(sha);
    }
}
