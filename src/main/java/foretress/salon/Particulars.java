package foretress.salon;

import foretress.plan.ClosedDays;
import foretress.plan.Week;
import foretress.web.Form;
import foretress.web.Mistakes;
import foretress.web.NameCharacters;
import foretress.web.Offered;
import foretress.web.StaffLanguage;
import foretress.web.StaffWords;
import foretress.web.Supported;
import foretress.web.Zones;
import jakarta.inject.Singleton;
import jakarta.ws.rs.core.MultivaluedHashMap;
import java.time.DayOfWeek;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** The salon's particulars, read from the form on which the owner gives them. */
@Singleton
class Particulars {
    /** The policies there are; each names its law in src/main/knowledge/policy. */
    static final List<String> JURISDICTIONS = List.of("eu", "uk", "us");
    private static final Pattern EMAIL = Pattern.compile("[^@\\s]+@[^@\\s]+\\.[^@\\s.]+");
    private static final Pattern PHONE = Pattern.compile("\\+?[0-9 ()./-]{5,30}");
    private static final Pattern URGENT = Pattern.compile("[0-9]{2,5}");
    private static final int LONGEST = 200;

    private final StaffWords words;
    private final StaffLanguage staff;

    Particulars(StaffWords words, StaffLanguage staff) {
        this.staff = staff;
        this.words = words;
    }

    void check(Form form, Mistakes mistakes) {
        needed(form, "name", words.set_up_name_missing(), mistakes);
        needed(form, "address", words.set_up_address_missing(), mistakes);
        needed(form, "town", words.set_up_town_missing(), mistakes);
        mistakes.expect(PHONE.matcher(form.one("phone")).matches(), "phone", words.set_up_phone_wrong());
        mistakes.expect(EMAIL.matcher(form.one("email")).matches(), "email", words.set_up_email_wrong());
        mistakes.expect(URGENT.matcher(form.one("urgent-number")).matches(), "urgent-number",
            words.set_up_urgent_wrong());
        mistakes.expect(Zones.ids().contains(form.one("zone")), "zone", words.set_up_zone_wrong());
        mistakes.expect(JURISDICTIONS.contains(form.one("jurisdiction")), "jurisdiction",
            words.set_up_jurisdiction_missing());
        mistakes.expect(List.of("A4", "LETTER").contains(form.one("paper-size")), "paper-size",
            words.set_up_paper_missing());
        mistakes.expect(!languages(form).isEmpty(), "languages", words.set_up_languages_missing());
        for (DayOfWeek day : DayOfWeek.values()) {
            checkHours(form, day, mistakes);
        }
        checkClosed(form, mistakes);
    }

    private void checkClosed(Form form, Mistakes mistakes) {
        try {
            ClosedDays.parse(form.one("closed-days"));
        } catch (IllegalArgumentException wrong) {
            mistakes.add("closed-days", words.set_up_closed_days_wrong(wrong.getMessage()));
        }
    }

    private static void needed(Form form, String field, String text, Mistakes mistakes) {
        String value = form.one(field);
        mistakes.expect(!value.isEmpty() && value.length() <= LONGEST && NameCharacters.plain(value), field, text);
    }

    private void checkHours(Form form, DayOfWeek day, Mistakes mistakes) {
        try {
            new Week(new EnumMap<>(Map.of(day, Week.spans(form.one(DayField.field(day))))));
        } catch (IllegalArgumentException e) {
            mistakes.add(DayField.field(day),
                words.set_up_hours_wrong(DayField.name(day, staff.locale()), form.one(DayField.field(day))));
        }
    }

    private static List<String> languages(Form form) {
        return Supported.TAGS.stream().filter(form.all("languages")::contains).toList();
    }

    /** To be called on a form that was checked. */
    Salon.Contact contact(Form form) {
        return new Salon.Contact(form.one("name"), form.one("address"), form.one("town"), form.one("phone"),
            form.one("email"), form.one("urgent-number"));
    }

    /** To be called on a form that was checked. */
    Salon.Custom custom(Form form) {
        return new Salon.Custom(ZoneId.of(form.one("zone")), form.one("jurisdiction"),
            Salon.PaperSize.valueOf(form.one("paper-size")), languages(form),
            hours(form), ClosedDays.parse(form.one("closed-days")));
    }

    List<DayField> days(Form form) {
        return DayField.all(form, staff.locale());
    }

    /** A field's value as the form's own words say it. */
    String said(String field, String value) {
        return switch (field) {
            case "jurisdiction" -> law(value);
            case "paper-size" -> value.equals("A4") ? words.set_up_paper_a4() : words.set_up_paper_letter();
            case "languages" ->
                Offered.all(value).stream().filter(Offered::current).map(Offered::name).findFirst().orElse(value);
            default -> value;
        };
    }

    private String law(String jurisdiction) {
        return switch (jurisdiction) {
            case "eu" -> words.set_up_jurisdiction_eu();
            case "uk" -> words.set_up_jurisdiction_uk();
            default -> words.set_up_jurisdiction_us();
        };
    }

    private static Week hours(Form form) {
        var days = new EnumMap<DayOfWeek, List<Week.Span>>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            days.put(day, Week.spans(form.one(DayField.field(day))));
        }
        return new Week(days);
    }

    /** The form as it would be filled in to give these particulars again. */
    static Form written(Salon salon) {
        var fields = new MultivaluedHashMap<String, String>();
        Map.of("name", salon.name, "address", salon.address, "town", salon.town, "phone", salon.phone, "email",
            salon.email,
            "urgent-number", salon.urgentNumber, "zone", salon.zone, "jurisdiction", salon.jurisdiction, "paper-size",
            salon.paperSize.name(),
            "version", Integer.toString(salon.version)).forEach(fields::putSingle);
        fields.put("languages", salon.languageTags());
        fields.putSingle("closed-days", salon.closedDays);
        for (DayOfWeek day : DayOfWeek.values()) {
            fields.putSingle(DayField.field(day), salon.week().said(day).orElse(""));
        }
        return new Form(fields);
    }

    static List<String> zones() {
        return Zones.ids().stream()
            .filter(
                id -> id.equals("Etc/UTC") || id.contains("/") && !id.startsWith("Etc/") && !id.startsWith("SystemV/"))
            .sorted().toList();
    }
}
