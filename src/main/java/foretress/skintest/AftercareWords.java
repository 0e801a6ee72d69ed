package foretress.skintest;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the aftercare pages, of what is told by a client's own link later, and of what is signed before a skin test; messages/aftercare.properties and its like in other languages. */
@MessageBundle("aftercare")
public interface AftercareWords {
    @Message
    String began_later();
    @Message
    String began_next_days();
    @Message
    String began_same_day();
    @Message
    String began_unknown();
    @Message
    String began_within_a_week();
    @Message
    String began_within_two_hours();
    @Message
    String calendar_summary(String name);
    @Message
    String consent_done();
    @Message
    String consent_product(String name, String shade);
    @Message
    String consent_test(String name, String shade);
    @Message
    String look_began();
    @Message
    String look_began_hint();
    @Message
    String look_began_missing();
    @Message
    String look_blisters();
    @Message
    String look_breathing();
    @Message
    String look_burning();
    @Message
    String look_elsewhere();
    @Message
    String look_face();
    @Message
    String look_hint();
    @Message
    String look_itch();
    @Message
    String look_lead();
    @Message
    String look_missing();
    @Message
    String look_none();
    @Message
    String look_none_and_more();
    @Message
    String look_redness();
    @Message
    String look_submit();
    @Message
    String look_swelling();
    @Message
    String look_title();
    @Message
    String look_words();
    @Message
    String look_words_long();
    @Message
    String mail_answer();
    @Message
    String mail_answer_lost(String phone);
    @Message
    String mail_answer_subject(String name);
    @Message
    String mail_hello(String name);
    @Message
    String mail_page();
    @Message
    String mail_page_after(String phone);
    @Message
    String mail_page_open();
    @Message
    String mail_page_subject(String name);
    @Message
    String mail_reminder();
    @Message
    String mail_reminder_subject(String name);
    @Message
    String mail_visit_moved(String name, String moment);
    @Message
    String mail_visit_off(String moment);
    @Message
    String mail_visit_off_subject(String name);
    @Message
    String mail_visit_open();
    @Message
    String mail_visit_other();
    @Message
    String mail_visit_subject(String name);
    @Message
    String mail_visit_when(String name, String moment);
    @Message
    String nolink_text();
    @Message
    String nolink_title();
    @Message
    String off_by_salon(String name, String day);
    @Message
    String off_door();
    @Message
    String off_late();
    @Message
    String off_title();
    @Message
    String photo_add();
    @Message
    String photo_again();
    @Message
    String photo_enough(int number);
    @Message
    String photo_hint();
    @Message
    String photo_kept();
    @Message
    String photo_label();
    @Message
    String short_visit_before(String moment);
    @Message
    String short_visit_doctor();
    @Message
    String short_visit_step(String moment);
    @Message
    String short_visit_test();
    @Message
    String short_visit_title();
    @Message
    String short_visit_tufts();
    @Message
    String short_visit_what();
    @Message
    String short_visit_why();
    @Message
    String short_visit_why_title();
    @Message
    String told_again();
    @Message
    String told_late();
    @Message
    String told_nothing();
    @Message
    String told_nothing_staff();
    @Message
    String told_now_call(String phone);
    @Message
    String told_promise(String name, String moment);
    @Message
    String told_promise_desk(String moment);
    @Message
    String told_reaction();
    @Message
    String told_rinse();
    @Message
    String told_see_doctor();
    @Message
    String told_spoken();
    @Message
    String told_stopped();
    @Message
    String told_urgent();
    @Message
    String told_urgent_do();
    @Message
    String told_what_now();
    @Message
    String urgent_face();
    @Message
    String urgent_go_on();
    @Message
    String urgent_if(String phone);
    @Message
    String urgent_breathing();
    @Message
    String urgent_faint();
    @Message
    String urgent_hives();
    @Message
    String urgent_first();
    @Message
    String urgent_again();
    @Message
    String after_title();
    @Message
    String after_lead(String day);
    @Message
    String after_late();
    @Message
    String reaction_link();
    @Message
    String reaction_spot();
    @Message
    String reaction_title();
    @Message
    String reaction_hint();
    @Message
    String reaction_missing();
    @Message
    String reaction_began_hint();
    @Message
    String reaction_rinse();
    @Message
    String where_title();
    @Message
    String where_hint();
    @Message
    String where_scalp();
    @Message
    String where_edge();
    @Message
    String where_face();
    @Message
    String where_body();
    @Message
    String complaint_link();
    @Message
    String complaint_title();
    @Message
    String complaint_words();
    @Message
    String complaint_more();
    @Message
    String complaint_hint();
    @Message
    String complaint_missing();
    @Message
    String complaint_long();
    @Message
    String complaint_send();
    @Message
    String complaint_got(String moment);
    @Message
    String complaint_waits(String name, String day);
    @Message
    String complaint_acknowledged(String name, String day);
    @Message
    String complaint_answered(String day);
    @Message
    String complaint_unwell();
}
