package foretress.visit;

import foretress.salon.Salon;
import foretress.web.Mistakes;
import foretress.web.NameCharacters;
import foretress.web.StaffLanguage;
import foretress.web.StaffWords;
import foretress.web.Supported;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Pattern;

/** Makes sense of what the desk typed about a client, or says beside each field what to put right. */
@ApplicationScoped
public class ClientReader {
    private static final Pattern EMAIL =
        Pattern.compile("[^\\s@<>\",;:\\p{Cc}]{1,64}@[^\\s@<>\",;:.\\p{Cc}]+(\\.[^\\s@<>\",;:.\\p{Cc}]+)+");
    private static final int LONGEST_NAME = 100;
    private static final int LONGEST_EMAIL = 254;
    private static final int LONGEST_PHONE = 40;
    private static final int OLDEST_YEARS = 125;

    private final StaffWords say;
    private final Clock clock;
    private final StaffLanguage staff;

    ClientReader(StaffWords say, Clock clock, StaffLanguage staff) {
        this.staff = staff;
        this.say = say;
        this.clock = clock;
    }

    /** The person as typed; to be used only when no mistake was noted. */
    Clients.Person read(ClientForm form, Mistakes mistakes) {
        name("given", form.given(), say.visit_given_missing(), mistakes);
        name("family", form.family(), say.visit_family_missing(), mistakes);
        mistakes.expect(isMailable(form.email()), "email", say.visit_email_wrong(form.email()));
        mistakes.expect(isCallable(form.phone()), "phone", say.visit_phone_wrong(form.phone()));
        Optional<LocalDate> birth = birth(form, mistakes);
        return new Clients.Person(form.given(), form.family(), birth, some(form.email()), some(form.phone()),
            Supported.match(form.language()).orElse(Supported.TAGS.get(0)));
    }

    private void name(String field, String typed, String missing, Mistakes mistakes) {
        if (mistakes.expect(!typed.isEmpty(), field, missing)) {
            if (mistakes.expect(NameCharacters.plain(typed), field, say.visit_name_unseen())) {
                mistakes.expect(typed.length() <= LONGEST_NAME, field, say.visit_name_long(LONGEST_NAME));
            }
        }
    }

    /** Three empty fields are fine: then the client gives the date at the door. */
    private Optional<LocalDate> birth(ClientForm form, Mistakes mistakes) {
        if ((form.birthDay() + form.birthMonth() + form.birthYear()).isEmpty()) {
            return Optional.empty();
        }
        try {
            LocalDate date = LocalDate.of(number(form.birthYear()), number(form.birthMonth()), number(form.birthDay()));
            LocalDate today = LocalDate.ofInstant(clock.instant(), Salon.the().zoneId());
            mistakes.expect(!date.isAfter(today) && date.isAfter(today.minusYears(OLDEST_YEARS)), "birth-day",
                say.visit_birth_range(staff.dates().date(date)));
            return Optional.of(date);
        } catch (DateTimeException | NumberFormatException notADate) {
            mistakes.add("birth-day", say.visit_birth_wrong());
            return Optional.empty();
        }
    }

    private static int number(String typed) {
        if (!typed.matches("\\p{Nd}{1,4}")) {
            throw new NumberFormatException(typed);
        }
        return Integer.parseInt(typed);
    }

    private static boolean isMailable(String email) {
        return email.isEmpty() || email.length() <= LONGEST_EMAIL && EMAIL.matcher(email).matches();
    }

    /** Whether it can be dialled; nothing typed can be left out. */
    public static boolean isCallable(String phone) {
        long digits = phone.codePoints().filter(Character::isDigit).count();
        return phone.isEmpty()
            || digits >= 4 && phone.length() <= LONGEST_PHONE && phone.codePoints().noneMatch(Character::isISOControl);
    }

    private static Optional<String> some(String typed) {
        return typed.isEmpty() ? Optional.empty() : Optional.of(typed);
    }
}
