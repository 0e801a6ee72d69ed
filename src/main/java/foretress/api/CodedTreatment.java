package foretress.api;

import foretress.questionnaire.SaidDate;
import foretress.questionnaire.SaidTreatment;
import java.util.Optional;

/** One earlier treatment of the hair, as programs send it; what is left out is not known. */
@Json(name = "Treatment")
record CodedTreatment(@Json(as = "treatments") String what, CodedDate when, @Json(as = "zones") Optional<String> zone,
    @Json(as = "by") Optional<String> by, @Json(as = "often") Optional<String> often,
    @Json(as = "every", says = "How far apart, where it was done more than once.") Optional<String> every,
    @Json(says = "When it was first done, where it was done more than once.") Optional<CodedDate> since,
    @Json(as = "extents",
        says = "How many cm of new growth, or of the ends, where that is the zone.") Optional<String> extent) {

    SaidTreatment treatment() {
        return new SaidTreatment(what, when.date(), known(zone), known(by), known(often), known(every),
            since.map(CodedDate::date).orElse(new SaidDate.NotKnown()), known(extent));
    }

    private static String known(Optional<String> code) {
        return code.orElse(SaidTreatment.DONT_KNOW);
    }

    void check(String place, Faults faults) {
        when.check(place + "/when", faults);
        since.ifPresent(date -> date.check(place + "/since", faults));
    }
}
