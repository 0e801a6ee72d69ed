package foretress.salon;

import foretress.web.Form;
import foretress.web.Mistakes;
import foretress.web.StaffWords;
import jakarta.inject.Singleton;
import java.util.List;

/** A password chosen on a form, in two fields so that a slip locks nobody out. */
@Singleton
class NewPassword {
    private final Passwords passwords;
    private final StaffWords words;

    NewPassword(Passwords passwords, StaffWords words) {
        this.passwords = passwords;
        this.words = words;
    }

    /** Notes what is wrong with the fields {@code password} and {@code password-again}. */
    void check(Form form, List<String> known, Mistakes mistakes) {
        String password = form.exact("password");
        PasswordRule.fault(password, known).ifPresentOrElse(
            fault -> mistakes.add("password", said(fault)),
            () -> mistakes.expect(password.equals(form.exact("password-again")), "password-again",
                words.password_differs()));
    }

    void give(Staff staff, Form form) {
        staff.proves(passwords.hash(form.exact("password")));
    }

    private String said(PasswordRule.Fault fault) {
        return switch (fault) {
            case TOO_SHORT -> words.password_too_short(PasswordRule.SHORTEST);
            case TOO_LONG -> words.password_too_long(PasswordRule.LONGEST);
            case COMMON -> words.password_common();
            case SALON_WORDS -> words.password_salon_words();
            case REPETITIVE -> words.password_repetitive();
        };
    }
}
