package foretress.web;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** Why a photo is not taken; messages/picture.properties and its like in other languages. */
@MessageBundle("picture")
public interface PictureWords {
    @Message
    String broken();
    @Message
    String busy();
    @Message
    String hint();
    @Message
    String not_known();
    @Message
    String paper_not_known();
    @Message
    String too_heavy(int megabytes);
    @Message
    String too_many_pixels(int megapixels);
}
