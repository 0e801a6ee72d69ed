package foretress.api;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words on the owner's page of programs; they stand in messages/programs.properties under the same keys. */
@MessageBundle("programs")
public interface ProgramWords {
    @Message
    String add();
    @Message
    String caution();
    @Message
    String description();
    @Message
    String ends(String day);
    @Message
    String expired(String day);
    @Message
    String lasts();
    @Message
    String lasts_days(int days);
    @Message
    String lasts_missing();
    @Message
    String lead();
    @Message
    String made(String day);
    @Message
    String name();
    @Message
    String name_missing();
    @Message
    String name_taken(String name);
    @Message
    String never_used();
    @Message
    String none();
    @Message
    String purpose();
    @Message
    String purpose_missing();
    @Message
    String revoke();
    @Message
    String revoked(String day);
    @Message
    String scope_assess();
    @Message
    String scope_bench();
    @Message
    String scope_read();
    @Message
    String shown_once(String name);
    @Message
    String submit();
    @Message
    String title();
    @Message
    String token();
    @Message
    String too_many(int most);
    @Message
    String until();
    @Message
    String used(String day);
}
