package foretress.closing;

import jakarta.enterprise.context.RequestScoped;

/** The codes of a closing in words, the same on the form, on the card and on paper. */
@RequestScoped
public class ClosingSaid {
    private final ClosingWords say;

    ClosingSaid(ClosingWords say) {
        this.say = say;
    }

    /** It is not what was planned: only where the plan said something. */
    public static boolean differs(String used, String planned) {
        return !planned.isEmpty() && !planned.equals(used);
    }

    public String course(String code) {
        return switch (code) {
            case "as-planned" -> say.course_as_planned();
            case "changed" -> say.course_changed();
            case "stopped" -> say.course_stopped();
            default -> say.course_not_done();
        };
    }

    public String strandTest(String code) {
        return switch (code) {
            case "good" -> say.strand_good();
            case "poor" -> say.strand_poor();
            case "stopped" -> say.strand_stopped();
            default -> say.strand_not_done();
        };
    }

    public String zone(String code) {
        return switch (code) {
            case "regrowth" -> say.zone_regrowth();
            case "lengths-ends" -> say.zone_lengths_ends();
            case "ends" -> say.zone_ends();
            case "whole" -> say.zone_whole();
            case "strands" -> say.zone_strands();
            case "brows-lashes" -> say.zone_brows_lashes();
            default -> "";
        };
    }

    public String kind(String code) {
        return switch (code) {
            case "sting" -> say.kind_sting();
            case "sore" -> say.kind_sore();
            case "itch" -> say.kind_itch();
            case "swelling" -> say.kind_swelling();
            case "blisters" -> say.kind_blisters();
            case "hives" -> say.kind_hives();
            case "breathing" -> say.kind_breathing();
            case "unwell" -> say.kind_unwell();
            case "skin" -> say.kind_skin();
            case "breakage" -> say.kind_breakage();
            case "heat" -> say.kind_heat();
            case "colour" -> say.kind_colour();
            default -> say.kind_other();
        };
    }

    public String when(String code) {
        return switch (code) {
            case "while-on" -> say.when_while_on();
            case "two-hours" -> say.when_two_hours();
            case "two-days" -> say.when_two_days();
            default -> say.when_later();
        };
    }

    public String moment(HairPhoto.Moment moment) {
        return moment == HairPhoto.Moment.BEFORE ? say.photo_before() : say.photo_after();
    }
}
