package foretress.intake;

import foretress.running.Asked;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What every page of a client's asks of the visit, in one statement.
 *
 * @param said to the notice, every time something was said to it
 * @param pages that were shown, the first one first
 */
record SoFar(List<HealthConsent> said, List<PageShown> pages) {
    static SoFar of(UUID visitId) {
        return Asked.once(List.of(SoFar.class, visitId), () -> asked(visitId));
    }

    private static SoFar asked(UUID visitId) {
        List<Object[]> rows = HealthConsent.getEntityManager().createQuery(
            "select h, p from Visit v left join HealthConsent h on h.visitId = v.id"
                + " left join PageShown p on p.visitId = v.id where v.id = ?1",
            Object[].class).setParameter(1, visitId).getResultList();
        return new SoFar(distinct(rows, row -> (HealthConsent) row[0]).toList(),
            distinct(rows, row -> (PageShown) row[1]).sorted(Comparator.comparing(PageShown::firstAt)).toList());
    }

    private static <T> Stream<T> distinct(List<Object[]> rows, Function<Object[], T> column) {
        return rows.stream().map(column).filter(Objects::nonNull).distinct();
    }
}
