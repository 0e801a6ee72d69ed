package foretress.lexicon;

import foretress.lexicon.LabelReading.Claim;
import foretress.lexicon.LabelReading.Found;
import foretress.lexicon.LabelReading.Sureness;
import foretress.lexicon.LabelReading.Unknown;
import foretress.lexicon.LabelToken.Gap;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads pasted ingredient lists: INCI names and synonyms in whatever spelling, CAS and CI numbers, spelling slips. The longest
 * name that fits wins; what is left is looked at for slips and else kept as unknown. Time grows with the length of the text.
 */
public final class LabelLexicon {
    private static final Pattern CAS = Pattern.compile("(?<![0-9-])[1-9][0-9]{1,6}-[0-9]{2}-[0-9](?![0-9-])");
    private static final String HENNA_OF_SOME_KIND = "hennakindnotstated";
    private static final int NO_LIST = 2;

    private final LabelIndex index;

    public LabelLexicon(List<Substance> substances) {
        this.index = new LabelIndex(substances);
    }

    public LabelReading read(String pasted) {
        return new Reader(pasted).read();
    }

    /** One reading of one text. */
    private final class Reader {
        private final String text;
        private final String dashed;
        private final List<LabelToken> tokens;
        private final BitSet absent;
        private final BitSet used = new BitSet();
        private final List<Found> found = new ArrayList<>();
        private final List<Unknown> unknown = new ArrayList<>();
        private final List<Claim> claims = new ArrayList<>();
        private final int mayContainFrom;

        Reader(String text) {
            this.text = text;
            this.dashed = text.replaceAll("[‐‑‒–−]", "-");
            this.tokens = LabelToken.of(text);
            this.absent = Absences.of(tokens);
            this.mayContainFrom = mayContainFrom();
        }

        LabelReading read() {
            numbers();
            names();
            leftovers();
            hennaAlone();
            found.sort((a, b) -> Integer.compare(a.from(), b.from()));
            return new LabelReading(found, unknown, claims);
        }

        private int mayContainFrom() {
            int sign = Math.max(text.indexOf("+/-"), text.indexOf('±'));
            int from = sign < 0 ? Integer.MAX_VALUE : sign;
            for (int i = 0; i < tokens.size(); i++) {
                int at = i;
                if (LabelWords.MAY_CONTAIN.stream().anyMatch(words -> LabelWords.startsHere(tokens, at, words))) {
                    return Math.min(from, tokens.get(i).from());
                }
            }
            return from;
        }

        private void numbers() {
            Matcher cas = CAS.matcher(dashed);
            while (cas.find()) {
                BitSet inside = tokensBetween(cas.start(), cas.end());
                used.or(inside);
                Optional<Substance> substance = Cas.valid(cas.group()) ? index.numbered(cas.group()) : Optional.empty();
                if (substance.isPresent()) {
                    keep(substance.get(), cas.start(), cas.end(), Sureness.CAS_NUMBER, inside.intersects(absent));
                } else {
                    unknown.add(new Unknown(cas.start(), cas.end(), text.substring(cas.start(), cas.end())));
                }
            }
        }

