package foretress.lexicon;

import foretress.lexicon.LabelReading.Beside;
import foretress.lexicon.LabelReading.Claim;
import foretress.lexicon.LabelReading.Found;
import foretress.lexicon.LabelReading.Reason;
import foretress.lexicon.LabelReading.Sureness;
import foretress.lexicon.LabelReading.Unknown;
import foretress.lexicon.LabelToken.Gap;
import foretress.lexicon.Pieces.Piece;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** One reading of one text: numbers first, then each stretch between separators, then an account of every word that is left. */
final class LabelReader {
    private static final Pattern CAS =
        Pattern.compile("(?<![\\p{L}0-9-])[1-9lI][0-9OolI]{1,6}-[0-9OolI]{2}-[0-9OolI](?![\\p{L}0-9-])");
    private static final Pattern BOTH_HYPHENS = Pattern.compile("[^-]+-[^-]+-[^-]+");
    private static final String HENNA_OF_SOME_KIND = "hennakindnotstated";
    private static final int NO_LIST = 2;
    private static final int DIGITS_OF_A_NUMBER = 5;
    private static final int SHORTEST_ITEM = 3;
    private static final Set<String> SEPARATORS = Set.of(";", "/", "•", "|", "·");

    private final String text;
    private final LabelIndex index;
    private final List<LabelToken> tokens;
    private final BitSet absent;
    private final BitSet doubtful;
    private final BitSet shade = new BitSet();
    private final BitSet used = new BitSet();
    private final List<Found> found = new ArrayList<>();
    private final List<Unknown> unknown = new ArrayList<>();
    private final List<Claim> claims = new ArrayList<>();
    private final List<Beside> beside = new ArrayList<>();
    private final int mayContainFrom;

    LabelReader(String text, LabelIndex index) {
        this.text = text;
        this.index = index;
        this.tokens = LabelToken.of(text);
        Absences absences = Absences.of(tokens, namesThere());
        this.absent = absences.absent();
        this.doubtful = absences.doubtful();
        this.mayContainFrom = mayContainFrom();
    }

    LabelReading read() {
        numbers();
        shades();
        stretches();
        hennaAlone();
        groups();
        found.sort((a, b) -> Integer.compare(a.from(), b.from()));
        unknown.sort((a, b) -> Integer.compare(a.from(), b.from()));
        beside.sort((a, b) -> Integer.compare(a.from(), b.from()));
        return new LabelReading(found, unknown, claims, beside);
    }

    /** Claims look at the same words again and again. */
    private Absences.Names namesThere() {
        int[] ends = new int[tokens.size()];
        return at -> {
            ends[at] = ends[at] == 0 ? index.endOfName(tokens, at) + 1 : ends[at];
            return ends[at] - 1;
        };
    }

    private int mayContainFrom() {
        int sign = Math.max(text.indexOf("+/-"), Math.max(text.indexOf("+/−"), text.indexOf('±')));
        int from = sign < 0 ? Integer.MAX_VALUE : sign;
        for (int i = 0; i < tokens.size(); i++) {
            for (List<String> words : LabelWords.MAY_CONTAIN) {
                if (LabelWords.startsHere(tokens, i, words)) {
                    return Math.min(from, tokens.get(i).from());
                }
            }
        }
        return from;
    }

    private void numbers() {
        String hyphens = LetterFolding.isAscii(text) ? text : text.replaceAll("[‐‑‒–−]", "-");
        if (hyphens.indexOf('-') < 0) {
            return;
        }
        if (mayHoldNumber(hyphens)) {
            CAS.matcher(hyphens).results().forEach(cas -> number(cas.start(), cas.end(), cas.group()));
        }
        DamagedNumbers.SHAPE.matcher(hyphens).results().forEach(cas -> damagedNumber(cas.start(), cas.end()));
    }

    private void number(int from, int to, String written) {
        BitSet inside = tokensBetween(from, to);
        String digits = written.replace('O', '0').replace('o', '0').replace('l', '1').replace('I', '1');
        boolean clean = digits.equals(written);
        Optional<Substance> substance = Cas.valid(digits) ? index.numbered(digits) : Optional.empty();
        if (substance.isPresent()) {
            keep(substance.get(), from, to, clean ? Sureness.CAS_NUMBER : Sureness.SPELLING_SLIP,
                inside.intersects(absent));
        } else if (clean && Cas.valid(digits)) {
            unknown.add(new Unknown(from, to, written(from, to), List.of()));
        }
        if (clean && Cas.valid(digits) || substance.isPresent()) {
            used.or(inside);
        }
    }

