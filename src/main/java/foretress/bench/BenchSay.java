package foretress.bench;

import foretress.assessment.Weight;
import jakarta.enterprise.context.RequestScoped;
import java.util.List;

/** The bench's own terms in words. */
@RequestScoped
class BenchSay {
    private final BenchWords say;

    BenchSay(BenchWords say) {
        this.say = say;
    }

    String kind(BenchKind kind) {
        return switch (kind) {
            case METAL -> say.metal();
            case ELASTICITY -> say.elasticity();
            case POROSITY -> say.porosity();
            case CUTTING -> say.cutting();
            case STRAND -> say.strand();
            case LENGTH -> say.length();
        };
    }

    String what(BenchKind kind) {
        return switch (kind) {
            case METAL -> say.metal_what();
            case ELASTICITY -> say.elasticity_what();
            case POROSITY -> say.porosity_what();
            case CUTTING -> say.cutting_what();
            case STRAND -> say.strand_what();
            case LENGTH -> say.length_what();
        };
    }

    /** An outcome as {@link foretress.assessment.TestFact} codes it. */
    String outcome(String code) {
        return switch (code) {
            case "slight-lightening" -> say.outcome_slight();
            case "not-whole" -> say.outcome_not_whole();
            case "nothing-happened" -> say.outcome_nothing();
            case "positive" -> say.outcome_reaction();
            case "pass" -> say.outcome_pass();
            case "caution" -> say.outcome_caution();
            case "fail" -> say.outcome_fail();
            case "average" -> say.outcome_average();
            case "resistant" -> say.outcome_resistant();
            case "over-porous" -> say.outcome_over_porous();
            case "porous" -> say.outcome_porous();
            case "good" -> say.outcome_good();
            case "poor" -> say.outcome_poor();
            default -> throw new IllegalArgumentException("no such outcome: " + code);
        };
    }

    static Weight weight(String code) {
        return switch (code) {
            case "nothing-happened", "positive", "fail", "poor", "over-porous" -> Weight.PREVENTS;
            case "slight-lightening", "not-whole" -> Weight.TEST_FIRST;
            case "caution", "porous" -> Weight.RESTRICTS;
            case "resistant" -> Weight.NOTE;
            default -> Weight.NOTHING_FOUND;
        };
    }

    String sign(TuftSign sign) {
        return switch (sign) {
            case BUBBLES -> say.sign_bubbles();
            case HEAT -> say.sign_heat();
            case SMELL -> say.sign_smell();
            case LIGHTER_AT_ONCE -> say.sign_at_once();
            case LIGHTER_IN_PATCHES -> say.sign_patches();
            case COLOUR_TURNS -> say.sign_colour();
            case SOFTENS -> say.sign_softens();
            case COMES_APART -> say.sign_apart();
            case SLIGHTLY_LIGHTER -> say.sign_slightly();
            case NOTHING -> say.sign_nothing();
        };
    }

    String tuft(Tuft.Kind kind, String stretch) {
        return switch (kind) {
            case SUSPECT -> stretch.isEmpty() ? say.tuft_suspect() : stretch;
            case OLDEST_ENDS -> say.tuft_ends();
            case CONTROL -> say.tuft_control();
        };
    }

    String tuftResult(MetalCheck.TuftResult result) {
        return switch (result) {
            case UNREAD -> "";
            case SLIGHT_LIGHTENING -> say.outcome_slight();
            case CANNOT_BE_READ -> say.tuft_cannot();
            case NOTHING_HAPPENED -> say.outcome_nothing();
            case REACTION -> say.outcome_reaction();
        };
    }

    String gap(MetalCheck.Gap gap) {
        return switch (gap) {
            case NO_CONTROL -> say.gap_no_control();
            case CONTROL_CANNOT_LIGHTEN -> say.gap_control_cannot();
            case CONTROL_DID_NOT_LIGHTEN -> say.gap_control_did_not();
            case TUFT_NOT_READ -> say.gap_not_read();
            case TUFT_CANNOT_LIGHTEN -> say.gap_tuft_cannot();
            case STRETCH_WITHOUT_TUFT -> say.gap_stretch();
        };
    }

    String part(Part part) {
        return switch (part) {
            case ROOTS -> say.part_roots();
            case MID_LENGTHS -> say.part_lengths();
            case ENDS -> say.part_ends();
        };
    }

    String ending(Pull.Ending ending) {
        return switch (ending) {
            case SPRANG_BACK -> say.ending_back();
            case STAYED_LONG -> say.ending_long();
            case BROKE -> say.ending_broke();
        };
    }

    String strength(Strength strength) {
        return switch (strength) {
            case PASS -> say.outcome_pass();
            case CAUTION -> say.outcome_caution();
            case FAIL -> say.outcome_fail();
        };
    }

    static Weight weight(Strength strength) {
        return switch (strength) {
            case PASS -> Weight.NOTHING_FOUND;
            case CAUTION -> Weight.RESTRICTS;
            case FAIL -> Weight.PREVENTS;
        };
    }

    /** What cannot be, with its values and the way out. */
    String impossible(Impossible refused) {
        List<String> v = refused.values();
        return switch (refused.reason()) {
            case STRENGTH_OUT_OF_RANGE -> say.no_strength(v.get(0), v.get(1), v.get(2));
            case VOLUME_OUT_OF_RANGE -> say.no_volume(v.get(0), v.get(1), v.get(2));
            case PARTS_OUT_OF_RANGE -> say.no_parts(v.get(0), v.get(1), v.get(2));
            case STRONGER_THAN_STOCK -> say.no_stronger(v.get(0), v.get(1));
            case REST_OUT_OF_RANGE -> say.no_rest(v.get(0), v.get(1), v.get(2));
            case SHORTER_THAN_REST -> say.no_shorter(v.get(0), v.get(1));
            case NOT_STRETCHED -> say.no_stretch(v.get(0), v.get(1));
            case STRETCHED_TOO_FAR -> say.no_too_far(v.get(0), v.get(1));
            case NOT_A_STRETCH -> say.no_range(v.get(0), v.get(1));
            case TIME_OUT_OF_RANGE -> say.no_time(v.get(0), v.get(1), v.get(2));
        };
    }
}
