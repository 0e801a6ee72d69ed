package foretress.invitation;

import foretress.Postgres;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;

/** The door holds on PostgreSQL as it does on H2, the hundred tries at once included. */
@QuarkusTest
@TestProfile(Postgres.class)
class DoorOnPostgresTest extends DoorTest {}
