package foretress.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

@Execution(ExecutionMode.CONCURRENT)
@DisplayName("D14: of ten thousand entries the first that is not as it was written is named; slips tell what the chain alone cannot")
class TrailReadingTest {
    private static final int MANY = 10_000;
    private static final int TRIES = 60;
    private static final Instant NOON = Instant.parse("2026-06-01T12:00:00Z");

    private static final List<KeptEntry> CHAIN = chain(MANY, "visit opened");

    private static List<KeptEntry> chain(int entries, String what) {
        List<KeptEntry> chain = new ArrayList<>();
        for (int i = 1; i <= entries; i++) {
            chain.add(next(chain, what));
        }
        return chain;
    }

    private static KeptEntry next(List<KeptEntry> chain, String what) {
        String previous = chain.isEmpty() ? AuditEntry.NOTHING_BEFORE : chain.get(chain.size() - 1).sha256();
        var entry = new AuditEntry(chain.size() + 1, NOON.plusSeconds(chain.size()), "petra", what, "", previous);
        return new KeptEntry(entry, entry.sha256());
    }

    private static Slip slip(List<KeptEntry> chain, int first, int last) {
        var tree = new Merkle();
        chain.subList(first - 1, last).forEach(kept -> tree.add(HexFormat.of().parseHex(kept.sha256())));
        return new Slip(LocalDate.of(2026, 6, 1), first, last, chain.get(last - 1).sha256(), tree.root());
    }

    private static TrailVerdict read(List<KeptEntry> chain, Slip... slips) {
        var reading = new TrailReading(List.of(slips));
        chain.forEach(reading::read);
        return reading.verdict();
    }

    private static KeptEntry edited(KeptEntry kept, Random chance) {
        AuditEntry e = kept.entry();
        return switch (chance.nextInt(5)) {
            case 0 -> new KeptEntry(new AuditEntry(e.number(), e.at().plusMillis(1), e.actor(), e.what(), e.subject(),
                e.previous()), kept.sha256());
            case 1 -> new KeptEntry(new AuditEntry(e.number(), e.at(), "edda", e.what(), e.subject(), e.previous()),
                kept.sha256());
            case 2 ->
                new KeptEntry(new AuditEntry(e.number(), e.at(), e.actor(), "visit closed", e.subject(), e.previous()),
                    kept.sha256());
            case 3 -> new KeptEntry(new AuditEntry(e.number(), e.at(), e.actor(), e.what(), "a", e.previous()),
                kept.sha256());
            default -> new KeptEntry(e, "0".repeat(64));
        };
    }

    @Test
    void anUntouchedChainHolds() {
        assertThat(read(CHAIN)).isEqualTo(new TrailVerdict(MANY, Optional.empty(), 0, Optional.empty()));
        assertThat(read(List.of())).isEqualTo(new TrailVerdict(0, Optional.empty(), 0, Optional.empty()));
    }

    @Test
    void anyEditIsNamed() {
        Random chance = new Random(14);
        for (int i = 0; i < TRIES; i++) {
            int at = 1 + chance.nextInt(MANY);
            List<KeptEntry> touched = new ArrayList<>(CHAIN);
            touched.set(at - 1, edited(CHAIN.get(at - 1), chance));
            assertThat(read(touched).firstBroken()).contains((long) at);
        }
    }

    @Test
    @DisplayName("an edit with its own hash made right again is named at the entry after it, which still holds the old one")
    void anEditWithItsHashMadeRight() {
        List<KeptEntry> touched = new ArrayList<>(CHAIN);
        AuditEntry e = CHAIN.get(499).entry();
        var forged = new AuditEntry(e.number(), e.at(), "edda", e.what(), e.subject(), e.previous());
        touched.set(499, new KeptEntry(forged, forged.sha256()));
        assertThat(read(touched).firstBroken()).contains(501L);
    }

    @Test
    void anyDeletionIsNamed() {
        Random chance = new Random(15);
        for (int i = 0; i < TRIES; i++) {
            int at = 1 + chance.nextInt(MANY - 1);
            List<KeptEntry> touched = new ArrayList<>(CHAIN);
            touched.remove(at - 1);
            assertThat(read(touched).firstBroken()).contains((long) at);
        }
    }

