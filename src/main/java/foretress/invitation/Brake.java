package foretress.invitation;

import foretress.web.Network;
import io.github.bucket4j.Bandwidth;
import io.github.bucket4j.Bucket;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Slows whoever knocks too often: so many knocks from one address, and so many from all together. The lock on a link
 * stops guessing at one birth date; this stops guessing at many links. Forgets at a restart, which is no matter.
 */
@ApplicationScoped
public class Brake {
    private static final int ADDRESSES = 20_000;
    private static final Duration REFILL = Duration.ofMinutes(10);

    private final int perAddress;
    private final Bucket together;
    private final Map<String, Bucket> byAddress = Collections.synchronizedMap(new LinkedHashMap<>(64, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
            return size() > ADDRESSES;
        }
    });

    Brake(@ConfigProperty(name = "foretress.door.knocks-per-address", defaultValue = "40") int perAddress,
          @ConfigProperty(name = "foretress.door.knocks-together", defaultValue = "2000") int together) {
        this.perAddress = perAddress;
        this.together = bucket(together);
    }

    /** Whether this knock is let through; addresses of one IPv6 /64 network count as one. */
    boolean lets(String address) {
        return byAddress.computeIfAbsent(Network.of(address), any -> bucket(perAddress)).tryConsume(1)
            && together.tryConsume(1);
    }

    private static Bucket bucket(int knocks) {
        return Bucket.builder().addLimit(
            Bandwidth.builder().capacity(knocks).refillGreedy(knocks, REFILL).build()).build();
    }
}
