package foretress.note;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words around what staff write down; they stand in messages/noted.properties under the same keys. */
@MessageBundle("noted")
public interface NoteWords {
    @Message
    String any_product();
    @Message
    String back();
    @Message
    String back_visit();
    @Message
    String by_doctor();
    @Message
    String by_hint();
    @Message
    String by_letter();
    @Message
    String by_long(int most);
    @Message
    String by_missing();
    @Message
    String by_on(String by, String day);
    @Message
    String changes_none();
    @Message
    String cut();
    @Message
    String cut_day();
    @Message
    String cut_how();
    @Message
    String cut_left();
    @Message
    String cut_left_hint();
    @Message
    String cut_left_line(String cm, String day);
    @Message
    String cut_left_wrong(String typed, int most);
    @Message
    String cut_line();
    @Message
    String day_long_ago(int years);
    @Message
    String day_to_come();
    @Message
    String day_wrong();
    @Message
    String form_incomplete();
    @Message
    String growth();
    @Message
    String growth_band_line(String cm, String coloured, String measured);
    @Message
    String growth_cm();
    @Message
    String growth_cm_hint();
    @Message
    String growth_cm_wrong(String typed);
    @Message
    String growth_coloured();
    @Message
    String growth_how();
    @Message
    String growth_line();
    @Message
    String growth_no_such_rate(String cm, String rate, String slow, String fast);
    @Message
    String growth_too_early(int weeks, long since);
    @Message
    String heading();
    @Message
    String keep();
    @Message
    String lead();
    @Message
    String letter();
    @Message
    String letter_against();
    @Message
    String letter_against_hint();
    @Message
    String letter_against_line();
    @Message
    String letter_any_product();
    @Message
    String letter_cannot_open(String product);
    @Message
    String letter_how();
    @Message
    String letter_line();
    @Message
    String letter_line_missing();
    @Message
    String letter_names();
    @Message
    String letter_names_hint();
    @Message
    String letter_names_line();
    @Message
    String letter_not_planned();
    @Message
    String letter_outcome();
    @Message
    String letter_outcome_missing();
    @Message
    String letter_shade();
    @Message
    String letter_shade_hint();
    @Message
    String letter_shade_line(String product, String shade);
    @Message
    String letter_written();
    @Message
    String link();
    @Message
    String lookup_add();
    @Message
    String lookup_all();
    @Message
    String lookup_all_lead();
    @Message
    String lookup_ask_a_doctor();
    @Message
    String lookup_class();
    @Message
    String lookup_how();
    @Message
    String lookup_link();
    @Message
    String lookup_masks();
    @Message
    String lookup_means();
    @Message
    String lookup_means_hint();
    @Message
    String lookup_means_missing();
    @Message
    String lookup_name();
    @Message
    String lookup_name_hint();
    @Message
    String lookup_name_known(String names);
    @Message
    String lookup_name_long(int most);
    @Message
    String lookup_name_missing();
    @Message
    String lookup_name_one();
    @Message
    String lookup_name_taken();
    @Message
    String lookup_no_difference();
    @Message
    String lookup_no_medicine();
    @Message
    String lookup_none();
    @Message
    String lookup_none_here();
    @Message
    String lookup_said(String means, String source);
    @Message
    String lookup_source();
    @Message
    String lookup_source_hint();
    @Message
    String lookup_source_missing();
    @Message
    String lookup_taken(String why, String name, String when);
    @Message
    String lookup_title();
    @Message
    String lookup_towards();
    @Message
    String lookup_towards_hint();
    @Message
    String lookup_which();
    @Message
    String lookup_why();
    @Message
    String lookup_why_missing();
    @Message
    String lookup_withdraw();
    @Message
    String lookup_withdraw_do();
    @Message
    String lookup_withdraw_means();
    @Message
    String made_by(String name, String when);
    @Message
    String nothing();
    @Message
    String paper();
    @Message
    String paper_add();
    @Message
    String paper_enough(int most);
    @Message
    String paper_hint();
    @Message
    String paper_label();
    @Message
    String paper_of(String when);
    @Message
    String planned_link();
    @Message
    String shade_long(int most);
    @Message
    String strike();
    @Message
    String strike_do();
    @Message
    String strike_means();
    @Message
    String strike_why();
    @Message
    String strike_why_long(int most);
    @Message
    String strike_why_missing();
    @Message
    String struck(String why, String name, String when);
    @Message
    String title(String client);
    @Message
    String word();
    @Message
    String word_about();
    @Message
    String word_about_missing();
    @Message
    String word_against();
    @Message
    String word_against_line(String about);
    @Message
    String word_care();
    @Message
    String word_care_line(String about);
    @Message
    String word_doctor();
    @Message
    String word_how();
    @Message
    String word_needs_doctor();
    @Message
    String word_old(int months);
    @Message
    String word_other_visit();
    @Message
    String word_outcome();
    @Message
    String word_outcome_missing();
    @Message
    String word_owed();
    @Message
    String word_pharmacist();
    @Message
    String word_said();
    @Message
    String word_says();
    @Message
    String word_says_hint();
    @Message
    String word_says_line(String words);
    @Message
    String word_says_missing();
    @Message
    String word_until();
    @Message
    String word_until_hint();
    @Message
    String word_until_line(String day);
    @Message
    String word_until_over();
    @Message
    String word_way();
    @Message
    String word_way_client();
    @Message
    String word_way_client_opens_nothing();
    @Message
    String word_way_letter();
    @Message
    String word_way_missing();
    @Message
    String word_way_phone();
    @Message
    String word_who();
    @Message
    String word_who_missing();
    @Message
    String write();
}
