package foretress.web;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/**
 * The words on a client's screens; they stand in messages/say.properties and say_es.properties under the same keys.
 * A key begins with its page; the rooms follow each other by the alphabet.
 */
@MessageBundle("say")
public interface ClientWords {
    // consent
    @Message
    String verify_title();
    @Message
    String verify_lead();
    @Message
    String verify_file();
    @Message
    String verify_go();
    @Message
    String verify_missing();
    @Message
    String verify_unchanged(String salon);
    @Message
    String verify_newest();
    @Message
    String verify_superseded();
    @Message
    String verify_taken_back();
    @Message
    String verify_gone();
    @Message
    String verify_added(String salon);
    @Message
    String verify_changed();
    @Message
    String verify_other();
    @Message
    String verify_not_sealed();
    @Message
    String verify_unreadable();
    @Message
    String verify_limits();
    @Message
    String verify_again();

    // intake
    @Message
    String care_call(String name, String until);
    @Message
    String care_call_desk(String until);
    @Message
    String care_doctor();
    @Message
    String care_go_on();
    @Message
    String care_lead();
    @Message
    String care_next();
    @Message
    String care_title();
    @Message
    String care_unwell();
    @Message
    String care_unwell_words();
    @Message
    String care_urgent_call(String number);
    @Message
    String care_visit_stays(String day);
    @Message
    String guardian_box();
    @Message
    String guardian_heading();
    @Message
    String guardian_legal();
    @Message
    String guardian_name();
    @Message
    String guardian_name_missing();
    @Message
    String guardian_parent();
    @Message
    String guardian_relation();
    @Message
    String guardian_relation_missing();
    @Message
    String guardian_responsible();
    @Message
    String guardian_signature();
    @Message
    String guardian_signs();
    @Message
    String guardian_typed();
    @Message
    String guardian_why(int below);
    @Message
    String phone_ask();
    @Message
    String phone_keep();
    @Message
    String phone_title();
    @Message
    String phone_why();
    @Message
    String phone_wrong();
    @Message
    String done_again();
    @Message
    String done_calendar();
    @Message
    String done_calendar_summary(String salon);
    @Message
    String done_changed_go();
    @Message
    String done_changed_lead();
    @Message
    String done_changed_title();
    @Message
    String done_copy();
    @Message
    String done_hand_back();
    @Message
    String done_hand_back_text();
    @Message
    String done_last_days(String day);
    @Message
    String done_last_days_now();
    @Message
    String done_postponed();
    @Message
    String done_postponed_until(String day);
    @Message
    String done_lead(String salon);
    @Message
    String done_lead_prevented(String salon);
    @Message
    String done_signed_before(String when);
    @Message
    String done_take_back();
    @Message
    String done_test(String test, String latest);
    @Message
    String done_test_late(String test);
    @Message
    String done_tests();
    @Message
    String done_title();
    @Message
    String done_visit(String when);
    @Message
    String length_cm();
    @Message
    String length_in();
    @Message
    String length_number();
    @Message
    String length_straight();
    @Message
    String length_unit();
    @Message
    String list_add();
    @Message
    String list_another();
    @Message
    String list_change();
    @Message
    String list_drop();
    @Message
    String list_no();
    @Message
    String list_yes();
    @Message
    String medicines_dose();
    @Message
    String medicines_last();
    @Message
    String medicines_name(int number);
    @Message
    String medicines_route();
    @Message
    String mistake_ago_missing();
    @Message
    String mistake_day_in_future(String day, String month, String year);
    @Message
    String mistake_day_missing();
    @Message
    String mistake_doubled(String question);
    @Message
    String mistake_first_after_last();
    @Message
    String mistake_length_out_of_range(String typed, String least, String most, String unit);
    @Message
    String mistake_month_in_future(String month, String year);
    @Message
    String mistake_month_missing();
    @Message
    String mistake_none_and_others();
    @Message
    String mistake_not_a_day(String typed);
    @Message
    String mistake_not_a_day_of_month(String typed, String month, String year);
    @Message
    String mistake_not_a_length(String typed);
    @Message
    String mistake_not_a_month(String typed);
    @Message
    String mistake_not_a_year(String typed);
    @Message
    String mistake_not_offered(String question);
    @Message
    String mistake_required(String question);
    @Message
    String mistake_required_name();
    @Message
    String mistake_required_straight();
    @Message
    String mistake_required_what();
    @Message
    String mistake_required_when();
    @Message
    String mistake_required_zone();
    @Message
    String mistake_season_missing();
    @Message
    String mistake_too_long(String most, String count);
    @Message
    String mistake_too_many(String most);
    @Message
    String mistake_year_in_future(String year, String now);
    @Message
    String mistake_year_missing();
    @Message
    String mistake_year_too_early(String year, String first);
    @Message
    String mistakes_title();
    @Message
    String mistakes_words();
    @Message
    String last_time_agreed(String day);
    @Message
    String last_time_anew();
    @Message
    String last_time_code();
    @Message
    String last_time_here();
    @Message
    String last_time_lead(String day);
    @Message
    String last_time_same();
    @Message
    String last_time_title();
    @Message
    String last_time_to_code();
    @Message
    String last_time_unknown();
    @Message
    String notice_changed();
    @Message
    String notice_given();
    @Message
    String notice_all();
    @Message
    String notice_go_on();
    @Message
    String notice_must_tick();
    @Message
    String paper_changed_mind();
    @Message
    String paper_nothing_kept();
    @Message
    String paper_title();
    @Message
    String paper_words(String day);
    @Message
    String read_back_changed();
    @Message
    String read_back_lead();
    @Message
    String read_back_nothing();
    @Message
    String read_back_right();
    @Message
    String read_back_title();
    @Message
    String sign_again();
    @Message
    String sign_agree_all();
    @Message
    String sign_details();
    @Message
    String sign_box();
    @Message
    String sign_clear();
    @Message
    String sign_draw();
    @Message
    String sign_mark_missing();
    @Message
    String sign_mark_too_long();
    @Message
    String sign_name_too_long();
    @Message
    String sign_refuse_test();
    @Message
    String sign_submit();
    @Message
    String sign_title();
    @Message
    String sign_type();
    @Message
    String sign_typed();
    @Message
    String tests_go();
    @Message
    String tests_lead();
    @Message
    String tests_not(String test);
    @Message
    String tests_then();
    @Message
    String tests_title();
    @Message
    String take_back_do();
    @Message
    String take_back_keep();
    @Message
    String take_back_lead(String when);
    @Message
    String take_back_then();
    @Message
    String take_back_title();
    @Message
    String taken_back_lead(String when);
    @Message
    String taken_back_then(String salon);
    @Message
    String taken_back_title();
    @Message
    String topic_back();
    @Message
    String topic_everything();
    @Message
    String topic_next();
    @Message
    String topic_overtaken();
    @Message
    String topic_page();
    @Message
    String topic_step(int at, int of);
    @Message
    String topic_stop();
    @Message
    String topic_why();
    @Message
    String topic_you_said(String answer);
    @Message
    String treatments_by();
    @Message
    String treatments_every();
    @Message
    String treatments_extent();
    @Message
    String treatments_first();
    @Message
    String treatments_kind();
    @Message
    String treatments_often();
    @Message
    String treatments_what();
    @Message
    String treatments_when();
    @Message
    String treatments_where();
    @Message
    String when_ago();
    @Message
    String when_choose();
    @Message
    String when_day();
    @Message
    String when_month();
    @Message
    String when_season();
    @Message
    String when_year();

