package foretress.visit;

import foretress.running.Asked;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Of which kinds anything is on file of a person. Most people have nothing of most kinds, and one statement says so; a page then asks
 * only for what there is.
 */
public final class OnFile {
    /** Tables whose rows each belong to one client. */
    private static final List<String> KINDS = List.of("bench_test", "closing", "noted", "service_wish", "skin_test",
        "test_refusal", "told_reaction");
    private static final String PERSON =
        """
        (select c.id from client m join client c on c.id = coalesce(m.merged_into, m.id) where m.id = :person
         union select c.id from client m join client c on c.merged_into = coalesce(m.merged_into, m.id) where m.id = :person)""";
    private static final String FOUND = KINDS.stream()
        .map(kind -> "select '%s' where exists (select 1 from %s where client_id in %s)".formatted(kind, kind, PERSON))
        .collect(Collectors.joining(" union all "));

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
        List<String> found = Client.getEntityManager().createNativeQuery(FOUND, String.class)
            .setParameter("person", clientId).getResultList();
        return Set.copyOf(found);
    }
}
