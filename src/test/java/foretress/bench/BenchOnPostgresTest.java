package foretress.bench;

import foretress.Postgres;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;

/** The bench works on PostgreSQL as it does on H2. */
@QuarkusTest
@TestProfile(Postgres.class)
class BenchOnPostgresTest extends BenchHairTest {}
