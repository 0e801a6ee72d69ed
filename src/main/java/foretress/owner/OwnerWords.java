package foretress.owner;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the owner's page; they stand in messages/owner.properties under the same keys. */
@MessageBundle("owner")
public interface OwnerWords {
    @Message
    String about();
    @Message
    String act();
    @Message
    String act_hint();
    @Message
    String all();
    @Message
    String chain();
    @Message
    String chain_broken(String when, long number);
    @Message
    String chain_broken_before(long count);
    @Message
    String chain_broken_do();
    @Message
    String chain_check();
    @Message
    String chain_text();
    @Message
    String chain_whole(String when, long count);
    @Message
    String client();
    @Message
    String client_hint();
    @Message
    String earlier();
    @Message
    String from();
    @Message
    String late();
    @Message
    String later();
    @Message
    String month_lead(int closed);
    @Message
    String none();
    @Message
    String number();
    @Message
    String overrides();
    @Message
    String overrides_none();
    @Message
    String person();
    @Message
    String person_any();
    @Message
    String reason(String reason);
    @Message
    String reason_none();
    @Message
    String search();
    @Message
    String task_ask();
    @Message
    String task_birth();
    @Message
    String task_call();
    @Message
    String task_desk();
    @Message
    String task_request();
    @Message
    String task_speak();
    @Message
    String task_taken_back();
    @Message
    String task_unlock();
    @Message
    String tasks();
    @Message
    String tasks_none();
    @Message
    String title();
    @Message
    String trail();
    @Message
    String trail_earlier();
    @Message
    String trail_later();
    @Message
    String trail_text();
    @Message
    String unreadable();
    @Message
    String unreadable_text();
    @Message
    String unsigned();
    @Message
    String unsigned_none();
    @Message
    String untested();
    @Message
    String untested_none();
    @Message
    String until(String when);
    @Message
    String upto();
    @Message
    String what();
    @Message
    String when();
    @Message
    String who();
}
