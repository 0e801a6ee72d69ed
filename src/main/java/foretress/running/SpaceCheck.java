package foretress.running;

import jakarta.inject.Singleton;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.Readiness;

/** Without room on the device the server says that it is not ready. */
@Singleton
@Readiness
class SpaceCheck implements HealthCheck {
    private final Space space;

    SpaceCheck(Space space) {
        this.space = space;
    }

    @Override
    public HealthCheckResponse call() {
        return HealthCheckResponse.named("space").status(!space.isOut()).build();
    }
}