    // invitation
    @Message
    String birth_ahead();
    @Message
    String birth_day();
    @Message
    String birth_day_missing();
    @Message
    String birth_lead();
    @Message
    String birth_month();
    @Message
    String birth_month_choose();
    @Message
    String birth_month_missing();
    @Message
    String birth_no_match();
    @Message
    String birth_no_such_day();
    @Message
    String birth_title();
    @Message
    String birth_too_long_ago();
    @Message
    String birth_tries();
    @Message
    String birth_year();
    @Message
    String birth_year_missing();
    @Message
    String code_ask();
    @Message
    String code_continue();
    @Message
    String code_field();
    @Message
    String code_field_hint();
    @Message
    String code_lead();
    @Message
    String code_mail();
    @Message
    String code_mailed();
    @Message
    String code_often();
    @Message
    String code_title();
    @Message
    String code_wrong();
    @Message
    String door_lead();
    @Message
    String door_start();
    @Message
    String door_time();
    @Message
    String door_time_text(int minutes);
    @Message
    String door_title();
    @Message
    String door_unsure();
    @Message
    String door_unsure_text();
    @Message
    String forgotten_text();
    @Message
    String forgotten_title();
    @Message
    String locked_text();
    @Message
    String locked_title();
    @Message
    String mail_code_is(String code);
    @Message
    String mail_code_life();
    @Message
    String mail_code_subject();
    @Message
    String mail_hello(String name);
    @Message
    String mail_link_birth_date();
    @Message
    String mail_link_not_you();
    @Message
    String mail_link_open();
    @Message
    String mail_link_subject();
    @Message
    String mail_link_when(String salon, String when);
    @Message
    String mail_link_why();
    @Message
    String no_link_text();
    @Message
    String no_link_title();
    @Message
    String slip_scan();
    @Message
    String slip_type();
    @Message
    String stop_go_on();
    @Message
    String stop_kept();
    @Message
    String stop_other();
    @Message
    String stop_return();
    @Message
    String stop_shared();
    @Message
    String stop_shared_button();
    @Message
    String stop_shared_text();
    @Message
    String stop_title();
    @Message
    String use_link_text();
    @Message
    String use_link_title();

    // web
    @Message
    String kept_file();
    @Message
    String kept_file_hint();
    @Message
    String kept_link();
    @Message
    String kept_secret();
    @Message
    String kept_secret_again();
    @Message
    String kept_send();
    @Message
    String kept_signed_in(String who);
    @Message
    String kept_stale();
    @Message
    String kept_title();
    @Message
    String page_help();
    @Message
    String page_language();
    @Message
    String page_language_change();
    @Message
    String page_offline();
    @Message
    String page_waits();
    @Message
    String language_choose();
    @Message
    String language_title();
    @Message
    String problem_conflict_do();
    @Message
    String problem_conflict_title();
    @Message
    String problem_forbidden_do();
    @Message
    String problem_forbidden_title();
    @Message
    String problem_gone_do();
    @Message
    String problem_gone_title();
    @Message
    String problem_method_do();
    @Message
    String problem_method_title();
    @Message
    String problem_not_found_do();
    @Message
    String problem_not_found_title();
    @Message
    String problem_no_space_do();
    @Message
    String problem_no_space_title();
    @Message
    String problem_ours_do();
    @Message
    String problem_ours_title();
    @Message
    String problem_refused_do();
    @Message
    String problem_refused_title();
    @Message
    String problem_sign_in_do();
    @Message
    String problem_sign_in_title();
    @Message
    String problem_too_large_do();
    @Message
    String problem_too_large_title();
    @Message
    String problem_too_many_do();
    @Message
    String problem_too_many_title();
    @Message
    String problem_unreadable_do();
    @Message
    String problem_unreadable_title();
    @Message
    String skip_to_content();
}
