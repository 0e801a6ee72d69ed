package foretress.web;

import io.quarkus.vertx.http.HttpServer;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Singleton;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Where clients reach this server. Links are built on it and never on what a request claims to have asked for. */
@Singleton
public class PublicAddress {
    private final Optional<String> configured;
    private final Instance<HttpServer> server;

    PublicAddress(@ConfigProperty(name = "foretress.public-address") Optional<String> configured,
        Instance<HttpServer> server) {
        this.configured = configured.map(address -> address.replaceAll("/+$", ""));
        this.server = server;
    }

    /** Scheme, host and port, without a slash at the end. */
    public String base() {
        return configured.orElseGet(() -> "http://127.0.0.1:" + server.get().getPort());
    }

    /** @param path begins with a slash */
    public String link(String path) {
        return base() + path;
    }

    public boolean secure() {
        return configured.filter(address -> address.startsWith("https://")).isPresent();
    }

    /** A cookie's name: behind TLS with the prefix that pins it to this host. */
    public String cookieName(String name) {
        return secure() ? "__Host-" + name : name;
    }
}
