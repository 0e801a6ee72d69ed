package foretress.lexicon;

import java.util.List;
import java.util.regex.Pattern;

/** What a word beside the name of a medicine says. */
final class MedicineWords {
    private static final Pattern DOSE = Pattern.compile(
        "[0-9]+([.,x-][0-9]+)*(x|mg|mcg|ug|µg|g|ml|l|iu|ie|ui|units?|tabs?|h|hrs?|hours?|days?|weeks?|wks?|months?|years?|yrs?|d|st|nd|rd|th|am|pm|x[0-9])?");

    private MedicineWords() {}

    static boolean stopped(String folded) {
        return MedicineWordLists.STOPPED.contains(folded);
    }

    static boolean denied(String folded) {
        return MedicineWordLists.DENIED.contains(folded);
    }

    static boolean turns(String folded) {
        return MedicineWordLists.TURNS.contains(folded);
    }

    static boolean beginsALongerName(String folded) {
        return MedicineWordLists.PREFIXES.contains(folded);
    }

    /** A word that names no medicine. */
    static boolean beside(String folded) {
        return folded.length() <= 1 || stopped(folded) || denied(folded) || turns(folded)
            || MedicineWordLists.ORDINARY.contains(folded) || MedicineWordLists.FORMS.contains(folded)
            || MedicineWordLists.REASONS.contains(folded)
            || Character.isDigit(folded.charAt(0)) && DOSE.matcher(folded).matches();
    }

    /** "Blood pressure tablets", "something for the heart": a medicine, and nobody said which. */
    static boolean speakOfSomeMedicine(List<TypedWord> words) {
        return words.stream().anyMatch(word -> MedicineWordLists.FORMS.contains(word.folded()))
            && words.stream().anyMatch(word -> MedicineWordLists.REASONS.contains(word.folded()));
    }

    /** One past the last of words that mean no medicine although they hold the name of one; {@code at} where there are none. */
    static int endOfNoMedicine(List<TypedWord> words, int at) {
        return MedicineWordLists.NO_MEDICINE.stream().filter(sequence -> stands(sequence, words, at))
            .mapToInt(sequence -> at + sequence.size()).max().orElse(at);
    }

    private static boolean stands(List<String> sequence, List<TypedWord> words, int at) {
        if (at + sequence.size() > words.size()) {
            return false;
        }
        for (int i = 0; i < sequence.size(); i++) {
            String folded = words.get(at + i).folded();
            String said = sequence.get(i);
            boolean elided = said.indexOf('\'') > 0 && folded.equals(said.replaceFirst("^[a-z]+'", ""));
            if (!folded.equals(said) && !elided) {
                return false;
            }
        }
        return true;
    }
}
