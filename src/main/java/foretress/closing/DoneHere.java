package foretress.closing;

import foretress.questionnaire.SaidDate;
import foretress.questionnaire.Treatment;
import foretress.visit.Booked;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A service done in this salon, as an entry of the hair's history; where its place is not certain, the larger part of the hair. */
public final class DoneHere {
    private static final Map<String, String> KINDS = Map.ofEntries(
        Map.entry("lighten", "bleach"), Map.entry("lighten-regrowth", "bleach"), Map.entry("tone", "toner"),
        Map.entry("colour", "salon-colour"), Map.entry("colour-demi", "salon-colour"), Map.entry("colour-direct", "semi-colour"),
        Map.entry("colour-wash-out", "wash-out-colour"), Map.entry("plant-colour", "henna-pure"), Map.entry("perm-alkaline", "perm"),
        Map.entry("perm-acid", "perm"), Map.entry("relax", "relaxer"), Map.entry("relax-regrowth", "relaxer"),
        Map.entry("straighten-thio", "thio-straightening"), Map.entry("straighten-keratin", "keratin"), Map.entry("remove-colour", "colour-remover"));
    private static final Map<String, String> ZONES = Map.of("colour-roots", "regrowth", "highlights", "strands", "highlights-regrowth", "strands");

    private DoneHere() {}

    /** One entry for each step that leaves something in or on the hair; a cut or a lash tint leaves none. */
    public static List<Treatment> of(Booked done, LocalDate day) {
        return done.stepIds().stream().flatMap(step -> kind(done.serviceId(), step).stream())
            .map(what -> new Treatment(what, new SaidDate.OnDay(day), zone(done, what), "salon", "once")).distinct().toList();
    }

    private static Optional<String> kind(String service, String step) {
        boolean strands = service.startsWith("highlights") && KINDS.getOrDefault(step, "").equals("bleach");
        return strands ? Optional.of("highlights") : Optional.ofNullable(KINDS.get(step));
    }

    private static String zone(Booked done, String what) {
        boolean regrowthOnly = done.stepIds().stream().anyMatch(step -> step.endsWith("-regrowth")) && !done.serviceId().startsWith("highlights");
        return ZONES.getOrDefault(done.serviceId(), regrowthOnly && !what.equals("toner") ? "regrowth" : "whole");
    }
}
