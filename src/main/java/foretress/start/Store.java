package foretress.start;

import java.sql.Connection;

/** The database as it is found before the server runs. */
interface Store {
    /** The one these settings name. */
    static Store of(Settings settings) {
        return settings.postgres() ? new PostgresStore(settings)
            : new H2Store(settings, new KeyFolder(settings.keys()));
    }

    /** For what reads it while no server runs. @throws StartRefused also when there is none */
    default Connection openExisting() throws StartRefused {
        if (!exists()) {
            throw new StartRefused(StartRefused.Reason.FOLDER,
                "There is no database yet. FORETRESS_DATA names the folder it lies in.");
        }
        return open();
    }

    /** Whether there is one already that keys belong to. */
    boolean exists() throws StartRefused;

    /** Address, user and password as the server is to use them, given the key of the file. */
    void tell(Properties properties) throws StartRefused;

    /** Opens what exists. @throws StartRefused with the reason it cannot be opened */
    Connection open() throws StartRefused;

    /** Where the server finds what was prepared. */
    interface Properties {
        void set(String name, String value);
    }
}
