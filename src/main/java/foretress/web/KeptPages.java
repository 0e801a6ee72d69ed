package foretress.web;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.inject.Singleton;

/** The page that holds what was typed, with one button that sends it again. */
@Singleton
public class KeptPages {
    /** Why a form was not taken at once. */
    public enum Why { STALE, SIGNED_IN, LINK_AGAIN }

    @CheckedTemplate(basePath = "web", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record KeptPage(String title, String why, UnsentForm kept) implements TemplateInstance {}

    private final ClientWords say;

    KeptPages(ClientWords say) {
        this.say = say;
    }

    /** Rendered, for filters to answer with. */
    public String page(Why why, UnsentForm kept) {
        return page(why, kept, "").render();
    }

    /** @param who signed in just now */
    public TemplateInstance page(Why why, UnsentForm kept, String who) {
        return switch (why) {
            case STALE -> new KeptPage(say.kept_title(), say.kept_stale(), kept);
            case SIGNED_IN -> new KeptPage(say.kept_title(), say.kept_signed_in(who), kept);
            case LINK_AGAIN -> new KeptPage(say.use_link_title(), say.kept_link(), kept);
        };
    }
}
