package foretress.web;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/**
 * The words on a client's screens; they stand in messages/say.properties and say_es.properties under the same keys.
 * A key begins with its page; the rooms follow each other by the alphabet.
 */
@MessageBundle("say")
public interface Say {
    // consent

    // intake

    // invitation
    @Message String birth_ahead();
    @Message String birth_continue();
    @Message String birth_day();
    @Message String birth_day_missing();
    @Message String birth_lead();
    @Message String birth_month();
    @Message String birth_month_choose();
    @Message String birth_month_missing();
    @Message String birth_no_match();
    @Message String birth_no_such_day();
    @Message String birth_title();
    @Message String birth_too_long_ago();
    @Message String birth_tries();
    @Message String birth_year();
    @Message String birth_year_missing();
    @Message String code_ask();
    @Message String code_continue();
    @Message String code_field();
    @Message String code_field_hint();
    @Message String code_lead();
    @Message String code_mail();
    @Message String code_mailed();
    @Message String code_often();
    @Message String code_title();
    @Message String code_wrong();
    @Message String door_languages();
    @Message String door_lead();
    @Message String door_next();
    @Message String door_seen();
    @Message String door_seen_text();
    @Message String door_start();
    @Message String door_time();
    @Message String door_time_text();
    @Message String door_title();
    @Message String door_unsure();
    @Message String door_unsure_text();
    @Message String forgotten_text();
    @Message String forgotten_title();
    @Message String locked_text();
    @Message String locked_title();
    @Message String mail_code_is(String code);
    @Message String mail_code_life();
    @Message String mail_code_subject();
    @Message String mail_hello(String name);
    @Message String mail_link_birth_date();
    @Message String mail_link_not_you();
    @Message String mail_link_open();
    @Message String mail_link_subject();
    @Message String mail_link_when(String salon, String when);
    @Message String mail_link_why();
    @Message String no_link_text();
    @Message String no_link_title();
    @Message String slip_scan();
    @Message String slip_type();
    @Message String stop_go_on();
    @Message String stop_kept();
    @Message String stop_other();
    @Message String stop_return();
    @Message String stop_shared();
    @Message String stop_shared_button();
    @Message String stop_shared_text();
    @Message String stop_title();
    @Message String use_link_text();
    @Message String use_link_title();

    // web
    @Message String page_help();
    @Message String page_language();
    @Message String page_language_change();
    @Message String page_offline();
    @Message String language_choose();
    @Message String language_title();
    @Message String problem_call(String phone);
    @Message String problem_conflict_do();
    @Message String problem_conflict_title();
    @Message String problem_forbidden_do();
    @Message String problem_forbidden_title();
    @Message String problem_gone_do();
    @Message String problem_gone_title();
    @Message String problem_method_do();
    @Message String problem_method_title();
    @Message String problem_not_found_do();
    @Message String problem_not_found_title();
    @Message String problem_ours_do();
    @Message String problem_ours_title();
    @Message String problem_refused_do();
    @Message String problem_refused_title();
    @Message String problem_sign_in_do();
    @Message String problem_sign_in_title();
    @Message String problem_too_large_do();
    @Message String problem_too_large_title();
    @Message String problem_too_many_do();
    @Message String problem_too_many_title();
    @Message String problem_unreadable_do();
    @Message String problem_unreadable_title();
    @Message String skip_to_content();
}
