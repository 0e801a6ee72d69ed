package foretress.picture;

/** A photo drawn anew from its pixels, as JPEG. Only {@link Redrawing} makes one, so what is kept as a photo has been drawn here. */
public final class Redrawn {
    public static final String MEDIA_TYPE = "image/jpeg";

    private final byte[] jpeg;

    Redrawn(byte[] jpeg) {
        this.jpeg = jpeg;
    }

    public byte[] jpeg() {
        return jpeg.clone();
    }
}
