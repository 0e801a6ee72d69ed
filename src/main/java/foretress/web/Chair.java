package foretress.web;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/**
 * The words on the staff's screens; they stand in messages/chair.properties under the same keys.
 * A key begins with its page; the rooms follow each other by the alphabet.
 */
@MessageBundle("chair")
public interface Chair {
    // consultation

    // demo

    // invitation

    // salon
    @Message String first_password_lead(String name, String login);
    @Message String first_password_submit();
    @Message String first_password_title();
    @Message String password_again();
    @Message String password_change();
    @Message String password_common();
    @Message String password_current();
    @Message String password_current_wrong();
    @Message String password_differs();
    @Message String password_hint(int shortest);
    @Message String password_new();
    @Message String password_repetitive();
    @Message String password_salon_words();
    @Message String password_title();
    @Message String password_too_long(int longest);
    @Message String password_too_short(int shortest);
    @Message String please_look_again();
    @Message String set_up_address();
    @Message String set_up_address_missing();
    @Message String set_up_closed();
    @Message String set_up_email();
    @Message String set_up_email_wrong();
    @Message String set_up_hours();
    @Message String set_up_hours_wrong(String day, String typed);
    @Message String set_up_jurisdiction();
    @Message String set_up_jurisdiction_eu();
    @Message String set_up_jurisdiction_missing();
    @Message String set_up_jurisdiction_uk();
    @Message String set_up_jurisdiction_us();
    @Message String set_up_languages();
    @Message String set_up_languages_missing();
    @Message String set_up_lead();
    @Message String set_up_name();
    @Message String set_up_name_missing();
    @Message String set_up_owner();
    @Message String set_up_paper();
    @Message String set_up_paper_a4();
    @Message String set_up_paper_letter();
    @Message String set_up_paper_missing();
    @Message String set_up_phone();
    @Message String set_up_phone_wrong();
    @Message String set_up_salon();
    @Message String set_up_submit();
    @Message String set_up_title();
    @Message String set_up_town();
    @Message String set_up_town_missing();
    @Message String set_up_urgent();
    @Message String set_up_urgent_hint();
    @Message String set_up_urgent_wrong();
    @Message String set_up_zone();
    @Message String set_up_zone_wrong();
    @Message String sign_in_login();
    @Message String sign_in_not_set_up();
    @Message String sign_in_password();
    @Message String sign_in_submit();
    @Message String sign_in_title();
    @Message String sign_in_to_other();
    @Message String sign_in_wait_minutes(long minutes);
    @Message String sign_in_wait_seconds(long seconds);
    @Message String sign_in_wrong();
    @Message String sign_out_submit();
    @Message String staff_add();
    @Message String staff_code();
    @Message String staff_code_hint();
    @Message String staff_gone();
    @Message String staff_handed(String name);
    @Message String staff_leave();
    @Message String staff_login();
    @Message String staff_login_taken(String login);
    @Message String staff_login_wrong();
    @Message String staff_name();
    @Message String staff_name_missing();
    @Message String staff_no_password();
    @Message String staff_return();
    @Message String staff_role();
    @Message String staff_role_desk();
    @Message String staff_role_missing();
    @Message String staff_role_owner();
    @Message String staff_role_stylist();
    @Message String staff_submit();
    @Message String staff_title();
    @Message String staff_you();

    // visit

    // web
    @Message String page_day();
    @Message String page_desk();
    @Message String page_offline();
    @Message String page_skip();
    @Message String page_tabs();
}
