package foretress.intake;

import foretress.assessment.Service;
import foretress.salon.Menu;
import foretress.visit.BookedService;
import foretress.visit.Visit;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The booked services as knowledge describes them, with only the steps that stayed in. */
@Singleton
public class BookedChemistry {
    private final Menu menu;

    BookedChemistry(Menu menu) {
        this.menu = menu;
    }

    public List<Service> services(Visit visit) {
        return visit.services.stream().map(this::service).toList();
    }

    public Set<String> of(Visit visit) {
        return services(visit).stream().flatMap(s -> s.chemistries().stream()).collect(Collectors.toUnmodifiableSet());
    }

    private Service service(BookedService booked) {
        return menu.service(booked.serviceId)
            .orElseThrow(() -> new IllegalStateException("nobody knows the service any more: " + booked.serviceId))
            .keeping(booked.stepIds());
    }
}
