package foretress.salon;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;

/** The words on the owner's pages of products, services, policy and languages; they stand in messages/settings.properties. */
@MessageBundle("settings")
public interface SettingsWords {
    @Message
    String languages_again();
    @Message
    String languages_changed(int count);
    @Message
    String languages_english();
    @Message
    String languages_is_shown();
    @Message
    String languages_language();
    @Message
    String languages_lead();
    @Message
    String languages_let();
    @Message
    String languages_missing(int count);
    @Message
    String languages_none();
    @Message
    String languages_not_chosen();
    @Message
    String languages_not_shown();
    @Message
    String languages_off();
    @Message
    String languages_read();
    @Message
    String languages_read_by(String reader, String day);
    @Message
    String languages_reader();
    @Message
    String languages_reader_hint();
    @Message
    String languages_reader_missing();
    @Message
    String languages_sheet(String name);
    @Message
    String languages_sheet_lead();
    @Message
    String languages_shown();
    @Message
    String languages_stand();
    @Message
    String languages_stands();
    @Message
    String languages_stands_legend();
    @Message
    String languages_stands_missing();
    @Message
    String languages_title();
    @Message
    String languages_unread();
    @Message
    String owner_links();
    @Message
    String my_language();
    @Message
    String my_language_keep();
    @Message
    String owner_languages();
    @Message
    String owner_policy();
    @Message
    String owner_products();
    @Message
    String owner_salon();
    @Message
    String owner_services();
    @Message
    String owner_staff();
    @Message
    String planned_change();
    @Message
    String planned_clear();
    @Message
    String planned_darkest();
    @Message
    String planned_line();
    @Message
    String planned_line_missing();
    @Message
    String planned_none();
    @Message
    String planned_save();
    @Message
    String planned_shade();
    @Message
    String planned_shade_missing();
    @Message
    String planned_title();
    @Message
    String planned_title_of(String client);
    @Message
    String planned_to_visit();
    @Message
    String kind_health_advice();
    @Message
    String kind_house_rule();
    @Message
    String kind_law();
    @Message
    String kind_maker();
    @Message
    String kind_research();
    @Message
    String kind_teaching();
    @Message
    String kind_trade_rule();
    @Message
    String policy_at_least(int number);
    @Message
    String policy_at_most(int number);
    @Message
    String policy_blank();
    @Message
    String policy_by_months_alone();
    @Message
    String policy_chemotherapy_months();
    @Message
    String policy_chemotherapy_regrown_cm();
    @Message
    String policy_each_application();
    @Message
    String policy_incompatibility_test_hours();
    @Message
    String policy_kept();
    @Message
    String policy_keratin_weeks();
    @Message
    String policy_lash_tint_allowed();
    @Message
    String policy_laxer(String label, String typed, String figure, String source);
    @Message
    String policy_lead();
    @Message
    String policy_letter_counts();
    @Message
    String policy_guardian_below_age();
    @Message
    String policy_minimum_age();
    @Message
    String policy_no();
    @Message
    String policy_not_a_figure(String label, int most);
    @Message
    String policy_perm_allergen_months();
    @Message
    String policy_permed_hair_weeks();
    @Message
    String policy_radiotherapy_weeks();
    @Message
    String policy_relaxer_weeks();
    @Message
    String policy_retinoid_months();
    @Message
    String policy_save();
    @Message
    String policy_skin_test_validity_months();
    @Message
    String policy_skin_test_wait_hours();
    @Message
    String policy_steroid_low_dose_mg();
    @Message
    String policy_sting_is_a_reaction();
    @Message
    String policy_title();
    @Message
    String policy_without(String figure, String source);
    @Message
    String policy_yes();
    @Message
    String products_add();
    @Message
    String products_added();
    @Message
    String products_change();
    @Message
    String products_count();
    @Message
    String products_count_wrong();
    @Message
    String products_date();
    @Message
    String products_date_wrong();
    @Message
    String products_kind();
    @Message
    String products_kind_missing();
    @Message
    String products_lead();
    @Message
    String products_leaflet(String date);
    @Message
    String products_leave_on();
    @Message
    String products_leave_on_hint();
    @Message
    String products_leave_on_wrong(int most);
    @Message
    String products_mixed();
    @Message
    String products_mixing();
    @Message
    String products_mixing_missing();
    @Message
    String products_name();
    @Message
    String products_name_missing();
    @Message
    String products_name_taken(String name);
    @Message
    String products_neat();
    @Message
    String products_none();
    @Message
    String products_other_dyes();
    @Message
    String products_other_dyes_hint();
    @Message
    String products_para();
    @Message
    String products_para_hint();
    @Message
    String products_para_missing();
    @Message
    String products_para_no();
    @Message
    String products_para_unknown();
    @Message
    String products_para_yes();
    @Message
    String products_retire();
    @Message
    String products_retired();
    @Message
    String products_return();
    @Message
    String products_shades();
    @Message
    String products_shades_hint();
    @Message
    String products_site();
    @Message
    String products_site_behind_ear();
    @Message
    String products_site_inner_elbow();
    @Message
    String products_site_missing();
    @Message
    String products_site_other();
    @Message
    String products_text_long();
    @Message
    String products_title();
    @Message
    String products_validity();
    @Message
    String products_validity_days();
    @Message
    String products_validity_each();
    @Message
    String products_validity_missing();
    @Message
    String products_validity_months();
    @Message
    String products_validity_unsaid();
    @Message
    String products_version(int number, String date);
    @Message
    String products_versions();
    @Message
    String products_wait();
    @Message
    String products_wait_hint();
    @Message
    String products_wait_said(int hours);
    @Message
    String products_wait_wrong(int most);
    @Message
    String services_add();
    @Message
    String services_added();
    @Message
    String services_lead();
    @Message
    String services_name(String language);
    @Message
    String services_name_missing();
    @Message
    String services_name_taken(String name);
    @Message
    String services_own();
    @Message
    String services_retire();
    @Message
    String services_retired();
    @Message
    String services_return();
    @Message
    String services_service();
    @Message
    String services_steps();
    @Message
    String services_steps_hint();
    @Message
    String services_steps_missing();
    @Message
    String services_title();
}
