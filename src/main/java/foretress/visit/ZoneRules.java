package foretress.visit;

import foretress.ledger.Ledger;
import foretress.running.AtStart;
import jakarta.inject.Singleton;
import jakarta.transaction.Transactional;
import java.time.zone.ZoneRulesProvider;
import java.util.List;
import org.jboss.logging.Logger;

/**
 * Governments change clocks. A visit is agreed in wall time, so at each start the coming ones are read again by the zone
 * rules of the Java underneath, which a newer Java (or its own updater) brings without a new version of this program.
 */
@Singleton
class ZoneRules implements AtStart {
    private static final Logger LOG = Logger.getLogger(ZoneRules.class);

    private final Visits visits;
    private final Ledger ledger;

    ZoneRules(Visits visits, Ledger ledger) {
        this.visits = visits;
        this.ledger = ledger;
    }

    @Override
    @Transactional
    public void run() {
        List<Visit> moved = visits.reread();
        moved.forEach(visit -> ledger.note("server", "visit moved by new zone rules", visit.id.toString()));
        LOG.infof("Zone rules %s; visits moved by them: %d",
            ZoneRulesProvider.getVersions("UTC").lastEntry().getKey(), moved.size());
    }
}
