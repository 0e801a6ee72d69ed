package foretress.web;

import io.vertx.core.http.HttpServerRequest;
import jakarta.enterprise.context.RequestScoped;

/** Where a request came from: behind a trusted proxy the address it forwarded, else the one that connected. */
@RequestScoped
public class Caller {
    private final HttpServerRequest request;

    Caller(HttpServerRequest request) {
        this.request = request;
    }

    public String address() {
        return request.remoteAddress().hostAddress();
    }
}
