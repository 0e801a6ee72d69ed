package foretress.invitation;

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
        return byAddress.computeIfAbsent(network(address), any -> bucket(perAddress)).tryConsume(1)
            && together.tryConsume(1);
    }

    static String network(String address) {
        if (!address.contains(":")) return address;
        String[] groups = expanded(address).split(":");
        return String.join(":", groups[0], groups[1], groups[2], groups[3]);
    }

    /** Writes out the zeros that {@code ::} stands for, so that the first four groups can be read off. */
    private static String expanded(String address) {
        String bare = address.replaceAll("%.*", "");
        int gap = bare.indexOf("::");
        if (gap < 0) return bare;
        String before = bare.substring(0, gap);
        String after = bare.substring(gap + 2);
        int missing = 8 - groups(before) - groups(after);
        String zeros = ":0".repeat(Math.max(missing, 1)).substring(1);
        return (before.isEmpty() ? "" : before + ":") + zeros + (after.isEmpty() ? "" : ":" + after);
    }

    private static int groups(String part) {
        return part.isEmpty() ? 0 : part.split(":").length;
    }

    private static Bucket bucket(int knocks) {
        return Bucket.builder().addLimit(
            Bandwidth.builder().capacity(knocks).refillGreedy(knocks, REFILL).build()).build();
    }
}
