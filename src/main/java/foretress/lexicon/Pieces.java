package foretress.lexicon;

import foretress.lexicon.LabelIndex.Likeness;
import foretress.lexicon.LabelToken.Gap;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * One stretch of a label between two separators, cut into names. Where the plain names leave words unread, all ways to cut it are
 * weighed against each other, damaged spellings and lost separators among them, and the cheapest wins: unread letters cost most,
 * then slips, then many pieces.
 */
final class Pieces {
    private static final int UNREAD_LETTER = 8;
    private static final int UNREAD_NUMBER = 1;
    private static final int NAME = 3;
    private static final int DAMAGED = 6;
    private static final int A_LOOK_ALIKE = 3;
    private static final int LOST_SEPARATOR = 10;
    private static final int EITHER = 4;
    private static final int SOME_COMPOUND = 31;
    private static final int SHORTEST_WITHOUT_SEPARATOR = 4;
    private static final Pattern ADDITIVE = Pattern.compile("e[0-9]+");
    private static final int MOST_WORDS = 9;
    private static final int MOST_WORDS_IN_BRACKETS = 4;
    /** A peptide or an amide is no salt. */
    private static final List<String> SALTS_IN_IDE =
        List.of("chloride", "bromide", "iodide", "fluoride", "oxide", "sulfide", "cyanide", "nitride");

    private final List<LabelToken> tokens;
    private final int from;
    private final int to;
    private final LabelIndex index;
    private final BitSet absent;
    private final BitSet read = new BitSet();
    private final String letters;
    /** For each place in the letters, the token it lies in. */
    private final int[] tokenAt;
    private final int[] startOf;
    /** The longest plain name from each token on, once it was looked for. */
    private final Piece[] longest;
    private final Map<Long, List<Substance>> near = new HashMap<>();
    private final Map<String, String> mended = new HashMap<>();

    /**
     * @param from first character in the text
     * @param toToken one past the last token it touches
     * @param slips damaged, or not parted from its neighbour
     * @param free says itself that the substance is not in it ("ammoniakfrei")
     */
    record Piece(int fromToken, int toToken, int from, int to, Optional<Substance> substance, boolean slips,
        boolean free) {}

    Pieces(List<LabelToken> tokens, int from, int to, LabelIndex index, BitSet absent) {
        this.tokens = tokens;
        this.from = from;
        this.to = to;
        this.index = index;
        this.absent = absent;
        this.startOf = new int[to - from + 1];
        this.longest = new Piece[to - from];
        var all = new StringBuilder();
        for (int i = from; i < to; i++) {
            startOf[i - from] = all.length();
            all.append(tokens.get(i).folded());
        }
        startOf[to - from] = all.length();
        this.letters = all.toString();
        this.tokenAt = new int[letters.length() + 1];
        for (int i = from; i < to; i++) {
            java.util.Arrays.fill(tokenAt, startOf[i - from], startOf[i - from + 1], i);
        }
        tokenAt[letters.length()] = to;
    }

    /** The longest plain names from left to right; every other word is a piece without a substance. */
    List<Piece> exact() {
        return fitting(greedy());
    }

    private List<Piece> greedy() {
        List<Piece> pieces = new ArrayList<>();
        int at = from;
        while (at < to) {
            Piece piece = longest(at);
            pieces.add(piece);
            at = piece.toToken();
        }
        return pieces;
    }

    /** Without the names that count only alone, or beside known ones, and do not stand so. */
    private List<Piece> fitting(List<Piece> pieces) {
        read.clear();
        for (Piece piece : pieces) {
            if (piece.substance().isPresent()) {
                read.set(piece.fromToken(), piece.toToken());
            }
        }
        List<Piece> fitting = new ArrayList<>();
        for (Piece piece : pieces) {
            boolean part = piece.substance().isPresent() && partOfALongerName(piece);
            if (part) {
                near.put((long) start(piece.fromToken()) << 32 | start(piece.toToken()),
                    List.of(piece.substance().get()));
            }
            boolean head = piece.substance().isPresent() && onlyAlone(piece)
                && !alone(piece.fromToken(), piece.toToken());
            if (head && ofNaming(piece)) {
                near.put((long) start(piece.fromToken()) << 32 | start(piece.toToken()),
                    List.of(piece.substance().get()));
            }
            if (part || head) {
                for (int token = piece.fromToken(); token < piece.toToken(); token++) {
                    read.clear(token);
                    fitting.add(unreadPiece(token));
                }
            } else {
                fitting.add(piece);
            }
        }
        return fitting;
    }

