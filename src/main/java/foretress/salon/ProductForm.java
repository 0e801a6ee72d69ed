package foretress.salon;

import foretress.knowledge.Knowledge;
import foretress.web.Form;
import foretress.web.Mistakes;
import foretress.web.StaffLanguage;
import jakarta.inject.Singleton;
import jakarta.ws.rs.core.MultivaluedHashMap;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A product line as the owner puts it in, read off the maker's leaflet. */
@Singleton
class ProductForm {
    private static final int LONGEST_NAME = 100;
    private static final int LONGEST_TEXT = 2000;
    private static final int MOST_HOURS = 336;
    private static final int MOST_MINUTES = 4320;
    private static final int MOST_COUNT = 366;

    private final SettingsWords words;
    private final Knowledge knowledge;
    private final StaffLanguage staff;

    ProductForm(SettingsWords words, Knowledge knowledge, StaffLanguage staff) {
        this.staff = staff;
        this.words = words;
        this.knowledge = knowledge;
    }

    /** Chemistries a line can be for. */
    List<String> kinds() {
        return knowledge.chemistries().ofProductLines();
    }

    void check(Form form, Mistakes mistakes) {
        String name = form.one("line-name");
        mistakes.expect(!name.isEmpty() && name.length() <= LONGEST_NAME, "line-name", words.products_name_missing());
        mistakes.expect(kinds().contains(form.one("kind")), "kind", words.products_kind_missing());
        mistakes.expect(number(form, "wait-hours", MOST_HOURS).isPresent(), "wait-hours",
            words.products_wait_wrong(MOST_HOURS));
        checkValidity(form, mistakes);
        mistakes.expect(one(form, "mixing", ProductLine.Mixing.values()), "mixing", words.products_mixing_missing());
        mistakes.expect(one(form, "site", ProductLine.Site.values()), "site", words.products_site_missing());
        mistakes.expect(number(form, "leave-on", MOST_MINUTES).isPresent(), "leave-on",
            words.products_leave_on_wrong(MOST_MINUTES));
        mistakes.expect(form.one("leaflet-date").isEmpty() || date(form).isPresent(), "leaflet-date",
            words.products_date_wrong());
        mistakes.expect(one(form, "para-group", ProductLine.ParaGroup.values()), "para-group",
            words.products_para_missing());
        mistakes.expect(form.one("other-dyes").length() <= LONGEST_TEXT, "other-dyes", words.products_text_long());
        mistakes.expect(form.one("shades").length() <= LONGEST_TEXT, "shades", words.products_text_long());
    }

    private void checkValidity(Form form, Mistakes mistakes) {
        boolean known = one(form, "validity", ProductLine.Stands.values());
        mistakes.expect(known, "validity", words.products_validity_missing());
        if (known && counts(form)) {
            mistakes.expect(number(form, "validity-count", MOST_COUNT).filter(count -> count > 0).isPresent(),
                "validity-count",
                words.products_count_wrong());
        }
    }

    private static boolean counts(Form form) {
        return form.is("validity", "DAYS") || form.is("validity", "MONTHS");
    }

    /** Blank counts as none, which is written as 0. */
    private static Optional<Integer> number(Form form, String field, int most) {
        try {
            String typed = form.one(field);
            return Optional.of(typed.isEmpty() ? 0 : Integer.parseInt(typed))
                .filter(value -> value >= 0 && value <= most);
        } catch (NumberFormatException notANumber) {
            return Optional.empty();
        }
    }

    private static Optional<LocalDate> date(Form form) {
        try {
            return Optional.of(LocalDate.parse(form.one("leaflet-date")));
        } catch (DateTimeParseException notADay) {
            return Optional.empty();
        }
    }

    private static boolean one(Form form, String field, Enum<?>[] known) {
        return Arrays.stream(known).map(Enum::name).anyMatch(form.one(field)::equals);
    }

    /** To be called on a form that was checked. */
    ProductLine.Described described(Form form) {
        return new ProductLine.Described(form.one("line-name"), form.one("kind"),
            number(form, "wait-hours", MOST_HOURS).orElseThrow(),
            ProductLine.Stands.valueOf(form.one("validity")),
            counts(form) ? number(form, "validity-count", MOST_COUNT).orElseThrow() : 0,
            ProductLine.Mixing.valueOf(form.one("mixing")), ProductLine.Site.valueOf(form.one("site")),
            number(form, "leave-on", MOST_MINUTES).orElseThrow(), date(form),
            ProductLine.ParaGroup.valueOf(form.one("para-group")),
            form.one("other-dyes"), form.one("shades"));
    }

    /** The form as it would be filled in to give this version again. */
    static Form written(ProductLine line) {
        var fields = new MultivaluedHashMap<String, String>();
        fields.putSingle("version", Integer.toString(line.versionNo));
        fields.putSingle("line-name", line.name);
        fields.putSingle("kind", line.kind);
        fields.putSingle("wait-hours", Integer.toString(line.waitHours));
        fields.putSingle("validity", line.validity.name());
        fields.putSingle("validity-count", line.validityCount == 0 ? "" : Integer.toString(line.validityCount));
        fields.putSingle("mixing", line.mixing.name());
        fields.putSingle("site", line.site.name());
        fields.putSingle("leave-on", Integer.toString(line.leaveOnMinutes));
        fields.putSingle("leaflet-date", line.leafletDate().map(LocalDate::toString).orElse(""));
        fields.putSingle("para-group", line.paraGroup.name());
        fields.putSingle("other-dyes", line.otherDyes);
        fields.putSingle("shades", line.shades);
        return new Form(fields);
    }

    /** A field's value as the form's own words say it. */
    String said(String field, String value) {
        return switch (field) {
            case "kind" -> knowledge.words(staff.tag()).text("services.chemistries." + value);
            case "mixing" -> ProductLine.Mixing.valueOf(value) == ProductLine.Mixing.MIXED ? words.products_mixed()
                : words.products_neat();
            case "site" -> site(ProductLine.Site.valueOf(value));
            case "validity" -> stands(ProductLine.Stands.valueOf(value));
            case "para-group" -> paraGroup(ProductLine.ParaGroup.valueOf(value));
            default -> value;
        };
    }

    private String site(ProductLine.Site site) {
        return switch (site) {
            case BEHIND_EAR -> words.products_site_behind_ear();
            case INNER_ELBOW -> words.products_site_inner_elbow();
            case OTHER -> words.products_site_other();
        };
    }

    private String stands(ProductLine.Stands stands) {
        return switch (stands) {
            case UNSAID -> words.products_validity_unsaid();
            case EACH_APPLICATION -> words.products_validity_each();
            case DAYS -> words.products_validity_days();
            case MONTHS -> words.products_validity_months();
        };
    }

    private String paraGroup(ProductLine.ParaGroup group) {
        return switch (group) {
            case YES -> words.products_para_yes();
            case NO -> words.products_para_no();
            case UNKNOWN -> words.products_para_unknown();
        };
    }

    /** A fresh form: what a leaflet usually says is for the leaflet to say, so nothing is chosen beforehand. */
    static Form blank() {
        var fields = new MultivaluedHashMap<String, String>();
        fields.putSingle("version", "0");
        return new Form(fields);
    }
}
