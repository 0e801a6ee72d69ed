package foretress.salon;

import foretress.assessment.Source;
import jakarta.inject.Singleton;

/** What kind of source a limit or a rule has, in the staff's words: nobody takes a house rule for the law. */
@Singleton
public class SourceKinds {
    private final SettingsWords words;

    SourceKinds(SettingsWords words) {
        this.words = words;
    }

    public String of(Source.Kind kind) {
        return switch (kind) {
            case LAW -> words.kind_law();
            case MAKER -> words.kind_maker();
            case TRADE_RULE -> words.kind_trade_rule();
            case HOUSE_RULE -> words.kind_house_rule();
            case HEALTH_ADVICE -> words.kind_health_advice();
            case RESEARCH -> words.kind_research();
            case TEACHING -> words.kind_teaching();
        };
    }
}
