package foretress.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;

/** An entry as it lies in the store or in an export, with the hash that lies beside it. */
record KeptEntry(AuditEntry entry, String sha256) {
    static final String COLUMNS = "number, noted_at, actor, what, subject, previous_sha256, sha256";

    /** @param row of {@link #COLUMNS} */
    static KeptEntry of(ResultSet row) throws SQLException {
        return new KeptEntry(
            new AuditEntry(row.getLong(1), row.getObject(2, OffsetDateTime.class).toInstant(), row.getString(3),
                row.getString(4), row.getString(5), row.getString(6)),
            row.getString(7));
    }

    /** Whether it is as it was written, right after the entry of this number and hash. */
    boolean follows(long number, String hash) {
        return entry.number() == number + 1 && entry.previous().equals(hash) && sha256.equals(entry.sha256());
    }
}
