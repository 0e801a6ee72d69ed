package foretress.api;

import foretress.questionnaire.SaidDate;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;

/** A date as precise as one can say it, as programs send it; told apart by the first field. */
@Json(name = "SaidDate")
sealed interface CodedDate {
    int MOST_YEARS = 120;

    SaidDate date();

    record OnDay(LocalDate day) implements CodedDate {
        @Override
        public SaidDate date() {
            return new SaidDate.OnDay(day);
        }
    }

    record InMonth(YearMonth month) implements CodedDate {
        @Override
        public SaidDate date() {
            return new SaidDate.InMonth(month);
        }
    }

    record InSeason(Season season, @Json(least = Times.FIRST_YEAR, most = Times.LAST_YEAR) int year)
        implements CodedDate {
        @Override
        public SaidDate date() {
            return new SaidDate.InSeason(SaidDate.Season.valueOf(season.name()), Year.of(year));
        }
    }

    record InYear(@Json(least = Times.FIRST_YEAR, most = Times.LAST_YEAR) int year) implements CodedDate {
        @Override
        public SaidDate date() {
            return new SaidDate.InYear(Year.of(year));
        }
    }

    record YearsAgo(@Json(most = MOST_YEARS) int from, @Json(most = MOST_YEARS) int to) implements CodedDate {
        @Override
        public SaidDate date() {
            return new SaidDate.YearsAgo(from, to);
        }
    }

    record LongerThan(@Json(most = MOST_YEARS) int longerThan) implements CodedDate {
        @Override
        public SaidDate date() {
            return new SaidDate.LongerThan(longerThan);
        }
    }

    record NotKnown(Not not) implements CodedDate {
        @Override
        public SaidDate date() {
            return new SaidDate.NotKnown();
        }
    }

    /** In capitals, as answers are kept. */
    enum Season {
        SPRING, SUMMER, AUTUMN, WINTER;

        public String code() {
            return name();
        }
    }

    enum Not {
        KNOWN
    }

    /** What its form alone cannot tell. */
    default void check(String place, Faults faults) {
        faults.expect(!(this instanceof YearsAgo ago) || ago.from() <= ago.to(), place,
            "'from' is the smaller number of years, 'to' the larger");
    }
}
