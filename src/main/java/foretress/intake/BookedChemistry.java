package foretress.intake;

import foretress.assessment.Service;
import foretress.knowledge.Knowledge;
import foretress.salon.Menu;
import foretress.visit.BookedService;
import foretress.visit.PlannedProducts;
import foretress.visit.Visit;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The booked services as knowledge describes them, with only the steps that stayed in. */
@Singleton
public class BookedChemistry {
    private final Menu menu;
    private final Knowledge knowledge;
    private final PlannedProducts planned;

    BookedChemistry(Menu menu, Knowledge knowledge, PlannedProducts planned) {
        this.menu = menu;
        this.knowledge = knowledge;
        this.planned = planned;
    }

    public List<Service> services(Visit visit) {
        List<Service> booked = visit.services.stream().map(this::service).toList();
        return booked.stream().anyMatch(knowledge.chemistries()::leavesAKindOpen) ? madeWith(visit, booked) : booked;
    }

    /** The product named for the visit tells what kind it is. */
    private List<Service> madeWith(Visit visit, List<Service> booked) {
        return planned.of(visit.id).map(product -> booked.stream()
            .map(service -> knowledge.chemistries().madeWith(service, product.line().kind)).toList()).orElse(booked);
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
