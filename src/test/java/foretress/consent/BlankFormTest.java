package foretress.consent;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.consent.BlankForm.Asked;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Loaded;
import java.time.Instant;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Execution(ExecutionMode.CONCURRENT)
class BlankFormTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;

    private static Asked asked(String language, String... chemistries) {
        Notice notice = Notice.of(language, Consenting.SALON, new Notice.Terms(6, 21, "uk"), ConsentWords.in(language));
        return new Asked(language, Consenting.SALON, "Ottilie Brandt", Consenting.aConsent().input().visit(), notice,
            KNOWLEDGE.questionnaire(), KNOWLEDGE.words(language), Set.of(chemistries));
    }

    private static byte[] form(Asked asked) {
        return BlankForm.print(asked, PaperSize.A4, Instant.parse("2026-06-01T09:00:00Z"));
    }

    @ParameterizedTest
    @ValueSource(strings = { "en", "es" })
    @DisplayName("D11: whoever refuses the screen is asked the very same questions on paper")
    void thePaperAsksWhatTheScreenAsks(String language) {
        Asked asked = asked(language, "oxidative-dye", "peroxide", "alkali");
        String printed = Read.plain(Read.body(ConsentPaperTest.shown("blank-" + language, form(asked))));
        asked.questionnaire().questions().stream().filter(question -> !question.retired())
            .filter(question -> question.askedFor().isEmpty() || question.askedFor().contains("oxidative-dye"))
            .forEach(question -> {
                assertThat(printed).as(question.id()).contains(Read.plain(asked.words().question(question.id()).ask()));
                if (question.kind() == foretress.questionnaire.Question.Kind.ONE_OF) {
                    question.options().forEach(
                        code -> assertThat(printed).contains(Read.plain(asked.words().option(question.id(), code))));
                }
            });
        assertThat(printed).contains(Read.plain(asked.notice().agree()));
    }

    @Test
    @DisplayName("C11: what the booked service does not need is not asked on paper either")
    void aCutAsksLess() {
        assertThat(Read.plain(Read.body(form(asked("en", "none")))).length())
            .isLessThan(Read.plain(Read.body(form(asked("en", "oxidative-dye")))).length());
    }

    @Test
    @DisplayName("D1: the blank form is PDF/A-2b too")
    void theFormIsArchivable() {
        assertThat(VeraPdf.brokenRules(form(asked("es", "thio", "persulfate")))).isEmpty();
    }
}
