package foretress.assessment;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What is asked of a skin test where leaflet and policy both speak: of each thing, the stricter.
 *
 * @param waitHours hours on the physical clock from applying to reading: the longer of the two
 * @param validities every limit that holds, all at once: a test stands only while it stands by each of them
 */
public record Stricter(int waitHours, List<Validity> validities) {
    public Stricter {
        validities = List.copyOf(validities);
    }

    public static Stricter of(Policy policy) {
        return of(policy, Optional.empty());
    }

    public static Stricter of(Policy policy, Optional<Leaflet> leaflet) {
        Validity law = Validity.ofPolicy(policy.skinTestValidityMonths());
        return new Stricter(Math.max(policy.skinTestWaitHours(), leaflet.map(Leaflet::waitHours).orElse(0)),
            leaflet.map(said -> List.of(law, said.validity())).orElse(List.of(law)));
    }

    /** One of them lets a test count for a single application. */
    public boolean eachApplication() {
        return validities.stream().anyMatch(Validity.EachApplication.class::isInstance);
    }

    /** The last day on which a test begun then still stands; empty when only the application it was made for ends it. */
    public Optional<LocalDate> lastDay(LocalDate begun) {
        return validities.stream().flatMap(validity -> validity.lastDay(begun).stream()).min(LocalDate::compareTo);
    }

    /** Whether a test begun then stands for a service on that day. */
    public boolean stands(LocalDate begun, LocalDate service, boolean madeForIt) {
        return (madeForIt || !eachApplication()) && lastDay(begun).filter(service::isAfter).isEmpty();
    }

    /** The first day on which a test may begin so as not to be too old on the day of the service; empty where it never is. */
    public Optional<LocalDate> firstDay(LocalDate service) {
        return lastDay(service).map(last -> first(service, service.toEpochDay() - last.toEpochDay()));
    }

    /** Months differ in length, so it is searched, from a guess that is at most a few days out. */
    private LocalDate first(LocalDate service, long days) {
        LocalDate day = service.plusDays(days - 4);
        while (lastDay(day).orElse(service).isBefore(service)) {
            day = day.plusDays(1);
        }
        return day;
    }
}
