package foretress.told;

import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.salon.Salon;
import foretress.skintest.AftercareWords;
import foretress.web.Language;
import foretress.web.PictureWords;
import io.quarkus.qute.i18n.Localized;
import io.quarkus.qute.i18n.MessageBundles;
import jakarta.enterprise.context.RequestScoped;
import java.time.Instant;
import java.time.LocalDate;

/** The client's language, for sentences made in code. */
@RequestScoped
class ClientSpeech {
    private final Language language;
    private final Knowledge knowledge;

    ClientSpeech(Language language, Knowledge knowledge) {
        this.language = language;
        this.knowledge = knowledge;
    }

    String tag() {
        return language.getTag();
    }

    AftercareWords say() {
        return MessageBundles.get(AftercareWords.class, Localized.Literal.of(language.getTag()));
    }

    PictureWords pictures() {
        return MessageBundles.get(PictureWords.class, Localized.Literal.of(language.getTag()));
    }

    Words words() {
        return knowledge.words(language.getTag());
    }

    String day(Instant moment) {
        return Salon.the().dates(language.getTag()).full(moment.atZone(Salon.the().zoneId()));
    }

    String day(LocalDate day) {
        return Salon.the().dates(language.getTag()).full(day);
    }

    String dayAndTime(Instant moment) {
        return Salon.the().dates(language.getTag()).fullAndHour(moment.atZone(Salon.the().zoneId()));
    }
}
