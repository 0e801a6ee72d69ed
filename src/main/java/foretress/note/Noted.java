package foretress.note;

import foretress.visit.Client;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.Converter;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** One thing that staff wrote down about a client. One entered in error is struck out and stays. */
@Entity
@Table(name = "noted")
public class Noted extends PanacheEntityBase {
    @Id
    public UUID id;
    @Column(name = "client_id")
    public UUID clientId;
    @Column(name = "visit_id")
    public UUID visitId;
    @Convert(converter = KindCode.class)
    public NotedKind kind;
    String submission;
    @Column(name = "noted_at")
    public Instant notedAt;
    @Column(name = "noted_by")
    public UUID notedBy;
    @Column(columnDefinition = "text")
    String body;
    @Column(columnDefinition = "text")
    String told;
    @Column(name = "struck_at")
    Instant struckAt;
    @Column(name = "struck_by")
    UUID struckBy;
    @Column(name = "struck_why", columnDefinition = "text")
    String struckWhy;
    @Version
    public int version;

    public boolean struck() {
        return struckAt != null;
    }

    public Optional<Instant> struckAt() {
        return Optional.ofNullable(struckAt);
    }

    public Optional<UUID> struckBy() {
        return Optional.ofNullable(struckBy);
    }

    String place(String column) {
        return "noted." + column + "." + id;
    }

    static Optional<Noted> sent(UUID visitId, String submission) {
        return find("visitId = ?1 and submission = ?2", visitId, submission).firstResultOptional();
    }

    /** Newest first; those of a record that became one with this one are among them. */
    static List<Noted> ofClient(UUID clientId) {
        return list("clientId in " + Client.SAME_PERSON + " order by notedAt desc, id", clientId);
    }

    /** The kind as its code. */
    @Converter
    public static class KindCode implements AttributeConverter<NotedKind, String> {
        @Override public String convertToDatabaseColumn(NotedKind kind) {
            return kind == null ? null : kind.code();
        }

        @Override public NotedKind convertToEntityAttribute(String code) {
            return code == null ? null : NotedKind.of(code).orElseThrow(() -> new IllegalStateException("no such note: " + code));
        }
    }
}
