package foretress.web;

import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.net.SocketAddress;
import jakarta.enterprise.context.RequestScoped;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Where a request came from: behind trusted proxies the address they named, else the one that connected. One header is believed, the
 * one the proxies are set to write; the other would come through them as anybody sent it.
 */
@RequestScoped
public class Caller {
    private final HttpServerRequest request;
    private final Proxies proxies;
    private final boolean standard;

    Caller(HttpServerRequest request, @ConfigProperty(name = "foretress.trusted-proxies") Optional<String> trusted,
        @ConfigProperty(name = "foretress.forwarded-header", defaultValue = "x-forwarded-for") String header) {
        this.request = request;
        this.proxies = Proxies.of(trusted.orElse(""));
        this.standard = header.equalsIgnoreCase("forwarded");
    }

    public String address() {
        String peer = Optional.ofNullable(request.remoteAddress()).map(SocketAddress::hostAddress).orElse("unknown");
        return proxies.caller(peer, named());
    }

    private List<String> named() {
        return standard ? Proxies.fors(request.headers().getAll("Forwarded"))
            : request.headers().getAll("X-Forwarded-For");
    }
}
