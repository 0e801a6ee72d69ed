package foretress.closing;

import foretress.told.Showed;
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

    public String course(Course course) {
        return switch (course) {
            case AS_PLANNED -> say.course_as_planned();
            case CHANGED -> say.course_changed();
            case STOPPED -> say.course_stopped();
            case NOT_DONE -> say.course_not_done();
        };
    }

    public String strandTest(StrandTrial result) {
        return switch (result) {
            case GOOD -> say.strand_good();
            case POOR -> say.strand_poor();
            case STOPPED -> say.strand_stopped();
            case NOT_DONE -> say.strand_not_done();
        };
    }

    public String zone(AppliedTo zone) {
        return switch (zone) {
            case REGROWTH -> say.zone_regrowth();
            case LENGTHS_ENDS -> say.zone_lengths_ends();
            case ENDS -> say.zone_ends();
            case WHOLE -> say.zone_whole();
            case STRANDS -> say.zone_strands();
            case BROWS_LASHES -> say.zone_brows_lashes();
        };
    }

    public String kind(Mishap kind) {
        return switch (kind) {
            case STING -> say.kind_sting();
            case SORE -> say.kind_sore();
            case ITCH -> say.kind_itch();
            case SWELLING -> say.kind_swelling();
            case BLISTERS -> say.kind_blisters();
            case HIVES -> say.kind_hives();
            case BREATHING -> say.kind_breathing();
            case UNWELL -> say.kind_unwell();
            case SKIN -> say.kind_skin();
            case BREAKAGE -> say.kind_breakage();
            case HEAT -> say.kind_heat();
            case COLOUR -> say.kind_colour();
            case OTHER -> say.kind_other();
        };
    }

    public String when(Showed when) {
        return switch (when) {
            case WHILE_ON -> say.when_while_on();
            case TWO_HOURS -> say.when_two_hours();
            case TWO_DAYS -> say.when_two_days();
            case LATER -> say.when_later();
        };
    }

    public String moment(HairPhoto.Moment moment) {
        return moment == HairPhoto.Moment.BEFORE ? say.photo_before() : say.photo_after();
    }
}
