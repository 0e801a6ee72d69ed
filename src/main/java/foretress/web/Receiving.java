package foretress.web;

import io.vertx.core.Context;
import io.vertx.core.Vertx;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.http.HttpVersion;
import io.vertx.core.http.impl.HttpServerRequestInternal;
import io.vertx.core.impl.ContextInternal;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** One body on its way in. */
class Receiving {
    /** Half a minute is given to everybody; after it, what has come must have come at this pace. A photo on a bad line is faster. */
    private static final long GIVEN_SECONDS = 30;
    private static final long BYTES_A_SECOND = 4_000;
    private static final long LOOK_MS = 5_000;

    private final RoutingContext context;
    private final HttpServerRequest request;
    private final Vertx vertx;
    private final Waiting waiting;
    private final long longest;
    private final Router router;
    private final String network;
    private final Buffer body = Buffer.buffer();
    private final long begun = System.nanoTime();
    private long timer;
    private boolean over;

    Receiving(RoutingContext context, Vertx vertx, Waiting waiting, long longest, Router router) {
        this.context = context;
        this.request = context.request();
        this.vertx = vertx;
        this.waiting = waiting;
        this.longest = longest;
        this.router = router;
        this.network =
            request.remoteAddress() == null ? "" : Network.of(String.valueOf(request.remoteAddress().hostAddress()));
    }

    /** The receiving of this request, once it is done. */
    static Optional<Receiving> received(HttpServerRequestInternal request) {
        return Optional.ofNullable((Receiving) locals(request).get(Receiving.class));
    }

    private static Map<Object, Object> locals(HttpServerRequestInternal request) {
        return ((ContextInternal) request.context()).localContextData();
    }

    void begin() {
        Context here = vertx.getOrCreateContext();
        timer = vertx.setPeriodic(LOOK_MS, look -> pace());
        request.exceptionHandler(gone -> giveUp());
        request.response().closeHandler(gone -> giveUp());
        request.endHandler(all -> here.runOnContext(now -> handOn()));
        request.handler(this::take);
        if ("100-continue".equalsIgnoreCase(request.getHeader("Expect"))) {
            request.response().writeContinue();
        }
    }

    /** The body is here, and goes the way of all requests; its room is free again when it is answered. */
    void follow(RoutingContext answered) {
        answered.addEndHandler(said -> waiting.gone(network, body.length()));
        answered.next();
    }

    private void take(Buffer piece) {
        if (over) {
            return;
        }
        if (body.length() + piece.length() > longest) {
            fail(413);
        } else if (!waiting.room(network, piece.length())) {
            fail(503);
        } else {
            body.appendBuffer(piece);
        }
    }

    private void pace() {
        if (!over && tooSlow(body.length(), TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - begun))) {
            fail(408);
        }
    }

    static boolean tooSlow(long bytes, long seconds) {
        return bytes < (seconds - GIVEN_SECONDS) * BYTES_A_SECOND;
    }

    private void handOn() {
        if (over) {
            return;
        }
        stop();
        request.headers().remove("Expect");
        HttpServerRequestInternal internal = (HttpServerRequestInternal) request;
        locals(internal).put(Receiving.class, this);
        router.handle(new ReceivedRequest(internal, body));
    }

    /** The rest of it is not waited for. */
    private void fail(int status) {
        giveUp();
        boolean alone = request.version() != HttpVersion.HTTP_2;
        if (alone) {
            context.response().putHeader("Connection", "close");
        }
        if (status == 503) {
            context.response().putHeader("Retry-After", "5");
        }
        context.response().endHandler(said -> end(alone));
        context.fail(status);
    }

    /** In HTTP/2 a connection carries others too: this stream alone is closed, without an error (RFC 9113, 8.1). */
    private void end(boolean alone) {
        if (alone) {
            request.connection().close();
        } else {
            request.response().reset(0);
        }
    }

    private void giveUp() {
        if (over) {
            return;
        }
        stop();
        waiting.gone(network, body.length());
    }

    private void stop() {
        over = true;
        vertx.cancelTimer(timer);
    }
}
