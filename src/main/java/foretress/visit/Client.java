package foretress.visit;

import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.PrePersist;
import jakarta.persistence.PreUpdate;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

/** A person whose hair is done here. Holds what lists and search need, nothing about health. */
@Entity
@Table(name = "client")
public class Client extends Stored {
    /**
     * For a query: the ids of every record of the person whose id is {@code ?1}, whichever of their records that is. Merged
     * records point straight to the one that holds.
     */
    public static final String SAME_PERSON = "(select c.id from Client c, Client me where me.id = ?1"
        + " and (c.id = coalesce(me.mergedInto, me.id) or c.mergedInto = coalesce(me.mergedInto, me.id)))";

    @Column(name = "given_name") public String givenName;
    @Column(name = "family_name") public String familyName;
    /** Names, address and phone folded for searching; kept in step by the class itself. */
    private String search;
    @Column(name = "birth_date") private LocalDate birthDate;
    @Column(name = "birth_date_confirmed") public boolean birthDateConfirmed;
    private String email;
    private String phone;
    /** BCP 47 language the client reads. */
    public String language;
    @Column(name = "created_at") public Instant createdAt;
    /** The record of the same person that holds instead of this one. */
    @Column(name = "merged_into") private UUID mergedInto;
    @Column(name = "merged_at") private Instant mergedAt;
    @Column(name = "merged_by") private UUID mergedBy;
    @Version public int version;

    protected Client() {}

    /** Somebody new, as the desk knows them. */
    Client(Clients.Person person, Instant now) {
        super(person, now);
        this.createdAt = now;
        is(person);
    }

    /** Somebody of whom no record is kept yet: for saying what a visit would owe. */
    static Client stranger(Optional<LocalDate> born) {
        var nobody = new Client();
        nobody.id = UUID.randomUUID();
        nobody.birthDate = born.orElse(null);
        return nobody;
    }

    public String fullName() {
        return (givenName + " " + familyName).strip();
    }

    public Optional<LocalDate> birthDate() {
        return Optional.ofNullable(birthDate);
    }

    public Optional<String> email() {
        return Optional.ofNullable(email);
    }

    public Optional<String> phone() {
        return Optional.ofNullable(phone);
    }

    /** The phone number as a {@code tel:} link dials it (RFC 3966): digits and a leading plus. */
    public String dial() {
        return dial(phone().orElse(""));
    }

    static String dial(String phone) {
        var digits = new StringBuilder();
        phone.codePoints().filter(Character::isDigit).forEach(c -> digits.append(Character.digit(c, 10)));
        return (phone.strip().startsWith("+") ? "+" : "") + digits;
    }

    /** A date the client gave at the door stands on file as unconfirmed until the desk has asked. */
    public void bornOn(LocalDate day, boolean confirmed) {
        birthDate = day;
        birthDateConfirmed = confirmed;
    }

    /** The desk has asked: the date on file, if there is one, is right. */
    void confirmBirthDate() {
        birthDateConfirmed = birthDate != null;
    }

    /** The client reads this language, a BCP 47 tag. */
    public void reads(String tag) {
        named("language", tag);
        language = tag;
    }

    public void reachedAt(Optional<String> newEmail, Optional<String> newPhone) {
        email = newEmail.orElse(null);
        phone = newPhone.orElse(null);
    }

    /** The record that holds instead of this one since somebody found that both are one person. */
    public Optional<UUID> mergedInto() {
        return Optional.ofNullable(mergedInto);
    }

    void mergeInto(UUID other, UUID staff, Instant now) {
        mergedInto = other;
        mergedBy = staff;
        mergedAt = now;
    }

    /** Fills what is not known here from another record of the same person; what is known stays. */
    void takeOver(Client other) {
        if (birthDate == null) {
            bornOn(other.birthDate, other.birthDateConfirmed);
        }
        reachedAt(email().or(other::email), phone().or(other::phone));
    }

    /** Takes over what the desk knows; a date from the desk is confirmed, none leaves none. */
    void is(Clients.Person person) {
        named("name", person.givenName().concat(person.familyName()));
        reads(person.language());
        givenName = person.givenName();
        familyName = person.familyName();
        bornOn(person.birthDate().orElse(null), person.birthDate().isPresent());
        reachedAt(person.email(), person.phone());
    }

    @PrePersist
    @PreUpdate
    void fold() {
        search = Folded.of(fullName() + " " + email().orElse("") + " " + phone().orElse(""));
    }
}
