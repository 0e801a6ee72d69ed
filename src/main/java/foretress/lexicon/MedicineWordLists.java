package foretress.lexicon;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Words people put beside the names of medicines, in English, Spanish, French, German, Polish and Italian; from memory. */
final class MedicineWordLists {
    /** What a medicine comes as, and words for some medicine or other: alone with a reason, they speak of one nobody named. */
    static final Set<String> FORMS = words("""
        tab tabs tablet tablets pill pills capsule capsules caps cap drop drops cream creams ointment ointments gel gels lotion lotions foam
        mousse spray sprays spray's solution syrup injection injections inj jab jabs shot shots pen pens patch patches implant implants inhaler inhalers
        puffer puffers lozenge lozenges suppository suppositories infusion infusions drip nebuliser nebulizer sachet sachets serum powder plaster plasters
        medicine medicines medication medications meds med drug drugs remedy remedies treatment treatments tablet-form something stuff shampoo
        pastilla pastillas comprimido comprimidos capsula capsulas gota gotas crema cremas pomada pomadas unguento espuma jarabe inyeccion inyecciones
        pinchazo pinchazos parche parches inhalador inhaladores supositorio medicina medicinas medicamento medicamentos remedio tratamiento algo champu
        colirio locion ampolla ampollas sobre sobres puff
        comprime comprimes cachet cachets gelule gelules goutte gouttes creme cremes pommade pommades mousse sirop injection piqure piqures
        patch timbre inhalateur suppositoire medicament medicaments traitement truc trucs shampooing collyre lotion perfusion sachet ampoule ampoules pastille pastilles
        tablette tablettes tabletten pille pillen kapsel kapseln tropfen salbe salben gele schaum saft spritze spritzen pflaster pen implantat
        lutschtablette lutschtabletten zapfchen infusion infusionen mittel medikament medikamente arznei arzneimittel etwas was losung augentropfen
        nasenspray dragee dragees brausetablette brausetabletten pulver
        tabletka tabletki tabletek kapsulka kapsulki krople kropli masc masci krem kremy zel zele pianka syrop zastrzyk zastrzyki zastrzyku plaster plastry
        wziewy wziewnie inhalator czopek czopki lek leki lekow lekarstwo lekarstwa cos kroplowka szampon
        compressa compresse pastiglia pastiglie pillola pillole capsule goccia gocce crema creme pomata pomate unguento schiuma sciroppo iniezione iniezioni
        puntura punture cerotto cerotti inalatore supposta supposte bustina bustine flebo farmaco farmaci medicina medicine medicinale qualcosa cura
        collirio lozione fiala fiale
        thuoc vien kem دواء ادوية حبوب حبة اقراص كبسولات بخاخ كريم مرهم حقنة حقن قطرة شامبو اخذ اتناول""");