    /** "N,N-bis(hydroxyethyl)-p-…", "PEG-75 lanolin": what is joined to an unread word before it is not by itself in the product. */
    private boolean partOfALongerName(Piece piece) {
        int at = piece.fromToken();
        if (amongNumbers(piece)) {
            return true;
        }
        if (at == from || read.get(at - 1) || piece.free() || !wholeWords(piece)) {
            return false;
        }
        String between = tokens.get(at).between();
        boolean joined = (between.equals("-") || between.equals("--"))
            && !LabelWords.CONNECTING.contains(tokens.get(at - 1).folded())
            || between.equals("(") || between.equals(")-") || between.equals("]-");
        boolean ethoxylated = LabelToken.isNumber(tokens.get(at - 1).folded()) && at - 1 > from
            && LabelWords.ETHOXYLATED.contains(tokens.get(at - 2).folded()) && between.equals(" ");
        return ethoxylated || lostItsLetters(piece) || joined && tokens.get(at - 1).folded().length() > 1
            && !LabelToken.isNumber(tokens.get(at - 1).folded());
    }

    /** "C Blue No. 1": one letter is left of those before a dye's name, and they may have been of another family. */
    private boolean lostItsLetters(Piece piece) {
        int before = piece.fromToken() - 1;
        String letter = tokens.get(before).folded();
        return before == from && letter.length() == 1 && !LabelToken.isNumber(letter)
            && !LabelWords.CONNECTING.contains(letter) && tokens.get(piece.fromToken()).between().equals(" ")
            && piece.substance().filter(substance -> substance.kind().equals("direct-dye")).isPresent();
    }

    /** "1185-e57-5": the number of an additive with numbers joined to it is a piece of another number. */
    private boolean amongNumbers(Piece piece) {
        int at = piece.fromToken();
        int end = piece.toToken();
        return ADDITIVE.matcher(letters(at, end)).matches() && (joinedNumbers(at) || end < to && joinedNumbers(end));
    }

    private boolean joinedNumbers(int at) {
        return at > from && tokens.get(at).between().equals("-")
            && (LabelToken.isNumber(tokens.get(at).folded()) || LabelToken.isNumber(tokens.get(at - 1).folded()));
    }

    private boolean wholeWords(Piece piece) {
        return piece.from() == tokens.get(piece.fromToken()).from()
            && piece.to() == tokens.get(piece.toToken() - 1).to();
    }

    /** "Tert-butyl peroxyde", "… de soude": a word of naming says what kind of thing another word names. */
    private boolean ofNaming(Piece piece) {
        return piece.toToken() == piece.fromToken() + 1 && wholeWords(piece)
            && Nomenclature.knows(piece.slips() ? mended(tokens.get(piece.fromToken()).folded())
                : tokens.get(piece.fromToken()).folded());
    }

    private boolean onlyAlone(Piece piece) {
        boolean oneWord = piece.toToken() == piece.fromToken() + 1;
        String key = letters(piece.fromToken(), piece.toToken());
        return wholeWords(piece) && !piece.free()
            && (LabelWords.countsOnlyAlone(key) || ofNaming(piece) || LabelWords.isColourAndNumber(key)
                || oneWord && piece.substance().get().kind().equals("base"));
    }

    private Piece unreadPiece(int token) {
        return new Piece(token, token + 1, tokens.get(token).from(), tokens.get(token).to(), Optional.empty(), false,
            false);
    }

