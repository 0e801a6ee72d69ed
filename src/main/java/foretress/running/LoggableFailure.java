package foretress.running;

import java.sql.SQLException;

/**
 * A failure as the log may know it. A database quotes the values it choked on in its message, and those may be somebody's;
 * so of its exceptions the log gets kind, state and place, and of all others everything.
 */
public final class LoggableFailure extends RuntimeException {
    private LoggableFailure(Throwable failure) {
        super(said(failure), failure.getCause() == null ? null : of(failure.getCause()), false, true);
        setStackTrace(failure.getStackTrace());
    }

    public static Throwable of(Throwable failure) {
        return quotesValues(failure) ? new LoggableFailure(failure) : failure;
    }

    private static boolean quotesValues(Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException) {
                return true;
            }
        }
        return false;
    }

    private static String said(Throwable failure) {
        String kind = failure.getClass().getName();
        return failure instanceof SQLException sql
            ? kind + " (SQL state " + sql.getSQLState() + ", code " + sql.getErrorCode() + ")" : kind;
    }
}
