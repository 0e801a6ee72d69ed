package foretress.bench;

/** How the reader may say that something at the bench was entered in error. */
public enum BenchStrike {
    NO, WITH_A_REASON,
    /** It opens what a reading shut, so the owner proves once more who they are, as for going against a finding. */
    WITH_THE_PASSWORD,
    /** The same, and the reader is not the owner. */
    BY_THE_OWNER;

    public boolean isOpen() {
        return this == WITH_A_REASON || this == WITH_THE_PASSWORD;
    }

    public boolean isProved() {
        return this == WITH_THE_PASSWORD;
    }

    public boolean isOwners() {
        return this == BY_THE_OWNER;
    }
}
