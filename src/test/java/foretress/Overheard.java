package foretress;

import com.microsoft.playwright.BrowserContext;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;

/** What a browser asked of the network and complained about, from the moment it is made. */
public final class Overheard {
    private final List<String> hosts = new ArrayList<>();
    private final List<String> complaints = new ArrayList<>();

    public Overheard(BrowserContext context) {
        context.onRequest(request -> hosts.add(URI.create(request.url()).getAuthority()));
        context.onConsoleMessage(message -> {
            if (List.of("error", "warning").contains(message.type())) {
                complaints.add(message.text() + " " + message.location());
            }
        });
        context.onWebError(error -> complaints.add(error.error()));
    }

    /** Hosts with their ports, one for every request. */
    public List<String> hosts() {
        return List.copyOf(hosts);
    }

    /** Errors and warnings of the console, a broken content security policy among them. */
    public List<String> complaints() {
        return List.copyOf(complaints);
    }
}