    private Piece longest(int at) {
        if (longest[at - from] == null) {
            longest[at - from] = findLongest(at);
        }
        return longest[at - from];
    }

    private Piece findLongest(int at) {
        Piece best = unreadPiece(at);
        for (int end = at + 1;
            end <= to && end <= at + index.mostTokens() && start(end) - start(at) <= index.longestKey(); end++) {
            Optional<Substance> named = named(at, end);
            if (named.isPresent()) {
                best = new Piece(at, end, tokens.get(at).from(), tokens.get(end - 1).to(), named, false, false);
            }
        }
        best = aroundBrackets(at, inAnyTongue(at, best));
        return best.substance().isPresent() ? best : saidFree(at).orElse(best);
    }

    /** Only a name longer than the plain one: "tioglicolato" is a group, "tioglicolato de amonio" one of it. */
    private Piece inAnyTongue(int at, Piece best) {
        int known = best.substance().isPresent() ? best.toToken() : at;
        int last = at + 1;
        while (last < to && last < at + MOST_WORDS && goesOn(last)) {
            last++;
        }
        for (int end = last; end > known; end--) {
            Optional<Substance> named = index.inAnyTongue(folded(at, end));
            if (named.isPresent()) {
                boolean sound = Nomenclature.soundAlone(folded(at, end));
                List<Substance> alike = sound ? index.alike(letters(at, end), true).near() : List.of();
                if (end > at + 1 || alike.stream().allMatch(s -> s.name().equals(named.get().name()))) {
                    return new Piece(at, end, tokens.get(at).from(), tokens.get(end - 1).to(), named, !alike.isEmpty(),
                        false);
                }
            }
        }
        return best;
    }

    private boolean goesOn(int at) {
        return goesOn(tokens.get(at));
    }

    /** A slash parts two names: "persulfato potásico / persulfato amónico" is no potassium persulfate of another order. */
    private static boolean goesOn(LabelToken token) {
        return token.before().compareTo(Gap.LINE) <= 0 && token.between().indexOf('/') < 0;
    }

    /** "Oryza Sativa (Rice) Starch": what stands in the brackets is the everyday name, if it is no graver one. */
    private Piece aroundBrackets(int at, Piece best) {
        int open = at + 1;
        while (open < to && open < at + MOST_WORDS_IN_BRACKETS && tokens.get(open).between().indexOf('(') < 0) {
            open++;
        }
        int close = open + 1;
        while (close < to && close <= open + MOST_WORDS_IN_BRACKETS && tokens.get(close).between().indexOf(')') < 0) {
            close++;
        }
        if (close >= to || !tokens.get(open).between().equals(" (") || !tokens.get(close).between().startsWith(") ")) {
            return best;
        }
        for (int end = Math.min(to, close + MOST_WORDS_IN_BRACKETS); end > close; end--) {
            Optional<Substance> named = index.named(letters(at, open) + letters(close, end));
            if (named.isPresent() && !graver(open, close, named.get())) {
                return new Piece(at, end, tokens.get(at).from(), tokens.get(end - 1).to(), named, false, false);
            }
        }
        return best;
    }

