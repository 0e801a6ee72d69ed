package foretress.running;

import io.quarkus.arc.All;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.util.Comparator;
import java.util.List;

/** Runs what the rooms have to do at start, one after the other, once the schema is in place. */
@Singleton
class StartUp {
    void run(@Observes StartupEvent event, @All List<AtStart> tasks) {
        tasks.stream().sorted(Comparator.comparingInt(AtStart::order)).forEach(AtStart::run);
    }
}
