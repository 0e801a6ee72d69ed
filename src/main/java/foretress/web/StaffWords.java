package foretress.web;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/**
 * The words on the staff's screens, but for those of the consultation, which are {@link StylistWords}'s (a bundle of more than
 * three hundred messages does not start); they stand in messages/chair.properties under the same keys.
 * A key begins with its page; the rooms follow each other by the alphabet.
 */
@MessageBundle("chair")
public interface StaffWords {
    // demo
    @Message
    String demo_lead();
    @Message
    String demo_mails();
    @Message
    String demo_no_mails();
    @Message
    String demo_staff();
    @Message
    String demo_title();

    // invitation
    @Message
    String fresh_back();
    @Message
    String fresh_copied();
    @Message
    String fresh_copy();
    @Message
    String fresh_life();
    @Message
    String fresh_mail(String to);
    @Message
    String fresh_paste();
    @Message
    String fresh_print();
    @Message
    String fresh_qr();
    @Message
    String fresh_scan();
    @Message
    String fresh_send();
    @Message
    String fresh_title(String client);
    @Message
    String read_out_again();
    @Message
    String read_out_life(String client, long minutes);
    @Message
    String read_out_title();
    @Message
    String visit_desk_answers();
    @Message
    String visit_desk_birth();
    @Message
    String visit_desk_birth_confirm();
    @Message
    String visit_desk_birth_none();
    @Message
    String visit_desk_birth_other();
    @Message
    String visit_desk_birth_said(String date);
    @Message
    String visit_desk_birth_sure(String date);
    @Message
    String visit_desk_cancel();
    @Message
    String visit_desk_cancel_sure();
    @Message
    String visit_desk_cancel_yes();
    @Message
    String visit_desk_client();
    @Message
    String visit_desk_code_make();
    @Message
    String visit_desk_code_text();
    @Message
    String visit_desk_edit();
    @Message
    String visit_desk_link();
    @Message
    String visit_desk_link_expired(String when);
    @Message
    String visit_desk_link_live(String issued, String until);
    @Message
    String visit_desk_link_locked();
    @Message
    String visit_desk_link_none();
    @Message
    String visit_desk_link_over();
    @Message
    String visit_desk_link_revoked();
    @Message
    String visit_desk_mail(String to);
    @Message
    String visit_desk_mail_given_up(String when);
    @Message
    String visit_desk_mail_none();
    @Message
    String visit_desk_mail_not_set_up();
    @Message
    String visit_desk_mail_sent(String when);
    @Message
    String visit_desk_mail_stuck(String when);
    @Message
    String visit_desk_mail_waiting(String when);
    @Message
    String visit_desk_no_phone();
    @Message
    String visit_desk_paper_form();
    @Message
    String visit_desk_replaces();
    @Message
    String visit_desk_revoke();
    @Message
    String visit_desk_revoke_hint();
    @Message
    String visit_desk_said_cancelled();
    @Message
    String visit_desk_said_confirmed();
    @Message
    String visit_desk_said_link_gone();
    @Message
    String visit_desk_said_not_set_up();
    @Message
    String visit_desk_said_mailed();
    @Message
    String visit_desk_said_no_address();
    @Message
    String visit_desk_said_revoked();
    @Message
    String visit_desk_said_unlocked();
    @Message
    String visit_desk_show();
    @Message
    String visit_desk_tablet();
    @Message
    String visit_desk_tablet_text();
    @Message
    String visit_book_tablet();
    @Message
    String visit_book_tablet_text();
    @Message
    String visit_desk_unlock();
    @Message
    String visit_desk_wish(String service);
    @Message
    String visit_desk_with(String stylist);

