package foretress.salon;

import foretress.running.Stored;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

/** A figure of the policy as the salon sets it. It only ever counts where it is stricter than the law's. */
@Entity
@Table(name = "stricter_figure")
class StricterFigure extends PanacheEntityBase {
    @Id String name;
    int figure;
    @Column(name = "set_at") private Instant setAt;
    @Column(name = "set_by") private UUID setBy;

    protected StricterFigure() {}

    /** All of them by name. Asked by column: an object that a session holds would be told as it was read. */
    static Map<String, Integer> figures() {
        Map<String, Integer> figures = new LinkedHashMap<>();
        getEntityManager().createQuery("select name, figure from StricterFigure order by name", Object[].class)
            .getResultList().forEach(row -> figures.put((String) row[0], (Integer) row[1]));
        return figures;
    }

    StricterFigure(Setting setting, int figure, Instant setAt, UUID setBy) {
        Stored.needed(setting, setAt, setBy);
        this.name = setting.figure();
        this.figure = (int) Stored.counted(figure);
        this.setAt = setAt;
        this.setBy = setBy;
    }
}