    /** What it is taken for and where it is put: never the name of a medicine. */
    static final Set<String> REASONS = words("""
        asthma eczema psoriasis arthritis allergy allergies allergic pain blood pressure hay hayfever fever thyroid underactive overactive heart
        cholesterol diabetes diabetic epilepsy seizures fits migraine migraines headache headaches acne rosacea alopecia areata lupus crohns crohn's crohn colitis
        depression anxiety sleep insomnia reflux heartburn stomach ulcer bowel bladder kidney kidneys liver transplant cancer breast leukaemia leukemia lymphoma
        tumour prostate gout osteoporosis menopause menopausal flushes flush hot periods period endometriosis pcos thrush infection infections cold flu cough
        chest lung lungs copd glaucoma malaria nerve nerves neuropathy back knee neck shoulder shoulders hip leg legs foot feet toenail toenails
        nail nails forehead cheeks eyelid eyelids scalp skin face hands hand arm arms mouth throat tongue nose ear ears eye eyes tummy belly hair body spots itch itching itchy rash
        hives anaemia anemia anaemic anemic deficiency rhythm palpitations water clot clots stroke circulation tb hiv adhd bipolar mood parkinsons parkinson's alzheimers ms
        sclerosis rheumatoid inflammation inflammatory swelling cramps sore dry wilsons blisters wound wounds burn sunburn worms lice mites scabies
        surgery operation chemo's hormonal immune system autoimmune greying grey gray loss growth thinning weight smoking sickness nausea travel vertigo dizziness blisters flare
        asma eccema psoriasis artritis alergia alergias dolor dolores tension presion sangre corazon tiroides colesterol azucar diabetes epilepsia migrana migranas
        cabeza cabello pelo acne caida depresion ansiedad dormir estomago acidez rinon higado trasplante cancer mama menopausia regla hongos infeccion tos
        gripe garganta pecho espalda rodilla cuello una unas pie pies cara manos mano boca lengua oreja oido picor picores anemia orinar prostata gota huesos nervios axilas
        asthme eczema arthrite allergie allergies douleur douleurs tension sang coeur thyroide cholesterol diabete epilepsie migraine migraines tete cheveux acnee
        chute depression anxiete sommeil estomac reflux rein reins foie greffe cancer sein menopause regles infection toux grippe gorge poitrine dos genou cou ongle
        ongles pied pieds visage mains main bouche langue oreille demangeaisons anemie prostate goutte os nerfs crane cuir chevelu aisselles aisselle joues joue fluidifier
        asthma ekzem neurodermitis schuppenflechte allergie allergien schmerzen schmerz blutdruck blut herz schilddruse cholesterin zucker epilepsie migrane kopf haare
        kopfschmerzen akne haarausfall depression angst schlaf magen sodbrennen niere leber transplantation krebs brustkrebs brust wechseljahre regel infektion husten
        heuschnupfen grippe hals rucken knie nagel nagelpilz fuss fusse gesicht hande hand mund zunge ohr juckreiz blutarmut prostata gicht knochen nerven kopfhaut rheuma stirn achseln
        astma astme egzema luszczyca luszczyce zapalenie alergia alergie bol bole bolu cisnienie nadcisnienie krew krwi serce serca tarczyca tarczyce cholesterol cukrzyca cukrzyce
        padaczka padaczke migrena migrene glowa glowy glowe wlosy wlosow tradzik lysienie depresja depresje lek sen noc zoladek zoladka nerki watroba przeszczep przeszczepie rak piersi
        menopauza grzybica kaszel grypa gardlo gardla klatka plecy kolano szyja paznokcie stopy twarz rece usta jezyk ucho swedzenie anemia prostata stawy nerwy rozrzedzenie skore skora
        asma eczema psoriasi artrite allergia allergie dolore dolori pressione sangue cuore tiroide colesterolo diabete epilessia emicrania testa capelli acne caduta
        depressione ansia dormire stomaco reflusso rene reni fegato trapianto cancro tumore seno menopausa ciclo infezione tosse influenza gola petto schiena ginocchio collo unghie
        piede piedi viso mani mano bocca lingua orecchio prurito anemia prostata gotta ossa nervi cuoio capelluto fronte ascelle
        dau dau tim mau huyet ap""");

