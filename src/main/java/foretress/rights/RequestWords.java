package foretress.rights;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** Staff's words for exports and for what clients ask about their data; they stand in messages/requests.properties. */
@MessageBundle("requests")
public interface RequestWords {
    @Message
    String ask_password();
    @Message
    String ask_text();
    @Message
    String erase();
    @Message
    String erase_backups();
    @Message
    String erase_complaint_open();
    @Message
    String erase_text();
    @Message
    String erase_title(String client);
    @Message
    String erase_until(String day);
    @Message
    String erase_visit_ahead();
    @Message
    String export();
    @Message
    String export_title(String client);
    @Message
    String password_wait(long seconds);
    @Message
    String password_wrong();
    @Message
    String request_access();
    @Message
    String request_answer();
    @Message
    String request_answer_missing();
    @Message
    String request_by(String day);
    @Message
    String request_close();
    @Message
    String request_closed(String name, String when);
    @Message
    String request_correction();
    @Message
    String request_erasure();
    @Message
    String request_history();
    @Message
    String request_late();
    @Message
    String request_law();
    @Message
    String request_made(String when);
    @Message
    String request_objection();
    @Message
    String request_restriction();
    @Message
    String request_title(String client);
    @Message
    String requests();
    @Message
    String requests_lead();
    @Message
    String requests_none();
    @Message
    String task_known();
    @Message
    String task_request();
    @Message
    String task_taken_back();
    @Message
    String to_client();
}
