package foretress.intake;

import foretress.Postgres;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;

/** The whole path on PostgreSQL as on H2. */
@QuarkusTest
@TestProfile(Postgres.class)
class WholePathPostgresTest extends WholePathTest {}
