package foretress.api;

import foretress.running.ClockMeter;
import foretress.salon.ProgramDoor;
import foretress.web.ApiProblem;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import jakarta.inject.Singleton;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Lets a program in that shows a living token for the right purpose (RFC 6750, the header alone) and has not asked too often.
 * What a cookie or an address says is not looked at.
 */
@Singleton
public class ProgramGate implements ProgramDoor {
    private static final String BEARER = "bearer ";
    private static final int MOST_KEPT = 1_000;

    private final ProgramTokens tokens;
    private final int perMinute;
    private final Clock clock;
    private final Map<UUID, Bucket> byToken = new ConcurrentHashMap<>();

    ProgramGate(ProgramTokens tokens,
        @ConfigProperty(name = "foretress.api.requests-per-minute", defaultValue = "300") int perMinute, Clock clock) {
        this.tokens = tokens;
        this.perMinute = perMinute;
        this.clock = clock;
    }

    @Override
    public Optional<Response> turnAway(ContainerRequestContext request, String scope) {
        String path = request.getUriInfo().getRequestUri().getPath();
        Optional<String> presented = presented(request);
        Optional<ProgramToken> token = presented.flatMap(tokens::recognise);
        if (token.isEmpty()) {
            return Optional.of(unknown(path, presented.isPresent()));
        }
        return tooOften(token.get(), path)
            .or(() -> token.get().isFor(scope) ? Optional.empty() : Optional.of(notForThis(path, scope)));
    }

    private static Optional<String> presented(ContainerRequestContext request) {
        List<String> headers = request.getHeaders().getOrDefault(HttpHeaders.AUTHORIZATION, List.of());
        return headers.size() == 1 && headers.get(0).regionMatches(true, 0, BEARER, 0, BEARER.length())
            ? Optional.of(headers.get(0).substring(BEARER.length()).strip()) : Optional.empty();
    }

    private static Response unknown(String path, boolean presented) {
        String detail =
            presented ? "The token is not known, has expired or was revoked. The owner can make another one."
                : "Send a token of this salon in the header 'Authorization: Bearer ...'.";
        return new ApiProblem(401, detail, path, List.of()).response()
            .header(HttpHeaders.WWW_AUTHENTICATE,
                "Bearer realm=\"foretress\"" + (presented ? ", error=\"invalid_token\"" : ""))
            .build();
    }

    private static Response notForThis(String path, String scope) {
        return new ApiProblem(403,
            "The token was not made for this: the operation needs one for '%s'.".formatted(scope), path, List.of())
            .response()
            .header(HttpHeaders.WWW_AUTHENTICATE,
                "Bearer realm=\"foretress\", error=\"insufficient_scope\", scope=\"%s\"".formatted(scope))
            .build();
    }

    private Optional<Response> tooOften(ProgramToken token, String path) {
        if (byToken.size() > MOST_KEPT) {
            byToken.values().removeIf(bucket -> bucket.getAvailableTokens() == perMinute);
        }
        ConsumptionProbe probe = byToken.computeIfAbsent(token.id, any -> bucket()).tryConsumeAndReturnRemaining(1);
        if (probe.isConsumed()) {
            return Optional.empty();
        }
        long seconds = Math.max(1, Duration.ofNanos(probe.getNanosToWaitForRefill()).toSeconds());
        return Optional.of(ApiProblem.of(429, path).response().header(HttpHeaders.RETRY_AFTER, seconds).build());
    }

    private Bucket bucket() {
        return Bucket.builder()
            .addLimit(limit -> limit.capacity(perMinute).refillGreedy(perMinute, Duration.ofMinutes(1)))
            .withCustomTimePrecision(new ClockMeter(clock)).build();
    }
}
