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
        now currently present ago last first started again long time times asthma eczema psoriasis arthritis allergy allergies allergic pain blood pressure hay fever thyroid
        cada dia dias semana semanas semanal diario diaria mes meses ano anos vez veces manana noche por para tomo tomaba uso desde hasta con sin y o de la el los las una un me mi en al del
        jour jours semaine mois an ans matin soir fois par pour je prends depuis avec et ou le les du des au un une
        tag tage tagl taglich taglich woche wochen monat jahr jahre morgens abends mal pro fur ich nehme seit mit und oder der die das ein eine am
        dziennie raz razy rano wieczorem na od biore i lub w z przez nosa do oka skore skora codziennie tydzien tygodniu miesiac rok oddziel zastrzyku masci
        im ins auge nase haut kopfhaut alle zwei drei stunden wegen gegen nehmen
        dans nez oeil peau toutes heures contre prise prises comprimes dose
        nariz ojo ojos piel pomadas oral inhalada horas contra tomando tomar he
        nocte mane stat mai maja maju marca mars avril juin juillet aout septembre octobre novembre decembre januar februar marz juni juli oktober
        dezember styczniu lutym marcu kwietniu czerwcu lipcu sierpniu wrzesniu grudniu j'ai ai plus still just both daily nightly fortnight fortnightly tablet-form course inhalers sprays spray's january february march april may june july august september
        october november december enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre
        human generic brand prescription medicine medication medicines meds tabs""");

    /** Said of a medicine that is over; in English, Spanish, French, Polish, German. */
    private static final Set<String> STOPPED = words("""
        stopped stop quit finished ended discontinued formerly previously off longer
        deje dejado suspendi suspendido ya
        arrete arretee stoppe termine
        odstawilam odstawilem odstawiony odstawione przestalam przestalem juz zakonczylam zakonczylem
        abgesetzt aufgehort mehr fruher beendet""");

    /** Said of a medicine that is not taken. */
    private static final Set<String> DENIED = words("""
        no not never none without nothing neither nor dont don't doesn't isn't nil
        nunca ningun ninguno ninguna sin nada tampoco
        pas jamais aucun aucune sans rien ni
        nie nigdy bez zadnych zaden zadne niczego
        nicht nie kein keine keinen ohne nichts niemals""");

    private MedicineWords() {}

    private static Set<String> words(String text) {
        return Set.of(java.util.Arrays.stream(text.strip().split("\\s+")).distinct().toArray(String[]::new));
    }

    static boolean stopped(String folded) {
        return STOPPED.contains(folded);
    }

    static boolean denied(String folded) {
        return DENIED.contains(folded);
    }

    static boolean beside(String folded) {
        return folded.length() <= 1 || stopped(folded) || denied(folded) || BESIDE.contains(folded)
            || Character.isDigit(folded.charAt(0)) && DOSE.matcher(folded).matches();
    }
}
