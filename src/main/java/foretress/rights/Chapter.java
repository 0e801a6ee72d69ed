package foretress.rights;

import foretress.questionnaire.Code;
import java.util.function.Function;

/** Under which heading the overview of a record shows what a table keeps, in the order of reading. */
enum Chapter {
    YOU(RightsWords::chapter_you), VISITS(RightsWords::chapter_visits), AGREED(RightsWords::chapter_agreed),
    ANSWERS(RightsWords::chapter_answers), FOUND(RightsWords::chapter_found), TESTS(RightsWords::chapter_tests),
    DECIDED(RightsWords::chapter_decided), PHOTOS(RightsWords::chapter_photos), TOLD(RightsWords::chapter_told),
    MESSAGES(RightsWords::chapter_messages);

    private final Function<RightsWords, String> heading;

    Chapter(Function<RightsWords, String> heading) {
        this.heading = heading;
    }

    String heading(RightsWords say) {
        return heading.apply(say);
    }

    static Chapter of(String code) {
        return Code.in(Chapter.class, code)
            .orElseThrow(() -> new IllegalStateException("no chapter of a record: " + code));
    }
}
