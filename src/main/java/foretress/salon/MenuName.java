package foretress.salon;

import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.util.List;

/** What the salon calls a service of its own, in one language. */
@Entity
@Table(name = "menu_name")
class MenuName extends Stored {
    @Column(name = "service_id") private String serviceId;
    String language;
    String name;

    protected MenuName() {}

    MenuName(String serviceId, String language, String name) {
        super(serviceId, language, named("name", name));
        this.serviceId = serviceId;
        this.language = language;
        this.name = name;
    }

    static List<MenuName> every() {
        return list("order by language");
    }

    String serviceId() {
        return serviceId;
    }
}
