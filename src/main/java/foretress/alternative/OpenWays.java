package foretress.alternative;

import foretress.assessment.Assessment;
import foretress.assessment.Service;
import foretress.assessment.TestFact;
import foretress.intake.Assessments;
import foretress.knowledge.Knowledge;
import foretress.plan.TestPlan;
import foretress.visit.Visit;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.stream.Stream;

/** The services that reach what was booked, in the order in which a colourist would offer them. */
@Singleton
class OpenWays {
    private final Assessments assessments;
    private final Knowledge knowledge;

    OpenWays(Assessments assessments, Knowledge knowledge) {
        this.assessments = assessments;
        this.knowledge = knowledge;
    }

    /** The gentlest first, the booked one among them; the salon's own of the same aims, of which nothing is known, at the end. */
    List<Service> order(Visit visit, Service booked, Assessment assessment) {
        List<Service> offered = assessments.looked(visit);
        List<String> known = knowledge.ways().to(booked.aims(), assessment.facts());
        Stream<Service> ordered =
            known.stream().flatMap(id -> offered.stream().filter(service -> service.id().equals(id)));
        Stream<Service> own = offered.stream().filter(
            service -> !known.contains(service.id()) && service.aims().stream().anyMatch(booked.aims()::contains));
        return Stream.concat(ordered, own).toList();
    }

    List<Service> gentler(List<Service> order, Service booked) {
        int place = order.indexOf(booked);
        return order.subList(0, place < 0 ? order.size() : place);
    }

    List<Service> stronger(List<Service> order, Service booked) {
        int place = order.indexOf(booked);
        return place < 0 ? List.of() : order.subList(place + 1, order.size());
    }

    /** Nothing can be planned before somebody outside the salon has said something. */
    boolean waitsForAWord(TestPlan plan) {
        return !plan.waiting().isEmpty() || plan.tests().contains(TestFact.ADVICE);
    }
}
