package foretress.rights;

import foretress.questionnaire.Code;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;

/** What a client can ask about her data: GDPR Art. 15 to 18 and 21. */
enum RequestKind {
    CORRECTION(RightsWords::rights_correction, RequestWords::request_correction),
    RESTRICTION(RightsWords::rights_restriction, RequestWords::request_restriction),
    OBJECTION(RightsWords::rights_objection, RequestWords::request_objection),
    ERASURE(RightsWords::rights_erasure, RequestWords::request_erasure),
    ACCESS(RightsWords::rights_access, RequestWords::request_access);

    private final Function<RightsWords, String> asked;
    private final Function<RequestWords, String> heard;

    RequestKind(Function<RightsWords, String> asked, Function<RequestWords, String> heard) {
        this.asked = asked;
        this.heard = heard;
    }

    /** The last day of the month in which it is answered: GDPR Art. 12(3), where the month that has no such day ends on its last. */
    static LocalDate due(LocalDate received) {
        return received.plusMonths(1);
    }

    String asked(RightsWords say) {
        return asked.apply(say);
    }

    String heard(RequestWords say) {
        return heard.apply(say);
    }

    String code() {
        return Code.of(this);
    }

    static Optional<RequestKind> of(String code) {
        return Code.in(RequestKind.class, code);
    }
}
