package foretress.start;

import foretress.alternative.InsteadWords;
import foretress.api.ProgramWords;
import foretress.backup.BackupWords;
import foretress.bench.BenchWords;
import foretress.bench.HowWords;
import foretress.card.CardWords;
import foretress.closing.ClosingWords;
import foretress.decision.DecisionWords;
import foretress.note.NoteWords;
import foretress.owner.OwnerWords;
import foretress.owner.TrailWords;
import foretress.rights.RequestWords;
import foretress.salon.SettingsWords;
import foretress.skintest.SkinWords;
import foretress.told.ToldWords;
import foretress.web.ClientWords;
import foretress.web.Language;
import foretress.web.PictureWords;
import foretress.web.StaffLanguage;
import foretress.web.StaffWords;
import foretress.web.StylistWords;
import foretress.web.Supported;
import foretress.web.TypedWords;
import io.quarkus.arc.Arc;
import io.quarkus.qute.Resolver;
import io.quarkus.qute.i18n.Localized;
import io.quarkus.qute.i18n.MessageBundles;
import jakarta.annotation.Priority;
import jakarta.enterprise.inject.Alternative;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * The words as code says them, to staff and on some pages to clients: an injected bundle of Qute speaks the default language only, so each
 * is stood in for by one that asks, at every sentence, which language the page is made in. Templates need none of this.
 */
@Singleton
@Alternative
@Priority(1)
class StaffBundles {
    private final StaffLanguage language;
    private final Language page;

    StaffBundles(StaffLanguage language, Language page) {
        this.language = language;
        this.page = page;
    }

    /** What clients read too stands in every language of theirs. */
    private String clients() {
        return Arc.container().requestContext().isActive() ? page.getTag() : Supported.ORIGINAL;
    }

    /** The engine takes the default bundle for its own resolver, so the stand-in is one too; a template names its language by itself. */
    private <T> T spoken(Class<T> bundle) {
        return spoken(bundle, language::tag);
    }

    private <T> T spoken(Class<T> bundle, Supplier<String> here) {
        Map<String, T> said = new ConcurrentHashMap<>();
        return bundle.cast(
            Proxy.newProxyInstance(bundle.getClassLoader(), new Class<?>[] { bundle, Resolver.class },
                (proxy, sentence, places) -> {
                    String tag = sentence.getDeclaringClass().equals(bundle) ? here.get() : Supported.ORIGINAL;
                    return say(said.computeIfAbsent(tag, one -> MessageBundles.get(bundle, Localized.Literal.of(one))),
                        sentence,
                        places);
                }));
    }

    private static Object say(Object bundle, Method sentence, Object[] places) throws Throwable {
        try {
            return sentence.invoke(bundle, places);
        } catch (InvocationTargetException failed) {
            throw failed.getCause();
        }
    }

    @Produces
    @Singleton
    ProgramWords programWords() {
        return spoken(ProgramWords.class);
    }

    @Produces
    @Singleton
    BenchWords benchWords() {
        return spoken(BenchWords.class);
    }

    @Produces
    @Singleton
    HowWords howWords() {
        return spoken(HowWords.class);
    }

    @Produces
    @Singleton
    CardWords cardWords() {
        return spoken(CardWords.class);
    }

    @Produces
    @Singleton
    ClosingWords closingWords() {
        return spoken(ClosingWords.class);
    }

    @Produces
    @Singleton
    DecisionWords decisionWords() {
        return spoken(DecisionWords.class);
    }

    @Produces
    @Singleton
    NoteWords noteWords() {
        return spoken(NoteWords.class);
    }

    @Produces
    @Singleton
    OwnerWords ownerWords() {
        return spoken(OwnerWords.class);
    }

    @Produces
    @Singleton
    BackupWords backupWords() {
        return spoken(BackupWords.class);
    }

    @Produces
    @Singleton
    RequestWords requestWords() {
        return spoken(RequestWords.class);
    }

    @Produces
    @Singleton
    TrailWords trailWords() {
        return spoken(TrailWords.class);
    }

    @Produces
    @Singleton
    SettingsWords settingsWords() {
        return spoken(SettingsWords.class);
    }

    @Produces
    @Singleton
    SkinWords skinWords() {
        return spoken(SkinWords.class);
    }

    @Produces
    @Singleton
    StaffWords staffWords() {
        return spoken(StaffWords.class);
    }

    @Produces
    @Singleton
    StylistWords stylistWords() {
        return spoken(StylistWords.class);
    }

    @Produces
    @Singleton
    TypedWords typedWords() {
        return spoken(TypedWords.class);
    }

    @Produces
    @Singleton
    ToldWords toldWords() {
        return spoken(ToldWords.class);
    }

    @Produces
    @Singleton
    ClientWords clientWords() {
        return spoken(ClientWords.class, this::clients);
    }

    @Produces
    @Singleton
    InsteadWords insteadWords() {
        return spoken(InsteadWords.class, this::clients);
    }

    @Produces
    @Singleton
    PictureWords pictureWords() {
        return spoken(PictureWords.class, this::clients);
    }
}
