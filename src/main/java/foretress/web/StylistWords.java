package foretress.web;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words on the stylist's day sheet and consultation; they stand in messages/stylist.properties under the same keys. */
@MessageBundle("stylist")
public interface StylistWords {
    @Message
    String ask_day_passed();
    @Message
    String ask_missing(int count);
    @Message
    String ask_not_asked(int count);
    @Message
    String ask_now();
    @Message
    String ask_on_the_day(int count);
    @Message
    String ask_to_link();
    @Message
    String consultation_age(int years);
    @Message
    String consultation_answers();
    @Message
    String consultation_ask_again(String topic);
    @Message
    String consultation_because();
    @Message
    String consultation_because_also(int count);
    @Message
    String consultation_because_more(int count);
    @Message
    String consultation_caution();
    @Message
    String consultation_condition();
    @Message
    String consultation_instead();
    @Message
    String consultation_instead_missing(int count);
    @Message
    String consultation_map();
    @Message
    String consultation_measured(int cm);
    @Message
    String consultation_measured_for(int cm, String said);
    @Message
    String consultation_pair();
    @Message
    String consultation_pair_text();
    @Message
    String consultation_more(int count);
    @Message
    String consultation_no_owed();
    @Message
    String consultation_no_reasons();
    @Message
    String consultation_not_answered();
    @Message
    String consultation_not_complete();
    @Message
    String consultation_not_signed();
    @Message
    String consultation_not_begun();
    @Message
    String consultation_notes();
    @Message
    String consultation_open(int count);
    @Message
    String consultation_owed();
    @Message
    String consultation_owed_late(String latest);
    @Message
    String consultation_not_asked_yet();
    @Message
    String consultation_owed_at_chair();
    @Message
    String consultation_owed_wait(int hours);
    @Message
    String consultation_too_soon(String test, int hours);
    @Message
    String consultation_shut(String test, int hours);
    @Message
    String consultation_stands_short(String test, int hours);

    @Message
    String consultation_too_young(String test);
    @Message
    String consultation_visit_from(String when);
    @Message
    String consultation_owed_waiting();
    @Message
    String consultation_owed_stands_short();
    @Message
    String consultation_owed_latest_tight(String latest);
    @Message
    String consultation_owed_wait_again(int hours, int first, int day);
    @Message
    String consultation_owed_latest(String latest);
    @Message
    String consultation_refused(String test);
    @Message
    String consultation_paper(int version, String when);
    @Message
    String consultation_papers();
    @Message
    String consultation_service();
    @Message
    String consultation_signed(String when);
    @Message
    /** Beside the standing before the visit's day. */
    String consultation_skin_not_asked();

    String consultation_source();
    @Message
    String consultation_settles(int count);
    @Message
    String consultation_standing();
    @Message
    String consultation_taken_back();
    @Message
    String consultation_title(String client);
    @Message
    String consultation_topics(int count);
    @Message
    String consultation_topics_unknown(int count, int unknown);
    @Message
    String consultation_unknown(int count);
    @Message
    String consultation_unsure();
    @Message
    String consultation_visit_number(int count);
    @Message
    String consultation_to_desk();
    @Message
    String consultation_why();
    @Message
    String day_coming();
    @Message
    String day_half_answered();
    @Message
    String day_i_called();
    @Message
    String day_must_come();
    @Message
    String day_next();
    @Message
    String day_none();
    @Message
    String day_not_answered();
    @Message
    String day_clear_up();
    @Message
    String day_talk();
    @Message
    String day_act_talk();
    @Message
    String day_act_clear_up();
    @Message
    String day_owed_late(String latest);
    @Message
    String day_owed_latest(String latest);
    @Message
    String day_previous();
    @Message
    String day_promised(String name);
    @Message
    String day_promised_desk();
    @Message
    String day_today();
    @Message
    String day_to_telephone();
    @Message
    String day_until(String when);
    @Message
    String day_act_call();
    @Message
    String day_act_close();
    @Message
    String day_act_decide();
    @Message
    String day_act_instead();
    @Message
    String day_act_link();
    @Message
    String day_act_number();
    @Message
    String day_act_reading();
    @Message
    String day_act_send();
    @Message
    String day_act_send_again();
    @Message
    String day_act_skin_test();
    @Message
    String day_act_test();
    @Message
    String day_at_today(String hour);
    @Message
    String day_closed();
    @Message
    String day_colon();
    @Message
    String day_count_stopped(int count);
    @Message
    String day_count_unanswered(int count);
    @Message
    String day_left(int hours, int minutes);
    @Message
    String day_left_none();
    @Message
    String day_put_off();
    @Message
    String day_put_off_until(String day);
    @Message
    String day_put_off_why();
    @Message
    String day_stopped();
    @Message
    String day_stopped_call(String when);
    @Message
    String day_stopped_told();
    @Message
    String day_stopped_withdrawn();
    @Message
    String day_visits(int visits);
    @Message
    String over_cancelled();
    @Message
    String over_cancelled_text();
    @Message
    String over_closed();
    @Message
    String over_closed_text();
    @Message
    String over_to_card();
    @Message
    String over_to_closing();
    @Message
    String over_withdrawn();
    @Message
    String over_withdrawn_text();
    @Message
    String owed_go_on();
    @Message
    String owed_read();
    @Message
    String owed_record();
    @Message
    String owed_start();
    @Message
    String refused_title();
    @Message
    String refused_title_of(String client);
    @Message
    String refused_lead();
    @Message
    String refused_which();
    @Message
    String refused_wants(String test);
    @Message
    String refused_then();
    @Message
    String refused_record();
    @Message
    String refused_missing();
    @Message
    String refused_none();
    @Message
    String refused_how();
    @Message
    String refused_link();
    @Message
    String source_common_practice();
    @Message
    String source_from_memory();
    @Message
    String source_own_decision();
    @Message
    String source_published();
    @Message
    String weight_could_not_be_assessed();
    @Message
    String weight_note();
    @Message
    String weight_nothing_found();
    @Message
    String weight_prevents();
    @Message
    String weight_restricts();
    @Message
    String weight_test_first();
    @Message
    String copy_about();
    @Message
    String copy_foot(String client);
    @Message
    String copy_free();
    @Message
    String copy_hash();
    @Message
    String copy_link();
    @Message
    String copy_not_signed();
    @Message
    String copy_page(String page, String pages);
    @Message
    String copy_signed(String client, String language, String when);
    @Message
    String copy_title(String title);
}
