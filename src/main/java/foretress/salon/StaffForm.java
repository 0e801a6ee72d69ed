package foretress.salon;

import foretress.web.Form;
import foretress.web.Mistakes;
import foretress.web.NameCharacters;
import foretress.web.StaffWords;
import jakarta.inject.Singleton;
import java.util.regex.Pattern;

/** A member of staff's name and login, as put in on a form. */
@Singleton
class StaffForm {
    /** Letters of any script, digits, and . _ - @ between them, so that a login can be said on the phone. */
    private static final Pattern LOGIN = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}._@-]{1,63}");
    private static final int LONGEST_NAME = 100;

    private final StaffWords words;

    StaffForm(StaffWords words) {
        this.words = words;
    }

    void check(Form form, Mistakes mistakes) {
        String name = form.one("own-name");
        String login = form.one("login");
        mistakes.expect(!name.isEmpty() && name.length() <= LONGEST_NAME, "own-name", words.staff_name_missing());
        mistakes.expect(NameCharacters.plain(name), "own-name", words.visit_name_unseen());
        if (mistakes.expect(LOGIN.matcher(login).matches(), "login", words.staff_login_wrong())) {
            mistakes.expect(Staff.byLogin(login).isEmpty(), "login", words.staff_login_taken(login));
        }
    }
}