    // salon
    @Message
    String first_password_lead(String name, String login);
    @Message
    String first_password_submit();
    @Message
    String first_password_title();
    @Message
    String password_again();
    @Message
    String password_change();
    @Message
    String password_common();
    @Message
    String password_current();
    @Message
    String password_current_wrong();
    @Message
    String password_differs();
    @Message
    String password_hint(int shortest);
    @Message
    String password_new();
    @Message
    String password_repetitive();
    @Message
    String password_salon_words();
    @Message
    String password_title();
    @Message
    String password_too_long(int longest);
    @Message
    String password_too_short(int shortest);
    @Message
    String please_look_again();
    @Message
    String form_changed();
    @Message
    String form_kept_now(String said);
    @Message
    String form_kept_nothing();
    @Message
    String salon_kept();
    @Message
    String salon_submit();
    @Message
    String salon_title();
    @Message
    String set_up_address();
    @Message
    String set_up_address_missing();
    @Message
    String set_up_closed();
    @Message
    String set_up_email();
    @Message
    String set_up_email_wrong();
    @Message
    String set_up_closed_days();
    @Message
    String set_up_closed_days_hint();
    @Message
    String set_up_closed_days_wrong(String line);
    @Message
    String set_up_hours();
    @Message
    String set_up_hours_wrong(String day, String typed);
    @Message
    String set_up_jurisdiction();
    @Message
    String set_up_jurisdiction_eu();
    @Message
    String set_up_jurisdiction_missing();
    @Message
    String set_up_jurisdiction_uk();
    @Message
    String set_up_jurisdiction_us();
    @Message
    String set_up_languages();
    @Message
    String set_up_languages_missing();
    @Message
    String set_up_lead();
    @Message
    String set_up_name();
    @Message
    String set_up_name_missing();
    @Message
    String set_up_owner();
    @Message
    String set_up_paper();
    @Message
    String set_up_paper_a4();
    @Message
    String set_up_paper_letter();
    @Message
    String set_up_paper_missing();
    @Message
    String set_up_phone();
    @Message
    String set_up_phone_wrong();
    @Message
    String set_up_salon();
    @Message
    String set_up_submit();
    @Message
    String set_up_title();
    @Message
    String set_up_town();
    @Message
    String set_up_town_missing();
    @Message
    String set_up_urgent();
    @Message
    String set_up_urgent_hint();
    @Message
    String set_up_urgent_wrong();
    @Message
    String set_up_zone();
    @Message
    String set_up_zone_wrong();
    @Message
    String sign_in_kept();
    @Message
    String sign_in_login();
    @Message
    String sign_in_not_set_up();
    @Message
    String sign_in_password();
    @Message
    String sign_in_submit();
    @Message
    String sign_in_title();
    @Message
    String sign_in_to_other();
    @Message
    String sign_in_wait_minutes(long minutes);
    @Message
    String sign_in_wait_seconds(long seconds);
    @Message
    String sign_in_wrong();
    @Message
    String sign_out_submit();
    @Message
    String staff_add();
    @Message
    String staff_code();
    @Message
    String staff_code_hint();
    @Message
    String staff_gone();
    @Message
    String staff_handed(String name);
    @Message
    String staff_leave();
    @Message
    String staff_login();
    @Message
    String staff_login_taken(String login);
    @Message
    String staff_login_wrong();
    @Message
    String staff_name();
    @Message
    String staff_name_missing();
    @Message
    String staff_no_password();
    @Message
    String staff_return();
    @Message
    String staff_role();
    @Message
    String staff_role_desk();
    @Message
    String staff_role_missing();
    @Message
    String staff_role_owner();
    @Message
    String staff_role_stylist();
    @Message
    String staff_submit();
    @Message
    String staff_title();
    @Message
    String staff_you();

    // visit
    @Message
    String answered_called_off();
    @Message
    String answered_stopped();
    @Message
    String answered_half();
    @Message
    String answered_no_link();
    @Message
    String answered_not();
    @Message
    String answered_withdrawn();
    @Message
    String answered_yes();
    @Message
    String client_changed();
    @Message
    String client_kept();
    @Message
    String client_new_visit();
    @Message
    String client_save();
    @Message
    String client_visits();
    @Message
    String client_visits_none();
    @Message
    String clients_born();
    @Message
    String clients_earlier();
    @Message
    String clients_hint();
    @Message
    String clients_later();
    @Message
    String clients_new();
    @Message
    String clients_none(String query);
    @Message
    String clients_open();
    @Message
    String clients_reach();
    @Message
    String clients_search();
    @Message
    String clients_title();
    @Message
    String desk_called();
    @Message
    String desk_clients();
    @Message
    String desk_postponed();
    @Message
    String desk_postponed_until(String day);
    @Message
    String desk_come_in();
    @Message
    String desk_come_in_none();
    @Message
    String desk_count(int visits, int open);
    @Message
    String desk_due(String due);
    @Message
    String desk_earlier();
    @Message
    String desk_from(String day);
    @Message
    String desk_later();
    @Message
    String desk_latest(String when);
    @Message
    String desk_link();
    @Message
    String desk_new();
    @Message
    String desk_none();
    @Message
    String foreseen_title();
    @Message
    String foreseen_more();
    @Message
    String foreseen_none();
    @Message
    String foreseen_shut();
    @Message
    String foreseen_test(String test, String moment);
    @Message
    String foreseen_test_tight(String test, String moment);
    @Message
    String foreseen_too_soon(String test, int hours, int number);
    @Message
    String foreseen_closed(String test, int hours);
    @Message
    String foreseen_short(String test, int hours);

