package foretress.closing;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words of closing, of putting it right, and of photos of the hair; they stand in messages/closing.properties under the same keys. */
@MessageBundle("closing")
public interface ClosingWords {
    @Message
    String batch();
    @Message
    String condition();
    @Message
    String condition_aside();
    @Message
    String condition_missing();
    @Message
    String correct();
    @Message
    String correct_title();
    @Message
    String correct_title_of(String client);
    @Message
    String corrected(String why);
    @Message
    String course();
    @Message
    String course_as_planned();
    @Message
    String course_changed();
    @Message
    String course_missing();
    @Message
    String course_none();
    @Message
    String course_none_missing();
    @Message
    String course_not_done();
    @Message
    String course_stopped();
    @Message
    String earlier();
    @Message
    String grams();
    @Message
    String grams_wrong(String typed);
    @Message
    String into();
    @Message
    String into_correction();
    @Message
    String kind_blisters();
    @Message
    String kind_breakage();
    @Message
    String kind_breathing();
    @Message
    String kind_colour();
    @Message
    String kind_heat();
    @Message
    String kind_hives();
    @Message
    String kind_itch();
    @Message
    String kind_other();
    @Message
    String kind_skin();
    @Message
    String kind_sore();
    @Message
    String kind_sting();
    @Message
    String kind_swelling();
    @Message
    String kind_unwell();
    @Message
    String minutes();
    @Message
    String minutes_wrong(String typed);
    @Message
    String more();
    @Message
    String not_decided();
    @Message
    String notes();
    @Message
    String notes_aside();
    @Message
    String overtaken(String name);
    @Message
    String photo_add();
    @Message
    String photo_after();
    @Message
    String photo_alt(String moment, String when);
    @Message
    String photo_before();
    @Message
    String photo_choose();
    @Message
    String photo_enough(int most);
    @Message
    String photo_leave();
    @Message
    String photo_leave_missing();
    @Message
    String photo_lead();
    @Message
    String photo_moment();
    @Message
    String photo_moment_missing();
    @Message
    String photo_none();
    @Message
    String photo_over();
    @Message
    String photo_remove();
    @Message
    String photo_remove_of(String moment, String when);
    @Message
    String photo_title();
    @Message
    String photo_title_of(String client);
    @Message
    String photos();
    @Message
    String photos_add();
    @Message
    String photos_aside();
    @Message
    String planned(String value);
    @Message
    String product();
    @Message
    String product_missing();
    @Message
    String products();
    @Message
    String products_aside();
    @Message
    String products_missing();
    @Message
    String ratio();
    @Message
    String shade();
    @Message
    String strand();
    @Message
    String strand_aside();
    @Message
    String strand_good();
    @Message
    String strand_missing();
    @Message
    String strand_not_done();
    @Message
    String strand_poor();
    @Message
    String strand_stopped();
    @Message
    String strength();
    @Message
    String submit();
    @Message
    String submit_correction();
    @Message
    String title();
    @Message
    String title_of(String client);
    @Message
    String too_long(int longest);
    @Message
    String visit_over();
    @Message
    String when_later();
    @Message
    String when_two_days();
    @Message
    String when_two_hours();
    @Message
    String when_while_on();
    @Message
    String why();
    @Message
    String why_missing();
    @Message
    String wrong();
    @Message
    String wrong_aside();
    @Message
    String wrong_helped();
    @Message
    String wrong_helped_missing();
    @Message
    String wrong_kind();
    @Message
    String wrong_kind_missing();
    @Message
    String wrong_missing();
    @Message
    String wrong_no();
    @Message
    String wrong_text(String kinds);
    @Message
    String wrong_nothing();
    @Message
    String wrong_when();
    @Message
    String wrong_when_missing();
    @Message
    String wrong_words();
    @Message
    String wrong_yes();
    @Message
    String zone();
    @Message
    String zone_brows_lashes();
    @Message
    String zone_choose();
    @Message
    String zone_ends();
    @Message
    String zone_lengths_ends();
    @Message
    String zone_missing();
    @Message
    String zone_regrowth();
    @Message
    String zone_strands();
    @Message
    String zone_whole();
}
