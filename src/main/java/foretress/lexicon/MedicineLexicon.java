package foretress.lexicon;

import foretress.lexicon.MedicineKey.Part;
import foretress.lexicon.MedicineReading.Name;
import foretress.lexicon.MedicineReading.Said;
import foretress.lexicon.MedicineReading.Sureness;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Recognises medicines as people type them. A slip of the pen is forgiven within bounds: one from six letters on, two from
 * eleven, the first letter right, no other class as near, and never where the word is, or is nearer to, another medicine's
 * name. Whatever is not recognised says so; nothing is ever guessed away.
 */
public final class MedicineLexicon {
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}\\p{N}][\\p{L}\\p{M}\\p{N}'’.-]*");
    private static final Pattern DOSE_STUCK_ON = Pattern.compile("(\\p{L}{4,})[0-9].*");
    private static final Pattern PUNCTUATION_LAST = Pattern.compile("[.'’-]+$");
    private static final Pattern APART = Pattern.compile("[,;/\\n\\r+&|•()]");
    private static final int LONGEST_NAME_WORDS = 4;
    private static final int ONE_SLIP_FROM = 6;
    private static final int TWO_SLIPS_FROM = 11;

    private final Map<String, List<MedicineRow>> byKey = new LinkedHashMap<>();
    private final Map<Character, List<String>> alike = new HashMap<>();
    private final Set<String> others = new HashSet<>();
    /** How the keys of all names begin: where none begins so, no longer name need be looked for. */
    private final Set<String> firstParts = new HashSet<>();

    /**
     * @param otherNames medicines that look like one of the rows and are none: read as not recognised
     */
    public MedicineLexicon(List<MedicineRow> rows, List<String> otherNames) {
        for (MedicineRow row : rows) {
            add(row.name(), row, rows);
            row.otherNames().forEach(name -> add(name, row, rows));
        }
        byKey.keySet().forEach(key -> alike.computeIfAbsent(key.charAt(0), c -> new ArrayList<>()).add(key));
        byKey.keySet().forEach(key -> firstParts.add(MedicineKey.first(key)));
        otherNames.forEach(name -> others.add(key(name)));
        others.removeAll(byKey.keySet());
    }

    /** A name that stands in several classes has all of them under each of its spellings. */
    private void add(String name, MedicineRow row, List<MedicineRow> all) {
        List<MedicineRow> known = byKey.computeIfAbsent(key(name), k -> new ArrayList<>());
        all.stream().filter(other -> other.name().equals(row.name()) && !known.contains(other)).forEach(known::add);
        if (!known.contains(row)) {
            known.add(row);
        }
    }

    static String key(String name) {
        return MedicineKey.ofParts(words(name).stream().map(Typed::part).toList());
    }

    public MedicineReading read(String typed) {
        List<Name> names = new ArrayList<>();
        List<String> beside = new ArrayList<>();
        for (String phrase : APART.split(typed)) {
            phrase(phrase, names, beside);
        }
        boolean nothing = names.isEmpty() && !typed.isBlank();
        List<Typed> all = words(typed);
        return nothing
            ? new MedicineReading(List.of(new Name(typed.strip(), Sureness.NOT_RECOGNISED, List.of(), said(all))),
                List.of())
            : new MedicineReading(names, beside);
    }

    private static Said said(List<Typed> words) {
        if (words.stream().anyMatch(word -> MedicineWords.stopped(word.folded))) {
            return Said.STOPPED;
        }
        return words.stream().anyMatch(word -> MedicineWords.denied(word.folded)) ? Said.DENIED : Said.TAKEN;
    }

    /** @param part what it would be in the key of a name */
    private record Typed(int from, int to, String folded, Part part) {
        Typed(int from, int to, String folded) {
            this(from, to, folded, Part.of(folded));
        }
    }

    private static List<Typed> words(String phrase) {
        List<Typed> words = new ArrayList<>();
        Matcher word = WORD.matcher(phrase);
        while (word.find()) {
            String folded = PUNCTUATION_LAST.matcher(LetterFolding.folded(word.group())).replaceAll("");
            Matcher dose = DOSE_STUCK_ON.matcher(folded);
            words.add(new Typed(word.start(), word.end(), dose.matches() ? dose.group(1) : folded));
        }
        return words;
    }

    private void phrase(String phrase, List<Name> names, List<String> beside) {
        List<Typed> words = hyphensOpened(words(phrase));
        Said said = said(words);
        List<Typed> unread = new ArrayList<>();
        int at = 0;
        while (at < words.size()) {
            int end = longestName(words, at);
            if (end > at) {
                notRecognised(phrase, said, unread, names);
                names.add(new Name(phrase.substring(words.get(at).from, words.get(end - 1).to), Sureness.NAME,
                    rows(words, at, end), said));
            } else if (MedicineWords.beside(words.get(at).folded)) {
                notRecognised(phrase, said, unread, names);
                beside.add(phrase.substring(words.get(at).from, words.get(at).to));
            } else {
                unread.add(words.get(at));
            }
            at = Math.max(at + 1, end);
        }
        notRecognised(phrase, said, unread, names);
    }

    /** "prednisolone-5mg" is opened at its hyphen, "5-FU" and "interferon beta-1a" are names as they stand. */
    private List<Typed> hyphensOpened(List<Typed> words) {
        List<Typed> opened = new ArrayList<>();
        int at = 0;
        while (at < words.size()) {
            int end = longestName(words, at);
            if (end == at) {
                opened.addAll(parts(words.get(at)));
            }
            opened.addAll(words.subList(at, end));
            at = Math.max(at + 1, end);
        }
        return opened;
    }

    private static List<Typed> parts(Typed word) {
        return word.folded.indexOf('-') < 0 ? List.of(word)
            : Arrays.stream(word.folded.split("-")).filter(part -> !part.isEmpty())
                .map(part -> new Typed(word.from, word.to, part)).toList();
    }

    private int longestName(List<Typed> words, int at) {
        if (!mayBegin(words, at)) {
            return at;
        }
        for (int end = Math.min(words.size(), at + LONGEST_NAME_WORDS); end > at; end--) {
            // "PAS" is a medicine and "pas" is French for not; among other words it is the latter.
            boolean denies = end == at + 1 && words.size() > 1 && MedicineWords.denied(words.get(at).folded);
            if (!denies && !rows(words, at, end).isEmpty()) {
                return end;
            }
        }
        return at;
    }

    /** Whether any name begins with this word; the word "acid" may stand first in many. */
    private boolean mayBegin(List<Typed> words, int at) {
        Part part = words.get(at).part;
        return part.isAcid() || firstParts.contains(part.stem()) || firstParts.contains(part.acidStem());
    }

    private List<MedicineRow> rows(List<Typed> words, int from, int to) {
        return byKey.getOrDefault(MedicineKey.ofParts(words.subList(from, to).stream().map(Typed::part).toList()),
            List.of());
    }

    /** Each unread word is looked at for a slip; words in a row that stay unread are one name nobody recognises. */
    private void notRecognised(String phrase, Said said, List<Typed> unread, List<Name> names) {
        int from = -1;
        int to = -1;
        for (Typed word : unread) {
            List<MedicineRow> rows = misspelt(MedicineKey.ofParts(List.of(word.part)));
            if (rows.isEmpty()) {
                from = from < 0 ? word.from : from;
                to = word.to;
            } else {
                unknown(phrase, said, from, to, names);
                names.add(new Name(phrase.substring(word.from, word.to), Sureness.SPELLING_SLIP, rows, said));
                from = -1;
            }
        }
        unknown(phrase, said, from, to, names);
        unread.clear();
    }

    private static void unknown(String phrase, Said said, int from, int to, List<Name> names) {
        if (from >= 0) {
            names.add(new Name(phrase.substring(from, to), Sureness.NOT_RECOGNISED, List.of(), said));
        }
    }

    private List<MedicineRow> misspelt(String key) {
        int most = key.length() >= TWO_SLIPS_FROM ? 2 : key.length() >= ONE_SLIP_FROM ? 1 : 0;
        if (most == 0 || others.contains(key)) {
            return List.of();
        }
        int least = most + 1;
        List<String> nearest = new ArrayList<>();
        for (String known : alike.getOrDefault(key.charAt(0), List.of())) {
            int slips = Slips.between(key, known, most);
            if (slips < least) {
                nearest.clear();
                least = slips;
            }
            if (slips == least && slips <= most) {
                nearest.add(known);
            }
        }
        return nearest.isEmpty() || anotherAsNear(key, least) ? List.of() : sameForAll(nearest);
    }

    private boolean anotherAsNear(String key, int slips) {
        for (String other : others) {
            if (Slips.between(key, other, slips) <= slips) {
                return true;
            }
        }
        return false;
    }

    /** As near to two names of different classes, it could be either: then it is neither. */
    private List<MedicineRow> sameForAll(List<String> keys) {
        List<MedicineRow> first = byKey.get(keys.get(0));
        Set<String> kinds = kinds(first);
        boolean same = keys.stream().allMatch(key -> kinds(byKey.get(key)).equals(kinds));
        return same ? first : List.of();
    }

    private static Set<String> kinds(List<MedicineRow> rows) {
        Set<String> kinds = new HashSet<>();
        rows.forEach(row -> kinds.add(row.kind()));
        return kinds;
    }
}
