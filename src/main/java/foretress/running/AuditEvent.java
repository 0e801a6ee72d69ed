package foretress.running;

/**
 * Something worth an entry in the audit chain, said by a room that stands below the chain.
 *
 * @param actor who did it: a staff id, "client", "nobody" or "server"
 * @param what the act, in a few fixed words, never anything the client said
 * @param subject the record it was done to; kept as a keyed pseudonym only
 */
public record AuditEvent(String actor, String what, String subject) {}
