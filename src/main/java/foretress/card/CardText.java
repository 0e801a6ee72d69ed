package foretress.card;

import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.TestFact;
import foretress.assessment.TestStanding;
import foretress.assessment.Weight;
import foretress.bench.BenchGap;
import foretress.bench.BenchKind;
import foretress.bench.BenchRecord;
import foretress.card.CardView.Found;
import foretress.card.CardView.TestView;
import foretress.closing.ClosingSaid;
import foretress.closing.HairPhoto;
import foretress.decision.Verdict;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.salon.Menu;
import foretress.salon.Salon;
import foretress.salon.Staff;
import foretress.skintest.SkinTestHistory;
import foretress.skintest.SkinWords;
import foretress.visit.Moments;
import foretress.visit.State;
import foretress.visit.When;
import foretress.web.DateWords;
import foretress.web.StaffLanguage;
import foretress.web.StylistWords;
import foretress.web.WeightSaid;
import jakarta.enterprise.context.RequestScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

/** The parts of a record card in the staff's words. */
@RequestScoped
class CardText {

    private final Knowledge knowledge;
    private final Menu menu;
    private final StaffLanguage language;
    private final StylistWords stylist;
    private final SkinWords skin;
    private final CardWords say;
    private final ClosingSaid closing;
    private final Moments moments;

    CardText(Knowledge knowledge, Menu menu, StaffLanguage language, StylistWords stylist, SkinWords skin,
        CardWords say,
        ClosingSaid closing, Moments moments) {
        this.moments = moments;
        this.knowledge = knowledge;
        this.menu = menu;
        this.language = language;
        this.stylist = stylist;
        this.skin = skin;
        this.say = say;
        this.closing = closing;
    }

    Words words() {
        return knowledge.words(language.tag());
    }

    When when() {
        return moments.in(Salon.the().zoneId());
    }

    LocalDate today() {
        return when().today();
    }

    /** A moment with its year: a card is read years later. */
    String moment(Instant at) {
        return dates().dateAndHour(at.atZone(Salon.the().zoneId()));
    }

    String day(LocalDate day) {
        return dates().date(day);
    }

    Locale locale() {
        return language.locale();
    }

    private DateWords dates() {
        return language.dates();
    }

    String service(String id) {
        return menu.name(id, words());
    }

    String staff(UUID id) {
        return Staff.nameOf(id);
    }

    String word(Weight weight) {
        return WeightSaid.of(weight, stylist);
    }

    Found found(Finding finding, Weight weight) {
        return new Found(weight, word(weight), words().finding(finding.ruleId(), finding.onlyIfUnknown()).title());
    }

    /** What weighs on these services, the heaviest first. */
    List<Found> found(List<Finding> findings, List<Service> services) {
        return findings.stream().map(f -> found(f, Weight.heaviest(services.stream().map(f::on).toList())))
            .filter(f -> f.weight() != Weight.NOTHING_FOUND).sorted((a, b) -> b.weight().compareTo(a.weight()))
            .toList();
    }

    /** A skin test: what staff read, how long it still counts, and everything that speaks against counting it. */
    TestView test(SkinTestHistory.Kept test) {
        String days =
            say.test_started(moment(test.applied())) + ", " + test.read().map(read -> say.test_read(moment(read)))
                .orElseGet(() -> say.test_due(moment(test.due())));
        return new TestView(words().test(TestFact.SKIN_TEST) + ", " + test.product(), standing(test), days);
    }

    private String standing(SkinTestHistory.Kept test) {
        if (test.result().isEmpty()) {
            return say.test_not_read();
        }
        String result = outcome(test.result().get().code());
        if (test.reacted()) {
            return result;
        }
        String counts = test.voidReasons().isEmpty() ? test.validUntil().map(this::left).orElseGet(say::test_once)
            : test.voidReasons().stream().map(this::doubt).collect(Collectors.joining(" "));
        return result + "; " + counts;
    }

    private String left(LocalDate last) {
        long days = ChronoUnit.DAYS.between(today(), last);
        return days < 0 ? say.test_over(day(last)) : say.test_left(day(last), (int) days);
    }

    private String doubt(TestStanding.Reason reason) {
        return switch (reason) {
            case NOT_NEGATIVE -> skin.doubt_not_negative();
            case NOT_READ -> skin.doubt_not_read();
            case READ_TOO_EARLY -> skin.doubt_too_early();
            case OTHER_PRODUCT -> skin.doubt_other_product();
            case OTHER_VISIT -> skin.doubt_other_visit();
            case OUT_OF_DATE -> skin.doubt_out_of_date();
            case MASKED -> skin.doubt_masked();
            case MASKED_NOW -> skin.doubt_masked_now();
            case OVERTAKEN -> skin.doubt_overtaken();
        };
    }

    /** Something tried at the bench; what was struck out stays and says so. */
    TestView test(BenchRecord test, Optional<String> outcome) {
        String said = test.struck() ? say.test_struck() : outcome.map(this::outcome).orElseGet(say::test_open);
        String name = test.kind() == BenchKind.LENGTH ? say.test_length() : words().test(test.kind().code());
        return new TestView(name, test.kind() == BenchKind.LENGTH && !test.struck() ? say.test_measured() : said,
            say.test_started(moment(test.begun())) + unwatched(test));
    }

    private String unwatched(BenchRecord test) {
        return BenchGap.during(test).stream()
            .map(gap -> "; " + say.test_unwatched(moment(gap.from()), moment(gap.to()))).collect(Collectors.joining());
    }

    String outcome(String code) {
        return switch (code) {
            case "caution" -> say.outcome_caution();
            case "doubtful" -> say.outcome_doubtful();
            case "average" -> say.outcome_average();
            case "resistant" -> say.outcome_resistant();
            case "over-porous" -> say.outcome_over_porous();
            case "fail" -> say.outcome_fail();
            case "good" -> say.outcome_good();
            case "negative" -> say.outcome_negative();
            case "not-whole" -> say.outcome_not_whole();
            case "nothing-happened" -> say.outcome_nothing_happened();
            case "pass" -> say.outcome_pass();
            case "poor" -> say.outcome_poor();
            case "porous" -> say.outcome_porous();
            case "positive" -> say.outcome_positive();
            case "slight-lightening" -> say.outcome_slight_lightening();
            default -> code;
        };
    }

    String state(State state) {
        return switch (state) {
            case BOOKED, INVITED -> say.state_booked();
            case ANSWERING -> say.state_answering();
            case SIGNED -> say.state_signed();
            case DECIDED -> say.state_decided();
            case CLOSED -> say.state_closed();
            case CANCELLED -> say.state_cancelled();
            case WITHDRAWN -> say.state_withdrawn();
        };
    }

    String verdict(Verdict verdict) {
        return switch (verdict) {
            case PROCEED -> say.verdict_proceed();
            case PROCEED_WITH_CHANGES -> say.verdict_proceed_with_changes();
            case POSTPONE -> say.verdict_postpone();
            case DECLINE -> say.verdict_decline();
        };
    }

    /** Photos of the hair as the card shows them. */
    List<CardView.PhotoView> photos(UUID visitId, List<HairPhoto> photos) {
        return photos.stream().map(photo -> new CardView.PhotoView("/visits/" + visitId + "/hair/photo/" + photo.id(),
            closing.moment(photo.moment()), moment(photo.takenAt()))).toList();
    }
}
