package foretress.day;

import foretress.alternative.InsteadWords;
import foretress.assessment.TestFact;
import foretress.assessment.Weight;
import foretress.bench.RefusedPages;
import foretress.intake.Plans;
import foretress.knowledge.Knowledge;
import foretress.post.Post;
import foretress.salon.Menu;
import foretress.salon.Staff;
import foretress.skintest.SkinWords;
import foretress.visit.ServiceWish;
import foretress.visit.State;
import foretress.visit.Task;
import foretress.visit.Visit;
import foretress.web.ChairTime;
import foretress.web.Language;
import foretress.web.StylistWords;
import foretress.web.WeightSaid;
import jakarta.enterprise.context.RequestScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

/** What the day sheet says of a visit. Everything that is looked up is looked up once for all of them. */
@RequestScoped
class DayText {
    private static final Duration PRESSING = Duration.ofHours(24);

    /** How many visits, how many of them stopped, how many not answered. */
    public record Count(int visits, int stopped, int unanswered) {}

    public record MustCome(String client, String what, String latest, boolean soon, DayRow.Act act) {}

    public record Promise(String id, String client, String clientId, String who, String until, Optional<String> phone,
        String dial) {}

    /** What was looked up for the page: why visits stand where they do, which other service was asked for, who must be spoken to, who is who. */
    record Looked(Map<UUID, String> reasons, Map<UUID, String> wishes, Map<UUID, Task> speak, Map<UUID, String> staff,
        boolean mail) {}

    private final DayReasons reasons;
    private final ServiceWish wish;
    private final InsteadWords instead;
    private final Knowledge knowledge;
    private final Menu menu;
    private final Post post;
    private final Language language;
    private final StylistWords say;
    private final SkinWords skin;
    private final ChairTime time;
    private final Clock clock;
    private final Map<String, String> names = new HashMap<>();

    DayText(DayReasons reasons, ServiceWish wish, InsteadWords instead, Knowledge knowledge, Menu menu, Post post,
        Language language, StylistWords say,
        SkinWords skin, ChairTime time, Clock clock) {
        this.reasons = reasons;
        this.wish = wish;
        this.instead = instead;
        this.knowledge = knowledge;
        this.menu = menu;
        this.post = post;
        this.language = language;
        this.say = say;
        this.skin = skin;
        this.time = time;
        this.clock = clock;
    }

    Looked look(List<Visit> onDay, List<Task> open) {
        return new Looked(reasons.of(onDay), wish.of(onDay),
            open.stream().filter(t -> t.kind() == Task.Kind.SPEAK_AT_ONCE)
                .collect(Collectors.toMap(t -> t.visit.id, t -> t, (one, other) -> one)),
            Staff.names(), post.canSend());
    }

    Count count(List<DayRow> rows) {
        return new Count(rows.size(), (int) rows.stream().filter(DayRow::isStopped).count(),
            (int) rows.stream().filter(DayRow::isUnanswered).count());
    }

    DayRow row(Visit visit, Looked looked) {
        boolean over = visit.state == State.CLOSED;
        Optional<DayRow.Halt> halt = over ? Optional.empty() : halt(visit, looked);
        Optional<Weight> standing = standing(visit);
        return new DayRow(visit.id.toString(), time.hour(visit.startsThere()), visit.client.fullName(), services(visit),
            over, halt, unsaid(visit),
            over || visit.signed().isPresent() ? "" : left(visit),
            stand(standing, over ? say.day_closed() : because(visit, looked), over ? "" : by(visit)),
            over ? Optional.empty() : act(visit, standing, looked));
    }

    DayRow coming(Visit visit, Looked looked) {
        Optional<Weight> standing = standing(visit);
        return new DayRow(visit.id.toString(), time.dayAndTime(visit.startsThere()), visit.client.fullName(),
            services(visit), false, halt(visit, looked),
            unsaid(visit), "", stand(standing, "", ""), Optional.empty());
    }

    private DayRow.Stand stand(Optional<Weight> weight, String because, String by) {
        return new DayRow.Stand(weight, weight.map(w -> WeightSaid.of(w, say)).orElse(""), because, by);
    }

    MustCome mustCome(Visit visit) {
        Visit.Owed owed = visit.owed().orElseThrow();
        boolean soon = owed.by().filter(by -> by.isBefore(clock.instant().plus(PRESSING))).isPresent();
        return new MustCome(visit.client.fullName(), test(owed) + ", " + time.dayAndTime(visit.startsThere()),
            owed.by().map(by -> latest(visit, by)).orElse(""), soon, bring(visit, owed));
    }

    Promise promise(Task task, Looked looked) {
        String name = task.owner().map(looked.staff()::get).orElse("");
        String who = switch (task.kind()) {
            case SPEAK_AT_ONCE -> skin.day_speak(name);
            case ASK_AFTER -> skin.day_ask();
            default -> name.isEmpty() ? say.day_promised_desk() : say.day_promised(name);
        };
        return new Promise(task.id.toString(), task.visit.client.fullName(), task.visit.client.id.toString(), who,
            say.day_until(at(task.visit, task.dueAt)), task.visit.client.phone(), task.visit.client.dial());
    }

    /** Something came up that cannot wait, it was put off, or consent was taken back. */
    private Optional<DayRow.Halt> halt(Visit visit, Looked looked) {
        Task speak = looked.speak().get(visit.id);
        if (speak != null && visit.state.isAhead()) {
            return Optional.of(new DayRow.Halt(say.day_stopped(), say.day_stopped_told(),
                say.day_stopped_call(at(visit, speak.dueAt))));
        }
        if (visit.state == State.WITHDRAWN) {
            return Optional.of(new DayRow.Halt(say.day_stopped(), say.day_stopped_withdrawn(), ""));
        }
        if (!visit.postponed) {
            return Optional.empty();
        }
        return Optional.of(new DayRow.Halt(say.day_put_off(), say.day_put_off_why(), visit.postponedUntil()
            .map(day -> say.day_put_off_until(time.day(day.atStartOfDay(visit.zone())))).orElse("")));
    }

