package foretress.bench;

import foretress.assessment.Weight;

/** A service that stands otherwise because of one test. */
public record BenchChange(String service, boolean booked, Weight before, String beforeWord, Weight after,
    String afterWord, String because) {}
