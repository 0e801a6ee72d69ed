package foretress.visit;

import foretress.plan.TestPlan;

/** What a visit owes as far as anybody knows, from a room above that plans: for the desk, tests and moments and never why. */
public interface Foresight {
    /** Before the first answer: at least this, whatever the client answers. The visit need not be on file yet. */
    TestPlan plan(Visit visit);
}
