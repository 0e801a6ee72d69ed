package foretress.demo;

import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Medicine;
import foretress.questionnaire.SaidDate;
import foretress.questionnaire.SaidTreatment;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One invented client and what they say; to everything not mentioned they say no.
 *
 * @param visit which path of the product this visit shows
 * @param days from today until the visit
 * @param told how far they have come
 */
record Invented(String givenName, String familyName, LocalDate born, String language, String service, String stylist,
    String visit,
    int days, int hour, Told told, Answers says) {
    enum Told { NOTHING, HALF, SIGNED, CLOSED }

    static Invented client(String givenName, String familyName, String born, String service, String visit) {
        return new Invented(givenName, familyName, LocalDate.parse(born), "en", service, "petra", visit, 1, 10,
            Told.SIGNED, Answers.NONE);
    }

    Invented in(int otherDays, int otherHour) {
        return new Invented(givenName, familyName, born, language, service, stylist, visit, otherDays, otherHour, told,
            says);
    }

    /** The same person booking something else. */
    Invented booking(String otherService, String otherVisit) {
        return new Invented(givenName, familyName, born, language, otherService, stylist, otherVisit, days, hour, told,
            says);
    }

    Invented with(String otherStylist) {
        return new Invented(givenName, familyName, born, language, service, otherStylist, visit, days, hour, told,
            says);
    }

    Invented speaking(String tag) {
        return new Invented(givenName, familyName, born, tag, service, stylist, visit, days, hour, told, says);
    }

    Invented has(Told other) {
        return new Invented(givenName, familyName, born, language, service, stylist, visit, days, hour, other, says);
    }

    Invented says(String question, String... codes) {
        return says(question, new Answer.Chosen(List.of(codes)));
    }

    Invented says(String question, Answer answer) {
        return new Invented(givenName, familyName, born, language, service, stylist, visit, days, hour, told,
            says.with(question, answer));
    }

    Invented withHair(int lengthCm, SaidTreatment... treatments) {
        return says("hair-length", new Answer.Length(lengthCm, true)).says("treatments",
            new Answer.Treatments(Arrays.asList(treatments)));
    }

    Invented takes(Medicine... medicines) {
        return says("medicines", new Answer.Medicines(Arrays.asList(medicines)));
    }

    static SaidTreatment treatment(String what, SaidDate when, String zone, String by) {
        return new SaidTreatment(what, when, zone, by, "once");
    }

    static SaidTreatment again(SaidTreatment last, String every, SaidDate since) {
        return new SaidTreatment(last.what(), last.when(), last.zone(), last.by(), "regularly", every, since);
    }

    String name() {
        return givenName + " " + familyName;
    }

    Optional<Answer> answer(String question) {
        return says.to(question);
    }
}