    /** What it was is known where one number alone may be meant; where several may, each is to be reckoned with. */
    private void damagedNumber(int from, int to) {
        BitSet inside = tokensBetween(from, to);
        Optional<Substance> other = index.named(written(from, to).replace("-", ""));
        if (other.isPresent() && !inside.intersects(used)) {
            keep(other.get(), from, to, Sureness.NAME, inside.intersects(absent));
            used.or(inside);
            return;
        }
        List<Substance> near = inside.intersects(used) ? List.of() : index.numberedLike(written(from, to));
        if (near.size() == 1) {
            keep(near.get(0), from, to, Sureness.SPELLING_SLIP, inside.intersects(absent));
            used.or(inside);
        } else if (!inside.intersects(used) && (near.size() > 1 || BOTH_HYPHENS.matcher(written(from, to)).matches())) {
            unknown.add(new Unknown(from, to, written(from, to), near));
            used.or(inside);
        }
    }

    /** Two hyphens around two characters: without them there is no such number. */
    private static boolean mayHoldNumber(String hyphens) {
        for (int at = hyphens.indexOf('-'); at >= 0; at = hyphens.indexOf('-', at + 1)) {
            if (at + 3 < hyphens.length() && hyphens.charAt(at + 3) == '-') {
                return true;
            }
        }
        return false;
    }

    private BitSet tokensBetween(int from, int to) {
        var inside = new BitSet();
        for (int i = firstTokenFrom(from); i < tokens.size() && tokens.get(i).to() <= to; i++) {
            inside.set(i);
        }
        return inside;
    }

