package foretress.retention;

import foretress.Postgres;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;

@QuarkusTest
@TestProfile(Postgres.class)
class ErasingOnPostgresTest extends ErasingTest {}
