package foretress.consultation;

import foretress.consultation.VisitView.Link;
import foretress.consultation.VisitView.Over;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.web.StylistWords;
import jakarta.enterprise.context.RequestScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What became of a visit that is over, and what can still be done about it: no standing any more, and nothing to decide. */
@RequestScoped
class OverReading {
    private final StylistWords say;

    OverReading(StylistWords say) {
        this.say = say;
    }

    Optional<Over> of(Visit visit) {
        return visit.state.isAhead() ? Optional.empty()
            : Optional.of(new Over(word(visit.state), text(visit.state), links(visit), visit.state != State.WITHDRAWN));
    }

    private String word(State state) {
        return switch (state) {
            case CLOSED -> say.over_closed();
            case WITHDRAWN -> say.over_withdrawn();
            default -> say.over_cancelled();
        };
    }

    private String text(State state) {
        return switch (state) {
            case CLOSED -> say.over_closed_text();
            case WITHDRAWN -> say.over_withdrawn_text();
            default -> say.over_cancelled_text();
        };
    }

    private List<Link> links(Visit visit) {
        List<Link> links =
            new ArrayList<>(List.of(new Link("/clients/" + visit.client.id + "/card", say.over_to_card())));
        if (visit.state == State.CLOSED) {
            links.add(new Link("/visits/" + visit.id + "/closing", say.over_to_closing()));
        }
        return links;
    }
}
