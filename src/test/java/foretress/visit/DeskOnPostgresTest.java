package foretress.visit;

import foretress.Postgres;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;

/** The desk works on PostgreSQL as it does on H2. */
@QuarkusTest
@TestProfile(Postgres.class)
class DeskOnPostgresTest extends DeskTest {}
