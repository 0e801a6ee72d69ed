package foretress.vault;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.Arrays;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What master.key holds: one key a line, in base64, each but the first ever made followed by the instant from which data keys are wrapped
 * by it. All of them open; a key from a later moment is already known to every server when that moment comes.
 *
 * @param newestFirst at least one
 */
public record MasterKeys(List<One> newestFirst) {
    /** Bytes of a key. */
    public static final int BYTES = 32;

    /** @param from {@link Instant#MIN} of the first one ever made */
    public record One(byte[] key, Instant from) {
        public One {
            if (key.length != BYTES) {
                throw new IllegalArgumentException("a master key has %d bytes, not %d".formatted(BYTES, key.length));
            }
            key = key.clone();
        }

        @Override
        public byte[] key() {
            return key.clone();
        }

        /** 32 hexadecimal digits that say nothing about the key. */
        public String fingerprint() {
            return KeyFingerprint.of(key);
        }

        private String line() {
            return Base64.getEncoder().encodeToString(key) + (from.equals(Instant.MIN) ? "" : " " + from);
        }
    }

    public MasterKeys {
        newestFirst = newestFirst.stream().sorted(Comparator.comparing(One::from).reversed()).toList();
        if (newestFirst.isEmpty()) {
            throw new IllegalArgumentException("there is no master key");
        }
    }

    /**
     * @param text lines of master.key, or the same with commas between them
     * @throws IllegalArgumentException when a line is no key
     */
    public static MasterKeys read(String text) {
        return new MasterKeys(text.lines().flatMap(line -> Stream.of(line.split(","))).map(String::strip)
            .filter(line -> !line.isEmpty()).map(MasterKeys::one).toList());
    }

    private static One one(String line) {
        String[] parts = line.split("\\s+");
        try {
            byte[] key = Base64.getDecoder().decode(parts[0]);
            return new One(key.length > BYTES ? Arrays.copyOf(key, BYTES) : key,
                parts.length == 1 ? Instant.MIN : Instant.parse(parts[1]));
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("a key is followed by an instant such as 2026-12-01T08:00:00Z", e);
        }
    }

    /** The one that wraps now; while all are still to come, the oldest. */
    public One at(Instant now) {
        return newestFirst.stream().filter(key -> !key.from().isAfter(now)).findFirst()
            .orElse(newestFirst.get(newestFirst.size() - 1));
    }

    public MasterKeys with(byte[] key, Instant from) {
        return new MasterKeys(Stream.concat(newestFirst.stream(), Stream.of(new One(key, from))).toList());
    }

    /** Without those older than the one that wraps now. */
    public MasterKeys withoutBefore(Instant now) {
        return new MasterKeys(newestFirst.subList(0, newestFirst.indexOf(at(now)) + 1));
    }

    /** What {@link #read} reads. */
    public String text() {
        return newestFirst.stream().map(One::line).collect(Collectors.joining("\n", "", "\n"));
    }
}