    /** Doses, salts, times, persons and the other words of a sentence. */
    static final Set<String> ORDINARY = words(
        """
        mg mcg ug g ml iu ie ui unit units microgram micrograms milligram milligrams gram grams percent puff puffs
        mr xl sr er cr xr la ec retard ret forte lp depot modified slow release prolonged extended gastro resistant resist enteric coated
        oral orally topical topically nasal
        sodium sodico sodica sodique natrium sodowy sodowa sodu hydrochloride hcl clorhidrato chlorhydrate hydrochlorid chlorowodorek cloridrato hydrobromide
        maleate maleato maleat maleinian succinate succinato succinat bursztynian tartrate tartrato tartrat winian besilate besylate besilato besilat bezylan
        dimesylate dimesilate mesilate mesylate mesilato mesilat mesylan phosphate fosfato phosphat fosforan acetate acetato acetat octan
        propionate propionato propionat dipropionate dipropionato valerate valerato valerat furoate furoato furoat acetonide calcium potassium potasico potassico kalium potasu
        mofetil mofetilo mofetylu fumarate fumarato emifumarato fumarat fumaran citrate citrato citrat cytrynian sulfate sulphate sulfato sulfat solfato siarczan nitrate nitrato hyclate hiclato
        dihydrate monohydrate trihydrate bromide bromuro bromid carbonate carbonato carbonat weglan hydrogensulfate hydrogen pamoate embonate chloride cloruro etexilate
        once twice thrice daily day days week weeks wk wks weekly month months mth mths monthly year years yr yrs every each morning mornings evening evenings afternoon night nights nightly noon
        midday bedtime hourly hour hours minutes x2 x3 x4 x1 am pm mon tue wed thu fri sat sun monday tuesday wednesday thursday friday saturday sunday mondays fridays sundays weekends
        a an the of in at on as per before after with without food into onto under over about around between during till until by to too than then
        i i'm i've im ive my me myself we our he she her his him they their it its it's that this these those there here who what which when where why how if because so while
        take takes taking took taken use uses using used am is are be been being was were had has have having do does did got get gets getting give given gave up need needs needed want wants
        went go goes going come comes came put puts keep keeps know knows think guess see feel feels help helps hurts work works working make makes made call called start starts started starting
        restarting begin began soon still just both also plus and or nor only some sometimes sometime occasionally often always usually mostly maybe perhaps
        for from since approx ca prn od bd bid tds tid qds qid eod low high higher lower dose doses dosage small big large little tiny half quarter double
        now currently present ago last first second third next other another any all more most less least few bit lot lots many much one ones two three four five six
        seven eight nine ten long short time times year's yesterday today tomorrow tonight summer winter spring autumn season recently lately later earlier again
        white blue red pink yellow green brown round new old same different normal regular natural good bad well ok okay please thanks sorry sure yes yeah
        january february march april may june july august september october november december jan feb mar apr jun jul aug sept sep oct nov dec
        human generic brand prescription prescribed doctor doctor's doctors gp nurse hospital clinic dentist pharmacist pharmacy specialist counter otc course name names listed list
        line test tests patch-test flare-up alternate application applications applied mix mixed combination combined mini fortnight fortnightly tablet's swallow inject injected
        change changes changed changing increase increased reduce reduced reducing reduction increasing doubled halved paused pause switch switched swapped started restart
        healthy horse fit fine like can cant can't cannot remember remembered forget forgot forgotten will won't would could should say said ask asked tell told prefer idea mean
        feeling sick person people baby pregnant pregnancy breastfeeding holiday holidays age born weeks' though but except apart however instead
        cada dia dias semana semanas semanal diario diaria diariamente mes meses ano anos vez veces manana mananas mediodia tarde noche noches por para tomo toma tomaba tomaba uso usaba
        desde hasta hace con y e o u de la el lo los las un mi mis me te se en al del su sus que como cuando si muy mas menos medio media mitad otra otro otros esta este eso esa
        es son era fue estoy esta he ha hemos tambien tomar tomando tomado usar usando pongo poner nariz ojo ojos piel inhalada inhalado horas hora necesito necesite contra solo ahora antes despues
        luego todavia aun hoy ayer lunes martes miercoles jueves viernes sabado domingo verano invierno primavera medico doctor doctora dentista farmacia receta recetado recetada nombre blanca blanco
        rosa amarilla amarillo azul roja pequena pequeno grande acuerdo recuerdo se creo veces bien voy dosis gotas tres dos cuatro cinco seis siete ocho diez primera segunda inyectada inyectado parece
        jour jours semaine semaines mois an ans annee annees matin matins midi soir soirs nuit fois par pour je j'ai ai prends prend prenais depuis jusque avec et ou le les la des du au aux un une mes mon ma
        dans sur sous nez oeil yeux peau toutes tous tout toute heure heures contre prise prises dose doses il elle on ce cet cette y a en est sont ete suis etais comme quand si tres plus moins encore
        enfin puis ensuite aussi aujourd'hui hier lundi mardi mercredi jeudi vendredi samedi dimanche ete hiver printemps medecin docteur dentiste pharmacie ordonnance nom petit petite blanc blanche rose jaune bleu rouge besoin
        cas demi deux trois quatre cinq sais sait dur cours doute ligne autrefois
        tag tage tagl taglich tgl woche wochen wochentlich monat monate monatlich jahr jahre jahren morgens mittags abends nachts mal pro fur ich nehme nimmt nahm seit mit und oder der die das den dem des ein
        eine einen einem einer am im ins in an auf zu zum zur von vom auge augen nase haut alle zwei drei vier stunden stunde wegen gegen nehmen genommen gerade jetzt noch nur auch sowie u bei bedarf beim
        manchmal immer oft selten vor nach wahrend bis ist sind war habe hat bin wird werden wie so sehr mehr weniger halbe halb einmal zweimal dreimal dann danach heute gestern montag dienstag mittwoch donnerstag
        freitag samstag sonntag sommer winter fruhling herbst arzt arztin zahnarzt apotheke rezept name namen vergessen marke kleine kleiner weisse gelbe rote blaue weiss heisst ja morgen nacht mein meine meinem
        dziennie raz razy rano wieczorem wieczor poludnie wieczorami na od do po co biore bralam bralem bierze i lub oraz w we z ze za przez przy przed nosa oka oczu codziennie tydzien tygodniu tygodnie tygodniowo miesiac
        miesiace miesiecy rok lata lat oddziel doraznie potrzeby razie jest sa mam mialam mialem ma to ten ta te tego tej moj moja moje sie jak gdy jesli bardzo wiecej mniej pol jeden jedna dwa dwie trzy cztery teraz jeszcze
        tylko tez takze czasem czasami zawsze dzis dzisiaj wczoraj lekarz lekarza dentysta apteka recepta nazwa nazwy mala maly biala biale zolta dawka dawki stosuje uzywam lato lecie wlasnie jadę jade
        giorno giorni giornaliera settimana settimane settimanale mese mesi anno anni mattina mattino mezzogiorno sera notte volta volte per prendo prende prendevo da fino con e ed o la il lo gli le un uno una mio mia miei
        mie di del della dei delle dello nel nella al allo alla ai alle sul sulla su in a ho ha sono era come quando se molto piu meno mezza mezzo ancora poi anche solo ora adesso dopo prima oggi ieri lunedi martedi mercoledi giovedi
        venerdi sabato domenica estate inverno medico dottore dentista farmacia ricetta nome piccola piccolo bianca bianco gialla bisogno ogni ore ora naso occhio occhi pelle dose dosi uso due tre quattro cinque goccia almeno circa
        nocte mane stat mai maja maju marca mars avril juin juillet aout septembre octobre novembre decembre janvier fevrier januar februar marz juni juli oktober dezember styczniu lutym marcu kwietniu czerwcu lipcu sierpniu wrzesniu
        grudniu pazdzierniku listopadzie stycznia lutego kwietnia czerwca lipca sierpnia wrzesnia enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre gennaio febbraio aprile maggio giugno luglio
        settembre ottobre dicembre
        khi va moi ngay tuan thang sang toi chieu uong dung boi buoi hang cua cho tren duoi ko gi duong
        мг мл г таблетки таблетка день раз дня
        ملغ ملغم مل قبل بعد سنة شهر اسبوع يوم يوميا مرة مرتين صباحا مساء ليلا عند اللزوم الحاجة في من مع و على للشعر للحساسية للضغط اي كل""");