        private BitSet tokensBetween(int from, int to) {
            BitSet inside = new BitSet();
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

        private void names() {
            int at = 0;
            while (at < tokens.size()) {
                int end = used.get(at) ? at : longestName(at);
                if (end > at) {
                    used.set(at, end);
                }
                at = Math.max(at + 1, end);
            }
        }

        /** Keeps the longest name that starts here and returns where it ends; the start itself when there is none. */
        private int longestName(int at) {
            StringBuilder key = new StringBuilder();
            Substance best = null;
            int end = at;
            for (int i = at; i < tokens.size() && i < at + index.mostTokens() && !used.get(i) && mayRunOver(at, i); i++) {
                if (!isNumberSign(i)) {
                    key.append(tokens.get(i).folded());
                }
                if (key.length() > index.longestKey()) {
                    break;
                }
                Optional<Substance> named = named(key.toString(), at, i + 1);
                if (named.isPresent()) {
                    best = named.get();
                    end = i + 1;
                }
            }
            if (best != null) {
                keep(best, at, end, Sureness.NAME);
            }
            return end;
        }

        private boolean mayRunOver(int start, int at) {
            Gap gap = tokens.get(at).before();
            return at == start || gap == Gap.INSIDE || gap == Gap.BREAK || gap == Gap.LINE;
        }

        private boolean isNumberSign(int at) {
            return LabelIndex.isNumberSign(tokens.get(at).folded()) && at + 1 < tokens.size()
                && LabelToken.isNumber(tokens.get(at + 1).folded());
        }

        private Optional<Substance> named(String key, int from, int to) {
            boolean fiveDigits = to == from + 1 && key.length() == 5 && LabelToken.isNumber(key);
            Optional<Substance> substance = index.named(fiveDigits ? "ci" + key : key);
            if (substance.isEmpty() && to == from + 2 && isSalt(tokens.get(to - 1))) {
                return index.named(tokens.get(from).folded() + "compound");
            }
            return substance.filter(s -> !LabelWords.countsOnlyAlone(key) || standsAlone(from, to));
        }

        private boolean isSalt(LabelToken token) {
            String word = token.folded();
            return word.length() > 4 && token.before() == Gap.INSIDE && (word.endsWith("ate") || word.endsWith("ide") || word.endsWith("ite"));
        }

        private boolean standsAlone(int from, int to) {
            return edgeBefore(from) && (Absences.saidFreeAfter(tokens, to) || edgeAfter(to));
        }

        private boolean edgeBefore(int at) {
            for (int i = at; i > 0; i--) {
                if (tokens.get(i).before() != Gap.INSIDE) {
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
                if (tokens.get(i).before() != Gap.INSIDE) {
                    return true;
                }
                if (!saysNothing(i)) {
                    return false;
                }
            }
            return true;
        }

        private boolean saysNothing(int at) {
            LabelToken token = tokens.get(at);
            return LabelWords.CONNECTING.contains(token.folded()) || LabelToken.isNumber(token.folded()) || token.percent();
        }

        private void keep(Substance substance, int fromToken, int toToken, Sureness sureness) {
            boolean claimed = absent.get(fromToken) || Absences.saidFreeAfter(tokens, toToken);
            if (claimed && toToken < tokens.size() && Absences.saidFreeAfter(tokens, toToken)) {
                used.set(toToken);
            }
            keep(substance, tokens.get(fromToken).from(), tokens.get(toToken - 1).to(), sureness, claimed);
        }

        private void keep(Substance substance, int from, int to, Sureness sureness, boolean claimed) {
            String written = text.substring(from, to);
            if (claimed) {
                claims.add(new Claim(substance, from, to, written));
            } else {
                found.add(new Found(substance, from, to, written, sureness, from >= mayContainFrom));
            }
        }

        private void leftovers() {
            int at = 0;
            while (at < tokens.size()) {
                int end = at + 1;
                if (!leftOver(at)) {
                    at = end;
                    continue;
                }
                while (end < tokens.size() && leftOver(end) && tokens.get(end).before() == Gap.INSIDE) {
                    end++;
                }
                slips(at, end);
                at = end;
            }
        }

        private boolean leftOver(int at) {
            return !used.get(at) && !absent.get(at) && !tokens.get(at).percent()
                && (partOfName(at) || !LabelWords.CONNECTING.contains(tokens.get(at).folded()));
        }

        /** The o of o-aminophenol is no "or". */
        private boolean partOfName(int at) {
            int to = tokens.get(at).to();
            return tokens.get(at).folded().length() == 1 && to < dashed.length() && dashed.charAt(to) == '-';
        }

        /** Looks through a run of unread tokens for a misspelt name, the longest first; the rest is unknown. */
        private void slips(int from, int to) {
            int unread = from;
            int at = from;
            while (at < to) {
                int end = longestSlip(at, to);
                if (end > at) {
                    unknownRun(unread, at);
                    unread = end;
                }
                at = Math.max(at + 1, end);
            }
            unknownRun(unread, to);
        }

        private int longestSlip(int at, int to) {
            for (int end = Math.min(to, at + index.mostTokens()); end > at; end--) {
                StringBuilder key = new StringBuilder();
                for (int i = at; i < end; i++) {
                    key.append(tokens.get(i).folded());
                }
                Optional<Substance> alike = index.alike(key.toString());
                if (alike.isPresent()) {
                    keep(alike.get(), at, end, Sureness.SPELLING_SLIP);
                    return end;
                }
            }
            return at;
        }

        private void unknownRun(int from, int to) {
            boolean onlyNumbers = tokens.subList(from, to).stream().allMatch(t -> LabelToken.isNumber(t.folded()) || t.folded().length() < 2);
            if (from < to && !onlyNumbers) {
                int start = tokens.get(from).from();
                int end = tokens.get(to - 1).to();
                unknown.add(new Unknown(start, end, text.substring(start, end)));
            }
        }

        /** "Henna" and no list of what is in it: it may hold metal salts, so it counts as a kind nobody stated. */
        private void hennaAlone() {
            boolean listed = found.size() + unknown.size() > NO_LIST;
            Optional<Found> henna = found.stream()
                .filter(f -> f.sureness() != Sureness.CAS_NUMBER && f.substance().name().startsWith("LAWSONIA"))
                .filter(f -> !Letters.folded(f.written()).contains("lawsonia")).findFirst();
            if (!listed && henna.isPresent()) {
                Found f = henna.get();
                index.named(HENNA_OF_SOME_KIND).ifPresent(s -> found.add(new Found(s, f.from(), f.to(), f.written(), f.sureness(), f.mayContain())));
            }
        }
    }
}
