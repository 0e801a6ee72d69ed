package foretress.told;

import foretress.web.Form;
import jakarta.ws.rs.BadRequestException;
import java.util.UUID;

/** What a page called its form. */
final class Submissions {
    private Submissions() {}

    /** @throws BadRequestException when no page of ours made it */
    static UUID of(Form form) {
        return of(form.one("submission"));
    }

    /** @throws BadRequestException as {@link #of(Form)} */
    static UUID of(String submission) {
        try {
            return UUID.fromString(String.valueOf(submission));
        } catch (IllegalArgumentException notAnId) {
            throw new BadRequestException("a form without its name", notAnId);
        }
    }
}
