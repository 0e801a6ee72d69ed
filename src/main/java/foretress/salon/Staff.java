package foretress.salon;

import foretress.running.Held;
import foretress.running.Stored;
import foretress.web.Fold;
import foretress.web.StaffLanguage;
import foretress.web.Supported;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

/** Somebody who works here. Never deleted, since records name them; one who left is no longer active. */
@Entity
@Table(name = "staff")
public class Staff extends Stored {
    @Column(columnDefinition = "text") public String name;
    @Column(columnDefinition = "text") public String login;
    /** The login as it is compared: NFKC, lower case. */
    @Column(name = "login_folded", length = 128) private String loginFolded;
    @Enumerated(EnumType.STRING)
    @Column(length = 16) public Role role;
    /** Argon2id with its parameters; absent until the person has chosen a password. */
    @Column(name = "password_hash", columnDefinition = "text") String passwordHash;
    /** In which her screens are. */
    @Column(length = 8) public String language = Supported.ORIGINAL;
    public boolean active;
    @Column(name = "created_at") private Instant createdAt;
    @Version private int version;

    private static final Held<Map<UUID, String>> NAMES = Held.of(List.of("staff"), Staff::stored);

    protected Staff() {}

    public Staff(String name, String login, Role role, Instant createdAt) {
        super(named("name", name), named("login", login), role, createdAt);
        this.name = name;
        this.login = login;
        this.loginFolded = Fold.fold(login);
        this.role = role;
        this.active = true;
        this.createdAt = createdAt;
    }

    public static Optional<Staff> byLogin(String login) {
        return find("loginFolded", Fold.fold(login)).firstResultOptional();
    }

    public static Optional<Staff> byId(UUID id) {
        return findByIdOptional(id);
    }

    private static Map<UUID, String> stored() {
        return all().stream().collect(Collectors.toUnmodifiableMap(one -> one.id, one -> one.name));
    }

    /** Names of everybody who works or worked here. */
    public static Map<UUID, String> names() {
        return NAMES.get();
    }

    /** Blank for nobody. */
    public static String nameOf(UUID id) {
        return names().getOrDefault(id, "");
    }

    /** Everybody at work here now, by name. */
    public static List<Staff> atWork() {
        return list("active = true order by name");
    }

    public static List<Staff> all() {
        return list("order by active desc, name");
    }

    /** Those who may take a visit: in a small salon the owner does too. */
    public static List<Staff> stylists() {
        return list("active = true and role <> ?1 order by name", Role.DESK);
    }

    public boolean hasPassword() {
        return passwordHash != null;
    }

    /** From now on this password is the right one. */
    void proves(PasswordHash password) {
        passwordHash = password.toString();
    }

    /** Nobody signs in as this person until a new password is chosen. */
    void forgetPassword() {
        passwordHash = null;
    }

    /** @throws IllegalArgumentException when there are no words for staff in it */
    void reads(String tag) {
        if (!StaffLanguage.TAGS.contains(tag)) {
            throw new IllegalArgumentException("no words for staff in " + tag);
        }
        language = tag;
    }

    /** No longer works here. */
    void leaves() {
        active = false;
    }

    void comesBack() {
        active = true;
    }

    Optional<String> passwordHash() {
        return Optional.ofNullable(passwordHash);
    }
}
