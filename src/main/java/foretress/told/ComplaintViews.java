package foretress.told;

import foretress.salon.Salon;
import foretress.salon.Staff;
import foretress.visit.Visit;
import foretress.web.DateWords;
import foretress.web.Language;
import jakarta.enterprise.context.RequestScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Complaints in the words of staff: what became of them, never what they say, but on the owner's own page. */
@RequestScoped
public class ComplaintViews {
    /**
     * One that waits.
     *
     * @param stands when it was made, and who acknowledged it
     * @param by by when it must be acknowledged; empty once it was
     */
    public record Line(String id, String client, String stands, String by, boolean late) {}

    /** The whole of one, for the owner. */
    public record Whole(String id, String client, String visit, String made, String words, String language, String by,
        boolean late, String acknowledged, String answered, String answer) {}

    private final ComplaintsMade complaints;
    private final Language language;
    private final ToldWords say;
    private final Clock clock;

    ComplaintViews(ComplaintsMade complaints, Language language, ToldWords say, Clock clock) {
        this.complaints = complaints;
        this.language = language;
        this.say = say;
        this.clock = clock;
    }

    /** Those that nobody answered yet, the most pressing first. */
    public List<Line> unanswered() {
        return complaints.unanswered().stream().map(this::line).toList();
    }

    private Line line(ComplaintMade made) {
        String at = say.complaint_made(at(made.madeAt()));
        return new Line(made.id().toString(), client(made).client.fullName(),
            made.acknowledgedAt().isEmpty() ? at : at + " " + acknowledged(made), by(made), late(made));
    }

    /** What a record card says of the complaints made by the link of a visit. */
    public List<String> said(Visit visit) {
        return complaints.ofVisit(visit).stream().map(made -> String.join(" ", List.of(
            say.complaint_made(at(made.madeAt())), acknowledged(made), answered(made))).strip()).toList();
    }

    Whole of(ComplaintMade made) {
        ComplaintsMade.Words words = complaints.read(made);
        return new Whole(made.id().toString(), client(made).client.fullName(), made.visitId().toString(),
            say.complaint_made(at(made.madeAt())), words.words(), words.language(), by(made), late(made),
            acknowledged(made), answered(made), complaints.answer(made));
    }

    private static Visit client(ComplaintMade made) {
        return Visit.findById(made.visitId());
    }

    private String by(ComplaintMade made) {
        return made.acknowledgedAt().isEmpty() ? say.complaint_by(day(made.acknowledgeBy())) : "";
    }

    private boolean late(ComplaintMade made) {
        return made.acknowledgedAt().isEmpty()
            && LocalDate.ofInstant(clock.instant(), zone()).isAfter(made.acknowledgeBy());
    }

    private String acknowledged(ComplaintMade made) {
        return made.acknowledgedAt().map(at -> say.complaint_acknowledged(name(made.acknowledgedBy()), at(at)))
            .orElse("");
    }

    private String answered(ComplaintMade made) {
        return made.answeredAt().map(at -> say.complaint_answered(name(made.answeredBy()), at(at))).orElse("");
    }

    private static String name(Optional<UUID> staff) {
        return staff.flatMap(Staff::byId).map(one -> one.name).orElse("");
    }

    private String day(LocalDate day) {
        return new DateWords(language.locale()).date(day);
    }

    private String at(Instant moment) {
        return new DateWords(language.locale()).dateAndHour(moment.atZone(zone()));
    }

    private static ZoneId zone() {
        return Salon.the().zoneId();
    }
}
