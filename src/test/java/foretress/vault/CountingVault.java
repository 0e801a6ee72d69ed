package foretress.vault;

import io.quarkus.test.Mock;
import jakarta.inject.Singleton;
import java.security.GeneralSecurityException;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;

/** The vault, which in tests also says what was opened. */
@Mock
@Singleton
public class CountingVault extends Vault {
    private final Map<String, Integer> opened = new ConcurrentHashMap<>();

    CountingVault(ClientKeys keys) {
        super(keys);
    }

    @Override
    byte[] opened(UUID clientId, String place, String sealed) throws GeneralSecurityException {
        opened.merge(place + " " + sealed.hashCode(), 1, Integer::sum);
        return super.opened(clientId, place, sealed);
    }

    public void forget() {
        opened.clear();
    }

    /** Since it was last forgotten: how often each sealed text was opened, by its place. */
    public Map<String, Integer> opened() {
        return new TreeMap<>(opened);
    }
}
