package foretress.knowledge;

import foretress.assessment.Afterwards;
import foretress.assessment.Chemistries;
import foretress.assessment.Chemistry;
import foretress.assessment.Chemistry.SkinTest;
import foretress.assessment.Placing;
import foretress.assessment.Rule;
import foretress.assessment.Service;
import foretress.assessment.Step;
import foretress.assessment.TestFact;
import foretress.questionnaire.Question;
import foretress.questionnaire.Questionnaire;
import foretress.questionnaire.SaidTreatment;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads what can be done: chemistries and their groups, tests, steps, services. */
final class ServicesReader {
    private static final Map<String, SkinTest> SKIN_TESTS =
        Map.of("no", SkinTest.NO, "yes", SkinTest.YES, "or a letter", SkinTest.OR_LETTER, "of its own",
            SkinTest.OF_ITS_OWN);
    /** Where a step leaves nothing, or nothing on the skin, that is said, so that it cannot be forgotten. */
    private static final String NOTHING = "none";
    private static final Set<String> ZONES = zones();
    private static final Set<String> PLACES = places();

    private final Map<String, Chemistry> chemistries = new LinkedHashMap<>();
    private final Map<String, List<String>> groups = new LinkedHashMap<>();
    private final Set<String> tests = new LinkedHashSet<>();
    private final Map<String, Step> steps = new LinkedHashMap<>();
    private final Set<String> aims = new LinkedHashSet<>();
    private final Map<String, Service> services = new LinkedHashMap<>();
    private final Map<String, Yaml> places = new LinkedHashMap<>();
    /** Fields that name a treatment or a question; held against the questionnaire once it is read. */
    private final List<Yaml> treatments = new ArrayList<>();
    private final List<Yaml> reactions = new ArrayList<>();

    private static Set<String> zones() {
        Set<String> zones = new LinkedHashSet<>(SaidTreatment.ZONES);
        zones.remove(SaidTreatment.DONT_KNOW);
        return zones;
    }

    private static Set<String> places() {
        Set<String> places = new LinkedHashSet<>(ZONES);
        places.add("brows-lashes");
        return places;
    }

    ServicesReader read(Yaml file) {
        file.only("chemistries", "groups", "tests", "steps", "aims", "services");
        file.at("chemistries").each(this::chemistry);
        file.maybe("groups").ifPresent(
            named -> named.pairs().forEach(pair -> pair.getKey().trying(name -> group(name, pair.getValue()))));
        file.at("tests").each(this::test);
        file.at("steps").each(this::step);
        file.at("aims").each(this::aim);
        file.at("services").each(this::service);
        return this;
    }

    /** A bare id, or an id with what is particular about it. */
    private Chemistry chemistry(Yaml entry) {
        Yaml name =
            entry.isText() ? entry : entry.only("id", "needs-skin-test", "dry", "product-line", "kind-of").at("id");
        Chemistry chemistry =
            entry.isText() ? new Chemistry(IdSyntax.read(name), SkinTest.NO, false, false)
                : new Chemistry(IdSyntax.read(name),
                    entry.maybe("needs-skin-test").map(said -> said.oneOf(SKIN_TESTS, "skin test")).orElse(SkinTest.NO),
                    entry.yes("dry"), entry.yes("product-line"),
                    entry.maybe("kind-of").map(general -> general.oneOf(chemistries.keySet(), "chemistry")));
        if (chemistries.putIfAbsent(chemistry.id(), chemistry) != null) {
            name.complain("two chemistries are called '%s'".formatted(chemistry.id()));
        }
        places.putIfAbsent(chemistry.id(), name);
        return chemistry;
    }

    /** A list of chemistries and of groups named before, or what its members have in common. */
    private void group(Yaml name, Yaml members) {
        String id = IdSyntax.read(name);
        List<String> read = members.isList() ? listed(members) : alike(members);
        if (chemistries.containsKey(id) || groups.putIfAbsent(id, read) != null) {
            name.complain("another chemistry or group is called '%s'".formatted(id));
        }
        if (read.isEmpty()) {
            members.complain("nothing is in this group");
        }
    }

    private List<String> listed(Yaml members) {
        Set<String> named = named();
        return members.each(member -> members(member.oneOf(named, "chemistry"))).stream().flatMap(List::stream)
            .distinct().toList();
    }

    private List<String> alike(Yaml property) {
        SkinTest wanted = property.only("needs-skin-test").at("needs-skin-test").oneOf(SKIN_TESTS, "skin test");
        return chemistries.values().stream().filter(chemistry -> chemistry.skinTest() == wanted).map(Chemistry::id)
            .toList();
    }

    private String test(Yaml name) {
        String id = IdSyntax.read(name);
        if (!tests.add(id)) {
            name.complain("two tests are called '%s'".formatted(id));
        }
        return id;
    }

    private Step step(Yaml entry) {
        entry.only("id", "uses", "removable", "counts-as", "found-in", "reaction", "which");
        Set<String> uses = Set.copyOf(entry.at("uses").each(c -> c.oneOf(chemistries.keySet(), "chemistry")));
        var step =
            new Step(IdSyntax.read(entry.at("id")), uses, entry.yes("removable"), afterwards(entry, all().dry(uses)));
        if (steps.putIfAbsent(step.id(), step) != null || chemistries.containsKey(step.id())
            || groups.containsKey(step.id())) {
            entry.at("id").complain("another step or chemistry is called '%s'".formatted(step.id()));
        }
        return step;
    }