    @Message
    String foreseen_too_young(String test);
    @Message
    String foreseen_from(String moment);
    @Message
    String foreseen_look();
    @Message
    String desk_at_least();
    @Message
    String desk_owed_for(String when);
    @Message
    String desk_owed_other();
    @Message
    String desk_owed_reading();
    @Message
    String desk_owed_skin();
    @Message
    String desk_owed_talk();
    @Message
    String desk_owed_test();
    @Message
    String desk_promises();
    @Message
    String desk_promises_none();
    @Message
    String desk_said_not_set_up();
    @Message
    String desk_no_phone();
    @Message
    String desk_add_phone();
    @Message
    String desk_said_mailed();
    @Message
    String desk_said_no_address();
    @Message
    String desk_send();
    @Message
    String desk_send_again();
    @Message
    String desk_task_birth();
    @Message
    String desk_task_call(String who);
    @Message
    String desk_task_call_desk();
    @Message
    String desk_task_unlock();
    @Message
    String desk_title();
    @Message
    String desk_today(String day);
    @Message
    String desk_was(String when);
    @Message
    String visit_answers();
    @Message
    String visit_back();
    @Message
    String visit_birth();
    @Message
    String visit_birth_hint();
    @Message
    String visit_birth_range(String date);
    @Message
    String visit_birth_wrong();
    @Message
    String visit_booked();
    @Message
    String visit_client_gone();
    @Message
    String visit_date();
    @Message
    String visit_date_far(String date, int years);
    @Message
    String visit_date_missing();
    @Message
    String visit_date_over(String date);
    @Message
    String visit_day();
    @Message
    String visit_email();
    @Message
    String visit_email_hint();
    @Message
    String visit_email_wrong(String typed);
    @Message
    String visit_family();
    @Message
    String visit_family_missing();
    @Message
    String visit_for();
    @Message
    String visit_given();
    @Message
    String visit_given_missing();
    @Message
    String visit_known();
    @Message
    String visit_language();
    @Message
    String visit_month();
    @Message
    String visit_name_long(int longest);
    @Message
    String visit_name_unseen();
    @Message
    String visit_other_client();
    @Message
    String visit_act();
    @Message
    String visit_owed();
    @Message
    String visit_phone();
    @Message
    String visit_phone_wrong(String typed);
    @Message
    String visit_save();
    @Message
    String visit_services_missing();
    @Message
    String visit_stylist();
    @Message
    String visit_stylist_choose();
    @Message
    String visit_stylist_missing();
    @Message
    String visit_time();
    @Message
    String visit_time_missing();
    @Message
    String visit_time_skipped(String day, String last, String next, String typed);
    @Message
    String visit_time_twice(String time);
    @Message
    String visit_title();
    @Message
    String visit_turn();
    @Message
    String visit_turn_first();
    @Message
    String visit_turn_second();
    @Message
    String visit_visit();
    @Message
    String visit_when();
    @Message
    String visit_who();
    @Message
    String visit_without(String service);
    @Message
    String visit_year();

    // web
    @Message
    String page_day();
    @Message
    String page_desk();
    @Message
    String page_offline();
    @Message
    String page_skip();
    @Message
    String page_tabs();
    @Message
    String when_today();
    @Message
    String when_tomorrow();
    @Message
    String when_yesterday();
}
