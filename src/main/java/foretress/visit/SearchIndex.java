package foretress.visit;

import foretress.running.AtStart;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import java.util.List;

/** Clients put on file by a version without this index are indexed at the next start, some at a time. */
@Singleton
class SearchIndex implements AtStart {
    private static final int AT_ONCE = 500;

    @Override
    public void run() {
        while (QuarkusTransaction.requiringNew().call(SearchIndex::some) == AT_ONCE) {
            // until none is left
        }
    }

    private static int some() {
        List<Client> without =
            Client.<Client>find("mergedInto is null and id not in (select w.clientId from ClientWord w)")
                .page(0, AT_ONCE).list();
        without.forEach(client -> {
            client.fold();
            Clients.index(client);
        });
        return without.size();
    }
}
