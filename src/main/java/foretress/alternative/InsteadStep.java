package foretress.alternative;

import foretress.intake.NextStep;
import foretress.visit.Visit;
import jakarta.enterprise.context.RequestScoped;
import java.util.Optional;

/** Once signed, a client whose service is off finds among what comes next what she could have instead. */
@RequestScoped
public class InsteadStep implements NextStep {
    private final ClientWays ways;
    private final InsteadWords say;

    InsteadStep(ClientWays ways, InsteadWords say) {
        this.ways = ways;
        this.say = say;
    }

    @Override
    public Optional<Step> of(Visit visit) {
        return visit.state.isAhead() && !ways.off(visit).isEmpty()
            ? Optional.of(new Step(say.client_step(), InsteadPages.AT)) : Optional.empty();
    }
}
