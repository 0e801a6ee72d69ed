package foretress.told;

import foretress.web.Form;
import jakarta.ws.rs.BadRequestException;
import java.util.UUID;

/** What a page called its form. */
final class Submissions {
    private Submissions() {}

    /** @throws BadRequestException when no page of ours made it */
    static UUID of(Form form) {
        try {
            return UUID.fromString(form.one("submission"));
        } catch (IllegalArgumentException notAnId) {
            throw new BadRequestException("a form without its name", notAnId);
        }
    }
}
