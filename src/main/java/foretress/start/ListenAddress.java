package foretress.start;

import foretress.web.Proxies;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.UnknownHostException;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Where the server may listen. On this machine alone without conditions; beyond it only encrypted, by its own certificate or by
 * a proxy that is named, and with the address clients use, since links are built on it.
 */
record ListenAddress(Settings settings) {
    private static final String PUBLIC = "foretress.public-address";
    private static final String PROXIES = "foretress.trusted-proxies";
    private static final String HEADER = "foretress.forwarded-header";
    private static final Pattern THIS_MACHINE = Pattern.compile("localhost|127(\\.[0-9]{1,3}){3}|\\[::1]");

    void check() throws StartRefused {
        Optional<String> open = settings.get(PUBLIC);
        if (open.isPresent()) {
            checkPublic(open.get());
        }
        checkProxies();
        if (!isLoopback()) {
            checkBeyond(open);
        }
        if (settings.development()) {
            return;
        }
        checkFree(settings.port());
        if (settings.tls()) {
            checkFree(settings.tlsPort());
        }
    }

    private void checkBeyond(Optional<String> open) throws StartRefused {
        if (open.isEmpty()) {
            throw new StartRefused(StartRefused.Reason.ADDRESS,
                "The server is to listen on %s, beyond this machine, but FORETRESS_PUBLIC_ADDRESS is not set. "
                    + "Set it to the https:// address clients use.",
                settings.host());
        }
        if (!settings.tls() && settings.get(PROXIES).isEmpty()) {
            throw new StartRefused(StartRefused.Reason.ADDRESS,
                "The server is to listen on %s, beyond this machine, without encryption. Give it a certificate "
                    + "(QUARKUS_HTTP_SSL_CERTIFICATE_FILES and _KEY_FILES), or name the proxy that encrypts (FORETRESS_TRUSTED_PROXIES).",
                settings.host());
        }
    }

    private void checkPublic(String address) throws StartRefused {
        if (!isBare(address)) {
            throw new StartRefused(StartRefused.Reason.ADDRESS,
                "FORETRESS_PUBLIC_ADDRESS is \"%s\"; it must be like https://visits.example.org, without a path.",
                address);
        }
        if (!address.startsWith("https://") && !THIS_MACHINE.matcher(URI.create(address).getHost()).matches()) {
            throw new StartRefused(StartRefused.Reason.ADDRESS,
                "FORETRESS_PUBLIC_ADDRESS is \"%s\"; beyond this machine it must begin with https://.", address);
        }
    }

    private static boolean isBare(String address) {
        try {
            var uri = new URI(address);
            return uri.getHost() != null && uri.getScheme().matches("https?") && uri.getUserInfo() == null
                && uri.getQuery() == null
                && uri.getFragment() == null && (uri.getPath().isEmpty() || uri.getPath().equals("/"));
        } catch (URISyntaxException e) {
            return false;
        }
    }

    private boolean isLoopback() throws StartRefused {
        try {
            return InetAddress.getByName(settings.host()).isLoopbackAddress();
        } catch (UnknownHostException e) {
            throw new StartRefused(StartRefused.Reason.ADDRESS,
                "There is no address \"%s\" on this machine. Set QUARKUS_HTTP_HOST to one of its own.",
                settings.host());
        }
    }

    private void checkFree(int port) throws StartRefused {
        try (var socket = new ServerSocket()) {
            socket.bind(new InetSocketAddress(settings.host(), port));
        } catch (IOException e) {
            throw new StartRefused(StartRefused.Reason.PORT_IN_USE,
                "Port %d on %s cannot be used: %s. Is the server running already? "
                    + "QUARKUS_HTTP_PORT names another port.",
                port, settings.host(), e.getMessage());
        }
    }

    void tell(Store.Properties properties) throws StartRefused {
        String address = base();
        properties.set(PUBLIC, address);
        if (settings.tls()) {
            properties.set("quarkus.http.insecure-requests",
                settings.get("quarkus.http.insecure-requests").orElse("redirect"));
        }
        // The framework would believe the left-most address, which anybody can write.
        properties.set("quarkus.http.proxy.proxy-address-forwarding", "false");
    }

    String base() throws StartRefused {
        int port = settings.tls() ? settings.tlsPort() : settings.port();
        return settings.get(PUBLIC).map(a -> a.replaceAll("/+$", ""))
            .orElse((settings.tls() ? "https://" : "http://") + "127.0.0.1:" + port);
    }

    /** A proxy nobody can be is better found now than by wrong addresses in the evidence. */
    private void checkProxies() throws StartRefused {
        try {
            Proxies.of(settings.get(PROXIES).orElse(""));
        } catch (IllegalArgumentException wrong) {
            throw new StartRefused(StartRefused.Reason.SETTING,
                "FORETRESS_TRUSTED_PROXIES names \"%s\", which is neither an address nor a network like 10.0.0.0/8.",
                wrong.getMessage());
        }
        String header = settings.get(HEADER).orElse("x-forwarded-for");
        if (!header.matches("(?i)x-forwarded-for|forwarded")) {
            throw new StartRefused(StartRefused.Reason.SETTING,
                "FORETRESS_FORWARDED_HEADER is \"%s\"; it can be X-Forwarded-For or Forwarded.", header);
        }
    }
}
