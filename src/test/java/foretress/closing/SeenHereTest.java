package foretress.closing;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Assessor;
import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.Step;
import foretress.assessment.Weight;
import foretress.closing.Closing.Wrong;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Loaded;
import foretress.questionnaire.Answers;
import foretress.told.Showed;
import foretress.visit.Booked;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("R47: what staff saw go wrong weighs at the next visit as if the client had told it")
class SeenHereTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final LocalDate DAY = LocalDate.of(2026, 6, 10);

    private final SeenHere seen = new SeenHere(KNOWLEDGE.questionnaire(), KNOWLEDGE.ruleSet());

    private static Service service(String id) {
        return KNOWLEDGE.ruleSet().service(id).orElseThrow();
    }

    private static Closing closing(String service, String when, String... kinds) {
        List<String> steps = service(service).steps().stream().map(Step::id).toList();
        return new Closing(List.of(new Booked(service, steps)), Map.of(service, Course.AS_PLANNED), List.of(),
            Optional.of(StrandTrial.GOOD),
            new Wrong(Wrong.Said.YES, Stream.of(kinds).map(kind -> Mishap.of(kind).orElseThrow()).toList(),
                Showed.of(when), "", "Rinsed at once."),
            "", "", "");
    }

    private static Weight next(Answers told, String service) {
        Answers all = KNOWLEDGE.answeredWell(told, service(service).chemistries());
        var situation = new Situation(DAY.plusDays(40), Optional.of(LocalDate.of(1985, 1, 1)),
            service(service).chemistries(), KNOWLEDGE.questionnaire(), all,
            KNOWLEDGE.policy("uk"), List.of());
        return Assessor.assess(KNOWLEDGE.ruleSet(), KNOWLEDGE.factFinder().find(situation), List.of(service(service)))
            .standing(service).orElseThrow().weight();
    }

    private Weight after(Closing closing, String service) {
        Stream<Answers> told = Stream
            .of(seen.reactions(closing, DAY, DAY.plusDays(40)).stream(), SeenHere.breakage(closing).stream(),
                SeenHere.heat(closing, DAY).stream())
            .flatMap(one -> one);
        return told.map(one -> next(one, service)).max(Weight::compareTo).orElse(Weight.NOTHING_FOUND);
    }

    @ParameterizedTest(name = "at {0}: {1}, {2}; then {3}: {4}")
    @CsvSource({
        "colour-whole,    breathing, while-on,  colour-whole,       PREVENTS",
        "colour-whole,    unwell,    while-on,  colour-whole,       PREVENTS",
        "colour-whole,    itch,      two-days,  colour-roots,       PREVENTS",
        "colour-whole,    blisters,  later,     lash-brow-tint,     PREVENTS",
        "colour-whole,    sore,      while-on,  colour-whole,       PREVENTS",
        "colour-whole,    skin,      two-hours, colour-demi,        PREVENTS",
        "colour-whole,    sting,     while-on,  colour-whole,       TEST_FIRST",
        "colour-whole,    sting,     two-days,  colour-whole,       PREVENTS",
        "lash-brow-tint,  swelling,  two-hours, colour-whole,       PREVENTS",
        "highlights,      swelling,  two-hours, colour-whole,       PREVENTS",
        "highlights,      hives,     while-on,  lighten-whole,      PREVENTS",
        "perm-acid,       blisters,  two-days,  perm-acid,          PREVENTS",
        "colour-whole,    breakage,  while-on,  relaxer,            TEST_FIRST",
        "highlights,      heat,      while-on,  lighten-whole,      TEST_FIRST" })
    void itWeighsAtLeast(String at, String kind, String when, String then, Weight atLeast) {
        assertThat(after(closing(at, when, kind), then)).isGreaterThanOrEqualTo(atLeast);
    }

    @Test
    void aSoreScalpAtARelaxerRestrictsTheNext() {
        assertThat(after(closing("relaxer", "while-on", "sore"), "relaxer")).isGreaterThanOrEqualTo(Weight.RESTRICTS);
    }

    @Test
    @DisplayName("a colour that came out otherwise, or a cup of tea, is on the card and weighs nothing")
    void whatIsNoReactionWeighsNothing() {
        assertThat(seen.reactions(closing("colour-whole", "while-on", "colour", "other"), DAY, DAY)).isEmpty();
        assertThat(SeenHere.breakage(closing("colour-whole", "while-on", "colour"))).isEmpty();
        assertThat(SeenHere.heat(closing("colour-whole", "while-on", "other"), DAY)).isEmpty();
    }

    @Test
    @DisplayName("several signs at once weigh as the worst of them, and lightener with toner counts as either")
    void severalSigns() {
        List<Answers> told =
            seen.reactions(closing("highlights", "while-on", "sting", "breathing"), DAY, DAY.plusDays(40));
        assertThat(told).extracting(one -> one.byQuestion().containsKey("bleach-reaction")).contains(true, false);
        assertThat(after(closing("highlights", "while-on", "sting", "breathing"), "colour-whole"))
            .isEqualTo(Weight.PREVENTS);
    }

    @Test
    @DisplayName("a cut at which somebody felt faint says nothing of any product")
    void nothingWasPutOn() {
        assertThat(seen.reactions(closing("cut-and-dry", "while-on", "unwell"), DAY, DAY)).isEmpty();
    }
}
