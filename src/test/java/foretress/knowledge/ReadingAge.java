package foretress.knowledge;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** How hard a text is to read, by each language's own formula. Syllables are counted by rule, so the last decimals are soft. */
final class ReadingAge {
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N}'’\u2011-]*");
    private static final Pattern ENGLISH_VOWELS = Pattern.compile("[aeiouy]+");
    private static final Pattern SPANISH_SYLLABLE = Pattern.compile("[iuü]?(?:[aeoáéó])[iuy]?|[íú]|[iuü]+");

    private ReadingAge() {}

    /**
     * Flesch-Kincaid grade: 0.39 words a sentence + 11.8 syllables a word − 15.59 (Kincaid, Fishburne, Rogers and Chissom,
     * Research Branch Report 8-75, 1975; constants from memory).
     */
    static double englishGrade(String text) {
        return 0.39 * wordsPerSentence(text)
            + 11.8 * words(text).stream().mapToInt(ReadingAge::englishSyllables).average().orElse(0) - 15.59;
    }

    /**
     * Fernández Huerta's ease of reading: 206.84 − 60 syllables a word − 1.02 words a sentence; 80 to 90 easy, 70 to 80 fairly
     * easy (Medidas sencillas de lecturabilidad, 1959; constants from memory).
     */
    static double spanishEase(String text) {
        return 206.84 - 60 * words(text).stream().mapToInt(ReadingAge::spanishSyllables).average().orElse(0)
            - 1.02 * wordsPerSentence(text);
    }

    /** Words of the longest sentence: Vietnamese writes each syllable as a word, French most little words apart (common practice, no source). */
    static int longestSentence(String language) {
        return language.equals("vi") ? 30 : language.equals("fr") ? 25 : 20;
    }

    static List<String> sentences(String text) {
        return Stream.of(text.split("(?<=[.!?:\u061f])\\s+")).filter(s -> !words(s).isEmpty()).toList();
    }

    static List<String> words(String text) {
        return WORD.matcher(text).results().map(m -> m.group().toLowerCase(Locale.ROOT)).toList();
    }

    private static double wordsPerSentence(String text) {
        return (double) words(text).size() / sentences(text).size();
    }

    static int englishSyllables(String word) {
        // "react" is said in two; it is too common here to be miscounted.
        int groups = (int) ENGLISH_VOWELS.matcher(word.replace("reac", "re-ac")).results().count();
        boolean silent = word.matches(".*[^aeiouyl]e|.*[aeiouy]le|.*[^aeiouytd]ed");
        return Math.max(1, groups - (silent ? 1 : 0));
    }

    static int spanishSyllables(String word) {
        Matcher syllables =
            SPANISH_SYLLABLE.matcher(word.replaceAll("qu(?=[eiéí])", "q").replaceAll("gu(?=[eiéí])", "g"));
        return Math.max(1, (int) syllables.results().count());
    }
}
