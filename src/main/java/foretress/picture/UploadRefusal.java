package foretress.picture;

/** Why a file is not kept. */
public enum UploadRefusal {
    /** Nothing came, or nothing we know by its first bytes. */
    NOT_KNOWN,
    /** More bytes than {@link PhotoRedrawing#MOST_BYTES}. */
    TOO_HEAVY,
    /** Its header promises more pixels than are decoded. */
    TOO_MANY_PIXELS,
    /** It breaks off, contradicts itself, or is of a make that cannot be drawn. */
    BROKEN,
    /** Others were drawn for too long. */
    BUSY
}
