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
    public static PictureResult<Paper> of(byte[] sent) {
        if (sent.length > PhotoRedrawing.MOST_BYTES) {
            return PictureResult.refused(UploadRefusal.TOO_HEAVY);
        }
        if (Kind.of(sent) == Kind.PDF) {
            return PictureResult.kept(new Paper(PDF, sent.clone()));
        }
        PictureResult<RedrawnPhoto> drawn = PhotoRedrawing.of(sent);
        return new PictureResult<>(drawn.kept().map(photo -> new Paper(RedrawnPhoto.MEDIA_TYPE, photo.jpeg())),
            drawn.refused());
    }

    public String mediaType() {
        return mediaType;
    }

    public byte[] bytes() {
        return bytes.clone();
    }
}
