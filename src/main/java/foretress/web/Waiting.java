package foretress.web;

import java.util.HashMap;
import java.util.Map;

/** Bytes received so far of bodies that are not here yet, together and by network: one network may fill half of what there is. */
class Waiting {
    private final long most;
    private final Map<String, Long> byNetwork = new HashMap<>();
    private long together;

    /** @param most bytes */
    Waiting(long most) {
        this.most = most;
    }

    /** Takes note of more bytes; false, and nothing noted, when there is no room. */
    synchronized boolean room(String network, long bytes) {
        long ofThis = byNetwork.getOrDefault(network, 0L);
        if (together + bytes > most || ofThis + bytes > most / 2) {
            return false;
        }
        together += bytes;
        byNetwork.put(network, ofThis + bytes);
        return true;
    }

    synchronized void gone(String network, long bytes) {
        together -= bytes;
        byNetwork.computeIfPresent(network, (any, before) -> before > bytes ? before - bytes : null);
    }

    synchronized long together() {
        return together;
    }
}
