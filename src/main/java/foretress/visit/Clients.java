package foretress.visit;

import io.quarkus.panache.common.Parameters;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.OptimisticLockException;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Adds clients and finds them by any part of name, address or phone. */
@ApplicationScoped
public class Clients {
    private final Clock clock;

    Clients(Clock clock) {
        this.clock = clock;
    }

    /** What the desk knows of a new client; birth date, e-mail and phone may be missing. */
    public record Person(String givenName, String familyName, Optional<LocalDate> birthDate, Optional<String> email,
                         Optional<String> phone, String language) {}

    @Transactional
    public Client add(Person person) {
        var client = new Client();
        client.id = UUID.randomUUID();
        client.is(person);
        client.createdAt = clock.instant();
        client.persist();
        return client;
    }

    /**
     * Corrects what is on file; a birth date typed at the desk counts as confirmed.
     *
     * @throws OptimisticLockException when the client is no longer as the form showed them
     */
    @Transactional
    public void correct(UUID id, Person person, int version) {
        Client client = find(id).orElseThrow(() -> new OptimisticLockException("gone: " + id));
        if (client.version != version) throw new OptimisticLockException("changed meanwhile: " + id);
        client.is(person);
    }

    public Optional<Client> find(UUID id) {
        return Client.findByIdOptional(id);
    }

    /** Clients in whom every word of the query occurs, at most 50, by family name. */
    public List<Client> search(String query) {
        var where = new StringBuilder("1 = 1");
        var words = new Parameters();
        for (String word : Folded.of(query).split(" ")) {
            String name = "w" + words.map().size();
            where.append(" and search like :").append(name).append(" escape '!'");
            words.and(name, "%" + word.replaceAll("[!%_]", "!$0") + "%");
        }
        return Client.find(where + " order by familyName, givenName, id", words).page(0, 50).list();
    }

    /** The desk has asked the client: the date the client gave at the door is right. */
    @Transactional
    public void confirmBirthDate(UUID id) {
        find(id).ifPresent(client -> client.birthDateConfirmed = client.birthDate().isPresent());
    }
}
