package foretress.intake;

import foretress.consent.Evidence;
import foretress.consent.SignatureMark;
import foretress.salon.Policies;
import foretress.vault.SealedJson;
import foretress.visit.Visit;
import foretress.web.ClientWords;
import foretress.web.Form;
import foretress.web.Mistake;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Who is too young to agree and sign alone, and who does it with them. */
@Singleton
public class Guardians {
    static final String NAME = "guardian-name";
    static final String RELATION = "guardian-relation";
    /** In front of the fields of the second signature. */
    static final String SECOND = "guardian-";
    private static final List<String> RELATIONS = List.of("parent", "guardian", "responsible");
    private static final int LONGEST = 120;

    private final Policies policies;
    private final SealedJson sealed;
    private final Clock clock;

    /**
     * Somebody who answers for a client.
     *
     * @param relation to the client, one of the codes of the form
     */
    public record Named(String name, String relation) {
        public boolean isWhole() {
            return !name.isEmpty() && name.length() <= LONGEST && RELATIONS.contains(relation);
        }

        public boolean is(String code) {
            return relation.equals(code);
        }
    }

    /**
     * What a page shows of it.
     *
     * @param below the age below which somebody signs with the client, in years
     */
    public record Asked(int below, String name, String relation, String nameMistake, String relationMistake,
        String typed, String kind, String markMistake) {}

    Guardians(Policies policies, SealedJson sealed, Clock clock) {
        this.policies = policies;
        this.sealed = sealed;
        this.clock = clock;
    }

    private int below() {
        return policies.effective().figure("guardian-below-age");
    }

    /** On the salon's day; without a birth date nobody is known to be old enough, but no door opens without one. */
    public boolean needed(Visit visit) {
        LocalDate today = clock.instant().atZone(visit.zone()).toLocalDate();
        return visit.client.birthDate().filter(born -> born.plusYears(below()).isAfter(today)).isPresent();
    }

    /** Who agreed that health answers are held. */
    Optional<Named> agreed(Visit visit) {
        return HealthConsent.newest(visit.id).flatMap(consent -> consent.guardian()
            .map(kept -> sealed.open(consent.clientId(), consent.place("guardian"), kept, Named.class)));
    }

    void keep(HealthConsent consent, Named guardian) {
        consent.agreedBy(place -> sealed.seal(consent.clientId(), place, guardian));
    }

    /** Name and relation; what is missing is said among the mistakes. Empty where nobody is needed. */
    public Optional<Named> named(Visit visit, Form form, List<Mistake> mistakes, ClientWords say) {
        if (!needed(visit)) {
            return Optional.empty();
        }
        String name = form.one(NAME);
        if (name.isEmpty() || name.length() > LONGEST) {
            mistakes.add(new Mistake(NAME, say.guardian_name_missing()));
        }
        if (!RELATIONS.contains(form.one(RELATION))) {
            mistakes.add(new Mistake(RELATION, say.guardian_relation_missing()));
        }
        return Optional.of(new Named(name, form.one(RELATION)));
    }

    /** The same with the second signature. */
    public Optional<Evidence.Guardian> signed(Visit visit, Form form, List<Mistake> mistakes, ClientWords say) {
        int before = mistakes.size();
        Optional<Named> named = named(visit, form, mistakes, say);
        Optional<SignatureMark> mark =
            named.isEmpty() ? Optional.empty() : MarkField.of(form, SECOND).read(mistakes, say);
        return mark.filter(any -> mistakes.size() == before)
            .map(drawn -> new Evidence.Guardian(named.orElseThrow().name(),
                relation(named.orElseThrow().relation(), say), drawn));
    }

    private static String relation(String code, ClientWords say) {
        return switch (code) {
            case "parent" -> say.guardian_parent();
            case "guardian" -> say.guardian_legal();
            default -> say.guardian_responsible();
        };
    }

    /** What the page shows; empty where nobody is needed. What was typed comes first, then who agreed before. */
    public Optional<Asked> asked(Visit visit, Form form, List<Mistake> mistakes) {
        Named before = agreed(visit).orElse(new Named("", ""));
        return needed(visit) ? Optional.of(new Asked(below(), or(form.one(NAME), before.name()),
            or(form.one(RELATION), before.relation()), at(mistakes, NAME), at(mistakes, RELATION),
            form.one(SECOND + "typed"), MarkField.of(form, SECOND).kind().code(), at(mistakes, SECOND + "mark")))
            : Optional.empty();
    }

    private static String or(String typed, String before) {
        return typed.isEmpty() ? before : typed;
    }

    private static String at(List<Mistake> mistakes, String field) {
        return mistakes.stream().filter(one -> one.field().equals(field)).map(Mistake::text).findFirst().orElse("");
    }
}