    /** A standing is shown once the client has signed; before that it would be a guess. */
    private static Optional<Weight> standing(Visit visit) {
        return visit.signed().isEmpty() ? Optional.empty() : visit.standing().map(Weight.BY_CODE::get);
    }

    private String unsaid(Visit visit) {
        return visit.signed().isPresent() ? ""
            : visit.state == State.ANSWERING ? say.day_half_answered() : say.day_not_answered();
    }

    private String left(Visit visit) {
        Duration left = Duration.between(clock.instant(), visit.startsAt);
        if (left.isNegative()) {
            return say.day_left_none();
        }
        return left.compareTo(PRESSING) > 0 ? "" : say.day_left((int) left.toHours(), left.toMinutesPart());
    }

    private String because(Visit visit, Looked looked) {
        return Optional.ofNullable(looked.wishes().get(visit.id)).map(id -> instead.asked(service(id)))
            .or(() -> visit.owed().map(this::test))
            .orElseGet(() -> looked.reasons().getOrDefault(visit.id, ""));
    }

    private String by(Visit visit) {
        return visit.owed().flatMap(Visit.Owed::by).map(by -> latest(visit, by)).orElse("");
    }

    private Optional<DayRow.Act> act(Visit visit, Optional<Weight> standing, Looked looked) {
        String here = "/visits/" + visit.id;
        if (looked.speak().containsKey(visit.id) && visit.state.isAhead()) {
            return Optional.of(call(visit, DayRow.Look.MAIN));
        }
        if (visit.state == State.WITHDRAWN) {
            return Optional.empty();
        }
        if (visit.state == State.DECIDED && !visit.postponed) {
            return Optional.of(open(say.day_act_close(), here + "/closing"));
        }
        if (visit.signed().isEmpty()) {
            return Optional.of(send(visit, looked));
        }
        if (visit.postponed || standing.filter(Weight.PREVENTS::equals).isPresent()) {
            return Optional.of(open(say.day_act_instead(), here + "?instead=open#instead"));
        }
        return Optional.of(visit.owed().map(owed -> record(visit, owed))
            .orElseGet(() -> open(say.day_act_decide(), here + "/decision")));
    }

    private DayRow.Act record(Visit visit, Visit.Owed owed) {
        return switch (owed.what()) {
            case Plans.READING -> open(say.day_act_reading(), "/visits/" + visit.id + "/skin-test");
            case Plans.CLEAR_UP -> open(say.day_act_clear_up(), "/visits/" + visit.id);
            case Plans.TALK -> open(say.day_act_talk(), RefusedPages.at(visit));
            case TestFact.SKIN_TEST -> open(say.day_act_skin_test(), "/desk/visits/" + visit.id + "/test-visit");
            default -> open(say.day_act_test(), "/visits/" + visit.id + "/bench");
        };
    }

    /** Who must come in soon is telephoned; for others an hour is booked. */
    private DayRow.Act bring(Visit visit, Visit.Owed owed) {
        if (owed.what().equals(Plans.CLEAR_UP) || owed.what().equals(Plans.TALK)) {
            return record(visit, owed);
        }
        boolean soon = owed.by().filter(by -> by.isBefore(clock.instant().plus(PRESSING))).isPresent();
        return soon ? call(visit, DayRow.Look.PLAIN)
            : open(say.day_act_skin_test(), "/desk/visits/" + visit.id + "/test-visit");
    }

    private DayRow.Act call(Visit visit, DayRow.Look look) {
        return visit.client.phone().isPresent()
            ? new DayRow.Act(say.day_act_call(), "tel:" + visit.client.dial(), false, look)
            : new DayRow.Act(say.day_act_number(), "/desk/clients/" + visit.client.id + "#phone", false, look);
    }

    private DayRow.Act send(Visit visit, Looked looked) {
        boolean first = visit.state == State.BOOKED;
        return looked.mail() && visit.client.email().isPresent()
            ? new DayRow.Act(first ? say.day_act_send() : say.day_act_send_again(),
                "/desk/visits/" + visit.id + "/mail", true, DayRow.Look.LOUD)
            : new DayRow.Act(say.day_act_link(), "/desk/visits/" + visit.id, false, DayRow.Look.LOUD);
    }

    private static DayRow.Act open(String words, String address) {
        return new DayRow.Act(words, address, false, DayRow.Look.PLAIN);
    }

    private String latest(Visit visit, Instant by) {
        return by.isBefore(clock.instant()) ? say.day_owed_late(at(visit, by)) : say.day_owed_latest(at(visit, by));
    }

    private String test(Visit.Owed owed) {
        return switch (owed.what()) {
            case Plans.READING -> skin.day_reading();
            case Plans.CLEAR_UP -> say.day_clear_up();
            case Plans.TALK -> say.day_talk();
            default -> knowledge.words(language.getTag()).test(owed.what());
        };
    }

    private String services(Visit visit) {
        return String.join(", ",
            visit.services.stream().map(booked -> service(booked.serviceId)).toList());
    }

    private String service(String id) {
        return names.computeIfAbsent(id, one -> menu.name(one, knowledge.words(language.getTag())));
    }

    private String at(Visit visit, Instant moment) {
        boolean today =
            moment.atZone(visit.zone()).toLocalDate().equals(clock.instant().atZone(visit.zone()).toLocalDate());
        return today ? say.day_at_today(time.hour(moment.atZone(visit.zone())))
            : time.dayAndTime(moment.atZone(visit.zone()));
    }
}
