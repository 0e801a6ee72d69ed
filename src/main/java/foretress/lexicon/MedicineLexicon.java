package foretress.lexicon;

import foretress.lexicon.MedicineNames.Slip;
import foretress.lexicon.MedicineReading.Name;
import foretress.lexicon.MedicineReading.Sureness;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/**
 * Recognises medicines as people type them. A slip of the pen is forgiven within bounds ({@link MedicineSlips}), the first sound
 * right, no other class as near, and never where the word is, or is nearer to, another medicine's name. A name split in two is
 * the whole name. Whatever is not recognised says so; nothing is ever guessed away.
 */
public final class MedicineLexicon {
    private static final Pattern APART =
        Pattern.compile("[,;/\\n\\r+&|•()،؛、，?!:]|(?<=\\p{L}{4})\\.(?=\\s)|(?<=\\s)-(?=\\s)");
    private static final Pattern HYPHEN_AT_THE_END_OF_A_LINE = Pattern.compile("(?<=\\p{L}[-‐‑])\\s*\\R\\s*");
    private static final int LONGEST_NAME_WORDS = 4;
    private static final int MOST_PIECES = 3;

    private final Supplier<MedicineNames> names;

    /**
     * The names are arranged for finding at the first reading.
     *
     * @param otherNames medicines that look like one of the rows and are none: read as not recognised
     */
    public MedicineLexicon(List<MedicineRow> rows, List<String> otherNames) {
        List<MedicineRow> known = List.copyOf(rows);
        List<String> others = List.copyOf(otherNames);
        this.names = new Lazily<>(() -> new MedicineNames(known, others));
    }

    public MedicineReading read(String typed) {
        List<Name> found = new ArrayList<>();
        List<String> beside = new ArrayList<>();
        for (String phrase : APART.split(HYPHEN_AT_THE_END_OF_A_LINE.matcher(typed).replaceAll(""))) {
            new Phrase(phrase, found, beside).read();
        }
        boolean nothing = found.isEmpty() && !typed.isBlank();
        return nothing
            ? new MedicineReading(List.of(new Name(typed.strip(), Sureness.NOT_RECOGNISED, List.of(),
                SaidOf.words(TypedWord.of(typed)).of(0))), List.of())
            : new MedicineReading(found, beside);
    }

    /** Words between two separators, read from left to right. */
    private final class Phrase {
        private final String text;
        private final List<TypedWord> words;
        private final SaidOf said;
        private final List<Name> found;
        private final List<String> beside;
        private final List<TypedWord> unread = new ArrayList<>();
        private final int before;

        Phrase(String text, List<Name> found, List<String> beside) {
            this.text = text;
            this.words = hyphensOpened(TypedWord.of(text));
            this.said = SaidOf.words(words);
            this.found = found;
            this.beside = beside;
            this.before = found.size();
        }

        void read() {
            int at = 0;
            while (at < words.size()) {
                at = next(at);
            }
            notRecognised();
            if (found.size() == before && MedicineWords.speakOfSomeMedicine(words)) {
                add(0, words.size(), Sureness.NOT_RECOGNISED, List.of());
            }
        }

        private int next(int at) {
            int noMedicine = MedicineWords.endOfNoMedicine(words, at);
            int end = noMedicine > at ? at : longestName(words, at);
            if (end > at) {
                return belongsToTheWordBefore(at) ? wholeUnknown(end) : name(at, end);
            }
            return noMedicine > at ? aside(at, noMedicine) : slipOrUnread(at);
        }

        private int name(int at, int end) {
            notRecognised();
            add(at, end, Sureness.NAME, names.get().named(words.subList(at, end)));
            return end;
        }

        /** "Hydroxy progesterone" is not progesterone. */
        private boolean belongsToTheWordBefore(int at) {
            return !unread.isEmpty() && unread.get(unread.size() - 1) == words.get(at - 1) && words.get(at).joined()
                && MedicineWords.beginsALongerName(words.get(at - 1).folded());
        }

        private int wholeUnknown(int end) {
            for (int i = words.indexOf(unread.get(unread.size() - 1)) + 1; i < end; i++) {
                unread.add(words.get(i));
            }
            return end;
        }

        private int aside(int at, int end) {
            notRecognised();
            beside.add(written(at, end));
            return end;
        }

        private int slipOrUnread(int at) {
            Slip best = Slip.NONE;
            int end = at + 1;
            for (int to = at + 1; to <= Math.min(words.size(), at + MOST_PIECES); to++) {
                Slip slip = mayBeOneName(at, to) ? names.get().slip(words.subList(at, to)) : Slip.NONE;
                if (slip.distance() < best.distance()) {
                    best = slip;
                    end = to;
                }
            }
            if (!best.rows().isEmpty()) {
                notRecognised();
                add(at, end, Sureness.SPELLING_SLIP, best.rows());
                return end;
            }
            return MedicineWords.beside(words.get(at).folded()) ? aside(at, at + 1) : unread(at);
        }

        /** One word that is not an ordinary one, or pieces of which some are none. */
        private boolean mayBeOneName(int at, int to) {
            List<TypedWord> pieces = words.subList(at, to);
            boolean ordinary = pieces.stream().allMatch(word -> MedicineWords.beside(word.folded()));
            boolean salt = names.get().endsAName(pieces.get(pieces.size() - 1));
            boolean whole = pieces.size() > 1 && pieces.stream().limit(salt ? pieces.size() - 1L : pieces.size())
                .anyMatch(word -> word.folded().length() > 3 && MedicineWords.beside(word.folded()));
            boolean beforeAName = MedicineWords.beside(pieces.get(0).folded())
                && pieces.stream().skip(1).anyMatch(word -> !names.get().named(List.of(word)).isEmpty());
            return !ordinary && !whole && !beforeAName;
        }

        private int unread(int at) {
            unread.add(words.get(at));
            return at + 1;
        }

        /** Words in a row that stay unread are one name nobody recognises. */
        private void notRecognised() {
            if (!unread.isEmpty()) {
                int from = words.indexOf(unread.get(0));
                add(from, from + unread.size(), Sureness.NOT_RECOGNISED, List.of());
            }
            unread.clear();
        }

        private void add(int at, int end, Sureness sureness, List<MedicineRow> rows) {
            found.add(new Name(written(at, end), sureness, rows, said.of(at)));
        }

        private String written(int at, int end) {
            return text.substring(words.get(at).from(), words.get(end - 1).to());
        }
    }

    /** "prednisolone-5mg" is opened at its hyphen, "5-FU" and "interferon beta-1a" are names as they stand. */
    private List<TypedWord> hyphensOpened(List<TypedWord> words) {
        List<TypedWord> opened = new ArrayList<>();
        int at = 0;
        while (at < words.size()) {
            int end = longestName(words, at);
            if (end == at) {
                opened.addAll(words.get(at).parts());
            }
            opened.addAll(words.subList(at, end));
            at = Math.max(at + 1, end);
        }
        return opened;
    }

    private int longestName(List<TypedWord> words, int at) {
        for (int end = Math.min(words.size(), at + LONGEST_NAME_WORDS); end > at; end--) {
            // "PAS" is a medicine and "pas" is French for not; among other words it is the latter.
            boolean denies = end == at + 1 && words.size() > 1 && MedicineWords.denied(words.get(at).folded());
            if (!denies && !names.get().named(words.subList(at, end)).isEmpty()) {
                return end;
            }
        }
        return at;
    }
}