    @Test
    void anySwapIsNamed() {
        Random chance = new Random(16);
        for (int i = 0; i < TRIES; i++) {
            int one = 1 + chance.nextInt(MANY - 1);
            int other = one + 1 + chance.nextInt(MANY - one);
            List<KeptEntry> touched = new ArrayList<>(CHAIN);
            Collections.swap(touched, one - 1, other - 1);
            assertThat(read(touched).firstBroken()).contains((long) one);
        }
    }

    @Test
    void anyInsertedCopyIsNamed() {
        Random chance = new Random(17);
        for (int i = 0; i < TRIES; i++) {
            int at = 2 + chance.nextInt(MANY - 1);
            List<KeptEntry> touched = new ArrayList<>(CHAIN);
            touched.add(at - 1, CHAIN.get(chance.nextInt(at - 1)));
            assertThat(read(touched).firstBroken()).contains((long) at);
        }
    }

    @Test
    @DisplayName("with a slip of the end, a tail cut before it is named; one cut after it leaves entries unproven")
    void aCutTail() {
        Slip end = slip(CHAIN, 1, 9_000);
        assertThat(read(CHAIN.subList(0, 8_000), end)).satisfies(v -> {
            assertThat(v.firstBroken()).contains(8_001L);
            assertThat(v.holds()).isFalse();
        });
        assertThat(read(CHAIN.subList(0, 9_500), end)).satisfies(v -> {
            assertThat(v.holds()).isTrue();
            assertThat(v.proven()).isEqualTo(9_000);
            assertThat(v.unproven()).isEqualTo(500);
        });
        assertThat(read(CHAIN, end, slip(CHAIN, 9_001, MANY)).unproven()).isZero();
    }

    @Test
    @DisplayName("a chain written anew from one entry to its end hangs together; the first slip after that entry says so")
    void aChainWrittenAnew() {
        List<KeptEntry> anew = new ArrayList<>(CHAIN.subList(0, 5_000));
        while (anew.size() < MANY) {
            anew.add(next(anew, "visit closed"));
        }
        Slip before = slip(CHAIN, 1, 4_000), after = slip(CHAIN, 4_001, 7_000), later = slip(CHAIN, 7_001, 8_000);
        assertThat(read(anew).holds()).isTrue();
        TrailVerdict found = read(anew, later, after, before);
        assertThat(found.firstBroken()).isEmpty();
        assertThat(found.proven()).isEqualTo(4_000);
        assertThat(found.against()).contains(after);
        assertThat(found.holds()).isFalse();
    }

    @Test
    @DisplayName("a slip whose root is another one is against the chain, though its end agrees")
    void anotherRoot() {
        Slip good = slip(CHAIN, 11, 20);
        var bad = new Slip(good.day(), 11, 20, good.head(), "0".repeat(64));
        assertThat(read(CHAIN.subList(0, 30), good).proven()).isEqualTo(20);
        assertThat(read(CHAIN.subList(0, 30), bad).against()).contains(bad);
    }

    @Test
    void aSlipIsReadAsItIsWrittenHoweverItIsSpacedAndWhateverStandsAroundIt() {
        Slip slip = slip(CHAIN, 1, 100);
        Slip other = slip(CHAIN, 101, 250);
        assertThat(Slip.read(slip.text())).isEqualTo(new Slip.Typed(List.of(slip), false));
        assertThat(Slip.read("Dear Edda,\n\n" + slip.text().toUpperCase(java.util.Locale.ROOT).replace("\n", "\r\n  ")
            + "\n--\n" + other.text())).isEqualTo(new Slip.Typed(List.of(slip, other), false));
    }

    @Test
    void aMistypedSlipIsNotTakenForAnother() {
        String text = slip(CHAIN, 1, 100).text();
        for (int i = text.indexOf("Entries"); i < text.length(); i++) {
            if (Character.digit(text.charAt(i), 16) >= 0 && !text.substring(0, i).endsWith("Ch")
                && Character.isDigit(text.charAt(i))) {
                char wrong = text.charAt(i) == '7' ? '3' : '7';
                assertThat(Slip.read(text.substring(0, i) + wrong + text.substring(i + 1)))
                    .as(text.substring(i)).isEqualTo(new Slip.Typed(List.of(), true));
            }
        }
        assertThat(Slip.read("").mistyped()).isTrue();
        assertThat(Slip.read(text + "Entries 101 to 200").mistyped()).isTrue();
        assertThat(Slip.read(text.replaceFirst("Day \\S+", "Day 2026-02-31")).mistyped()).isTrue();
    }
}
