package foretress.visit;

import jakarta.ws.rs.core.Response;

/** Somebody who is here now answers on the salon's tablet straight after booking; the room of invitations hands it over. */
public interface WalkIn {
    /**
     * Locks this browser and puts it into the client's hands.
     *
     * @param known staff asked for the birth date just now, so that the door need not
     */
    Response handTablet(Visit visit, boolean known);
}
