package foretress.knowledge;

import foretress.assessment.Chemistries;
import foretress.assessment.FactFinder;
import foretress.assessment.HairTold;
import foretress.assessment.Lexicon;
import foretress.assessment.LookedUp;
import foretress.assessment.Policy;
import foretress.assessment.RecentReadings;
import foretress.assessment.RuleSet;
import foretress.assessment.Situation;
import foretress.assessment.SkinTestDoubts;
import foretress.assessment.Ways;
import foretress.lexicon.LabelLexicon;
import foretress.lexicon.MedicineLexicon;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Contradiction;
import foretress.questionnaire.Questionnaire;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Everything the knowledge files say, checked. */
public final class Knowledge {
    private final Questionnaire questionnaire;
    private final List<Contradiction> contradictions;
    private final RuleSet ruleSet;
    private final Chemistries chemistries;
    private final List<String> aims;
    private final Ways ways;
    private final Map<String, Policy> policies;
    private final Map<String, Words> words;
    private final KnownWords known;
    private final RecentReadings lexicon;
    private final FactFinder factFinder;

    Knowledge(Questionnaire questionnaire, List<Contradiction> contradictions, RuleSet ruleSet, Chemistries chemistries,
        List<String> aims, Ways ways,
        Map<String, Policy> policies, Map<String, Words> words,
        KnownWords known) {
        this.questionnaire = questionnaire;
        this.contradictions = List.copyOf(contradictions);
        this.ruleSet = ruleSet;
        this.chemistries = chemistries;
        this.aims = List.copyOf(aims);
        this.ways = ways;
        this.policies = Collections.unmodifiableMap(new LinkedHashMap<>(policies));
        this.words = Collections.unmodifiableMap(new LinkedHashMap<>(words));
        this.known = known;
        this.lexicon = new RecentReadings(known);
        this.factFinder = new FactFinder(ruleSet, lexicon);
    }

    /**
     * Reads the knowledge on the class path.
     *
     * @throws KnowledgeException if anything is wrong with it, naming every fault with its place
     */
    public static Knowledge load() {
        return of(KnowledgeFiles.ofClassPath());
    }

    static Knowledge of(KnowledgeFiles files) {
        var reader = new KnowledgeReader(files);
        Knowledge knowledge = reader.read();
        reader.complaints().orThrow();
        return knowledge;
    }

    public Questionnaire questionnaire() {
        return questionnaire;
    }

    /** Answers that cannot both be right, in the order of their file. */
    public List<Contradiction> contradictions() {
        return contradictions;
    }

    public RuleSet ruleSet() {
        return ruleSet;
    }

    /** What clients come for, in the order on screens. */
    public List<String> aims() {
        return aims;
    }

    /** How each aim is reached, and what each service does. */
    public Ways ways() {
        return ways;
    }

    public Chemistries chemistries() {
        return chemistries;
    }

    /** Finds the facts these rules read. */
    public FactFinder factFinder() {
        return factFinder;
    }

    /** The hair's history as the client and staff told it. */
    public HairTold told(Situation situation) {
        return HairTold.of(situation, ruleSet.treatments(), lexicon);
    }

    /** Says what makes a negative skin test worthless. */
    public SkinTestDoubts skinTestDoubts() {
        return new SkinTestDoubts(ruleSet, lexicon);
    }

    /**
     * These answers, and to everything else that is put the one that weighs least: nobody's answers come to less. Dates and free
     * words are left open.
     */
    public Answers answeredWell(Answers said, Set<String> chemistries) {
        return new BaseClient(this).complete(said, chemistries, Set.of());
    }

    /** Reads ingredient lists, with the place of every name. */
    public LabelLexicon labels() {
        return known.labels();
    }

    /** Reads words as an assessment does, with medicines that staff have looked up. */
    public Lexicon lexicon(List<LookedUp> lookedUp) {
        return lexicon.with(lookedUp);
    }

    /** Builds what the first reading of a label or a medicine would wait for. */
    public void warm() {
        known.label("aqua");
        known.medicine("ibuprofen");
    }

    /** Keeps nothing of what clients typed and was read until now, see {@link RecentReadings}. */
    public void forgetReadings() {
        lexicon.forget();
    }

    /** Reads typed medicines, with class, effect and reason of every name. */
    public MedicineLexicon medicines() {
        return known.medicines();
    }

    /**
     * @param jurisdiction for example {@code uk}
     * @throws IllegalArgumentException if nothing is known about it
     */
    public Policy policy(String jurisdiction) {
        return Optional.ofNullable(policies.get(jurisdiction))
            .orElseThrow(() -> new IllegalArgumentException(
                "no policy for '%s'; there are %s".formatted(jurisdiction, policies.keySet())));
    }

    public Map<String, Policy> policies() {
        return policies;
    }

    public Set<String> languages() {
        return words.keySet();
    }

    /** The words of a language tag ({@code es-MX} finds {@code es}); English where we have none of it. */
    public Words words(String tag) {
        String language = tag.split("[-_]")[0].toLowerCase(java.util.Locale.ROOT);
        return words.getOrDefault(language, words.get("en"));
    }
}
