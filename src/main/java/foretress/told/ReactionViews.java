package foretress.told;

import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.salon.Staff;
import foretress.visit.Visit;
import foretress.web.DateWords;
import foretress.web.Language;
import jakarta.enterprise.context.RequestScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What clients told of reactions, in the words of staff. */
@RequestScoped
public class ReactionViews {
    /**
     * One telling.
     *
     * @param what what it did, when it began, where it is
     * @param words as the client wrote them; empty when nothing was added
     * @param struck by whom and when it was struck out, and why; empty while it weighs
     */
    public record Line(String id, String when, String what, String words, Optional<String> struck) {
        /** The field in which the owner says why it is struck out. */
        public String whyField() {
            return "why-" + id;
        }

        public String proofField() {
            return "password-" + id;
        }
    }

    private final Reactions reactions;
    private final Knowledge knowledge;
    private final Language language;
    private final ToldWords say;

    ReactionViews(Reactions reactions, Knowledge knowledge, Language language, ToldWords say) {
        this.reactions = reactions;
        this.knowledge = knowledge;
        this.language = language;
        this.say = say;
    }

    /** Everything the client of this visit ever told, newest first. */
    public List<Line> of(Visit visit) {
        return reactions.of(visit.client.id).stream().map(told -> line(told, visit)).toList();
    }

    /** What was told by the link of this visit alone, a line each. */
    public List<String> said(Visit visit) {
        return reactions.of(visit.client.id).stream().filter(told -> told.visitId().equals(visit.id))
            .map(told -> line(told, visit)).map(ReactionViews::whole).toList();
    }

    private static String whole(Line line) {
        return Stream.concat(Stream.of(line.when() + ": " + line.what(), line.words()), line.struck().stream())
            .filter(part -> !part.isEmpty()).collect(Collectors.joining(" "));
    }

    private Line line(ToldReaction told, Visit visit) {
        Telling telling = reactions.read(told);
        return new Line(told.id().toString(), at(told.toldAt(), visit), what(telling), telling.words(),
            told.struckAt().map(when -> say.struck(name(told.struckBy()), at(when, visit), reactions.struckWhy(told))));
    }

    private String what(Telling telling) {
        String felt = telling.felt().stream().map(one -> words().option(Felt.QUESTION, one.code()))
            .collect(Collectors.joining("; "));
        String began = telling.began().map(one -> words().option("colour-reaction-soon", one.code()))
            .orElseGet(say::began_unknown);
        String where = telling.where().stream().map(this::where).collect(Collectors.joining(", "));
        return say.what(felt, began) + (where.isEmpty() ? "" : " " + say.where(where));
    }

    private String where(Where where) {
        return switch (where) {
            case SCALP -> say.where_scalp();
            case EDGE -> say.where_edge();
            case FACE -> say.where_face();
            case BODY -> say.where_body();
        };
    }

    private String at(Instant moment, Visit visit) {
        return new DateWords(language.locale()).dateAndHour(moment.atZone(visit.zone()));
    }

    private static String name(Optional<UUID> staff) {
        return staff.flatMap(Staff::byId).map(one -> one.name).orElse("");
    }

    private Words words() {
        return knowledge.words(language.getTag());
    }
}
