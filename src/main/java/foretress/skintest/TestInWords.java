package foretress.skintest;

import foretress.assessment.SkinTestOutcome;
import foretress.assessment.TestStanding;
import foretress.salon.ProductLine;
import foretress.salon.ProductLines;
import foretress.salon.SettingsWords;
import foretress.salon.Staff;
import foretress.visit.Moments;
import foretress.visit.Visit;
import foretress.web.StaffLanguage;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

/** One skin test in the words of the stylist's page: how it was made, what was seen, and whether it stands. */
@Singleton
class TestInWords {
    private static final Duration WIPED_BY = Duration.ofMinutes(15);

    private final TestStore tests;
    private final SkinTestRecord record;
    private final SkinTestHistory kept;
    private final ProductLines lines;
    private final SkinWords say;
    private final SettingsWords settings;
    private final StaffLanguage staff;
    private final Moments moments;
    private final Clock clock;

    TestInWords(TestStore tests, SkinTestRecord record, SkinTestHistory kept, ProductLines lines, SkinWords say,
        SettingsWords settings, StaffLanguage staff, Moments moments, Clock clock) {
        this.tests = tests;
        this.record = record;
        this.kept = kept;
        this.lines = lines;
        this.say = say;
        this.settings = settings;
        this.staff = staff;
        this.moments = moments;
        this.clock = clock;
    }

    Overview.One of(TestFile told, Visit visit) {
        TestApplied test = told.test();
        ProductLine line = lines.version(test.lineVersion()).orElseThrow();
        TestStanding standing = record.standing(told, visit);
        return new Overview.One(test.id().toString(), line.name + ", " + told.made().shade(), how(told),
            say.test_applied(name(test.appliedBy()), moment(test.appliedAt(), visit)),
            moment(test.readableFrom(), visit), wipe(test, line, visit), !clock.instant().isBefore(test.readableFrom()),
            told.reacted(),
            stands(told, standing, visit),
            record.doubts(told, visit).stream().map(reason -> doubt(reason, told, visit)).toList(),
            told.seen().stream().map(seen -> line(seen, visit)).toList(), test.visitId().equals(visit.id));
    }

    /** While it is on the skin, and for a quarter of an hour after. */
    private Optional<Overview.Wipe> wipe(TestApplied test, ProductLine line, Visit visit) {
        Instant off = test.appliedAt().plus(Duration.ofMinutes(line.leaveOnMinutes));
        long left = Math.max(0, Duration.between(clock.instant(), off).toSeconds());
        boolean on = line.leaveOnMinutes > 0 && clock.instant().isBefore(off.plus(WIPED_BY));
        return on
            ? Optional.of(new Overview.Wipe(moment(off, visit), left, "%02d:%02d".formatted(left / 60, left % 60)))
            : Optional.empty();
    }

    private String how(TestFile told) {
        TestMethod made = told.made();
        String site = switch (made.site()) {
            case BEHIND_EAR -> settings.products_site_behind_ear();
            case INNER_ELBOW -> settings.products_site_inner_elbow();
            case OTHER -> settings.products_site_other();
        };
        String mixing =
            made.mixing() == ProductLine.Mixing.MIXED ? settings.products_mixed() : settings.products_neat();
        return say.test_how(made.batch(), mixing, site + (made.siteWords().isEmpty() ? "" : ", " + made.siteWords()));
    }

    private String stands(TestFile told, TestStanding standing, Visit visit) {
        if (told.reacted()) {
            return told.result().orElseThrow() == SkinTestOutcome.DOUBTFUL ? say.test_result_doubtful()
                : say.test_result_positive();
        }
        if (standing.stands()) {
            return kept.kept(told, visit).validUntil().map(last -> say.test_stands_until(date(last)))
                .orElseGet(say::test_stands);
        }
        return told.result().isPresent() ? say.test_read_not_enough() : say.test_not_read();
    }

    private String date(LocalDate last) {
        return staff.dates().date(last);
    }

    /** Read after the wait, and a finding asks for one more reading later. */
    private String doubt(TestStanding.Reason reason, TestFile told, Visit visit) {
        boolean again = told.readNegative(told.test().readableFrom()).isPresent();
        return reason == TestStanding.Reason.READ_TOO_EARLY && again
            ? say.doubt_read_again(moment(record.last(told, visit), visit)) : doubt(reason);
    }

    String doubt(TestStanding.Reason reason) {
        return switch (reason) {
            case NOT_NEGATIVE -> say.doubt_not_negative();
            case NOT_READ -> say.doubt_not_read();
            case READ_TOO_EARLY -> say.doubt_too_early();
            case OTHER_PRODUCT -> say.doubt_other_product();
            case OTHER_VISIT -> say.doubt_other_visit();
            case OUT_OF_DATE -> say.doubt_out_of_date();
            case MASKED -> say.doubt_masked();
            case MASKED_NOW -> say.doubt_masked_now();
            case OVERTAKEN -> say.doubt_overtaken();
        };
    }

    private Overview.Line line(TestFile.Seen seen, Visit visit) {
        SkinTestEntry entry = seen.entry();
        String who = seen.byStaff() ? name(entry.madeBy()) : say.test_by_client();
        String signs = seen.look().signs().stream().map(this::sign).collect(Collectors.joining(", "));
        String error = entry.counts() ? "" : say.test_error_said(name(entry.errorBy()), moment(entry.errorAt(), visit),
            tests.errorReason(entry));
        return new Overview.Line(entry.id().toString(), moment(entry.madeAt(), visit), who, signs, seen.look().words(),
            seen.look().began().map(this::began).orElse(""),
            !seen.look().nothing(), error,
            Photo.ofEntry(entry.id()).stream().map(photo -> photo.id().toString()).toList());
    }

    String sign(SkinSign sign) {
        return switch (sign) {
            case NONE -> say.sign_none();
            case REDNESS -> say.sign_redness();
            case SWELLING -> say.sign_swelling();
            case BURNING -> say.sign_burning();
            case BLISTERS -> say.sign_blisters();
            case ITCH -> say.sign_itch();
            case ELSEWHERE -> say.sign_elsewhere();
            case FACE -> say.sign_face();
            case BREATHING -> say.sign_breathing();
            case FAINT -> say.sign_faint();
        };
    }

    private String began(Onset began) {
        return switch (began) {
            case WITHIN_TWO_HOURS -> say.began_within_two_hours();
            case SAME_DAY -> say.began_same_day();
            case NEXT_DAYS -> say.began_next_days();
            case WITHIN_A_WEEK -> say.began_within_a_week();
            case LATER -> say.began_later();
            case UNKNOWN -> say.began_unknown();
        };
    }

    private String moment(Instant at, Visit visit) {
        return moments.in(visit.zone()).moment(at);
    }

    private static String name(UUID staff) {
        return Staff.nameOf(staff);
    }
}
