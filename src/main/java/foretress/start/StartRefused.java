package foretress.start;

/** Why the server does not start: one sentence for the person at the console, and the exit code. The codes are in docs/guide/run-it.md. */
class StartRefused extends Exception {
    enum Reason {
        PORT_IN_USE(10), DATABASE_LOCKED(11), DATABASE_DAMAGED(12), KEY_MISSING(13), KEY_WRONG(14), KEY_TOO_SHORT(15),
        ADDRESS(16),
        DEMO_MIXED(17), FOLDER(18), DATABASE_UNREACHABLE(19), SETTING(20), TOO_BUSY(21);

        final int exitCode;

        Reason(int exitCode) {
            this.exitCode = exitCode;
        }
    }

    final Reason reason;

    StartRefused(Reason reason, String sentence, Object... parts) {
        super(sentence.formatted(parts));
        this.reason = reason;
    }
}
