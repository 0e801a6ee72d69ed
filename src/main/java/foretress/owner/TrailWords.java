package foretress.owner;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the audit trail's own pages and of its slips; they stand in messages/trail.properties under the same keys. */
@MessageBundle("trail")
public interface TrailWords {
    @Message
    String actor_client();
    @Message
    String actor_nobody();
    @Message
    String actor_server();
    @Message
    String after();
    @Message
    String alone();
    @Message
    String anew(String when, long last);
    @Message
    String anew_between(long first, long last);
    @Message
    String before();
    @Message
    String breach();
    @Message
    String breach_client();
    @Message
    String breach_clients();
    @Message
    String breach_export();
    @Message
    String breach_first();
    @Message
    String breach_last();
    @Message
    String breach_lead();
    @Message
    String breach_more(int more);
    @Message
    String breach_none();
    @Message
    String breach_record();
    @Message
    String breach_records();
    @Message
    String breach_show();
    @Message
    String breach_times();
    @Message
    String breach_when();
    @Message
    String breach_who();
    @Message
    String breach_who_text();
    @Message
    String export_back();
    @Message
    String export_lead();
    @Message
    String export_password();
    @Message
    String export_password_wait(long seconds);
    @Message
    String export_password_wrong();
    @Message
    String export_save();
    @Message
    String export_title();
    @Message
    String csv();
    @Message
    String json();
    @Message
    String limits();
    @Message
    String limits_after();
    @Message
    String limits_can();
    @Message
    String limits_honest();
    @Message
    String limits_truth();
    @Message
    String limits_unlogged();
    @Message
    String mail_open();
    @Message
    String mail_subject();
    @Message
    String mail_text(long count);
    @Message
    String paper_do();
    @Message
    String paper_text(long first, long last, String day);
    @Message
    String paper_title();
    @Message
    String proof();
    @Message
    String proof_check();
    @Message
    String proof_checked();
    @Message
    String proof_hint();
    @Message
    String proof_label();
    @Message
    String proof_lead();
    @Message
    String proof_mailed();
    @Message
    String proof_make();
    @Message
    String proof_none();
    @Message
    String proof_not_mailed();
    @Message
    String proof_print();
    @Message
    String proof_slip(String day, long first, long last);
    @Message
    String proof_slips();
    @Message
    String slip_mistyped();
    @Message
    String unbroken(long last);
    @Message
    String unproven(long count);
}
