package foretress.web;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words around a paper form that is typed in; they stand in messages/typed.properties under the same keys. */
@MessageBundle("typed")
public interface TypedWords {
    @Message
    String agreed();
    @Message
    String agreed_missing();
    @Message
    String back();
    @Message
    String begin();
    @Message
    String day();
    @Message
    String day_wrong();
    @Message
    String done();
    @Message
    String done_text();
    @Message
    String guardian_legal();
    @Message
    String guardian_missing();
    @Message
    String guardian_name();
    @Message
    String guardian_parent();
    @Message
    String guardian_relation();
    @Message
    String guardian_responsible();
    @Message
    String guardian_why();
    @Message
    String hand_over();
    @Message
    String lead();
    @Message
    String next();
    @Message
    String paper();
    @Message
    String paper_hint();
    @Message
    String picture();
    @Message
    String signed();
    @Message
    String signed_missing();
    @Message
    String title();
    @Message
    String typed(String name, String day, String signed);
}
