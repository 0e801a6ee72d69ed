package foretress.picture;

/** A letter as it may be kept: a photo drawn anew, or a PDF, which no page ever shows and which is only ever handed out as a file. */
public final class Paper {
    public static final String PDF = "application/pdf";

    private final String mediaType;
    private final byte[] bytes;

    private Paper(String mediaType, byte[] bytes) {
        this.mediaType = mediaType;
        this.bytes = bytes;
    }

    /** @param sent any bytes; PDF is told by the header {@code %PDF-} at the very beginning (ISO 32000-1, 7.5.2) */
    public static Taken<Paper> of(byte[] sent) {
        if (sent.length > Redrawing.MOST_BYTES) {
            return Taken.refused(Refusal.TOO_HEAVY);
        }
        if (Kind.of(sent) == Kind.PDF) {
            return Taken.kept(new Paper(PDF, sent.clone()));
        }
        Taken<Redrawn> drawn = Redrawing.of(sent);
        return new Taken<>(drawn.kept().map(photo -> new Paper(Redrawn.MEDIA_TYPE, photo.jpeg())), drawn.refused());
    }

    public String mediaType() {
        return mediaType;
    }

    public byte[] bytes() {
        return bytes.clone();
    }
}
