package foretress.intake;

import foretress.visit.Visit;
import java.util.Optional;

/** Something a room above has for the client who has signed; the page after signing shows every bean of this kind. */
public interface NextStep {
    /** What it is, in the client's language, and where it is told. */
    record Step(String words, String address) {}

    Optional<Step> of(Visit visit);
}
