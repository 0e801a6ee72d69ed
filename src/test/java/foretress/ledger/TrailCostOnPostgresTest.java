package foretress.ledger;

import foretress.Postgres;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;

@QuarkusTest
@TestProfile(Postgres.class)
class TrailCostOnPostgresTest extends TrailCostTest {}
