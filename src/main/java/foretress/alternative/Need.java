package foretress.alternative;

import java.util.Optional;

/**
 * Something that would have to happen for a booked service itself.
 *
 * @param what what happens
 * @param when from when on the service could then be done; empty when nobody can say
 * @param how what else there is to know
 * @param sketch a hair that shows it; empty where nothing is done to hair
 * @param noted it is written down among letters, doctors’ words and cuts once it has happened
 */
public record Need(String what, String when, String how, Optional<NeedSketch> sketch, boolean noted) {}
