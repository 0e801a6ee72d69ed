package foretress.intake;

import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.salon.Salon;
import foretress.visit.Visit;
import foretress.web.ClientWords;
import foretress.web.Language;
import io.quarkus.qute.i18n.Localized;
import io.quarkus.qute.i18n.MessageBundles;
import jakarta.enterprise.context.RequestScoped;
import java.time.ZonedDateTime;
import java.util.Locale;
import java.util.function.Supplier;

/** The words of the client's language, for sentences made in code. */
@RequestScoped
public class ClientLanguage {
    private final Language language;
    private final Knowledge knowledge;

    ClientLanguage(Language language, Knowledge knowledge) {
        this.language = language;
        this.knowledge = knowledge;
    }

    public ClientWords say() {
        return MessageBundles.get(ClientWords.class, Localized.Literal.of(language.getTag()));
    }

    Words words() {
        return knowledge.words(language.getTag());
    }

    /** Does it in another language, and goes on in this one. */
    <T> T in(String tag, Supplier<T> done) {
        String here = language.getTag();
        language.use(tag);
        try {
            return done.get();
        } finally {
            language.use(here);
        }
    }

    Locale locale() {
        return language.locale();
    }

    public String day(ZonedDateTime moment) {
        return Salon.the().dates(language.getTag()).full(moment);
    }

    public String dayAndTime(ZonedDateTime moment) {
        return Salon.the().dates(language.getTag()).fullAndHour(moment);
    }

    /** What the client may know of a decision: that the visit is put off, never why; that is said face to face. Empty when it is not. */
    public String postponed(Visit visit) {
        if (!visit.postponed) {
            return "";
        }
        return visit.postponedUntil()
            .map(day -> say().done_postponed_until(day(day.atStartOfDay(visit.zone()))))
            .orElseGet(say()::done_postponed);
    }

    /** Who calls, and by when. */
    String call(Care.Promise promise) {
        String until = dayAndTime(promise.until().atZone(Salon.the().zoneId()));
        return promise.name().isEmpty() ? say().care_call_desk(until) : say().care_call(promise.name(), until);
    }
}
