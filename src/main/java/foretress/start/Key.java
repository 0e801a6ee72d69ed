package foretress.start;

/** A key file: 32 random bytes in base64. */
enum Key {
    /** Wraps every client's data key. */
    MASTER("master.key", true),
    /** Turns a record's id into a pseudonym in the audit chain. */
    LEDGER("ledger.key", true),
    /** Encrypts the database's file; of no use with PostgreSQL. */
    DATABASE("database.key", true),
    /** Encrypts the staff's session cookies. Lost, everybody signs in again and no more. */
    SESSION("session.key", false),
    /** Opens the salon's sealing key in the database. Lost, a new sealing key is made; papers sealed before still verify. */
    SEAL("seal.key", false),
    /** Opens backups, and nothing else. Lost, those of before are of no use; the next ones have another. */
    BACKUP("backup.key", false);

    static final int BYTES = 32;

    final String file;
    /** Without it what is stored can never be read again. */
    final boolean irreplaceable;

    Key(String file, boolean irreplaceable) {
        this.file = file;
        this.irreplaceable = irreplaceable;
    }
}
