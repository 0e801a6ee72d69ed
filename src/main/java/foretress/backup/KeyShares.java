package foretress.backup;

import com.codahale.shamir.Scheme;
import foretress.knowledge.Sha256;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.bouncycastle.util.encoders.Base32;

/**
 * A key in printed shares, of which so many together give it back and fewer say nothing about it (Shamir 1979). A share is 72 letters and digits of base32
 * (RFC 4648) with a checksum, in groups of four for whoever has to type it.
 */
public final class KeyShares {
    public static final int FEWEST = 2, MOST = 16;
    private static final int KEY = 32, HEAD = 8, CHECK = 5, ID = 4;
    private static final byte FORMAT = 1;

    /** A share that cannot be used, or too few of them: one sentence for whoever typed them. */
    public static final class Unusable extends Exception {
        private static final long serialVersionUID = 1;

        Unusable(String sentence, Object... parts) {
            super(sentence.formatted(parts));
        }
    }

    private record Share(int needed, int number, String set, byte[] part) {}

    private KeyShares() {}

    /**
     * @param needed how many give the key back, 2 to {@code of}
     * @param of how many are made, at most 16
     */
    public static List<String> split(byte[] key, int needed, int of, SecureRandom random) {
        if (key.length != KEY || needed < FEWEST || needed > of || of > MOST) {
            throw new IllegalArgumentException("%d of %d shares of %d bytes".formatted(needed, of, key.length));
        }
        Map<Integer, byte[]> parts = new TreeMap<>(new Scheme(random, of, needed).split(key));
        List<String> shares = new ArrayList<>();
        parts.forEach((number, part) -> shares.add(printed(ByteBuffer.allocate(HEAD + KEY).put(FORMAT)
            .put((byte) needed).put((byte) of).put(number.byteValue()).put(HexFormat.of().parseHex(set(key))).put(part)
            .array())));
        return shares;
    }

    /** Tells the shares of one key from those of another; too short to give anything of the key away. */
    private static String set(byte[] key) {
        return Sha256.of("foretress shares " + HexFormat.of().formatHex(key)).substring(0, 2 * ID);
    }

    private static byte[] check(byte[] share) {
        byte[] digest = HexFormat.of().parseHex(Sha256.of(share));
        return Arrays.copyOf(digest, CHECK);
    }

    private static String printed(byte[] share) {
        byte[] whole = Arrays.copyOf(share, share.length + CHECK);
        System.arraycopy(check(share), 0, whole, share.length, CHECK);
        return Base32.toBase32String(whole).replaceAll("(.{4})(?=.)", "$1 ");
    }

    /**
     * The key, from shares as they were typed: blanks, hyphens and small letters do not matter.
     *
     * @throws Unusable naming the share that is mistyped or another key's, or how many are still missing
     */
    public static byte[] join(List<String> typed) throws Unusable {
        Map<Integer, byte[]> parts = new TreeMap<>();
        Share first = null;
        for (int i = 0; i < typed.size(); i++) {
            Share share = read(typed.get(i), i + 1);
            first = first == null ? share : first;
            if (!share.set().equals(first.set()) || share.needed() != first.needed()) {
                throw new Unusable("Share %d in your list belongs to another key than the first.", i + 1);
            }
            parts.put(share.number(), share.part());
        }
        if (first == null || parts.size() < first.needed()) {
            throw new Unusable("%s different shares are needed, and these are %d.",
                first == null ? "Several" : first.needed(), parts.size());
        }
        return joined(parts, first);
    }

    private static byte[] joined(Map<Integer, byte[]> parts, Share first) throws Unusable {
        byte[] key = new Scheme(new SecureRandom(), MOST, first.needed()).join(parts);
        if (!set(key).equals(first.set())) {
            throw new Unusable("These shares do not give back the key they were made of.");
        }
        return key;
    }

    private static Share read(String typed, int place) throws Unusable {
        String bare = typed.toUpperCase(Locale.ROOT).replaceAll("[\\s-]", "").replace('0', 'O').replace('1', 'I');
        if (!bare.matches("[A-Z2-7]{72}")) {
            throw new Unusable(
                "Share %d in your list has %d letters and digits of those that are used, and 72 are needed.",
                place, bare.replaceAll("[^A-Z2-7]", "").length());
        }
        byte[] whole = Base32.decode(bare.getBytes(StandardCharsets.US_ASCII));
        byte[] share = Arrays.copyOf(whole, HEAD + KEY);
        boolean right = Arrays.equals(check(share), Arrays.copyOfRange(whole, HEAD + KEY, whole.length));
        if (!right || share[0] != FORMAT) {
            throw new Unusable("Share %d in your list is mistyped: its checksum does not fit.", place);
        }
        return new Share(share[1], share[3], HexFormat.of().formatHex(share, HEAD - ID, HEAD),
            Arrays.copyOfRange(share, HEAD, HEAD + KEY));
    }
}