    private boolean graver(int open, int close, Substance than) {
        for (int i = open; i < close; i++) {
            for (int end = close; end > i; end--) {
                if (named(i, end).filter(s -> s.risk().compareTo(than.risk()) > 0).isPresent()) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The words from one token to another, each whole where a line broke it ("dis-/odique"). */
    private List<String> folded(int at, int end) {
        List<String> words = new ArrayList<>();
        for (int i = at; i < end; i++) {
            String word = tokens.get(i).folded();
            int last = words.size() - 1;
            if (i > at && tokens.get(i).brokenFrom(words.get(last))) {
                words.set(last, words.get(last) + word);
            } else {
                words.add(word);
            }
        }
        return words;
    }

    private Optional<Piece> saidFree(int at) {
        String word = tokens.get(at).folded();
        for (String free : LabelWords.FREE_WITHIN) {
            Optional<Substance> named =
                word.endsWith(free) ? index.named(word.substring(0, word.length() - free.length())) : Optional.empty();
            if (named.isPresent()) {
                return Optional
                    .of(new Piece(at, at + 1, tokens.get(at).from(), tokens.get(at).to(), named, false, true));
            }
        }
        return Optional.empty();
    }

    private int start(int token) {
        return startOf[token - from];
    }

    /** Of one word, or of several in a row. */
    private String letters(int at, int end) {
        return end == at + 1 ? tokens.get(at).folded() : letters.substring(start(at), start(end));
    }

    private Optional<Substance> named(int at, int end) {
        String key = letters(at, end);
        boolean fiveDigits = end == at + 1 && key.length() == 5 && LabelToken.isNumber(key);
        return index.named(fiveDigits ? "ci" + key : key);
    }

    /** "Lead stearate": a salt of a metal that is not known by itself. */
    private Optional<Substance> compound(int at, int end) {
        return end == at + 2 && isSalt(tokens.get(end - 1)) ? index.named(tokens.get(at).folded() + "compound")
            : Optional.empty();
    }

    private static boolean isSalt(LabelToken token) {
        String word = token.folded();
        return word.length() > 4 && token.before() == Gap.INSIDE
            && (word.endsWith("ate") || word.endsWith("ite") || SALTS_IN_IDE.stream().anyMatch(word::endsWith));
    }

    /** Between separators or known names, amounts and connecting words left aside. */
    private boolean alone(int at, int end) {
        return edgeBefore(at) && (Absences.saidFreeAfter(tokens, end) || edgeAfter(end));
    }

    private boolean edgeBefore(int at) {
        for (int i = at; i > 0; i--) {
            if (tokens.get(i).before() != Gap.INSIDE || read.get(i - 1)) {
                return true;
            }
            if (!saysNothing(i - 1) && !absent.get(i - 1)) {
                return false;
            }
        }
        return true;
    }

    private boolean edgeAfter(int at) {
        for (int i = at; i < tokens.size(); i++) {
            if (tokens.get(i).before() != Gap.INSIDE || read.get(i)) {
                return true;
            }
            if (!saysNothing(i)) {
                return false;
            }
        }
        return true;
    }

    boolean saysNothing(int at) {
        LabelToken token = tokens.get(at);
        return token.percent() || LabelToken.isNumber(token.folded())
            || LabelWords.CONNECTING.contains(token.folded()) && !partOfName(at)
            || at > 0 && LabelToken.isNumber(tokens.get(at - 1).folded()) && token.between().isBlank()
                && LabelWords.isUnit(token.folded());
    }

    /** The o of o-aminophenol is no "or". */
    private boolean partOfName(int at) {
        return tokens.get(at).folded().length() == 1 && at + 1 < tokens.size()
            && tokens.get(at + 1).before() == Gap.INSIDE
            && tokens.get(at + 1).from() == tokens.get(at).to() + 1;
    }

    /** The cheapest cut; the plain names alone where they leave nothing unread. */
    List<Piece> best() {
        List<Piece> plain = exact();
        BitSet holes = holes(plain);
        return holes.isEmpty() ? plain : fitting(cheapest(holes));
    }

    private BitSet holes(List<Piece> plain) {
        var holes = new BitSet();
        plain.stream().filter(p -> p.substance().isEmpty() && !saysNothing(p.fromToken()))
            .forEach(p -> holes.set(p.fromToken()));
        return holes;
    }

    /** One step of a cut: where it came from, and what it read there. */
    private record Step(int cost, int before, Piece piece) {}

    private List<Piece> cheapest(BitSet holes) {
        BitSet borders = borders(holes);
        Step[] steps = new Step[letters.length() + 1];
        steps[0] = new Step(0, -1, null);
        for (int at = 0; at >= 0; at = borders.nextSetBit(at + 1)) {
            if (steps[at] != null) {
                unreadWord(at, steps);
                for (int end = borders.nextSetBit(at + 1); end >= 0 && within(at, end);
                    end = borders.nextSetBit(end + 1)) {
                    step(at, end, holes, steps);
                }
            }
        }
        List<Piece> pieces = new ArrayList<>();
        for (Step step = steps[letters.length()]; step.piece != null; step = steps[step.before]) {
            pieces.add(step.piece);
        }
        Collections.reverse(pieces);
        return pieces;
    }

    /** No longer than any name can be, damaged or not. */
    private boolean within(int at, int end) {
        return end - at <= index.longestKey() + LookAlikes.SLIP && tokenAt[end] - tokenAt[at] <= index.mostTokens();
    }

    /** There is always a way on: the next word, however long, left unread. */
    private void unreadWord(int at, Step[] steps) {
        if (at < letters.length() && isTokenStart(at)) {
            int token = tokenAt[at];
            offer(steps, start(token + 1), new Step(steps[at].cost + unread(token), at, unreadPiece(token)));
            Piece plain = longest(token);
            if (plain.substance().isPresent()) {
                offer(steps, start(plain.toToken()), new Step(steps[at].cost + NAME, at, plain));
            }
        }
    }

    private void step(int at, int end, BitSet holes, Step[] steps) {
        boolean whole = isTokenStart(at) && isTokenStart(end);
        int lost = (isTokenStart(at) ? 0 : LOST_SEPARATOR) + (isTokenStart(end) ? 0 : LOST_SEPARATOR);
        int cost = steps[at].cost + lost;
        Optional<Substance> named = whole ? named(tokenAt[at], tokenAt[end])
            : index.named(letters.substring(at, end)).filter(s -> fit(at, end));
        if (named.isPresent()) {
            offer(steps, end, new Step(cost + NAME, at, piece(at, end, named, lost > 0)));
            return;
        }
        int last = tokenAt[end - 1];
        int hole = holes.nextSetBit(tokenAt[at]);
        if (hole < 0 || hole > last) {
            return;
        }
        Optional<Substance> compound = whole ? compound(tokenAt[at], last + 1) : Optional.empty();
        compound.ifPresent(s -> offer(steps, end, new Step(cost + SOME_COMPOUND, at, piece(at, end, compound, false))));
        Likeness alike = index.alike(letters.substring(at, end), whole && alone(tokenAt[at], last + 1));
        if (whole && alike.near().size() < 2) {
            damagedInAnyTongue(tokenAt[at], last + 1)
                .filter(s -> alike.substance().map(Substance::name).orElse(s.name()).equals(s.name()))
                .ifPresent(s -> offer(steps, end, new Step(cost + DAMAGED + A_LOOK_ALIKE * LookAlikes.SLIP, at,
                    piece(at, end, Optional.of(s), true))));
        }
        if (alike.near().stream().anyMatch(s -> !holdsOrdinaryWords(tokenAt[at], last + 1, s))) {
            return;
        }
        if (alike.substance().isPresent()) {
            offer(steps, end, new Step(cost + DAMAGED + A_LOOK_ALIKE * alike.distance(), at,
                piece(at, end, alike.substance(), true)));
        } else if (!alike.near().isEmpty()) {
            near.put((long) at << 32 | end, alike.near());
            if (whole && compound.isEmpty()) {
                offer(steps, end, new Step(cost + EITHER + DAMAGED + A_LOOK_ALIKE * alike.distance(), at,
                    piece(at, end, Optional.empty(), false)));
            }
        }
    }

    private Optional<Substance> damagedInAnyTongue(int at, int end) {
        boolean together = DamagedNomenclature.mayBe(end - at) && !DamagedNomenclature.isLink(tokens.get(at).folded())
            && tokens.subList(at + 1, end).stream().allMatch(Pieces::goesOn);
        return together ? index.inAnyTongueDamaged(folded(at, end), folded(at, end).stream().map(this::mended).toList())
            .filter(s -> holdsOrdinaryWords(at, end, s)) : Optional.empty();
    }

    private String mended(String word) {
        return mended.computeIfAbsent(word, DamagedNomenclature::mended);
    }

    /** Words of everyday language are spelt right: "cream peroxide" is no damaged urea peroxide, "inermis leaf powder" a leaf powder. */
    private boolean holdsOrdinaryWords(int at, int end, Substance substance) {
        for (int i = at; i < end; i++) {
            String word = tokens.get(i).folded();
            if (LabelWords.ORDINARY.contains(word) && !LetterFolding.folded(substance.name()).contains(word)
                && substance.otherNames().stream().noneMatch(name -> LetterFolding.folded(name).contains(word))) {
                return false;
            }
        }
        return true;
    }

    private boolean fit(int at, int end) {
        return end - at >= SHORTEST_WITHOUT_SEPARATOR && !LabelWords.ALONE_ONLY.contains(letters.substring(at, end));
    }

    private boolean isTokenStart(int at) {
        return at == letters.length() || at == start(tokenAt[at]);
    }

    private int unread(int token) {
        return saysNothing(token) ? UNREAD_NUMBER : UNREAD_LETTER * tokens.get(token).folded().length();
    }

    private static void offer(Step[] steps, int end, Step step) {
        if (steps[end] == null || step.cost < steps[end].cost) {
            steps[end] = step;
        }
    }

    private Piece piece(int at, int end, Optional<Substance> substance, boolean slips) {
        return new Piece(tokenAt[at], tokenAt[end - 1] + 1, place(at, false), place(end - 1, true), substance, slips,
            false);
    }

    /** The character of the text where this letter stands, or the one after it. */
    private int place(int letter, boolean after) {
        LabelToken token = tokens.get(tokenAt[letter]);
        int inside = letter - start(tokenAt[letter]) + (after ? 1 : 0);
        return after && inside == token.folded().length() ? token.to() : token.from() + token.written(inside);
    }

    /** Where a piece may begin or end: between words, and within an unread word where a known name begins or ends at its edge. */
    private BitSet borders(BitSet holes) {
        var borders = new BitSet();
        for (int i = from; i <= to; i++) {
            borders.set(start(i));
        }
        for (int token = holes.nextSetBit(0); token >= 0; token = holes.nextSetBit(token + 1)) {
            endsWithin(token, borders);
            startsWithin(token, borders);
        }
        return borders;
    }

    /** Ends, within the word, of names that begin at its edge or at that of a word shortly before, and of those that begin where one ends. */
    private void endsWithin(int token, BitSet borders) {
        var open = new BitSet();
        for (int i = Math.max(from, token - 3); i <= token; i++) {
            open.set(start(i));
        }
        for (int at = open.nextSetBit(0); at >= 0; at = open.nextSetBit(at + 1)) {
            int node = index.forwards().next(KeyTree.ROOT, letters.charAt(at));
            for (int end = at + 1; node != KeyTree.NOWHERE && end < start(token + 1); end++) {
                if (end > start(token) && index.forwards().isKey(node) && fit(at, end) && !borders.get(end)) {
                    borders.set(end);
                    open.set(end);
                }
                node = index.forwards().next(node, letters.charAt(end));
            }
        }
    }

    /** Beginnings, within the word, of names that end at its edge or at that of a word shortly after. */
    private void startsWithin(int token, BitSet borders) {
        for (int i = token + 1; i <= Math.min(to, token + 4); i++) {
            int node = KeyTree.ROOT;
            for (int at = start(i) - 1; at > start(token); at--) {
                node = index.backwards().next(node, letters.charAt(at));
                if (node == KeyTree.NOWHERE) {
                    break;
                }
                if (at < start(token + 1) && index.backwards().isKey(node) && fit(at, start(i))) {
                    borders.set(at);
                }
            }
        }
    }

    /** What the words in a row might be, taken together or in part, where they could be several. */
    Set<Substance> near(int fromToken, int toToken) {
        Set<Substance> all = new LinkedHashSet<>();
        near.forEach((span, substances) -> {
            if ((int) (span >> 32) >= start(fromToken) && span.intValue() <= start(toToken)) {
                all.addAll(substances);
            }
        });
        return all;
    }
}
