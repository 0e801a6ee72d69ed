package foretress.visit;

import foretress.vault.SealedJson;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.persistence.OptimisticLockException;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** Adds clients, finds them by name, e-mail or phone, and makes one of two records of the same person. */
@ApplicationScoped
public class Clients {
    private static final int PAGE = 25;

    private final SealedJson sealed;
    private final Clock clock;

    Clients(SealedJson sealed, Clock clock) {
        this.sealed = sealed;
        this.clock = clock;
    }

    /** What the desk knows of a new client; birth date, e-mail and phone may be missing. */
    public record Person(String givenName, String familyName, Optional<LocalDate> birthDate, Optional<String> email,
        Optional<String> phone, String language) {
        static Person of(Client client) {
            return new Person(client.givenName, client.familyName, client.birthDate(), client.email(), client.phone(),
                client.language);
        }
    }

    @Transactional
    public Client add(Person person) {
        var client = new Client(person, clock.instant());
        client.persist();
        index(client);
        return client;
    }

    /**
     * Corrects what is on file; what stood there before is kept beside it. A birth date typed at the desk counts as confirmed.
     *
     * @throws OptimisticLockException when the client is no longer as the form showed them
     */
    @Transactional
    public void correct(UUID id, Person person, int version, String actor) {
        Client client = find(id).orElseThrow(() -> new OptimisticLockException("gone: " + id));
        if (client.version != version) {
            throw new OptimisticLockException("changed meanwhile: " + id);
        }
        Person before = Person.of(client);
        if (!before.equals(person)) {
            new ClientBefore(id, actor, clock.instant(), sealed.sealing(id, before)).persist();
        }
        client.is(person);
        index(client);
    }

    /** What stood on file until then. @param by who corrected it, a staff id */
    public record Before(Instant until, String by, Person person) {}

    /** What was corrected, the newest first. */
    public List<Before> before(UUID id) {
        return ClientBefore.of(id).stream()
            .map(one -> new Before(one.untilAt(), one.changedBy(), sealed.open(one, Person.class))).toList();
    }

    /** The client gives a number where none is on file; false when there was one already. */
    @Transactional
    public boolean reachableAt(UUID id, String phone) {
        Client client = find(id).orElseThrow();
        if (client.phone().isPresent()) {
            return false;
        }
        client.reachedAt(client.email(), Optional.of(phone));
        index(client);
        return true;
    }

    /** Writes anew the words by which this client is found. */
    static void index(Client client) {
        ClientWord.delete("clientId", client.id);
        SearchWords.of(client).forEach(word -> new ClientWord(client.id, word).persist());
    }

    public Optional<Client> find(UUID id) {
        return Client.findByIdOptional(id);
    }

    /** The record that holds for this person now: itself, or the one it was merged into. */
    public Optional<Client> current(UUID id) {
        return find(id).flatMap(client -> client.mergedInto().map(this::current).orElse(Optional.of(client)));
    }

    /** This client's id and those of every record that was merged into it: what is stored may stand under any of them. */
    public List<UUID> everyId(UUID id) {
        List<UUID> all = new ArrayList<>(List.of(id));
        Client.<Client>list("mergedInto = ?1 order by id", id).forEach(merged -> all.add(merged.id));
        return List.copyOf(all);
    }

    /** Some of the clients found, by family name. */
    public record Found(List<Client> clients, int page, boolean more) {
        public Found {
            clients = List.copyOf(clients);
        }
    }

    /** Clients with a word beginning with each word of the query; pages count from 0. */
    public Found search(String query, int page) {
        List<String> asked = SearchWords.asked(query);
        if (asked.isEmpty()) {
            return new Found(List.of(), 0, false);
        }
        var where = new StringBuilder("mergedInto is null");
        Map<String, Object> words = new HashMap<>();
        for (String word : asked) {
            int n = words.size();
            where.append(" and id in (select w.clientId from ClientWord w where ").append(narrowed(word, n))
                .append("w.word like :w")
                .append(n).append(" escape '!')");
            words.put("w" + n, word.replaceAll("[!%_]", "!$0") + "%");
            words.put("f" + n, ClientWord.first(narrows(word), word));
        }
        List<Client> found = Client.<Client>find(where + " order by familyName, givenName, id", words)
            .range(page * PAGE, (page + 1) * PAGE).list();
        return new Found(found.subList(0, Math.min(PAGE, found.size())), page, found.size() > PAGE);
    }

    private static String narrowed(String word, int n) {
        return "w.first" + narrows(word) + " = :f" + n + " and ";
    }

    /** How many letters from the start are looked up in the index. */
    private static int narrows(String word) {
        int letters = word.codePointCount(0, word.length());
        return letters >= 4 ? 4 : letters >= 2 ? 2 : 1;
    }

    /** How many clients are on file, those merged away not counted. */
    public long count() {
        return Client.count("mergedInto is null");
    }

    /**
     * Makes one record of two. The visits of the one that goes away are from now on the other's; what was sealed for it stays
     * under its own id and key. What the one that stays does not know (birth date, e-mail, phone) it takes over.
     *
     * @throws IllegalArgumentException when both are the same, or either was merged before
     */
    @Transactional
    public void merge(UUID keep, UUID away, UUID staff) {
        Client kept = Client.findById(keep, LockModeType.PESSIMISTIC_WRITE);
        Client gone = Client.findById(away, LockModeType.PESSIMISTIC_WRITE);
        if (keep.equals(away) || kept.mergedInto().isPresent() || gone.mergedInto().isPresent()) {
            throw new IllegalArgumentException("not two clients: " + keep + ", " + away);
        }
        kept.takeOver(gone);
        gone.mergeInto(keep, staff, clock.instant());
        Visit.update("client = ?1 where client = ?2", kept, gone);
        Client.update("mergedInto = ?1 where mergedInto = ?2", keep, away);
        ClientWord.delete("clientId", away);
        index(kept);
    }

    /** The desk has asked the client: the date the client gave at the door is right. */
    @Transactional
    public void confirmBirthDate(UUID id) {
        find(id).ifPresent(Client::confirmBirthDate);
    }
}
