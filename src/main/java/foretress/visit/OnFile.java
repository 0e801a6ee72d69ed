package foretress.visit;

import foretress.running.Asked;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Of which kinds anything is on file of a person. Most people have nothing of most kinds, and one statement says so; a page then asks
 * only for what there is.
 */
public final class OnFile {
    /** Tables whose rows each belong to one client. */
    private static final List<String> KINDS = List.of("bench_test", "closing", "noted", "service_wish", "skin_test",
        "stood_before", "test_refusal", "told_reaction");
    private static final String PERSON =
        """
        select c.id from client m join client c on c.id = coalesce(m.merged_into, m.id) where m.id = :person
         union select c.id from client m join client c on c.merged_into = coalesce(m.merged_into, m.id) where m.id = :person""";
    /** A row a record of the person, a column a kind: the records are looked up once, not once a kind. */
    private static final String FOUND = "select "
        + KINDS.stream().map("exists (select 1 from %s t where t.client_id = r.id)"::formatted)
            .collect(Collectors.joining(", "))
        + " from (" + PERSON + ") r";

    private OnFile() {}

    /**
     * Asked once a request, and only where something is on file.
     *
     * @param kind a table
     * @param of what is asked for: a client or a visit
     * @throws IllegalArgumentException for a table that is not among those asked about: it must not read as nothing on file
     */
    public static <T> List<T> of(UUID clientId, String kind, UUID of, Supplier<List<T>> ask) {
        if (!KINDS.contains(kind)) {
            throw new IllegalArgumentException("Whether there is any %s on file is not asked".formatted(kind));
        }
        return Asked.once(List.of(kind, of), () -> holds(clientId, kind) ? ask.get() : List.of());
    }

    /** Where nothing is remembered, the table itself is as quickly asked. */
    private static boolean holds(UUID clientId, String kind) {
        return !Asked.isRemembered()
            || Asked.once(List.of(OnFile.class, clientId), () -> found(clientId)).contains(kind);
    }

    @SuppressWarnings("unchecked")
    private static Set<String> found(UUID clientId) {
        List<Object[]> records = Client.getEntityManager().createNativeQuery(FOUND, Object[].class)
            .setParameter("person", clientId).getResultList();
        return records.stream().flatMap(OnFile::found).collect(Collectors.toSet());
    }

    private static Stream<String> found(Object[] row) {
        return IntStream.range(0, row.length).filter(kind -> (Boolean) row[kind]).mapToObj(KINDS::get);
    }
}
