package foretress.demo;

import static foretress.demo.Invented.again;
import static foretress.demo.Invented.client;
import static foretress.demo.Invented.treatment;

import foretress.demo.Invented.Told;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Medicine;
import foretress.questionnaire.SaidDate.InMonth;
import foretress.questionnaire.SaidDate.InSeason;
import foretress.questionnaire.SaidDate.NotKnown;
import foretress.questionnaire.SaidDate.Season;
import foretress.questionnaire.SaidDate.YearsAgo;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.List;

/** The invented clients of the demo, each on one path. None of them exists. */
final class Cast {
    /** The visit that photos were sent for. */
    static final String WITH_PHOTOS = "signed in Spanish, one thing not known, two drawings sent as photos";

    private Cast() {}

    /** @param today for "last spring": the demo always looks fresh */
    static List<Invented> of(LocalDate today) {
        YearMonth month = YearMonth.from(today);
        Year lastYear = Year.of(today.getYear() - 1);
        return List.of(
            client("Amal", "Rezk", "1988-09-02", "cut-and-dry", "nothing found").in(0, 9),
            client("Ines", "Varga", "1994-01-19", "highlights-regrowth", "bleached lengths, new growth only").in(0, 11)
                .with("juno")
                .withHair(38, treatment("bleach", new InMonth(month.minusMonths(7)), "lengths-ends", "salon")),
            client("Ottilie", "Brandt", "1965-03-04", "colour-whole", "restorer lotion two years ago on long hair")
                .in(3, 14)
                .withHair(42,
                    treatment("restorer", new InSeason(Season.SUMMER, Year.of(today.getYear() - 2)), "whole", "home"),
                    treatment("box-dye", new InMonth(month.minusMonths(16)), "regrowth", "home"),
                    treatment("highlights", new InSeason(Season.AUTUMN, Year.of(today.getYear() - 3)), "strands",
                        "salon")),
            client("Ruth", "Pellow", "1979-11-23", "relaxer", "bleached hair and a relaxer").in(0, 15).with("juno")
                .withHair(30, treatment("bleach", new InMonth(month.minusMonths(10)), "whole", "salon")),
            client("Wanda", "Kubik", "1957-06-30", "colour-roots", "not answered yet: try this one").in(4, 13)
                .has(Told.NOTHING),
            client("Linh", "Tran", "1999-12-12", "perm-alkaline", "half answered").in(0, 17).has(Told.HALF),
            client("Marta", "Oyelaran", "1991-04-17", "colour-whole", "a first colour owes a skin test").in(5, 10),
            client("Teodor", "Wisk", "1984-02-08", "highlights", "henna of a kind not known").in(4, 9).with("juno")
                .withHair(55, treatment("henna-unknown", new InSeason(Season.SPRING, lastYear), "whole", "home")),
            client("Hana", "Sorley", "2001-08-05", "colour-whole", "reacted to a black tattoo").in(2, 12)
                .says("black-tattoo", "yes").says("black-tattoo-reaction", "yes").says("black-tattoo-what", "blisters")
                .says("black-tattoo-soon", "two-days"),
            client("Bea", "Holm", "1972-10-10", "colour-roots", "a medicine that hides reactions, and one nobody knows")
                .in(6, 11)
                .takes(new Medicine("prednisolone 20 mg", "high", "mouth", "now"),
                    new Medicine("Velquorin", Medicine.NOT_ASKED, "mouth", "now"))
                .withHair(36,
                    again(treatment("salon-colour", new InMonth(month.minusMonths(2)), "regrowth", "salon"), "6-weeks",
                        new YearsAgo(3, 5))),
            client("Jon", "Abbot", "1990-03-28", "colour-whole", "too soon for the test").in(1, 10),
            client("Pia", "Nord", today.minusYears(15).minusMonths(3).toString(), "fashion-colour", "under age")
                .in(3, 16).with("juno"),
            client("Nell", "Ashdown", "1976-05-09", "reconditioning",
                "a returning client: one visit closed, the next with another answer").in(-1, 16)
                .has(Told.CLOSED),
            client("Lucía", "Ferrer", "1969-05-21", "highlights", "answers in Spanish: try this one").in(5, 15)
                .speaking("es").has(Told.NOTHING),
            client("Carmen", "Ibarra", "1983-07-14", "colour-whole", WITH_PHOTOS).in(6, 14)
                .speaking("es")
                .says("black-tattoo", Answer.DONT_KNOW)
                .withHair(60, treatment("box-dye", new YearsAgo(1, 2), "lengths-ends", "home"),
                    treatment("dont-know", new NotKnown(), "dont-know", "dont-know")));
    }
}
