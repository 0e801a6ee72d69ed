package foretress.lexicon;

import java.util.Set;
import java.util.regex.Pattern;

/** Words beside a medicine's name: dose, form, how often, salts, and the small words of a sentence; in five languages. */
final class MedicineWords {
    private static final Pattern DOSE = Pattern.compile(
        "[0-9]+([.,][0-9]+)?(x|mg|mcg|ug|µg|g|ml|l|iu|ie|ui|units?|tabs?|h|hrs?|hours?|days?|weeks?|months?|years?|d|st|nd|rd|th|am|pm)?");

    private static final Set<String> BESIDE = words("""
        mg mcg ug g ml iu ie ui unit units microgram micrograms milligram milligrams gram grams percent
        tab tabs tablet tablets tablette tablettes tabletten tabletki tabletka comprimido comprimidos comprime comprimes pill pills pille pillen pastilla pastillas
        capsule capsules caps capsula capsulas kapsel kapseln kapsulki gelule gelules drop drops gotas gouttes tropfen krople
        cream creams creme crema pommade pomada ointment ointments salbe masc krem gel gels lotion foam mousse espuma spray shampoo champu shampooing solution syrup jarabe sirop saft
        injection injections inyeccion inyecciones injektion injektionen spritze zastrzyk zastrzyki jab jabs pen pens patch patches parche parches pflaster implant inhaler inhalers inhalador puffer nasal nose eye ear
        mr xl sr er cr xr la ec retard forte lp depot modified slow release prolonged
        oral orally topical topically mouth skin scalp face hands arms
        sodium sodico sodica sodique natrium sodowy hydrochloride hcl clorhidrato chlorhydrate hydrochlorid maleate maleato succinate succinato tartrate tartrato besilate besylate mesilate mesylate phosphate fosfato acetate acetato
        propionate propionato dipropionate dipropionato valerate valerato furoate furoato acetonide calcium potassium potasico mofetil fumarate fumarato citrate citrato sulfate sulphate sulfato nitrate hyclate hiclato dihydrate monohydrate bromide bromuro
        once twice thrice daily day days week weeks weekly month months monthly year years every each morning evening night nightly noon bedtime hourly hour hours a an the of in at on as per before after with without food
        i my take takes taking took taken use uses using used am was have had been since until for from and or plus also about approx ca sometimes only when needed prn od bd tds qds low high dose doses small
        now currently present ago last first stopped started again long time times asthma eczema psoriasis arthritis allergy allergies allergic pain blood pressure hay fever thyroid
        cada dia dias semana semanas semanal diario diaria mes meses ano anos vez veces manana noche por para tomo tomaba uso desde hasta con sin y o de la el los las una un me mi en al del
        jour jours semaine mois an ans matin soir fois par pour je prends depuis avec et ou le les du des au un une
        tag tage tagl taglich taglich woche wochen monat jahr jahre morgens abends mal pro fur ich nehme seit mit und oder der die das ein eine am
        dziennie raz razy rano wieczorem na od biore i lub w z human generic brand prescription medicine medication medicines meds tabs""");

    private MedicineWords() {
    }

    private static Set<String> words(String text) {
        return Set.of(java.util.Arrays.stream(text.strip().split("\\s+")).distinct().toArray(String[]::new));
    }

    static boolean beside(String folded) {
        return folded.length() == 1 || BESIDE.contains(folded) || DOSE.matcher(folded).matches();
    }
}
