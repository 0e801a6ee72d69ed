package foretress.invitation;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import java.util.OptionalInt;

/** A birth date as typed into three fields: kept word for word, and read. */
public record BirthDateField(String day, String month, String year) {
    /** Nobody alive was born earlier; from memory, the oldest person on record lived 122 years. */
    private static final int OLDEST_YEARS = 125;

    /** What is wrong, each with the field it stands beside. */
    public enum Mistake {
        DAY_MISSING("day"), MONTH_MISSING("month"), YEAR_MISSING("year"), YEAR_SHORT("year"),
        NO_SUCH_DAY("day"), AHEAD("year"), TOO_LONG_AGO("year");

        private final String field;

        Mistake(String field) {
            this.field = field;
        }

        public String field() {
            return field;
        }
    }

    public static BirthDateField blank() {
        return new BirthDateField("", "", "");
    }

    /** Exactly one of the two is there. */
    public record Read(Optional<LocalDate> date, Optional<Mistake> mistake) {
        static Read of(LocalDate date) {
            return new Read(Optional.of(date), Optional.empty());
        }

        static Read wrong(Mistake mistake) {
            return new Read(Optional.empty(), Optional.of(mistake));
        }
    }

    /** Reads the fields against today's date; the first mistake in reading order is told. */
    public Read read(LocalDate today) {
        OptionalInt d = TypedNumber.number(day);
        OptionalInt m = TypedNumber.number(month);
        OptionalInt y = TypedNumber.number(year);
        if (d.isEmpty()) {
            return Read.wrong(Mistake.DAY_MISSING);
        }
        if (m.isEmpty() || m.getAsInt() < 1 || m.getAsInt() > 12) {
            return Read.wrong(Mistake.MONTH_MISSING);
        }
        if (y.isEmpty()) {
            return Read.wrong(Mistake.YEAR_MISSING);
        }
        if (y.getAsInt() < 1000 || y.getAsInt() > 9999) {
            return Read.wrong(Mistake.YEAR_SHORT);
        }
        return within(d.getAsInt(), YearMonth.of(y.getAsInt(), m.getAsInt()), today);
    }

    private static Read within(int day, YearMonth month, LocalDate today) {
        try {
            LocalDate date = month.atDay(day);
            if (date.isAfter(today)) {
                return Read.wrong(Mistake.AHEAD);
            }
            if (date.isBefore(today.minusYears(OLDEST_YEARS))) {
                return Read.wrong(Mistake.TOO_LONG_AGO);
            }
            return Read.of(date);
        } catch (DateTimeException noSuchDay) {
            return Read.wrong(Mistake.NO_SUCH_DAY);
        }
    }
}
