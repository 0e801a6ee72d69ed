package foretress.salon;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.List;
import java.util.UUID;

/** What the salon calls a service of its own, in one language. */
@Entity
@Table(name = "menu_name")
class MenuName extends PanacheEntityBase {
    @Id private UUID id;
    @Column(name = "service_id") private String serviceId;
    String language;
    String name;

    protected MenuName() {}

    MenuName(String serviceId, String language, String name) {
        if (name.isBlank())
            throw new IllegalArgumentException("The name of a service is not blank: " + serviceId);
        this.id = UUID.randomUUID();
        this.serviceId = serviceId;
        this.language = language;
        this.name = name;
    }

    static List<MenuName> of(String serviceId) {
        return list("serviceId = ?1 order by language", serviceId);
    }
}