    private int firstTokenFrom(int from) {
        int low = 0;
        int high = tokens.size();
        while (low < high) {
            int middle = (low + high) / 2;
            if (tokens.get(middle).from() < from) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** "Shade: Copper" names no metal. Only words that are names of shades as well as of substances are meant. */
    private void shades() {
        boolean named = false;
        for (int i = 0; i < tokens.size(); i++) {
            String word = tokens.get(i).folded();
            boolean goesOn = tokens.get(i).before() == Gap.INSIDE
                || LabelWords.SHADE.contains(tokens.get(Math.max(0, i - 1)).folded());
            named = LabelWords.SHADE.contains(word) || named && goesOn;
            boolean last = i + 1 == tokens.size() || tokens.get(i + 1).before() != Gap.INSIDE;
            if (named && last && LabelWords.ALONE_ONLY.contains(word)) {
                shade.set(i);
                used.set(i);
            }
        }
    }

    private void stretches() {
        int at = 0;
        while (at < tokens.size()) {
            int end = at + 1;
            while (end < tokens.size() && sameStretch(end)) {
                end++;
            }
            if (used.get(at)) {
                passed(at, end, shade.get(at) ? Reason.SHADE : Reason.AMOUNT);
            } else {
                stretch(at, end);
            }
            at = end;
        }
    }

    private boolean sameStretch(int at) {
        Gap gap = tokens.get(at).before();
        return gap != Gap.COMMA && gap != Gap.STOP && used.get(at) == used.get(at - 1)
            && absent.get(at) == absent.get(at - 1);
    }

    private void stretch(int from, int to) {
        var pieces = new Pieces(tokens, from, to, index, absent);
        List<Piece> all = absent.get(from) ? pieces.exact() : pieces.best();
        List<Piece> run = new ArrayList<>();
        for (Piece piece : all) {
            if (piece.substance().isPresent() || !run.isEmpty() && !joins(piece)) {
                unread(run, pieces);
            }
            if (piece.substance().isPresent()) {
                keep(piece);
            } else {
                for (int token = piece.fromToken(); token < piece.toToken(); token++) {
                    run.add(new Piece(token, token + 1, tokens.get(token).from(), tokens.get(token).to(),
                        Optional.empty(), false, false));
                }
            }
        }
        unread(run, pieces);
    }

    private boolean joins(Piece piece) {
        return tokens.get(piece.fromToken()).before() == Gap.INSIDE && !absent.get(piece.fromToken());
    }

    private void keep(Piece piece) {
        int after = piece.toToken();
        boolean claimed = absent.get(piece.fromToken()) || piece.free() || Absences.saidFreeAfter(tokens, after);
        if (Absences.saidFreeAfter(tokens, after)) {
            used.set(after);
        }
        if (!claimed && doubtful.get(piece.fromToken())) {
            unknown.add(new Unknown(piece.from(), piece.to(), written(piece.from(), piece.to()),
                List.of(piece.substance().get())));
            return;
        }
        boolean mended = tokens.subList(piece.fromToken(), after).stream().anyMatch(LabelToken::mended);
        keep(piece.substance().get(), piece.from(), piece.to(),
            piece.slips() || mended ? Sureness.SPELLING_SLIP : Sureness.NAME, claimed);
    }

    private void keep(Substance substance, int from, int to, Sureness sureness, boolean claimed) {
        if (claimed) {
            claims.add(new Claim(substance, from, to, written(from, to)));
        } else {
            found.add(new Found(substance, from, to, written(from, to), sureness, from >= mayContainFrom));
        }
    }

    /** Words in a row that name nothing known: what is no mere connecting word or amount is one unknown, the rest is set beside. */
    private void unread(List<Piece> run, Pieces pieces) {
        int at = 0;
        while (at < run.size()) {
            int token = run.get(at).fromToken();
            if (absent.get(token) || used.get(token)
                || pieces.saysNothing(token) && !begins(run, at, pieces) && !itemThatSaysNothing(token)) {
                passed(token, token + 1, absent.get(token) || used.get(token) ? Reason.CLAIM
                    : amount(token) ? Reason.AMOUNT : Reason.CONNECTING);
                at++;
                continue;
            }
            int end = at + 1;
            while (end < run.size() && !used.get(run.get(end).fromToken())
                && partOfUnknown(run.get(end).fromToken(), pieces)) {
                end++;
            }
            unknownRun(token, run.get(end - 1).fromToken() + 1, pieces);
            at = end;
        }
        run.clear();
    }

    /** A connecting word as a whole item of the list: a short name that has lost a letter ("MI", "neel"). */
    private boolean itemThatSaysNothing(int at) {
        String word = tokens.get(at).folded();
        boolean shortOrListed = word.length() <= SHORTEST_ITEM
            || at + 1 < tokens.size() && tokens.get(at + 1).before() == Gap.COMMA
                && !LabelWords.HEADINGS.contains(word);
        return isWholeItem(at)
            && (LabelToken.isNumber(word) ? additive(word).isPresent() : shortOrListed);
    }

    /** The number of an unknown name ("2-ethyl…") belongs to it; a percentage does not. */
    private boolean begins(List<Piece> run, int at, Pieces pieces) {
        return amount(run.get(at).fromToken()) && at + 1 < run.size() && partOfUnknown(run.get(at).fromToken(), pieces)
            && partOfUnknown(run.get(at + 1).fromToken(), pieces);
    }

    private boolean partOfUnknown(int token, Pieces pieces) {
        return !pieces.saysNothing(token) || amount(token) && !tokens.get(token).percent();
    }

    private boolean amount(int token) {
        return LabelToken.isNumber(tokens.get(token).folded());
    }

    private void unknownRun(int from, int to, Pieces pieces) {
        boolean onlyNumbers =
            tokens.subList(from, to).stream().allMatch(t -> LabelToken.isNumber(t.folded()) || t.folded().length() < 2);
        Set<Substance> near = new LinkedHashSet<>(pieces.near(from, to));
        traces(from, to).ifPresent(near::add);
        near.addAll(numbersWithoutTheirSign(from, to));
        boolean letter = to == from + 1 && isWholeItem(from) && !LabelToken.isNumber(tokens.get(from).folded());
        if (onlyNumbers && near.isEmpty() && !letter && !looksLikeANumber(from, to)) {
            passed(from, to, Reason.AMOUNT);
        } else {
            int start = tokens.get(from).from();
            int end = tokens.get(to - 1).to();
            unknown.add(new Unknown(start, end, written(start, end), List.copyOf(new LinkedHashSet<>(near))));
        }
    }

    /** "C 77499", or "174" as a whole item: the number of a colour or an additive that has lost its letters. */
    private Set<Substance> numbersWithoutTheirSign(int from, int to) {
        Set<Substance> all = new LinkedHashSet<>();
        for (int i = from; i < to; i++) {
            String number = tokens.get(i).folded();
            if (LabelToken.isNumber(number) && number.length() >= DIGITS_OF_A_NUMBER) {
                index.named("ci" + number).ifPresent(all::add);
            } else if (LabelToken.isNumber(number) && isWholeItem(i)) {
                additive(number).ifPresent(all::add);
            }
        }
        return all;
    }

    /** Its E lost, or read as a digit. */
    private Optional<Substance> additive(String number) {
        return index.named("e" + number)
            .or(() -> number.length() > 3 ? index.named("e" + number.substring(1)) : Optional.empty());
    }

    private boolean isWholeItem(int at) {
        boolean opened = at == 0 || tokens.get(at).before() == Gap.COMMA || tokens.get(at).before() == Gap.LINE
            || SEPARATORS.contains(tokens.get(at).between().strip());
        return opened && !tokens.get(at).percent()
            && (at + 1 == tokens.size() || tokens.get(at + 1).before() != Gap.INSIDE);
    }

    /** So many digits with hyphens among them are no amount: a number of a substance, and damaged. */
    private boolean looksLikeANumber(int from, int to) {
        int digits = 0;
        boolean hyphens = false;
        for (int i = from; i < to; i++) {
            boolean joined = i > from && tokens.get(i).hyphenBefore() && tokens.get(i).between().length() == 1;
            digits = (joined ? digits : 0) + tokens.get(i).folded().length();
            hyphens |= joined && digits >= DIGITS_OF_A_NUMBER;
        }
        return hyphens;
    }

    /** A word nobody recognises that speaks of a metal is a trace of one at least. */
    private Optional<Substance> traces(int from, int to) {
        for (int i = from; i < to; i++) {
            if (Metals.speaksOf(tokens, i)) {
                return index.named(Metals.SOME_METAL);
            }
        }
        return Optional.empty();
    }

    private void passed(int from, int to, Reason reason) {
        boolean read = from < to && used.get(from) && !shade.get(from) && reason == Reason.AMOUNT;
        if (!read) {
            int start = tokens.get(from).from();
            int end = tokens.get(to - 1).to();
            beside.add(new Beside(start, end, written(start, end), reason));
        }
    }

    private String written(int from, int to) {
        return text.substring(from, to);
    }

    private void groups() {
        List<Found> all = List.copyOf(found);
        found.removeIf(f -> {
            boolean again = Groups.saidByAMember(f, all) || hennaOfATitle(f, all);
            if (again) {
                beside.add(new Beside(f.from(), f.to(), f.written(), Reason.GROUP));
            }
            return again;
        });
    }

    /** "Black henna hair powder" over a list, or in a warning below it; as an item of the list it counts. */
    private boolean hennaOfATitle(Found found, List<Found> all) {
        boolean henna = found.substance().name().equals("HENNA KIND NOT STATED");
        return henna && all.size() > NO_LIST && (!isItem(found) || listFollows(found) || titles(found));
    }

    /** What the first line begins with, and the next is a list. */
    private boolean titles(Found found) {
        String[] lines = text.strip().split("\\R", 3);
        return lines.length > 1 && lines[0].strip().startsWith(found.written())
            && lines[0].split("[,;]").length <= NO_LIST && lines[1].split("[,;]").length > NO_LIST;
    }

    /** "*Black Henna* … Composition: …": what stands before the list says of the whole what the list says of its parts. */
    private boolean listFollows(Found found) {
        return tokens.stream()
            .anyMatch(token -> token.from() > found.to() && LabelWords.HEADINGS.contains(token.folded()));
    }

    /** Between separators on both sides, and no head of a line with a colon. */
    private boolean isItem(Found found) {
        int first = firstTokenFrom(found.from());
        int after = firstTokenFrom(found.to());
        boolean opened = first == 0 || tokens.get(first).before() != Gap.INSIDE;
        boolean closed = after == tokens.size()
            || tokens.get(after).before() != Gap.INSIDE && tokens.get(after).between().indexOf(':') < 0;
        return opened && closed;
    }

    /** "Henna" and no list of what is in it: it may hold metal salts, so it counts as a kind nobody stated. */
    private void hennaAlone() {
        boolean listed = found.size() + unknown.size() > NO_LIST;
        Optional<Found> henna = found.stream()
            .filter(f -> f.sureness() != Sureness.CAS_NUMBER && f.substance().name().startsWith("LAWSONIA"))
            .filter(f -> !LetterFolding.folded(f.written()).contains("lawsonia")).findFirst();
        if (!listed && henna.isPresent()) {
            Found f = henna.get();
            index.named(HENNA_OF_SOME_KIND)
                .ifPresent(s -> found.add(new Found(s, f.from(), f.to(), f.written(), f.sureness(), f.mayContain())));
        }
    }
}
