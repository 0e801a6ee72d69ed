package foretress.decision;

import foretress.web.Form;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;

/**
 * The decision form, word for word as it was filled in.
 *
 * @param decided how many decisions of the visit stood on the page
 */
public record DecisionForm(String submission, String assessment, String decided, List<One> services, String reason) {
    static final int LONGEST = 1000;

    /** What was filled in about one service. */
    public record One(String verdict, String until, String conditions, String alternative) {
        public boolean is(String code) {
            return verdict.equals(code);
        }

        Optional<Verdict> chosen() {
            return Verdict.of(verdict);
        }

        Optional<LocalDate> day() {
            try {
                return Optional.of(LocalDate.parse(until)).filter(d -> d.getYear() > 1999 && d.getYear() < 2200);
            } catch (DateTimeParseException notADay) {
                return Optional.empty();
            }
        }
    }

    static DecisionForm blank(UUID assessment, int decided, int services) {
        return new DecisionForm(UUID.randomUUID().toString(), assessment.toString(), Integer.toString(decided),
            IntStream.range(0, services).mapToObj(i -> new One("", "", "", "")).toList(), "");
    }

    static DecisionForm from(Form form, int services) {
        return new DecisionForm(form.one("submission"), form.one("assessment"), form.one("decided"),
            IntStream.range(0, services)
                .mapToObj(i -> new One(form.one("verdict-" + i), form.one("until-" + i), form.one("conditions-" + i),
                    form.one("alternative-" + i)))
                .toList(),
            form.one("reason"));
    }

    /** Every word that was typed, on a newer assessment; what is decided about it is chosen anew. */
    DecisionForm lookedAt(UUID newer, int decisions) {
        return new DecisionForm(submission, newer.toString(), Integer.toString(decisions),
            services.stream().map(one -> new One("", one.until(), one.conditions(), one.alternative())).toList(),
            reason);
    }

    /** Whether the page showed what holds now. */
    boolean isOn(UUID newest, int decisions) {
        return newest.toString().equals(assessment) && Integer.toString(decisions).equals(decided);
    }

    public static Optional<UUID> uuid(String text) {
        try {
            return Optional.of(UUID.fromString(text));
        } catch (IllegalArgumentException notAnId) {
            return Optional.empty();
        }
    }

    /** Whole only when no mistake was noted. */
    Decisions.Wanted wanted(Optional<String> provedReason) {
        return new Decisions.Wanted(UUID.fromString(submission), UUID.fromString(assessment), Integer.parseInt(decided),
            services.stream().map(DecisionForm::choice).toList(), provedReason);
    }

    private static Decisions.Choice choice(One one) {
        Verdict verdict = one.chosen().orElseThrow();
        boolean ahead = verdict.goesAhead();
        return new Decisions.Choice(verdict, verdict == Verdict.POSTPONE ? one.day() : Optional.empty(),
            verdict == Verdict.PROCEED ? "" : one.conditions(),
            ahead || one.alternative().isEmpty() ? Optional.empty() : Optional.of(one.alternative()));
    }
}
