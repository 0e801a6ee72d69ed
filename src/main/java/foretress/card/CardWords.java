package foretress.card;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of the record card and of making one record of two; they stand in messages/card.properties under the same keys. */
@MessageBundle("card")
public interface CardWords {
    @Message
    String against();
    @Message
    String alone();
    @Message
    String alternative(String service);
    @Message
    String answers();
    @Message
    String batch(String batch);
    @Message
    String born();
    @Message
    String client();
    @Message
    String conditions(String conditions);
    @Message
    String consent(int version, String when);
    @Message
    String decided(String verdict, String service);
    @Message
    String decided_by(String name, String when);
    @Message
    String decisions();
    @Message
    String documents();
    @Message
    String done();
    @Message
    String done_by(String name);
    @Message
    String file_since();
    @Message
    String findings();
    @Message
    String findings_none();
    @Message
    String foot(String client, String day);
    @Message
    String language();
    @Message
    String map();
    @Message
    String map_aside(String day);
    @Message
    String map_none();
    @Message
    String merge();
    @Message
    String merge_born_differ();
    @Message
    String merge_choose(String client);
    @Message
    String merge_do();
    @Message
    String merge_find();
    @Message
    String merge_find_hint();
    @Message
    String merge_keep();
    @Message
    String merge_keep_hint();
    @Message
    String merge_keep_missing();
    @Message
    String merge_none(String query);
    @Message
    String merge_preview();
    @Message
    String merge_preview_hint();
    @Message
    String merge_search();
    @Message
    String merge_stands();
    @Message
    String merge_stands_none();
    @Message
    String merge_sure();
    @Message
    String merge_sure_missing();
    @Message
    String merge_title(String client);
    @Message
    String merged();
    @Message
    String merged_from(int count);
    @Message
    String minutes(String minutes);
    @Message
    String at_end();
    @Message
    String next_time();
    @Message
    String product();
    @Message
    String strand_test();
    @Message
    String not_on_file();
    @Message
    String outcome_caution();
    @Message
    String outcome_doubtful();
    @Message
    String outcome_average();

    @Message
    String outcome_resistant();

    @Message
    String outcome_over_porous();
    @Message
    String outcome_fail();
    @Message
    String outcome_good();
    @Message
    String outcome_negative();
    @Message
    String outcome_not_whole();
    @Message
    String outcome_nothing_happened();
    @Message
    String outcome_pass();
    @Message
    String outcome_poor();
    @Message
    String outcome_porous();
    @Message
    String outcome_positive();
    @Message
    String outcome_slight_lightening();
    @Message
    String page_of(String page, String pages);
    @Message
    String phone();
    @Message
    String email();
    @Message
    String print();
    @Message
    String print_visit();
    @Message
    String printed(String when);
    @Message
    String reason(String reason);
    @Message
    String shade(String shade);
    @Message
    String standing();
    @Message
    String test_due(String when);
    @Message
    String test_left(String day, int days);
    @Message
    String test_length();
    @Message
    String test_measured();
    @Message
    String test_not_read();
    @Message
    String test_once();
    @Message
    String test_open();
    @Message
    String test_over(String day);
    @Message
    String test_struck();
    @Message
    String test_unwatched(String from, String to);
    @Message
    String test_read(String day);
    @Message
    String test_started(String day);
    @Message
    String tests();
    @Message
    String tests_none();
    @Message
    String title();
    @Message
    String title_of(String client);
    @Message
    String until(String day);
    @Message
    String visit();
    @Message
    String visit_of(String when);
    @Message
    String visit_services();
    @Message
    String visit_with();
    @Message
    String visits();
    @Message
    String visits_none();
    @Message
    String state_booked();
    @Message
    String state_answering();
    @Message
    String state_signed();
    @Message
    String state_decided();
    @Message
    String state_closed();
    @Message
    String state_cancelled();
    @Message
    String state_withdrawn();
    @Message
    String verdict_decline();
    @Message
    String verdict_postpone();
    @Message
    String verdict_proceed();
    @Message
    String verdict_proceed_with_changes();
    @Message
    String caution();
    @Message
    String open_visit();
    @Message
    String booked_as(String service);
}
