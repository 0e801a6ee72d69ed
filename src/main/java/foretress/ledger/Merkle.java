package foretress.ledger;

import foretress.knowledge.Sha256;
import java.security.MessageDigest;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HexFormat;
import java.util.Iterator;

/**
 * The Merkle tree hash of RFC 9162, section 2.1, over SHA-256, taken one leaf at a time: 0x00 stands before a leaf and 0x01 before a
 * node, so that neither can pass for the other. Only the roots of the full trees so far are held.
 */
final class Merkle {
    private record Full(long leaves, byte[] hash) {}

    private final Deque<Full> full = new ArrayDeque<>();

    void add(byte[] leaf) {
        var grown = new Full(1, hash(0, leaf));
        while (!full.isEmpty() && full.peek().leaves() == grown.leaves()) {
            grown = new Full(grown.leaves() * 2, hash(1, full.pop().hash(), grown.hash()));
        }
        full.push(grown);
    }

    /** Of all leaves so far, 64 hexadecimal digits; without any, SHA-256 of nothing. */
    String root() {
        if (full.isEmpty()) {
            return Sha256.of(new byte[0]);
        }
        Iterator<Full> fromTheRight = full.iterator();
        byte[] root = fromTheRight.next().hash();
        while (fromTheRight.hasNext()) {
            root = hash(1, fromTheRight.next().hash(), root);
        }
        return HexFormat.of().formatHex(root);
    }

    private static byte[] hash(int kind, byte[]... parts) {
        MessageDigest sha = Sha256.begin();
        sha.update((byte) kind);
        for (byte[] part : parts) {
            sha.update(part);
        }
        return sha.digest();
    }
}
