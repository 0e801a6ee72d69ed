package foretress.picture;

/** What a file is by its first bytes, whatever it is called: JPEG (ITU-T T.81), PNG (ISO/IEC 15948), PDF (ISO 32000-1). */
enum Kind {
    JPEG(0xFF, 0xD8, 0xFF), PNG(0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A), PDF('%', 'P', 'D', 'F', '-'), OTHER;

    private final int[] signature;

    Kind(int... signature) {
        this.signature = signature;
    }

    static Kind of(byte[] bytes) {
        for (Kind kind : values()) {
            if (kind.begins(bytes)) {
                return kind;
            }
        }
        throw new IllegalStateException("whatever begins with nothing is OTHER");
    }

    private boolean begins(byte[] bytes) {
        for (int i = 0; i < signature.length; i++) {
            if (bytes.length <= i || (bytes[i] & 0xFF) != signature[i]) {
                return false;
            }
        }
        return true;
    }
}
