package foretress.post;

import io.quarkus.mailer.Mail;
import io.quarkus.mailer.reactive.ReactiveMailer;
import io.vertx.core.Vertx;
import jakarta.inject.Singleton;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.TimeUnit;

/**
 * Hands one mail to the mail server and waits until it is taken. The talk runs on an event loop: started from another
 * thread, a server close by can greet before anybody listens, and the greeting is lost.
 */
@Singleton
class Handover {
    private static final long PATIENCE_SECONDS = 60;

    private final ReactiveMailer mailer;
    private final Vertx vertx;

    Handover(ReactiveMailer mailer, Vertx vertx) {
        this.mailer = mailer;
        this.vertx = vertx;
    }

    /** @throws CompletionException when it was refused, or not taken in a minute */
    void send(Mail mail) {
        var taken = new CompletableFuture<Void>();
        vertx.getOrCreateContext()
            .runOnContext(any -> mailer.send(mail).subscribe().with(taken::complete, taken::completeExceptionally));
        taken.orTimeout(PATIENCE_SECONDS, TimeUnit.SECONDS).join();
    }
}
