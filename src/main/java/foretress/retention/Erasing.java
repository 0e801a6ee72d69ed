package foretress.retention;

import foretress.assessment.Policy;
import foretress.ledger.Ledger;
import foretress.rights.RecordMap;
import foretress.salon.Policies;
import foretress.salon.Salon;
import foretress.visit.Client;
import foretress.visit.Clients;
import foretress.visit.State;
import foretress.visit.Visit;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import jakarta.persistence.LockModeType;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import javax.sql.DataSource;

/**
 * Erases a client: every row of every record of the person along the map of records, and the key that opens what was sealed. The
 * audit chain keeps its entries: they hold pseudonyms of records that are gone, and it verifies as before.
 */
@Singleton
class Erasing {
    /** Why a client is not erased now. */
    enum Against {
        VISIT_AHEAD, COMPLAINT_OPEN
    }

    private final Clients clients;
    private final Policies policies;
    private final Ledger ledger;
    private final DataSource store;
    private final Clock clock;
    private final RecordMap map = RecordMap.read();

    Erasing(Clients clients, Policies policies, Ledger ledger, DataSource store, Clock clock) {
        this.clients = clients;
        this.policies = policies;
        this.ledger = ledger;
        this.store = store;
        this.clock = clock;
    }

    /** What has to be settled first. A visit that is over, though nobody closed it, is nothing to wait for. */
    Optional<Against> against(UUID client) {
        List<UUID> who = clients.everyId(client);
        if (Visit.<Visit>list("client.id in ?1", who).stream()
            .anyMatch(visit -> visit.state.isAhead() && visit.startsAt.isAfter(clock.instant()))) {
            return Optional.of(Against.VISIT_AHEAD);
        }
        boolean open = !Client.getEntityManager()
            .createNativeQuery("select id from complaint where answered_at is null and client_id in (:who)", UUID.class)
            .setParameter("who", who).setMaxResults(1).getResultList().isEmpty();
        return open ? Optional.of(Against.COMPLAINT_OPEN) : Optional.empty();
    }

    /** The first day on which the notice no longer promises to keep what is on file; a visit called off counts for nothing. */
    LocalDate keptUntil(Client client) {
        Policy policy = policies.effective();
        LocalDate last = Visit.<Visit>list("client.id in ?1", clients.everyId(client.id)).stream()
            .filter(visit -> visit.state != State.CANCELLED).map(visit -> visit.startsThere().toLocalDate())
            .max(Comparator.naturalOrder())
            .orElse(LocalDate.ofInstant(client.createdAt, Salon.the().zoneId()));
        return new PromisedYears(policy.retentionYears(), policy.minorRetentionAge()).until(last, client.birthDate());
    }

    /**
     * All of it or nothing; once it returns, it is gone for good.
     *
     * @param client the record that holds
     * @return what stands against it now; nothing is erased then
     */
    Optional<Against> erase(UUID client, UUID owner) {
        List<ForeignKey> keys = foreignKeys();
        return QuarkusTransaction.requiringNew().call(() -> {
            Client.findById(client, LockModeType.PESSIMISTIC_WRITE);
            Optional<Against> against = against(client);
            if (against.isEmpty()) {
                rowsOf(clients.everyId(client), keys);
                ledger.note(owner.toString(), "everything about a client erased", client.toString());
            }
            return against;
        });
    }

    private void rowsOf(List<UUID> who, List<ForeignKey> keys) {
        Client.getEntityManager().clear();
        // H2 looks at every row by itself: one that points at another of its own table would keep it
        keys.stream().filter(ForeignKey::isWithin)
            .forEach(key -> run("update %s set %s = null where ".formatted(key.table(), key.column()), key.table(),
                who));
        Map<String, Set<String>> pointsAt =
            keys.stream().filter(key -> !key.isWithin()).collect(Collectors.groupingBy(ForeignKey::table,
                Collectors.mapping(ForeignKey::at, Collectors.toSet())));
        ErasingOrder.of(map.rows(), pointsAt)
            .forEach(table -> run("delete from %s where ".formatted(table), table, who));
    }

    private void run(String start, String table, List<UUID> who) {
        Client.getEntityManager().createNativeQuery(start + map.rows().get(table)).setParameter("who", who)
            .executeUpdate();
    }

    /** Asked of the store itself, so that a new one needs no second place to be written in. */
    private List<ForeignKey> foreignKeys() {
        List<ForeignKey> found = new ArrayList<>();
        try (Connection connection = store.getConnection()) {
            for (String table : map.rows().keySet()) {
                found.addAll(ForeignKey.of(connection, table));
            }
        } catch (SQLException e) {
            throw new IllegalStateException("the store does not say what points at what, so nothing is erased", e);
        }
        return found;
    }
}
