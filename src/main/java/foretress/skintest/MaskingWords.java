package foretress.skintest;

import foretress.knowledge.Knowledge;
import foretress.web.StaffLanguage;
import jakarta.inject.Singleton;
import java.util.List;

/** The names of facts that may hide a reaction, for staff. */
@Singleton
class MaskingWords {
    private final Knowledge knowledge;
    private final StaffLanguage staff;

    MaskingWords(Knowledge knowledge, StaffLanguage staff) {
        this.staff = staff;
        this.knowledge = knowledge;
    }

    List<String> of(List<String> facts) {
        return facts.stream().map(fact -> knowledge.words(staff.tag()).fact(fact)).toList();
    }
}
