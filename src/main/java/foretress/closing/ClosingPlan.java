package foretress.closing;

import foretress.assessment.Placing;
import foretress.bench.BenchKind;
import foretress.bench.BenchNumber;
import foretress.bench.BenchRecord;
import foretress.bench.BenchRecords;
import foretress.bench.BenchTrialBody;
import foretress.closing.Closing.Planned;
import foretress.closing.Closing.Used;
import foretress.knowledge.Knowledge;
import foretress.visit.Booked;
import foretress.visit.PlannedProducts;
import foretress.visit.Visit;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.Optional;

/** What was planned to be used: the product named for the visit, and strength and time of the newest tuft that was tried in the mix. */
@Singleton
class ClosingPlan {
    private final PlannedProducts products;
    private final BenchRecords tests;
    private final Knowledge knowledge;

    ClosingPlan(PlannedProducts products, BenchRecords tests, Knowledge knowledge) {
        this.products = products;
        this.tests = tests;
        this.knowledge = knowledge;
    }

    /** Where a plan says nothing there is one empty line. */
    List<Used> lines(Visit visit, List<Booked> services) {
        Planned planned = planned(visit);
        return List.of(new Used(planned.product().isEmpty() ? Optional.empty() : zone(services), planned.product(), "",
            planned.shade(), "", "", planned.strength(), planned.minutes(), planned));
    }

    private Planned planned(Visit visit) {
        Optional<PlannedProducts.Planned> named = products.of(visit.id);
        Optional<BenchTrialBody> tried =
            tests.ofVisit(visit.id).stream().filter(test -> !test.struck() && isTrial(test)).findFirst()
                .map(test -> tests.body(test, BenchTrialBody.class));
        String product = named.map(one -> one.line().name).or(() -> tried.map(BenchTrialBody::product)).orElse("");
        String strength =
            tried.filter(one -> one.percent() > 0).map(one -> BenchNumber.say(one.percent()) + " %").orElse("");
        return new Planned(product, named.map(PlannedProducts.Planned::shade).orElse(""), strength,
            tried.map(one -> Integer.toString(one.minutes())).orElse(""));
    }

    private static boolean isTrial(BenchRecord test) {
        return test.kind() == BenchKind.STRAND || test.kind() == BenchKind.CUTTING;
    }

    /** Where the service goes; several places are several lines. */
    private Optional<AppliedTo> zone(List<Booked> services) {
        return services.stream().findFirst().flatMap(first -> knowledge.ruleSet().service(first.serviceId()))
            .map(service -> service.placing().appliedTo()).or(() -> Optional.of(Placing.WHOLE)).flatMap(AppliedTo::of);
    }
}
