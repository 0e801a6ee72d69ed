package foretress.api;

import foretress.questionnaire.Medicine;
import java.util.Optional;

/** One medicine, as programs send it; what is left out was not asked. */
@Json(name = "Medicine")
record CodedMedicine(@Json(least = 1, most = 200) String name, @Json(as = "doses") Optional<String> dose,
    @Json(as = "routes") Optional<String> route, @Json(as = "last taken") Optional<String> lastTaken) {

    Medicine medicine() {
        return new Medicine(name, dose.orElse(Medicine.NOT_ASKED), route.orElse(Medicine.NOT_ASKED),
            lastTaken.orElse(Medicine.NOT_ASKED));
    }
}