    /** Said of a medicine that is over. */
    static final Set<String> STOPPED = words("""
        stopped stop quit finished ended discontinued formerly previously off longer came-off anymore
        deje dejado suspendi suspendido ya abandone termine
        arrete arretee stoppe termine
        odstawilam odstawilem odstawiony odstawione przestalam przestalem juz zakonczylam zakonczylem
        abgesetzt aufgehort mehr fruher beendet vorbei
        smesso sospeso interrotto finito
        ngung اوقفت توقفت توقف""");

    /** Said of a medicine that is not taken, was refused, or is somebody else's. */
    static final Set<String> DENIED = words("""
        no not never none without nothing neither nor dont don't doesn't doesnt isn't nil didn't didnt nope refused refuse declined decline offered rejected
        allergic husband wife mother mum mom father dad gran granny son daughter sister brother dog dog's cat cat's friend
        nunca ningun ninguno ninguna sin nada tampoco rechace rechazado rechaze negue ofrecieron alergica alergico marido madre padre hijo hija perro gato
        pas jamais aucun aucune sans rien ni ras refuse refusee propose allergique mari mere pere fils fille chien chat
        nie nigdy bez zadnych zaden zadne niczego brak nic odmowilam odmowilem uczulona uczulony maz mama matka ojciec syn corka pies kot
        nicht nie kein keine keinen keiner ohne nichts niemals nix abgelehnt angeboten allergisch mann mutter vater sohn tochter hund katze
        non nessuno nessuna niente nulla mai senza rifiutato rifiutata offerto allergica allergico marito madre padre cane gatto
        khong لا ليس بدون""");

