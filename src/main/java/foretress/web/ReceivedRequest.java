package foretress.web;

import io.vertx.core.Future;
import io.vertx.core.Handler;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.http.impl.HttpServerRequestInternal;
import io.vertx.core.http.impl.HttpServerRequestWrapper;

/** A request whose body is here to the last byte; it is handed on the moment somebody wants to read it. */
class ReceivedRequest extends HttpServerRequestWrapper {
    private final Buffer body;
    private Handler<Buffer> reader;
    private Handler<Void> atEnd;
    private boolean read;
    private boolean ended;

    ReceivedRequest(HttpServerRequestInternal request, Buffer body) {
        super(request);
        this.body = body;
    }

    @Override
    public HttpServerRequest handler(Handler<Buffer> handler) {
        reader = handler;
        return this;
    }

    @Override
    public HttpServerRequest endHandler(Handler<Void> handler) {
        atEnd = handler;
        return this;
    }

    @Override
    public HttpServerRequest exceptionHandler(Handler<Throwable> handler) {
        return this;
    }

    @Override
    public HttpServerRequest pause() {
        return this;
    }

    @Override
    public HttpServerRequest resume() {
        if (!read) {
            give();
        }
        finish();
        return this;
    }

    /** All of it counts as one piece; after it comes the end. */
    @Override
    public HttpServerRequest fetch(long pieces) {
        if (read) {
            finish();
        } else {
            give();
        }
        return this;
    }

    private void give() {
        read = true;
        if (reader != null && body.length() > 0) {
            reader.handle(body);
        } else {
            finish();
        }
    }

    private void finish() {
        if (ended) {
            return;
        }
        ended = true;
        if (atEnd != null) {
            atEnd.handle(null);
        }
    }

    @Override
    public boolean isEnded() {
        return ended;
    }

    @Override
    public long bytesRead() {
        return body.length();
    }

    @Override
    public Future<Buffer> body() {
        read = true;
        finish();
        return Future.succeededFuture(body);
    }

    @Override
    public Future<Void> end() {
        return Future.succeededFuture();
    }
}
