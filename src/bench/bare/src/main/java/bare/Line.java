package bare;

import io.quarkus.hibernate.orm.panache.PanacheEntity;
import jakarta.persistence.Entity;

@Entity
public class Line extends PanacheEntity {
    public String words;
}