    /** From here on something else is said: "nothing except ...", "... but not any more". */
    static final Set<String> TURNS = words(
        """
        but except apart however now instead pero excepto salvo ahora mais sauf maintenant aber ausser jetzt sondern ale oprocz teraz ma tranne adesso""");

    /** What chemistry puts before a name: with it, the rest is another medicine. */
    static final Set<String> PREFIXES = words("""
        hydroxy hidroxi hydroksy hydroxi idrossi oxy oxi chlor chloro cloro kloro methyl metil metyl dimethyl trimethyl ethinyl etinil ethinil ethyl etil nor des desoxy deoxy dex
        dextro levo lev iso pseudo cyclo ciclo fluoro fluo fluor bromo brom iodo jod acetyl acetil dihydro dihidro tetra penta hexa benzyl bencil phenyl fenil amino nitro sulfa
        sulpha sulfo thio tio epi neo allo apo keto ceto meta para ortho orto alpha beta gamma lum arte""");

    /** In these the name of a medicine or a metal means none. */
    static final List<List<String>> NO_MEDICINE = sequences(
        """
        insulin resistance|insulin resistant|insulin sensitivity|resistencia a la insulina|resistencia insulina|resistente a la insulina|resistance a l'insuline|resistance insuline|insulinresistenz
        insulinoopornosc|resistenza all'insulina|resistenza insulina|insulino resistenza|insulino resistance|flat iron|flat irons|curling iron|curling irons|hair iron|hot iron|straightening iron
        fer a lisser|fer a friser|fer a boucler|ferro arricciacapelli|plancha de pelo|lithium battery|lithium batteries|iron deficiency|iron deficient|low iron|vitamin d deficiency|vitamin deficiency
        gold highlights|gold jewellery|silver jewellery|copper coil|copper iud|diu de cobre|sterilet en cuivre|sterilet au cuivre|kupferspirale|kupferkette|wkladka miedziana|spirale al rame|eisenmangel|glatteisen|lockenstab
        patch test|skin test|steroid free|penicillin allergy|free shampoo|sulfate free shampoo|falta de hierro|manque de fer|niedobor zelaza|carenza di ferro""");

    private MedicineWordLists() {}

    static Set<String> words(String text) {
        return Arrays.stream(text.strip().split("\\s+")).collect(Collectors.toUnmodifiableSet());
    }

    private static List<List<String>> sequences(String text) {
        return Arrays.stream(text.strip().split("[|\n]")).map(line -> List.of(line.strip().split(" "))).toList();
    }
}
