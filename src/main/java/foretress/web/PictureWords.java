package foretress.web;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** Photos that a client sends, and why one is not taken; messages/picture.properties and its like in other languages. */
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
    String send_another();
    @Message
    String send_arrived(int number);
    @Message
    String send_back();
    @Message
    String send_box();
    @Message
    String send_box_hint(int number);
    @Message
    String send_camera();
    @Message
    String send_choose();
    @Message
    String send_enough(int number);
    @Message
    String send_front();
    @Message
    String send_front_hint();
    @Message
    String send_go();
    @Message
    String send_ingredients();
    @Message
    String send_ingredients_hint(int number);
    @Message
    String send_instead();
    @Message
    String send_keep(int years);
    @Message
    String send_kept();
    @Message
    String send_lead();
    @Message
    String send_lost();
    @Message
    String send_old();
    @Message
    String send_over();
    @Message
    String send_photo_of(String what, int number);
    @Message
    String send_remove();
    @Message
    String send_sending();
    @Message
    String send_side();
    @Message
    String send_step();
    @Message
    String send_title();
    @Message
    String send_waiting();
    @Message
    String too_heavy(int megabytes);
    @Message
    String too_many_pixels(int megapixels);
}
