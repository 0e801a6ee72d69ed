package foretress.ledger;

import foretress.Postgres;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

@QuarkusTest
@EnabledIfSystemProperty(named = "trail", matches = "[0-9]+")
@TestProfile(Postgres.class)
class TrailCostOnPostgresTest extends TrailCostTest {}
