package foretress.questionnaire;

import java.time.LocalDate;
import java.time.Month;
import java.time.Year;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.Locale;

/** A date as precise as one can say it: a day, a month, a season, a year, some years ago, longer ago, or not known. */
public sealed interface SaidDate {

    /** The days it may mean, seen from today; never later than today. */
    Span span(LocalDate today, Hemisphere hemisphere);

    /** First and last day, both included. */
    record Span(LocalDate earliest, LocalDate latest) {
        public Span {
            if (latest.isBefore(earliest)) {
                throw new IllegalArgumentException("%s is before %s".formatted(latest, earliest));
            }
        }

        Span notAfter(LocalDate today) {
            return new Span(earliest.isAfter(today) ? today : earliest, latest.isAfter(today) ? today : latest);
        }
    }

    /** Which half of the earth: summer is June to August in the north, December to February in the south. */
    enum Hemisphere {
        NORTH, SOUTH
    }

    /** Winter of a year is the one that begins in its December in the north (December to February). */
    enum Season {
        SPRING(Month.MARCH), SUMMER(Month.JUNE), AUTUMN(Month.SEPTEMBER), WINTER(Month.DECEMBER);

        private final Month northStart;

        Season(Month northStart) {
            this.northStart = northStart;
        }

        YearMonth start(Year year, Hemisphere hemisphere) {
            return year.atMonth(hemisphere == Hemisphere.NORTH ? northStart : northStart.plus(6));
        }
    }

    record OnDay(LocalDate day) implements SaidDate {
        @Override
        public Span span(LocalDate today, Hemisphere hemisphere) {
            return new Span(day, day).notAfter(today);
        }
    }

    record InMonth(YearMonth month) implements SaidDate {
        @Override
        public Span span(LocalDate today, Hemisphere hemisphere) {
            return new Span(month.atDay(1), month.atEndOfMonth()).notAfter(today);
        }
    }

    record InSeason(Season season, Year year) implements SaidDate {
        /** A season said with a year can straddle two years ("winter 2024"): both readings count. */
        @Override
        public Span span(LocalDate today, Hemisphere hemisphere) {
            YearMonth start = season.start(year, hemisphere);
            boolean straddles = start.getMonth() == Month.DECEMBER;
            LocalDate earliest = (straddles ? year.atMonth(1) : start).atDay(1);
            return new Span(earliest, start.plusMonths(2).atEndOfMonth()).notAfter(today);
        }
    }

    record InYear(Year year) implements SaidDate {
        @Override
        public Span span(LocalDate today, Hemisphere hemisphere) {
            return new Span(year.atDay(1), year.atMonth(Month.DECEMBER).atEndOfMonth()).notAfter(today);
        }
    }

    /** "Two to three years ago": at least {@code from}, at most {@code to} years. */
    record YearsAgo(int from, int to) implements SaidDate {
        public YearsAgo {
            if (from < 0 || to < from) {
                throw new IllegalArgumentException("not a span of years: %d to %d".formatted(from, to));
            }
        }

        @Override
        public Span span(LocalDate today, Hemisphere hemisphere) {
            return new Span(today.minusYears(to), today.minusYears(from));
        }
    }

    /** "Three to six months ago", "two to four weeks ago": at least {@code from}, at most {@code to} of the unit. */
    record LatelyAgo(int from, int to, Unit unit) implements SaidDate {
        /** Named in small letters wherever it is kept or worded. */
        public enum Unit {
            WEEKS, MONTHS;

            LocalDate before(LocalDate today, int many) {
                return this == WEEKS ? today.minusWeeks(many) : today.minusMonths(many);
            }

            public String code() {
                return name().toLowerCase(Locale.ROOT);
            }
        }

        public LatelyAgo {
            if (from < 0 || to < from) {
                throw new IllegalArgumentException("not a span of %s: %d to %d".formatted(unit, from, to));
            }
        }

        /** As a form and its words name it. */
        public String code() {
            return "%d-%d-%s".formatted(from, to, unit.code());
        }

        @Override
        public Span span(LocalDate today, Hemisphere hemisphere) {
            return new Span(unit.before(today, to), unit.before(today, from));
        }
    }

    /** Longer ago than the given years; open towards the past, so counted as far back as hair can reach. */
    record LongerThan(int years) implements SaidDate {
        static final int AS_FAR_AS_HAIR_REACHES_YEARS = 35;

        @Override
        public Span span(LocalDate today, Hemisphere hemisphere) {
            return new Span(today.minusYears(AS_FAR_AS_HAIR_REACHES_YEARS), today.minusYears(years));
        }
    }

    /** Not known: any day from as far back as hair reaches until today. */
    record NotKnown() implements SaidDate {
        @Override
        public Span span(LocalDate today, Hemisphere hemisphere) {
            return new Span(today.minusYears(LongerThan.AS_FAR_AS_HAIR_REACHES_YEARS), today);
        }
    }

    /** Not one day the words can mean, on either half of the earth, is as early as the latest the other can mean. */
    default boolean surelyAfter(SaidDate other, LocalDate today) {
        return Arrays.stream(Hemisphere.values())
            .allMatch(half -> span(today, half).earliest().isAfter(other.span(today, half).latest()));
    }

    /** The earliest day the words can mean lies in the future: nothing said can be right. */
    default boolean wholeInFuture(LocalDate today) {
        if (this instanceof OnDay d) {
            return d.day().isAfter(today);
        }
        if (this instanceof InMonth m) {
            return m.month().atDay(1).isAfter(today);
        }
        if (this instanceof InYear y) {
            return y.year().atDay(1).isAfter(today);
        }
        // Winter may mean the one that began the year before, so only the year is held against today.
        return this instanceof InSeason s && s.year().atDay(1).isAfter(today);
    }
}
