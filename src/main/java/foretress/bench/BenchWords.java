package foretress.bench;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words on the test bench; they stand in messages/bench.properties under the same keys. */
@MessageBundle("bench")
public interface BenchWords {
    @Message
    String alarm(String tufts);
    @Message
    String all();
    @Message
    String back();
    @Message
    String back_test();
    @Message
    String bath_ammonia(String ml);
    @Message
    String bath_drops(int drops, String ml);
    @Message
    String bath_straight(String ml, String strength);
    @Message
    String bath_strength(String percent, String volumes);
    @Message
    String bath_thinned(String ml, String strength, String water);
    @Message
    String bath_unstated();
    @Message
    String begin();
    @Message
    String bounce_not_pulled();
    @Message
    String cannot_tell();
    @Message
    String changes();
    @Message
    String changes_before();
    @Message
    String changes_booked();
    @Message
    String changes_now();
    @Message
    String colour_as_planned();
    @Message
    String colour_otherwise();
    @Message
    String condition_as_before();
    @Message
    String condition_gummy();
    @Message
    String condition_rougher();
    @Message
    String cut_control_hint();
    @Message
    String cut_control_short();
    @Message
    String cut_done();
    @Message
    String cut_from();
    @Message
    String cut_heading();
    @Message
    String cut_how();
    @Message
    String cut_measure();
    @Message
    String cut_none();
    @Message
    String cut_pale();
    @Message
    String cut_tick();
    @Message
    String cut_to();
    @Message
    String cut_where(String tuft);
    @Message
    String cut_why();
    @Message
    String cutting();
    @Message
    String cutting_what();
    @Message
    String due(String test, String client);
    @Message
    String elasticity();
    @Message
    String elasticity_title(String client);
    @Message
    String elasticity_what();
    @Message
    String end();
    @Message
    String end_early();
    @Message
    String end_early_means();
    @Message
    String ended_at(String when, String minutes);
    @Message
    String ending_back();
    @Message
    String ending_broke();
    @Message
    String ending_long();
    @Message
    String feels_average();
    @Message
    String feels_over_porous();
    @Message
    String feels_porous();
    @Message
    String feels_resistant();
    @Message
    String gap_control_cannot();
    @Message
    String gap_control_did_not();
    @Message
    String gap_no_control();
    @Message
    String gap_not_read();
    @Message
    String gap_stretch();
    @Message
    String gap_tuft_cannot();
    @Message
    String hair_add();
    @Message
    String hair_beyond(int mark);
    @Message
    String hair_dry();
    @Message
    String hair_ending();
    @Message
    String hair_ending_missing();
    @Message
    String hair_enough(int most);
    @Message
    String hair_line(String how, String rest, String stretched, String ending);
    @Message
    String hair_mark(String rest, int dry, int wet);
    @Message
    String hair_meanwhile();
    @Message
    String hair_missing(String parts);
    @Message
    String hair_none();
    @Message
    String hair_part();
    @Message
    String hair_part_missing();
    @Message
    String hair_percent(String percent);
    @Message
    String hair_rest();
    @Message
    String hair_rest_missing(String typed);
    @Message
    String hair_so_far();
    @Message
    String hair_source();
    @Message
    String hair_stretched();
    @Message
    String hair_stretched_missing(String typed);
    @Message
    String hair_wet();
    @Message
    String hair_wet_or_dry();
    @Message
    String hair_why();
    @Message
    String hairs();
    @Message
    String heading();
    @Message
    String keep();
    @Message
    String length();
    @Message
    String length_cm(int cm);
    @Message
    String length_cm_label();
    @Message
    String length_how();
    @Message
    String length_keep();
    @Message
    String length_measured(int cm, String when);
    @Message
    String length_what();
    @Message
    String length_wrong(String typed, int least, int most);
    @Message
    String look_apart();
    @Message
    String look_intact();
    @Message
    String made_by(String name, String when);
    @Message
    String means_average();
    @Message
    String means_over_porous();
    @Message
    String means_porous();
    @Message
    String means_resistant();
    @Message
    String metal();
    @Message
    String metal_title(String client);
    @Message
    String metal_what();
    @Message
    String mix_again();
    @Message
    String mix_caution();
    @Message
    String mix_heading();
    @Message
    String mix_ml();
    @Message
    String mix_ml_missing(String typed);
    @Message
    String mix_no_ammonia();
    @Message
    String mix_recipe();
    @Message
    String mix_recipe_hint();
    @Message
    String mix_recipe_missing();
    @Message
    String mix_strength();
    @Message
    String mix_unit();
    @Message
    String mix_volumes();
    @Message
    String mix_volumes_summary();
    @Message
    String mix_work();
    @Message
    String next_day();
    @Message
    String next_day_apart(String tufts);
    @Message
    String next_day_early(int gone, int hours);
    @Message
    String next_day_from(String when);
    @Message
    String next_day_how();
    @Message
    String next_day_intact();
    @Message
    String next_day_keep();
    @Message
    String next_day_missing(String tuft);
    @Message
    String next_day_now();
    @Message
    String no_parts(String value, String least, String most);
    @Message
    String no_range(String from, String to);
    @Message
    String no_rest(String value, String least, String most);
    @Message
    String no_shorter(String stretched, String rest);
    @Message
    String no_strength(String value, String least, String most);
    @Message
    String no_stretch(String stretched, String rest);
    @Message
    String no_stronger(String wanted, String stock);
    @Message
    String no_time(String value, String least, String most);
    @Message
    String no_too_far(String stretched, String rest);
    @Message
    String no_volume(String value, String least, String most);
    @Message
    String outcome_average();
    @Message
    String outcome_caution();
    @Message
    String outcome_fail();
    @Message
    String outcome_good();
    @Message
    String outcome_not_whole();
    @Message
    String outcome_nothing();
    @Message
    String outcome_nothing_means();
    @Message
    String outcome_over_porous();
    @Message
    String outcome_pass();
    @Message
    String outcome_poor();
    @Message
    String outcome_porous();
    @Message
    String outcome_reaction();
    @Message
    String outcome_reaction_means();
    @Message
    String outcome_resistant();
    @Message
    String outcome_slight();
    @Message
    String outcome_slight_means();
    @Message
    String outcome_then(String standing);
    @Message
    String owed();
    @Message
    String owed_at_least();
    @Message
    String owed_not_known();
    @Message
    String part_ends();
    @Message
    String part_lengths();
    @Message
    String part_roots();
    @Message
    String past();
    @Message
    String photo();
    @Message
    String photo_add();
    @Message
    String photo_enough(int most);
    @Message
    String photo_hint();
    @Message
    String photo_label();
    @Message
    String photo_of(String when);
    @Message
    String porosity();
    @Message
    String porosity_how();
    @Message
    String porosity_missing(String part);
    @Message
    String porosity_title(String client);
    @Message
    String porosity_what();
    @Message
    String porosity_why();
    @Message
    String porosity_would_mean();
    @Message
    String recipe_drops();
    @Message
    String recipe_drops_hint();
    @Message
    String recipe_none();
    @Message
    String recipe_twenty();
    @Message
    String recipe_twenty_hint();
    @Message
    String refresh();
    @Message
    String result();
    @Message
    String running();
    @Message
    String seen_at(String minutes);
    @Message
    String seen_not_kept(String seen);
    @Message
    String seen_refused();
    @Message
    String seen_waiting();
    @Message
    String sight(String tuft, String sign, String minutes, String name);
    @Message
    String sight_error();
    @Message
    String sight_struck(String why);
    @Message
    String sights();
    @Message
    String sign_apart();
    @Message
    String sign_at_once();
    @Message
    String sign_bubbles();
    @Message
    String sign_colour();
    @Message
    String sign_heat();
    @Message
    String sign_nothing();
    @Message
    String sign_nothing_yet();
    @Message
    String sign_patches();
    @Message
    String sign_slightly();
    @Message
    String sign_smell();
    @Message
    String sign_softens();
    @Message
    String sound();
    @Message
    String sound_on();
    @Message
    String start();
    @Message
    String started_at(String time);
    @Message
    String state_prepared();
    @Message
    String state_running();
    @Message
    String state_says_nothing();
    @Message
    String step_again();
    @Message
    String step_cut();
    @Message
    String step_mix();
    @Message
    String step_watch();
    @Message
    String stopped_early();
    @Message
    String strand();
    @Message
    String strand_what();
    @Message
    String strength_missing(String typed);
    @Message
    String strike();
    @Message
    String strike_do();
    @Message
    String strike_means();
    @Message
    String strike_owner();
    @Message
    String strike_owner_proves();
    @Message
    String strike_password();
    @Message
    String strike_password_wait(long seconds);
    @Message
    String strike_password_wrong();
    @Message
    String strike_why();
    @Message
    String strike_why_long(int most);
    @Message
    String strike_why_missing();
    @Message
    String struck(String why, String name, String when);
    @Message
    String struck_short();
    @Message
    String title(String client);
    @Message
    String to_read(String tufts);
    @Message
    String trial_bounce();
    @Message
    String trial_bounce_hint();
    @Message
    String trial_bounce_missing();
    @Message
    String trial_colour();
    @Message
    String trial_colour_missing();
    @Message
    String trial_condition();
    @Message
    String trial_condition_missing();
    @Message
    String trial_judge();
    @Message
    String trial_judge_how();
    @Message
    String trial_lasted(int minutes);
    @Message
    String trial_minutes();
    @Message
    String trial_mixed(String product, String percent, String volumes, int minutes);
    @Message
    String trial_mixed_none(String product, int minutes);
    @Message
    String trial_product();
    @Message
    String trial_product_missing(int most);
    @Message
    String trial_start();
    @Message
    String trial_step_cut();
    @Message
    String trial_strength();
    @Message
    String trial_title(String test, String client);
    @Message
    String trial_watch_cutting();
    @Message
    String trial_watch_head();
    @Message
    String trial_why();
    @Message
    String tuft_cannot();
    @Message
    String tuft_control();
    @Message
    String tuft_ends();
    @Message
    String tuft_pale();
    @Message
    String tuft_place(String from, String to);
    @Message
    String tuft_suspect();
    @Message
    String unit_none();
    @Message
    String unit_percent();
    @Message
    String unit_volumes();
    @Message
    String unwatched(String from, String to);
    @Message
    String unwatched_asleep(String from, String to);
    @Message
    String unwatched_asleep_head(String from, String to);
    @Message
    String unwatched_head(String from, String to);
    @Message
    String warmth();
    @Message
    String warmth_add();
    @Message
    String warmth_line(String celsius, String minutes);
    @Message
    String warmth_wrong(String typed);
    @Message
    String watch_heading();
    @Message
    String watch_how();
    @Message
    String why_summary();
}
