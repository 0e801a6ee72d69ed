package foretress.web;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/**
 * The words on the staff's screens; they stand in messages/chair.properties under the same keys.
 * A key begins with its page; the rooms follow each other by the alphabet.
 */
@MessageBundle("chair")
public interface Chair {
    // consultation

    // demo

    // invitation

    // salon
    @Message String sign_in_login();
    @Message String sign_in_password();
    @Message String sign_in_submit();
    @Message String sign_in_title();
    @Message String sign_out_submit();

    // visit

    // web
}
