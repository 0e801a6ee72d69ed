package foretress.ledger;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/** Exported trails and their slips, for those who judge them from outside. */
public final class Exported {
    private Exported() {}

    private static List<KeptEntry> chain(int entries, int anewFrom) {
        List<KeptEntry> chain = new ArrayList<>();
        String previous = AuditEntry.NOTHING_BEFORE;
        for (int i = 1; i <= entries; i++) {
            var entry =
                new AuditEntry(i, Instant.EPOCH.plusSeconds(i), "petra", i == anewFrom ? "another act" : "act " + i,
                    "", previous);
            previous = entry.sha256();
            chain.add(new KeptEntry(entry, previous));
        }
        return chain;
    }

    public static String of(int entries) {
        return anew(entries, 0);
    }

    /** Of another act at this entry, and everything after it sealed again. */
    public static String anew(int entries, int from) {
        var out = new ByteArrayOutputStream();
        try {
            TrailProof.write(out, true, to -> chain(entries, from).forEach(to));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    public static String slip(int entries, int first, int last) {
        List<KeptEntry> stretch = chain(entries, 0).subList(first - 1, last);
        var tree = new Merkle();
        stretch.forEach(kept -> tree.add(HexFormat.of().parseHex(kept.sha256())));
        return new Slip(LocalDate.of(2026, 6, 1), first, last, stretch.get(stretch.size() - 1).sha256(), tree.root())
            .text();
    }
}
