package foretress.invitation;

import java.time.Instant;
import java.util.UUID;

/**
 * How a client came in.
 *
 * @param sentBy staff id, or "server"
 * @param openedAt when the right birth date was given
 * @param birthDateOnFile it was the one on file; else the client gave it and the desk confirms
 * @param tries birth dates it took, 1 or more
 * @param onTablet on the salon's own tablet, which {@code sentBy} handed over
 * @param vouched nobody asked at the door: staff had the client before them and handed over the tablet
 */
public record Entrance(UUID invitationId, Invitation.Way way, String sentBy, Instant sentAt, Instant openedAt,
    boolean birthDateOnFile,
    int tries, boolean onTablet, boolean vouched) {}
