package foretress.skintest;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words on the pages of skin tests for staff; they stand in messages/skin.properties. */
@MessageBundle("skin")
public interface SkinWords {
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
    String doubt_masked();
    @Message
    String doubt_masked_now();
    @Message
    String doubt_not_negative();
    @Message
    String doubt_not_read();
    @Message
    String doubt_other_product();
    @Message
    String doubt_other_visit();
    @Message
    String doubt_out_of_date();
    @Message
    String doubt_overtaken();
    @Message
    String doubt_read_again(String moment);
    @Message
    String doubt_too_early();
    @Message
    String link_hint();
    @Message
    String link_title(String client);
    @Message
    String read_early(String from);
    @Message
    String read_mixing();
    @Message
    String read_none_and_more();
    @Message
    String read_save();
    @Message
    String read_signs();
    @Message
    String read_signs_missing();
    @Message
    String read_spot();
    @Message
    String read_spot_missing();
    @Message
    String read_title(String client);
    @Message
    String read_too_early(String from);
    @Message
    String read_words();
    @Message
    String read_words_long();
    @Message
    String record_batch();
    @Message
    String record_batch_missing();
    @Message
    String record_leave_on(int minutes);
    @Message
    String record_made();
    @Message
    String record_masking();
    @Message
    String record_masking_none();
    @Message
    String record_medicines();
    @Message
    String record_medicines_hint();
    @Message
    String record_medicines_missing();
    @Message
    String record_medicines_none();
    @Message
    String record_medicines_taken();
    @Message
    String record_medicines_unknown();
    @Message
    String record_not_mixed();
    @Message
    String record_not_neat();
    @Message
    String record_not_whole();
    @Message
    String record_save();
    @Message
    String record_site_words();
    @Message
    String record_site_words_missing();
    @Message
    String record_title(String client);
    @Message
    String record_what();
    @Message
    String record_when(String moment, int hours);
    @Message
    String record_whole();
    @Message
    String sign_blisters();
    @Message
    String sign_breathing();
    @Message
    String sign_burning();
    @Message
    String sign_elsewhere();
    @Message
    String sign_face();
    @Message
    String sign_faint();
    @Message
    String sign_itch();
    @Message
    String sign_none();
    @Message
    String sign_redness();
    @Message
    String sign_swelling();
    @Message
    String test_applied(String name, String moment);
    @Message
    String test_by_client();
    @Message
    String test_caution();
    @Message
    String test_consent();
    @Message
    String test_consent_why();
    @Message
    String test_earliest(String moment);
    @Message
    String test_error();
    @Message
    String test_error_mark();
    @Message
    String test_error_means();
    @Message
    String test_error_password();
    @Message
    String test_error_password_wrong();
    @Message
    String test_error_reason();
    @Message
    String test_error_wait(long seconds);
    @Message
    String test_error_reason_missing();
    @Message
    String test_error_said(String name, String moment, String reason);
    @Message
    String test_first();
    @Message
    String test_how(String batch, String mixing, String site);
    @Message
    String test_instead();
    @Message
    String test_instead_words();
    @Message
    String test_link();
    @Message
    String test_must_not();
    @Message
    String test_must_not_why();
    @Message
    String test_needs_answers();
    @Message
    String test_needs_product();
    @Message
    String test_needs_signature();
    @Message
    String test_none();
    @Message
    String test_not_read();
    @Message
    String test_paper(int number, String moment);
    @Message
    String test_papers();
    @Message
    String test_photo(int number);
    @Message
    String test_prevents();
    @Message
    String test_read();
    @Message
    String test_read_not_enough();
    @Message
    String test_record();
    @Message
    String test_restricts();
    @Message
    String test_result_doubtful();
    @Message
    String test_result_positive();
    @Message
    String test_said_error();
    @Message
    String test_said_not_recorded();
    @Message
    String test_said_reacted();
    @Message
    String test_said_read();
    @Message
    String test_said_recorded();
    @Message
    String test_stands();
    @Message
    String test_stands_until(String last);
    @Message
    String test_tests();
    @Message
    String test_title(String client);
    @Message
    String test_refused();
    @Message
    String test_refused_link();
    @Message
    String test_to_link();
    @Message
    String test_to_visit();
    @Message
    String test_tufts();
    @Message
    String test_visit_at(String moment);
    @Message
    String test_visit_book();
    @Message
    String test_visit_change();
    @Message
    String test_visit_over();
    @Message
    String visit_book();
    @Message
    String visit_booked(String moment);
    @Message
    String visit_cancel();
    @Message
    String visit_choose();
    @Message
    String visit_conflict(int hours, int number);
    @Message
    String visit_days();
    @Message
    String visit_gone();
    @Message
    String visit_conflict_closed(int hours);
    @Message
    String visit_conflict_short(int hours);

    @Message
    String visit_conflict_young();
    @Message
    String visit_from(String moment);
    @Message
    String visit_latest();
    @Message
    String visit_latest_tight();
    @Message
    String visit_tight();
    @Message
    String visit_lead();
    @Message
    String visit_at_least();
    @Message
    String visit_refused();
    @Message
    String visit_none_known();
    @Message
    String visit_none_needed();
    @Message
    String visit_none_open();
    @Message
    String visit_no_mail();
    @Message
    String visit_said_booked();
    @Message
    String visit_said_cancelled();
    @Message
    String visit_starts(String moment);
    @Message
    String visit_title(String client);
    @Message
    String day_reading();
    @Message
    String day_running(String moment);
    @Message
    String day_speak(String name);
    @Message
    String day_ask();
    @Message
    String task_ask();
    @Message
    String task_speak(String name);
    @Message
    String how_1();
    @Message
    String how_2();
    @Message
    String how_3();
    @Message
    String how_4();
    @Message
    String how_5();
    @Message
    String how_6();
    @Message
    String how_7();
    @Message
    String how_8();
    @Message
    String how_source();
    @Message
    String how_summary();
    @Message
    String how_wrong();
    @Message
    String how_wrong_1();
    @Message
    String how_wrong_2(String number);
    @Message
    String how_wrong_3();
    @Message
    String how_wrong_4();
    @Message
    String how_wrong_source();
    @Message
    String wipe_at(String moment);
    @Message
    String wipe_due(String client);
    @Message
    String wipe_left();
    @Message
    String test_mean_doubtful();
    @Message
    String test_mean_nothing();
    @Message
    String test_mean_positive();
    @Message
    String test_visit_none();
    @Message
    String test_would_mean();
}
