package foretress.alternative;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** What could be done instead, for staff and for the client; messages/instead.properties and its like in other languages. */
@MessageBundle("instead")
public interface InsteadWords {
    @Message
    String after_cut();
    @Message
    String after_cut_left(String reason);
    @Message
    String ask();
    @Message
    String asked(String service);
    @Message
    String at_visit();
    @Message
    String at_visit_by(String moment);
    @Message
    String client_after_word();
    @Message
    String client_asked(String service);
    @Message
    String client_asked_this();
    @Message
    String client_earliest();
    @Message
    String client_earliest_ask();
    @Message
    String client_lasts();
    @Message
    String client_lead(String services);
    @Message
    String client_none();
    @Message
    String client_step();
    @Message
    String client_tests();
    @Message
    String client_tests_none();
    @Message
    String client_title();
    @Message
    String client_withdraw();
    @Message
    String cut_to(int cm);
    @Message
    String doctor();
    @Message
    String doctor_how();
    @Message
    String final_reason(String reason);
    @Message
    String gentlest_first();
    @Message
    String grown();
    @Message
    String grown_how();
    @Message
    String heals();
    @Message
    String heals_how();
    @Message
    String lasts(String how);
    @Message
    String needs();
    @Message
    String none_gentler();
    @Message
    String nothing_owed();
    @Message
    String off(int count);
    @Message
    String other_aims();
    @Message
    String plan();
    @Message
    String recovers();
    @Message
    String recovers_how();
    @Message
    String source(String source);
    @Message
    String stronger(int count);
    @Message
    String tests_good(String tests);
    @Message
    String tests_good_how();
    @Message
    String word_first();
}
