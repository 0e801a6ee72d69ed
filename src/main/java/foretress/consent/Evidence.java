package foretress.consent;

import com.fasterxml.jackson.annotation.JsonAlias;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.zone.ZoneRulesProvider;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * What the salon's own record can say about one signing. Complete or refused: every field but the device's is required,
 * because a server always knows them.
 *
 * @param submissionId made with the form, so that pressing Sign twice signs once
 * @param agreed ids of the statements agreed to, each by an act of its own
 * @param typed who typed the answers in from paper; empty when the client answered on a screen
 */
public record Evidence(
    UUID submissionId, Invited invited, BirthDateCheck birthDate, HealthConsent healthConsent,
    @JsonUnwrapped Text text, @JsonUnwrapped Seen seen, List<String> agreed, @JsonUnwrapped Moment moment,
    Optional<Device> device, Optional<Guardian> guardian, Optional<Typed> typed) {

    /** Evidence of answers that nobody typed for the client. */
    public Evidence(UUID submissionId, Invited invited, BirthDateCheck birthDate, HealthConsent healthConsent,
        Text text, Seen seen, List<String> agreed, Moment moment, Optional<Device> device,
        Optional<Guardian> guardian) {
        this(submissionId, invited, birthDate, healthConsent, text, seen, agreed, moment, device, guardian,
            Optional.empty());
    }

    public Evidence {
        Missing.check("the submission", submissionId);
        Missing.check("the invitation", invited);
        Missing.check("the birth date check", birthDate);
        Missing.check("the consent to holding health answers", healthConsent);
        Missing.check("the text", text);
        Missing.check("what was shown", seen);
        Missing.check("the statements agreed to", agreed);
        Missing.check("the moment", moment);
        Missing.check("the device (empty when unknown)", device);
        Missing.check("the guardian (empty when there is none)", guardian);
        Missing.check("who typed the answers in (empty when nobody did)", typed);
        agreed = List.copyOf(agreed);
        if (seen.textShownAt().isAfter(moment.signedAt())) {
            throw new Missing("the text was shown after it was signed");
        }
        if (healthConsent.givenAt().isAfter(moment.signedAt())) {
            throw new Missing("the consent to holding health answers was given after the signing");
        }
    }

    public Instant signedAt() {
        return moment.signedAt();
    }

    public ZoneId zone() {
        return moment.zone();
    }

    /**
     * What was signed, and what it was made from.
     *
     * @param textSha256 hash of the text that was on the page when the client pressed Sign
     * @param answersCode names the answers that text was made from, under the client's key
     * @param ruleSet hash of the rules that the findings come from
     */
    public record Text(String language, String textSha256, @JsonAlias("answersSha256") String answersCode,
        String ruleSet) {
        public Text {
            Missing.check("the language", language);
            Missing.check("the hash of the text", textSha256);
            Missing.check("the name of the answers", answersCode);
            Missing.check("the rule set", ruleSet);
        }
    }

    /**
     * What was before the client's eyes, and when.
     *
     * @param pages every page of the answers, with when it was first and last shown
     */
    public record Seen(List<PageShown> pages, Instant readBackAt, Instant textShownAt) {
        public Seen {
            Missing.check("the pages shown", pages);
            Missing.check("the moment the answers were read back", readBackAt);
            Missing.check("the moment the text was shown", textShownAt);
            pages = List.copyOf(pages);
        }
    }

    /**
     * When it was signed, and by which clock.
     *
     * @param zone the salon's zone, for showing {@code signedAt}
     * @param zoneRules version of the time-zone data, e.g. 2025a
     * @param clock what is known of the server clock, e.g. "system clock, not checked against another"
     */
    public record Moment(Instant signedAt, ZoneId zone, String zoneRules, String clock) {
        public Moment {
            Missing.check("the moment of signing", signedAt);
            Missing.check("the salon's time zone", zone);
            Missing.check("the version of the time zones", zoneRules);
            Missing.check("the state of the clock", clock);
        }

        /** Now, by a clock that nobody has checked. */
        public static Moment of(Instant now, ZoneId zone) {
            return new Moment(now, zone, ZoneRulesProvider.getVersions(zone.getId()).lastKey(),
                "the server's own clock, not compared with another");
        }
    }

    /** How the link came to the client and when it was first opened; the invitation's id, never its token. */
    public record Invited(UUID invitationId, Way way, String sentBy, Instant sentAt, Instant openedAt) {
        public Invited {
            Missing.check("the invitation's id", invitationId);
            Missing.check("the way the link went", way);
            Missing.check("who sent the link", sentBy);
            Missing.check("when the link was sent", sentAt);
            Missing.check("when the link was opened", openedAt);
        }
    }

    /** {@code SHOWN}: the link stood on the salon's screen, whether it was scanned, printed or copied from there. {@code TABLET}: staff handed over the salon's own. */
    public enum Way {
        MAIL, SHOWN, TABLET
    }

    /** {@code CONFIRMED}: as on file. {@code GIVEN}: the client gave it and the desk confirms it. {@code ASKED}: staff asked the client face to face. */
    public enum BirthDateResult {
        CONFIRMED, GIVEN, ASKED
    }

    /**
     * The check that the link reached the right person.
     *
     * @param tries how many tries it took, 1 or more
     */
    public record BirthDateCheck(BirthDateResult result, int tries, Instant at) {
        public BirthDateCheck {
            Missing.check("the result of the birth date check", result);
            Missing.check("the moment of the birth date check", at);
            if (tries < 1) {
                throw new Missing("the number of tries of the birth date check");
            }
        }
    }

    /** The separate consent to holding health answers, and the notice it was given on. */
    public record HealthConsent(String noticeVersion, String noticeSha256, Instant givenAt) {
        public HealthConsent {
            Missing.check("the version of the notice", noticeVersion);
            Missing.check("the hash of the notice", noticeSha256);
            Missing.check("when the notice was agreed to", givenAt);
        }
    }

    /** Answers typed in from the client's own paper form. */
    public record Typed(String by, Instant at, LocalDate signedOn) {
        public Typed {
            Missing.check("who typed the paper in", by);
            Missing.check("when the paper was typed in", at);
            Missing.check("the day the paper was signed", signedOn);
        }
    }

    public record PageShown(String page, Instant first, Instant last) {
        public PageShown {
            Missing.check("the page", page);
            Missing.check("when the page was first shown", first);
            Missing.check("when the page was last shown", last);
        }
    }

    /** Kept in the record only, never printed. */
    public record Device(String address, String agent) {}

    /**
     * Who signed beside a client too young to sign alone.
     *
     * @param relation to the client, in the words that were chosen
     * @param mark the second signature
     */
    public record Guardian(String name, String relation, SignatureMark mark) {
        public Guardian {
            Missing.check("the guardian's name", name);
            Missing.check("the guardian's relation", relation);
            Missing.check("the guardian's signature", mark);
        }
    }

    /** Evidence with a gap; nothing is signed on it. */
    public static final class Missing extends IllegalArgumentException {
        Missing(String what) {
            super("nothing was signed, the record of it would have a gap: " + what);
        }

        static void check(String what, Object value) {
            if (value == null || value instanceof String text && text.isBlank()
                || value instanceof List<?> list && list.isEmpty()) {
                throw new Missing(what + " is missing");
            }
        }
    }
}
