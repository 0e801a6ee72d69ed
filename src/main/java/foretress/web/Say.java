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
