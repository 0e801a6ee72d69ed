package foretress.decision;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of asking again, deciding and closing; they stand in messages/decide.properties under the same keys. */
@MessageBundle("decide")
public interface DecisionWords {
    @Message
    String again();
    @Message
    String alternative();
    @Message
    String alternative_none();
    @Message
    String as_before();
    @Message
    String ask_now(int count);
    @Message
    String back();
    @Message
    String before();
    @Message
    String before_text();
    @Message
    String booked_as(String service);
    @Message
    String by(String name, String when);
    @Message
    String caution();
    @Message
    String changed_title();
    @Message
    String changed_none();
    @Message
    String changed_answers();
    @Message
    String close_link();
    @Message
    String conditions();
    @Message
    String conditions_hint();
    @Message
    String conditions_missing();
    @Message
    String conditions_long(int longest);
    @Message
    String decided_title();
    @Message
    String found_on(String day);
    @Message
    String go_against();
    @Message
    String go_against_text();
    @Message
    String hand_over();
    @Message
    String hand_over_text();
    @Message
    String instead_proposed(String service);
    @Message
    String link();
    @Message
    String look_again();
    @Message
    String look_again_link();
    @Message
    String missing_answers(int count);
    @Message
    String nobody();
    @Message
    String nobody_title();
    @Message
    String nobody_text();
    @Message
    String nothing_in_the_way();
    @Message
    String only_owner(String who);
    @Message
    String only_owner_title();
    @Message
    String only_owner_text(String who);
    @Message
    String outdated_text();
    @Message
    String outdated_title();
    @Message
    String outdated_look();
    @Message
    String outdated_same();
    @Message
    String password();
    @Message
    String password_wrong();
    @Message
    String password_wait(long seconds);
    @Message
    String plan_other();
    @Message
    String plan_save();
    @Message
    String plan_service();
    @Message
    String plan_text();
    @Message
    String plan_without_toner();
    @Message
    String reason();
    @Message
    String reason_hint();
    @Message
    String reason_missing();
    @Message
    String reason_was(String reason);
    @Message
    String record();
    @Message
    String recorded();
    @Message
    String alone();
    @Message
    String against_was(String title, String weight);
    @Message
    String same();
    @Message
    String signature_answers();
    @Message
    String signature_findings();
    @Message
    String signature_never();
    @Message
    String signature_service();
    @Message
    String signature_tests();
    @Message
    String since_last(String day);
    @Message
    String since_last_none();
    @Message
    String title();
    @Message
    String title_of(String client);
    @Message
    String today_done();
    @Message
    String today_done_text();
    @Message
    String today_earlier(String day);
    @Message
    String today_later(String day);
    @Message
    String today_left(int count);
    @Message
    String today_lead(String client);
    @Message
    String today_ask();
    @Message
    String today_next();
    @Message
    String today_not_begun();
    @Message
    String today_over();
    @Message
    String today_title();
    @Message
    String today_title_of(String client);
    @Message
    String today_to_decision();
    @Message
    String until();
    @Message
    String until_day(String day);
    @Message
    String until_wrong();
    @Message
    String verdict();
    @Message
    String verdict_decline();
    @Message
    String verdict_decline_hint();
    @Message
    String verdict_missing(String service);
    @Message
    String verdict_not_now();
    @Message
    String verdict_postpone();
    @Message
    String verdict_postpone_hint();
    @Message
    String verdict_proceed();
    @Message
    String verdict_proceed_hint();
    @Message
    String verdict_proceed_with_changes();
    @Message
    String verdict_proceed_with_changes_hint();
    @Message
    String visit_not_answered(boolean more);
    @Message
    String visit_over();
}
