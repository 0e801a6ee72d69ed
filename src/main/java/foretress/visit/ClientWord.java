package foretress.visit;

import foretress.running.Stored;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.util.UUID;

/** One beginning by which a client is found, folded. */
@Entity
@IdClass(ClientWord.Key.class)
@Table(name = "client_word")
class ClientWord extends PanacheEntityBase {
    record Key(UUID clientId, String word) implements Serializable {}

    @Id
    @Column(name = "client_id") private UUID clientId;
    @Id private String word;
    private String first1;
    private String first2;
    private String first4;

    protected ClientWord() {}

    ClientWord(UUID clientId, String word) {
        Stored.needed(clientId, word);
        this.clientId = clientId;
        this.word = word;
        this.first1 = first(1, word);
        this.first2 = first(2, word);
        this.first4 = first(4, word);
    }

    /** So many letters from the start, or all there are. */
    static String first(int letters, String word) {
        return word.codePointCount(0, word.length()) <= letters ? word
            : word.substring(0, word.offsetByCodePoints(0, letters));
    }
}
