package foretress.api;

import java.util.List;

/** A request that cannot be answered, and why, in words for whoever wrote the program that sent it. */
final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    final int status;
    final transient List<Faults.Fault> faults;

    Refused(int status, String detail, List<Faults.Fault> faults) {
        super(detail, null, false, false);
        this.status = status;
        this.faults = List.copyOf(faults);
    }
}
