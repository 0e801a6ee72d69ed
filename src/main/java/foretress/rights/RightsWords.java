package foretress.rights;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** What a client reads of her rights and of her record; it stands in messages/rights.properties under the same keys. */
@MessageBundle("rights")
public interface RightsWords {
    @Message
    String chapter_agreed();
    @Message
    String chapter_answers();
    @Message
    String chapter_decided();
    @Message
    String chapter_found();
    @Message
    String chapter_messages();
    @Message
    String chapter_photos();
    @Message
    String chapter_tests();
    @Message
    String chapter_told();
    @Message
    String chapter_visits();
    @Message
    String chapter_you();
    @Message
    String record_fields();
    @Message
    String record_files();
    @Message
    String record_made(String salon, String when);
    @Message
    String record_more();
    @Message
    String record_none();
    @Message
    String record_photo();
    @Message
    String record_title();
    @Message
    String record_unreadable();
    @Message
    String rights_access();
    @Message
    String rights_answered(String day);
    @Message
    String rights_correction();
    @Message
    String rights_due(String salon, String day);
    @Message
    String rights_erasure();
    @Message
    String rights_get();
    @Message
    String rights_get_hint();
    @Message
    String rights_got(String when);
    @Message
    String rights_kind();
    @Message
    String rights_kind_missing();
    @Message
    String rights_long();
    @Message
    String rights_objection();
    @Message
    String rights_restriction();
    @Message
    String rights_send();
    @Message
    String rights_title();
    @Message
    String rights_words();
    @Message
    String rights_words_missing();
    @Message
    String withdraw_lead(String salon, String day);
    @Message
    String withdraw_stays();
}
