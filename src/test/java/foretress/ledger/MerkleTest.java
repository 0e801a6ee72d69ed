package foretress.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("D14: the Merkle tree hash is that of RFC 9162, section 2.1")
class MerkleTest {
    /** Leaves of the known-answer tests of Certificate Transparency, which many public implementations of RFC 6962 carry. */
    private static final List<String> LEAVES = List.of("", "00", "10", "2021", "3031", "40414243", "5051525354555657",
        "606162636465666768696a6b6c6d6e6f");
    /** Roots over the first one, two, … eight of them, from the same place. */
    private static final List<String> ROOTS = List.of(
        "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
        "fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125",
        "aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77",
        "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
        "4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4",
        "76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef",
        "ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c",
        "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328");

    private static String root(List<String> leaves) {
        var tree = new Merkle();
        leaves.forEach(leaf -> tree.add(HexFormat.of().parseHex(leaf)));
        return tree.root();
    }

    @Test
    void theEmptyTreeIsTheHashOfNothing() {
        assertThat(root(List.of())).isEqualTo("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    }

    @Test
    void oneToEightLeavesComeToTheKnownRoots() {
        for (int n = 1; n <= LEAVES.size(); n++) {
            assertThat(root(LEAVES.subList(0, n))).as("%d leaves", n).isEqualTo(ROOTS.get(n - 1));
        }
    }

    @Test
    @DisplayName("taken leaf by leaf it is what the section's own definition says, up to 130 leaves")
    void itIsTheDefinition() {
        List<byte[]> leaves = new ArrayList<>();
        var tree = new Merkle();
        for (int n = 1; n <= 130; n++) {
            byte[] leaf = ("leaf " + n).getBytes(StandardCharsets.UTF_8);
            leaves.add(leaf);
            tree.add(leaf);
            assertThat(tree.root()).as("%d leaves", n).isEqualTo(HexFormat.of().formatHex(defined(leaves)));
        }
    }

    /** MTH of the section: parted at the largest power of two smaller than the number of leaves. */
    private static byte[] defined(List<byte[]> leaves) {
        if (leaves.size() == 1) {
            return sha(new byte[] { 0 }, leaves.get(0));
        }
        int k = Integer.highestOneBit(leaves.size() - 1);
        return sha(new byte[] { 1 }, defined(leaves.subList(0, k)), defined(leaves.subList(k, leaves.size())));
    }

    private static byte[] sha(byte[]... parts) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            Arrays.stream(parts).forEach(sha::update);
            return sha.digest();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
