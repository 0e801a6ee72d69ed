package foretress.post;

import java.util.UUID;

/** A mail has left: the mail server has taken it. Told inside the transaction that notes it. */
public record MailSent(UUID id) {}
