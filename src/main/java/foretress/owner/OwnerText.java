package foretress.owner;

import foretress.knowledge.Knowledge;
import foretress.ledger.TrailVerdict;
import foretress.salon.Staff;
import foretress.told.ToldWords;
import foretress.visit.Task;
import foretress.visit.Visit;
import foretress.web.ChairTime;
import foretress.web.DateWords;
import foretress.web.Language;
import jakarta.enterprise.context.RequestScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** The owner's page in words. */
@RequestScoped
class OwnerText {
    /** Staff by id, in one read. */
    record People(Map<UUID, String> staff) {
        String named(UUID id) {
            return staff.getOrDefault(id, "");
        }
    }

    /** @param tests what was not tested; blank where that is not what is wrong */
    public record Undone(String visitId, String client, String when, String tests) {}

    public record Against(String visitId, String client, String when, String by, List<String> findings,
        String reason) {}

    public record ToDo(String visitId, String client, String what, String who, String until, boolean late) {}

    /** @param before how far the chain holds; blank where it holds throughout */
    public record Chain(boolean whole, String words, String before) {}

    private final Knowledge knowledge;
    private final Language language;
    private final OwnerWords say;
    private final TrailWords trail;
    private final ToldWords told;
    private final ChairTime time;
    private final Clock clock;

    OwnerText(Knowledge knowledge, Language language, OwnerWords say, TrailWords trail, ToldWords told, ChairTime time,
        Clock clock) {
        this.told = told;
        this.knowledge = knowledge;
        this.language = language;
        this.say = say;
        this.trail = trail;
        this.time = time;
        this.clock = clock;
    }

    People people() {
        return new People(Staff.names());
    }

    String month(YearMonth month) {
        return new DateWords(language.locale()).month(month);
    }

    Undone undone(Oversight.Closed closed) {
        return new Undone(closed.visit().id.toString(), closed.visit().client.fullName(),
            at(closed.visit(), closed.at()),
            String.join(", ",
                closed.untested().stream().map(test -> knowledge.words(language.getTag()).test(test)).toList()));
    }

    Against against(Oversight.Override one, People people) {
        return new Against(one.visit().id.toString(), one.visit().client.fullName(), at(one.visit(), one.at()),
            people.named(one.by()),
            one.rules().stream().map(this::title).toList(), one.reason());
    }

    /** A rule that knowledge no longer has goes by its id. */
    private String title(String rule) {
        return knowledge.ruleSet().rule(rule)
            .map(known -> knowledge.words(language.getTag()).finding(rule, false).title()).orElse(rule);
    }

    ToDo toDo(Task task, People people) {
        String what = switch (task.kind()) {
            case CALL -> say.task_call();
            case SPEAK_AT_ONCE -> say.task_speak();
            case ASK_AFTER -> say.task_ask();
            case UNLOCK_LINK -> say.task_unlock();
            case CONFIRM_BIRTH_DATE -> say.task_birth();
            case COMPLAINT -> told.task_complaint_own();
            case REQUEST -> say.task_request();
            case TAKEN_BACK -> say.task_taken_back();
        };
        return new ToDo(task.visit.id.toString(), task.visit.client.fullName(), what,
            task.owner().map(people::named).orElseGet(say::task_desk),
            say.until(at(task.visit, task.dueAt)), task.dueAt.isBefore(clock.instant()));
    }

    Chain chain(TrailVerdict found, ZonedDateTime now) {
        String when = time.dayAndTime(now);
        return found.firstBroken()
            .map(number -> new Chain(false, say.chain_broken(when, number), say.chain_broken_before(found.whole())))
            .or(() -> found.against().map(
                slip -> new Chain(false, trail.anew(when, slip.last()),
                    trail.anew_between(found.proven() + 1, slip.last()))))
            .orElseGet(() -> new Chain(true, say.chain_whole(when, found.whole()), ""));
    }

    /** The chain held against slips from outside: unbroken up to the last entry they speak for, and how many follow it. */
    Chain proof(TrailVerdict found, ZonedDateTime now) {
        return found.holds()
            ? new Chain(true, trail.unbroken(found.proven()), trail.unproven(found.unproven())) : chain(found, now);
    }

    private String at(Visit visit, Instant moment) {
        return time.dayAndTime(moment.atZone(visit.zone()));
    }
}
