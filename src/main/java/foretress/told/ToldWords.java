package foretress.told;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** Staff's words for what clients tell by their own link; they stand in messages/told.properties under the same keys. */
@MessageBundle("told")
public interface ToldWords {
    @Message
    String acknowledge();
    @Message
    String acknowledge_text();
    @Message
    String answer();
    @Message
    String answer_given();
    @Message
    String answer_hint();
    @Message
    String answer_missing();
    @Message
    String answer_send();
    @Message
    String began_unknown();
    @Message
    String complaint_acknowledged(String name, String when);
    @Message
    String complaint_answered(String name, String when);
    @Message
    String complaint_by(String day);
    @Message
    String complaint_law();
    @Message
    String complaint_made(String when);
    @Message
    String complaint_title(String client);
    @Message
    String complaint_words();
    @Message
    String complaints();
    @Message
    String complaints_none();
    @Message
    String lead();
    @Message
    String mail_open();
    @Message
    String mail_subject();
    @Message
    String mail_text();
    @Message
    String none();
    @Message
    String photo_alt(String what, String when);
    @Message
    String photo_back();
    @Message
    String photo_box();
    @Message
    String photo_front();
    @Message
    String photo_ingredients();
    @Message
    String photo_side();
    @Message
    String photos();
    @Message
    String said();
    @Message
    String strike();
    @Message
    String strike_do();
    @Message
    String strike_means();
    @Message
    String strike_password();
    @Message
    String strike_password_wrong();
    @Message
    String strike_wait(long seconds);
    @Message
    String strike_why();
    @Message
    String strike_why_missing();
    @Message
    String struck(String name, String when, String why);
    @Message
    String task_complaint();
    @Message
    String task_complaint_own();
    @Message
    String title(String client);
    @Message
    String title_short();
    @Message
    String to_owner();
    @Message
    String to_visit();
    @Message
    String told_at(String when);
    @Message
    String what(String felt, String began);
    @Message
    String where(String places);
    @Message
    String where_body();
    @Message
    String where_edge();
    @Message
    String where_face();
    @Message
    String where_scalp();
}
