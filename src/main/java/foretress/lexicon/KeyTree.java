package foretress.lexicon;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;

/**
 * Keys letter by letter, so that all keys which begin at one place of a text are found in one walk. Nodes are numbers; 0 is the
 * root, and as no key leads back to it, also "nowhere".
 */
final class KeyTree {
    static final int ROOT = 0;
    static final int NOWHERE = 0;

    private char[] letter = new char[1_024];
    private int[] firstChild = new int[1_024];
    private int[] sibling = new int[1_024];
    private final BitSet ends = new BitSet();
    private int nodes = 1;

    private KeyTree() {}

    static KeyTree of(Collection<String> keys) {
        var tree = new KeyTree();
        keys.forEach(tree::add);
        return tree;
    }

    /** For walking from a place towards the beginning of the text. */
    static KeyTree backwards(Collection<String> keys) {
        return of(keys.stream().map(key -> new StringBuilder(key).reverse().toString()).toList());
    }

    private void add(String key) {
        int node = ROOT;
        for (int i = 0; i < key.length(); i++) {
            int next = next(node, key.charAt(i));
            node = next == NOWHERE ? child(node, key.charAt(i)) : next;
        }
        ends.set(node);
    }

    private int child(int parent, char c) {
        if (nodes == letter.length) {
            letter = Arrays.copyOf(letter, 2 * nodes);
            firstChild = Arrays.copyOf(firstChild, 2 * nodes);
            sibling = Arrays.copyOf(sibling, 2 * nodes);
        }
        letter[nodes] = c;
        sibling[nodes] = firstChild[parent];
        firstChild[parent] = nodes;
        return nodes++;
    }

    /** One letter on, or {@link #NOWHERE} when no key goes on so. */
    int next(int node, char c) {
        int child = firstChild[node];
        while (child != NOWHERE && letter[child] != c) {
            child = sibling[child];
        }
        return child;
    }

    /** Whether a key ends here. */
    boolean isKey(int node) {
        return ends.get(node);
    }
}
