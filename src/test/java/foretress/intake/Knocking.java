package foretress.intake;

import foretress.Walker;
import foretress.invitation.Invitations;
import jakarta.inject.Singleton;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Lets clients born on 4 March 1965 in through the door of a visit. */
@Singleton
public class Knocking {
    private final Invitations invitations;

    Knocking(Invitations invitations) {
        this.invitations = invitations;
    }

    public String link(UUID visit) {
        return invitations.issueLink(visit, "server").replaceAll("^https?://[^/]+", "");
    }

    /** A client before the notice. */
    public Answering come(UUID visit, Map<String, List<String>> told) {
        return come(visit, LocalDate.of(1965, 3, 4), told);
    }

    public Answering come(UUID visit, LocalDate born, Map<String, List<String>> told) {
        Walker walker = new Walker().open(link(visit)).send(Map.of("language", "en")).send(Map.of("day", "" + born.getDayOfMonth(),
            "month", "" + born.getMonthValue(), "year", "" + born.getYear()));
        return new Answering(walker, told);
    }
}
