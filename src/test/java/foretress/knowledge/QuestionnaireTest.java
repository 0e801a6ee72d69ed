package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Service;
import foretress.knowledge.Words.QuestionWords;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answer.Chosen;
import foretress.questionnaire.Answer.Medicines;
import foretress.questionnaire.Answer.Treatments;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Keeps;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.Questionnaire;
import foretress.questionnaire.Topic;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds every question to what is promised of all of them. */
@Execution(ExecutionMode.CONCURRENT)
class QuestionnaireTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final Questionnaire QUESTIONNAIRE = KNOWLEDGE.questionnaire();
    private static final int MOST_ON_A_PAGE = 5;
    /** Words of the trade and of medicine that a client is never left alone with; each stands for all its endings. */
    private static final List<String> JARGON =
        List.of("oxidative", "oxidiz", "metallic", "peroxide", "persulfate", "persulphate", "ammonia",
            "thioglycol", "hydroxide", "phenylenediamine", "ppd", "contra-indicat", "contraindicat", "sensitis",
            "sensitiz", "dermat", "erythema",
            "urticaria", "oedema", "allergen", "anaphyla", "porosity", "elasticity", "residue", "compound henna",
            "cuticle", "systemic", "topical",
            "corticosteroid", "antihistamine", "immunosuppress", "adverse", "incompatib", "questionnaire", "assessment",
            "client",
            "oxidación", "oxidativ", "metálic", "peróxido", "persulfato", "amoníaco", "tioglic", "hidróxido",
            "fenilendiamina", "contraindica", "sensibiliz",
            "dermat", "eritema", "edema", "alérgeno", "anafila", "porosidad", "elasticidad", "residuo", "cutícula",
            "sistémic", "tópic", "antihistam",
            "inmunosupre", "advers", "incompatib", "cuestionario", "cliente");

    static Stream<Question> questions() {
        return QUESTIONNAIRE.questions().stream();
    }

    static Stream<Topic> topics() {
        return QUESTIONNAIRE.topics().stream();
    }

    private static Set<String> chemistries(String service) {
        return KNOWLEDGE.ruleSet().service(service).orElseThrow().chemistries();
    }

    /** Everything put to a client who answers no, none, or the length asked for, page after page. */
    private static List<String> putTo(String service) {
        Answers answers = Answers.NONE;
        List<String> put = new ArrayList<>();
        for (Topic topic : QUESTIONNAIRE.topics()) {
            for (Question question : QUESTIONNAIRE.put(topic, chemistries(service), answers)) {
                put.add(question.id());
                answers = answers.with(question.id(), no(question));
            }
        }
        return put;
    }

    private static Answer no(Question question) {
        return switch (question.kind()) {
            case ONE_OF -> Chosen.of("no");
            case SEVERAL_OF -> Chosen.of(Question.NONE);
            case TREATMENTS -> new Treatments(List.of());
            case MEDICINES -> new Medicines(List.of());
            default -> Answer.DONT_KNOW;
        };
    }

    @ParameterizedTest
    @MethodSource("questions")
    void eachOpeningNamesAnEarlierQuestionAndItsCodes(Question question) {
        List<String> earlier = questions().map(Question::id).takeWhile(id -> !id.equals(question.id())).toList();
        question.when().forEach((opener, codes) -> {
            assertThat(earlier).contains(opener);
            assertThat(codes).allMatch(QUESTIONNAIRE.question(opener).orElseThrow()::offers);
        });
    }

    @ParameterizedTest
    @MethodSource("questions")
    @DisplayName("A20 not knowing and not saying never close a question: closed reads as its best class")
    void notKnowingNeverClosesAQuestion(Question question) {
        if (question.recordOnly() && !question.required()) {
            return; // no fact is made of it: closed, it reads as nothing
        }
        Stream.of(question.when(), question.orWhen()).flatMap(w -> w.entrySet().stream()).forEach(opening -> {
            List<String> codes = opening.getValue();
            Question gate = QUESTIONNAIRE.question(opening.getKey()).orElseThrow();
            Stream.of(Question.DONT_KNOW, Question.RATHER_NOT_SAY).filter(gate::offers)
                .forEach(unsaid -> assertThat(codes).contains(unsaid));
        });
    }

    @ParameterizedTest
    @MethodSource("questions")
    @DisplayName("A20 every factual question offers don't know")
    void everyFactualQuestionOffersNotKnowing(Question question) {
        boolean freeWords = question.kind() == Kind.NOTE || question.kind() == Kind.INGREDIENTS;
        assertThat(question.unsure()).isEqualTo(!freeWords);
    }

    @ParameterizedTest
    @ValueSource(
        strings = { "conditions", "pregnancy", "cancer-care", "chemotherapy", "radiotherapy-head", "g6pd", "medicines",
            "illness-lately" })
    void privateQuestionsOfferNotSaying(String id) {
        assertThat(QUESTIONNAIRE.question(id).orElseThrow().personal()).isTrue();
    }

    @ParameterizedTest
    @MethodSource("questions")
    void everyQuestionBelongsToSomeService(Question question) {
        Set<String> asking = KNOWLEDGE.ruleSet().services().stream()
            .filter(
                s -> question.askedFor().isEmpty() || s.chemistries().stream().anyMatch(question.askedFor()::contains))
            .map(Service::id).collect(Collectors.toSet());
        assertThat(asking).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("questions")
    void aFollowUpIsAskedForNoServiceThatItsOpeningIsNot(Question question) {
        for (Service service : KNOWLEDGE.ruleSet().services()) {
            if (question.askedFor().stream().anyMatch(service.chemistries()::contains)) {
                question.when().keySet().forEach(
                    opener -> assertThat(askedFor(opener, service)).as("%s for %s", opener, service.id()).isTrue());
            }
        }
    }

    private static boolean askedFor(String question, Service service) {
        Set<String> chemistries = QUESTIONNAIRE.question(question).orElseThrow().askedFor();
        return chemistries.isEmpty() || chemistries.stream().anyMatch(service.chemistries()::contains);
    }

    @ParameterizedTest
    @MethodSource("topics")
    @DisplayName("A19 no page puts more than five questions, a list to tick counting as one")
    void aPageIsShort(Topic topic) {
        List<Question> first = topic.questions().stream()
            .filter(q -> topic.questions().stream().noneMatch(other -> q.when().containsKey(other.id()))).toList();
        int list = topic.together(first).size();
        assertThat(first.size() - Math.max(0, list - 1)).isLessThanOrEqualTo(MOST_ON_A_PAGE);
    }

    @ParameterizedTest
    @MethodSource("questions")
    void everyQuestionOfTheFirstRoundCanBeAnsweredWithNo(Question question) {
        if (question.when().isEmpty() && question.kind() == Kind.ONE_OF) {
            assertThat(question.options()).last().isEqualTo("no");
        }
        if (question.when().isEmpty() && question.kind() == Kind.SEVERAL_OF) {
            assertThat(question.options()).last().isEqualTo(Question.NONE);
        }
    }

    @ParameterizedTest
    @MethodSource("questions")
    void noStandsAfterEverythingElse(Question question) {
        question.options().stream().filter(Question.NOES::contains)
            .forEach(no -> assertThat(question.options()).last().isEqualTo(no));
    }

    @Test
    void skinScalpMedicinesReactionsAndTattoosAreAskedAgainOnTheDay() {
        for (String id : List.of("scalp-today", "skin-today", "medicines", "colour-reaction", "tint-reaction",
            "black-tattoo", "bleach-reaction",
            "perm-reaction", "elsewhere-reaction")) {
            assertThat(QUESTIONNAIRE.question(id).orElseThrow().keeps()).as(id).isIn(Keeps.THE_DAY, Keeps.THE_DAY_ONLY);
        }
    }

    @Test
    @DisplayName("C11 a cut asks almost nothing")
    void aCutAsksAlmostNothing() {
        assertThat(putTo("cut-and-dry")).containsExactly("scalp-today", "anything-else");
    }

    @Test
    void lighteningAsksAboutColourTooSinceATonerFollows() {
        assertThat(putTo("highlights")).contains("colour-reaction", "black-tattoo", "bleach-reaction",
            "skin-tested",
            "treatments", "hair-length", "medicines");
    }

    @Test
    void everyServiceThatColoursAsksTheLabelsQuestions() {
        // Regulation (EC) 1223/2009, Annex III, warnings of the oxidative dyes: earlier reaction, tattoo, rash on the face, scalp
        for (Service service : KNOWLEDGE.ruleSet().services()) {
            if (service.chemistries().contains("oxidative-dye")) {
                assertThat(putTo(service.id())).as(service.id()).contains("colour-reaction", "black-tattoo",
                    "skin-today", "scalp-today");
            }
        }
    }

    @Test
    void everyServiceWithPeroxideThioHydroxideOrRemoverAsksForMetalCues() {
        Set<String> meet = Set.of("peroxide", "thio", "gmtg", "hydroxide", "remover");
        for (Service service : KNOWLEDGE.ruleSet().services()) {
            if (service.chemistries().stream().anyMatch(meet::contains)) {
                assertThat(putTo(service.id())).as(service.id())
                    .contains("treatments", "hair-length", "odd-fade");
            }
        }
    }

    @Test
    @DisplayName("R52: lotion, home colour and henna are asked once, each as a row of one list, and so is what nobody knows")
    void metalIsAskedForOnce() {
        assertThat(QUESTIONNAIRE.question("treatments").orElseThrow().rows()).extracting(Question.Row::head)
            .contains("restorer", "box-dye", "henna-black", "dont-know");
        for (String once : List.of("darkening-lotion", "home-colour", "henna", "henna-powder", "last-colour-by")) {
            assertThat(QUESTIONNAIRE.question(once).orElseThrow().retired()).as(once).isTrue();
            assertThat(putTo("colour-whole")).doesNotContain(once);
        }
    }

    @Test
    @DisplayName("R52: every kind of treatment stands under a row, so that nothing on file is lost when the list is ticked anew")
    void everyKindHasARow() {
        Question treatments = QUESTIONNAIRE.question("treatments").orElseThrow();
        assertThat(treatments.options()).allMatch(kind -> treatments.row(kind).isPresent());
    }

    @Test
    @DisplayName("R52: an answer given before to a question that is no longer put still counts, and can still be changed")
    void whatWasAnsweredBeforeCounts() {
        Answers old = Answers.NONE.with("darkening-lotion", Chosen.of("yes")).with("home-colour", Chosen.of("yes"));
        Set<String> chemistries = chemistries("colour-whole");
        assertThat(QUESTIONNAIRE.topics().stream().flatMap(t -> QUESTIONNAIRE.put(t, chemistries, old).stream())
            .map(Question::id)).contains("darkening-lotion", "home-colour").doesNotContain("henna");
        Question cues = QUESTIONNAIRE.question("home-colour-cues").orElseThrow();
        assertThat(QUESTIONNAIRE.status(cues, chemistries, Answers.NONE.with("treatments", new Treatments(List.of()))
            .with("home-colour", Chosen.of("yes")).with("darkening-lotion", Chosen.of("no"))))
            .as("opened by what was said then").isEqualTo(Question.Status.ASKED);
    }

    @Test
    void aPermAsksAboutPermsAndNotAboutTattoos() {
        String perm = KNOWLEDGE.ruleSet().services().stream()
            .filter(s -> s.chemistries().contains("thio") && !s.chemistries().contains("oxidative-dye"))
            .findFirst().orElseThrow().id();
        assertThat(putTo(perm)).contains("perm-reaction", "treatments", "medicines").doesNotContain("black-tattoo",
            "colour-reaction", "g6pd");
    }

    @Test
    void onlyPlantColourAsksAboutG6pd() {
        assertThat(QUESTIONNAIRE.question("g6pd").orElseThrow().askedFor()).containsExactly("plant-dye");
    }

    @Test
    void aNoOpensNothing() {
        for (Service service : KNOWLEDGE.ruleSet().services()) {
            Set<String> followUps =
                questions().filter(q -> !q.when().isEmpty()).map(Question::id).collect(Collectors.toSet());
            assertThat(putTo(service.id())).as(service.id()).doesNotContainAnyElementsOf(followUps);
        }
    }

    @ParameterizedTest
    @MethodSource("questions")
    void everyQuestionHasItsOwnWordsInEveryLanguage(Question question) {
        for (String language : KNOWLEDGE.languages()) {
            Words words = KNOWLEDGE.words(language);
            String at = "questions." + question.id() + ".";
            assertThat(words.own()).as(language).contains(at + "ask", at + "why", at + "short", "answers.dont-know",
                "answers.rather-not-say");
            assertThat(words.own()).as(language)
                .containsAll(question.options().stream().map(code -> at + "options." + code).toList());
        }
    }

    @Test
    void noWordsAreLeftOverFromAQuestionThatIsGone() {
        Set<String> known = new HashSet<>();
        topics().forEach(topic -> List.of("title", "ask", "hint", "list")
            .forEach(part -> known.add("topics." + topic.id() + "." + part)));
        questions().forEach(q -> {
            List.of("ask", "hint", "why", "short", "row")
                .forEach(part -> known.add("questions." + q.id() + "." + part));
            q.options().forEach(code -> known.addAll(List.of("questions." + q.id() + ".options." + code,
                "questions." + q.id() + ".ticks." + code)));
        });
        for (String language : KNOWLEDGE.languages()) {
            assertThat(KNOWLEDGE.words(language).own().stream()
                .filter(path -> path.startsWith("questions.") || path.startsWith("topics."))).as(language)
                .isSubsetOf(known);
        }
    }

    @ParameterizedTest
    @MethodSource("topics")
    @DisplayName("A21 English is read at eleven: Flesch-Kincaid grade 6 at most")
    void englishIsEasyToRead(Topic topic) {
        String text = topic.questions().stream().map(q -> sentences("en", q)).collect(Collectors.joining(" "));
        assertThat(ReadingAge.englishGrade(text)).isLessThanOrEqualTo(6);
    }

    @ParameterizedTest
    @MethodSource("questions")
    @DisplayName("A21 no single question is harder than grade 8")
    void noEnglishQuestionIsHard(Question question) {
        assertThat(ReadingAge.englishGrade(sentences("en", question))).isLessThanOrEqualTo(8);
    }

    @ParameterizedTest
    @MethodSource("topics")
    @DisplayName("A21 Spanish is at least fairly easy: 70 or more by Fernández Huerta")
    void spanishIsEasyToRead(Topic topic) {
        String text = topic.questions().stream().map(q -> sentences("es", q)).collect(Collectors.joining(" "));
        assertThat(ReadingAge.spanishEase(text)).isGreaterThanOrEqualTo(70);
    }

    @ParameterizedTest
    @MethodSource("questions")
    @DisplayName("A21 no sentence has more than twenty words")
    void sentencesAreShort(Question question) {
        for (String language : KNOWLEDGE.languages()) {
            all(language, question).flatMap(text -> ReadingAge.sentences(text).stream())
                .forEach(s -> assertThat(ReadingAge.words(s)).as(s)
                    .hasSizeLessThanOrEqualTo(ReadingAge.longestSentence(language)));
        }
    }

    @ParameterizedTest
    @MethodSource("questions")
    @DisplayName("A21 no jargon")
    void nobodyNeedsToKnowTheTrade(Question question) {
        for (String language : KNOWLEDGE.languages()) {
            all(language, question).forEach(text -> assertThat(JARGON).as(text)
                .noneMatch(word -> (" " + text.toLowerCase(Locale.ROOT)).matches("(?s).*[^\\p{L}]" + word + ".*")));
        }
    }

    @ParameterizedTest
    @MethodSource("questions")
    void aQuestionEndsWithAQuestionMark(Question question) {
        for (String language : KNOWLEDGE.languages()) {
            assertThat(KNOWLEDGE.words(language).question(question.id()).ask()).matches("(?s).*[?\u061f]");
        }
        assertThat(KNOWLEDGE.words("es").question(question.id()).ask()).startsWith("¿");
    }

    @ParameterizedTest
    @MethodSource("questions")
    void nothingIsCalledSafeAndNoMedicineIsToBeStopped(Question question) {
        String text = all("en", question).collect(Collectors.joining(" ")).toLowerCase(Locale.ROOT);
        assertThat(text).doesNotContain(" safe").doesNotContain("stop taking").doesNotContain("skip a dose");
    }

    @Test
    void shortNamesTellQuestionsApart() {
        for (String language : KNOWLEDGE.languages()) {
            Words words = KNOWLEDGE.words(language);
            assertThat(questions().map(q -> words.question(q.id()).short_())).as(language).doesNotHaveDuplicates();
        }
    }

    private static String sentences(String language, Question question) {
        QuestionWords words = KNOWLEDGE.words(language).question(question.id());
        return Stream.of(words.ask(), words.hint(), words.why()).collect(Collectors.joining(" "));
    }

    private static Stream<String> all(String language, Question question) {
        Words words = KNOWLEDGE.words(language);
        QuestionWords own = words.question(question.id());
        return Stream.concat(Stream.of(own.ask(), own.hint(), own.why(), own.short_()),
            Stream.concat(Stream.of(own.row()), question.options().stream()
                .flatMap(code -> Stream.of(words.option(question.id(), code), words.tick(question.id(), code)))))
            .filter(text -> !text.isEmpty());
    }
}
