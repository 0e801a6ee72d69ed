package foretress.load;

import java.util.ArrayList;
import java.util.List;

/**
 * What some requests of one kind took.
 *
 * @param nanos how long each took whom it was for
 * @param seconds of time from the first to the last
 * @param cpuSeconds of the server's processor time meanwhile, whatever it did with it
 */
record Cost(List<Long> nanos, double seconds, double cpuSeconds) {
    private static final double NANOS_A_MILLI = 1e6;

    /** Both together, as if one had come after the other. */
    Cost and(Cost other) {
        List<Long> all = new ArrayList<>(nanos);
        all.addAll(other.nanos);
        return new Cost(all, seconds + other.seconds, cpuSeconds + other.cpuSeconds);
    }

    double perSecond() {
        return nanos.size() / seconds;
    }

    double cpuMillis() {
        return cpuSeconds * 1000 / nanos.size();
    }

    /** @param part as 0.99: so many took no longer than what is returned, in milliseconds */
    double millis(double part) {
        List<Long> sorted = nanos.stream().sorted().toList();
        return sorted.get((int) Math.min(sorted.size() - 1, Math.floor(part * sorted.size()))) / NANOS_A_MILLI;
    }
}
