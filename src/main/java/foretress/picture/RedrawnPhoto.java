package foretress.picture;

/** A photo drawn anew from its pixels, as JPEG. Only {@link PhotoRedrawing} makes one, so what is kept as a photo has been drawn here. */
public final class RedrawnPhoto {
    public static final String MEDIA_TYPE = "image/jpeg";

    private final byte[] jpeg;

    RedrawnPhoto(byte[] jpeg) {
        this.jpeg = jpeg;
    }

    public byte[] jpeg() {
        return jpeg.clone();
    }

    /** The same as a JPEG of at most {@link PhotoRedrawing#SMALL_SIDE} pixels a side, for lists. */
    public byte[] small() {
        return PhotoRedrawing.small(jpeg);
    }
}