    /** Whatever puts something on says what it counts as later and how a reaction to it is told, if only that there is none. */
    private Afterwards afterwards(Yaml entry, boolean dry) {
        Optional<Yaml> countsAs = (dry ? entry.maybe("counts-as") : Optional.of(entry.at("counts-as")))
            .filter(said -> !said.text().equals(NOTHING));
        Optional<Yaml> reaction = (dry ? entry.maybe("reaction") : Optional.of(entry.at("reaction")))
            .filter(said -> !said.text().equals(NOTHING));
        countsAs.ifPresent(treatments::add);
        reaction.ifPresent(said -> reactions.add(entry));
        return new Afterwards(countsAs.map(Yaml::text), entry.maybe("found-in").map(zone -> zone.oneOf(ZONES, "zone")),
            reaction.map(said -> new Afterwards.Reaction(said.text(), entry.maybe("which").map(Yaml::text))));
    }

    /** What clients come for. Words may stand under its id as under a step's, so no two of them share one. */
    private String aim(Yaml name) {
        String id = IdSyntax.read(name);
        if (steps.containsKey(id) || chemistries.containsKey(id) || groups.containsKey(id) || !aims.add(id)) {
            name.complain("another aim, step or chemistry is called '%s'".formatted(id));
        }
        return id;
    }

    private Service service(Yaml entry) {
        entry.only("id", "aim", "steps", "applied-to", "found-in", "counts-as");
        List<Step> own = entry.at("steps").each(s -> steps.get(s.oneOf(steps.keySet(), "step")));
        var service =
            new Service(IdSyntax.read(entry.at("id")), own, placing(entry, own.stream().map(Step::id).toList()),
                entry.at("aim").listOrOne().stream().map(aim -> aim.oneOf(aims, "aim")).distinct().toList());
        if (services.putIfAbsent(service.id(), service) != null) {
            entry.at("id").complain("two services are called '%s'".formatted(service.id()));
        }
        if (own.stream().filter(Step::removable).distinct().count() > 1) {
            entry.at("steps").complain("only one step of a service can be taken out by name");
        }
        return service;
    }

    private Placing placing(Yaml entry, List<String> own) {
        Map<String, String> countsAs = new LinkedHashMap<>();
        entry.maybe("counts-as").ifPresent(map -> map.pairs().forEach(pair -> pair.getKey().trying(key -> {
            countsAs.put(key.oneOf(own, "step of this service called"), pair.getValue().text());
            treatments.add(pair.getValue());
        })));
        return new Placing(entry.maybe("applied-to").map(place -> place.oneOf(PLACES, "place")).orElse(Placing.WHOLE),
            entry.maybe("found-in").map(zone -> zone.oneOf(ZONES, "zone")), countsAs);
    }

    /** What a step counts as can be listed, and a reaction to it can be told. */
    void checkAfterwards(Questionnaire questionnaire) {
        Set<String> listed = TreatmentsReader.offered(questionnaire).keySet();
        treatments.forEach(name -> name.trying(n -> n.oneOf(listed, "treatment")));
        reactions.forEach(step -> step.trying(s -> reaction(s, questionnaire)));
    }

    private static void reaction(Yaml step, Questionnaire questionnaire) {
        Yaml name = step.at("reaction");
        List<String> asking = questionnaire.questions().stream().map(Question::id)
            .filter(id -> questionnaire.question(id + "-what").isPresent()
                && questionnaire.question(id + "-soon").isPresent())
            .toList();
        String gate = name.oneOf(asking, "question about a reaction called");
        Optional<List<String>> kinds = questionnaire.question(gate + "-which").map(Question::options);
        if (kinds.isPresent() != step.maybe("which").isPresent()) {
            throw name.refuse(kinds.isPresent() ? "'%s' asks which it was: write 'which:'".formatted(gate)
                : "'%s' does not ask which it was: leave 'which:' out".formatted(gate));
        }
        kinds.ifPresent(known -> step.at("which").oneOf(known, "answer to '%s-which' called".formatted(gate)));
    }

    /** Where a skin test is needed, a rule has to ask for it. */
    void checkSkinTests(List<Rule> rules) {
        chemistries.values().stream().filter(chemistry -> chemistry.skinTest() != SkinTest.NO)
            .filter(chemistry -> rules.stream().noneMatch(
                rule -> rule.demands().contains(TestFact.SKIN_TEST) && rule.weights().containsKey(chemistry.id())))
            .forEach(chemistry -> places.get(chemistry.id()).complain(
                "'%s' needs a skin test, and no rule that demands one weighs on it".formatted(chemistry.id())));
    }

    Chemistries all() {
        return new Chemistries(List.copyOf(chemistries.values()));
    }

    Set<String> chemistries() {
        return chemistries.keySet();
    }

    /** Groups of chemistries by name. */
    Map<String, List<String>> groups() {
        return groups;
    }

    /** Chemistries and groups of them. */
    Set<String> named() {
        Set<String> named = new LinkedHashSet<>(chemistries.keySet());
        named.addAll(groups.keySet());
        return named;
    }

    /** The chemistries of a group; anything else stands for itself. */
    List<String> members(String name) {
        return groups.getOrDefault(name, List.of(name));
    }

    Set<String> tests() {
        return tests;
    }

    Map<String, Step> steps() {
        return steps;
    }

    /** What clients come for, in the order on screens. */
    List<String> aims() {
        return List.copyOf(aims);
    }

    List<Service> services() {
        return List.copyOf(services.values());
    }
}
