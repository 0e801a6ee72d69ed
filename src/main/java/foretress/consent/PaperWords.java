package foretress.consent;

import foretress.questionnaire.Code;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

/** The sentences that stand on the paper around the signed text. */
final class PaperWords {
    private final ConsentInput input;
    private final ConsentText text;
    private final HowSigned how;
    private final ConsentWords words;
    private final Locale locale;
    private final Dates dates;
    private final Map<String, String> places;

    PaperWords(ConsentInput input, ConsentText text, HowSigned how) {
        this.input = input;
        this.text = text;
        this.how = how;
        this.words = ConsentWords.in(text.language());
        this.locale = Locale.forLanguageTag(text.language());
        this.dates = Dates.of(input.language(), text.language());
        this.places = places();
    }

    Direction direction() {
        return Direction.ofLanguage(locale);
    }

    String say(String key) {
        return words.say("paper." + key, places);
    }

    String title() {
        return say(input.purpose() == ConsentInput.Purpose.SERVICE ? orPrevented("document-title") : "skin-test-title");
    }

    String address() {
        return input.salon().address() + ", " + input.salon().town();
    }

    String signedAt() {
        return say("signed-at");
    }

    Optional<String> supersedes() {
        return how.supersedes().map(earlier -> words.say("paper.supersedes",
            Map.of("version", String.valueOf(earlier.version()), "at",
                dates.day(here(earlier.signedAt()).toLocalDate()))));
    }

    String foot() {
        return say(orPrevented("foot"));
    }

    /** Answers that rule the service out are no consent to it, on no line of the paper. */
    private String orPrevented(String key) {
        return input.prevented() ? key + "-prevented" : key;
    }

    String page(int page, int pages) {
        return words.say("paper.page", Map.of("page", String.valueOf(page), "pages", String.valueOf(pages)));
    }

    String caption(SignatureMark mark) {
        return say(mark.kind().code());
    }

    /** Under the second signature: whose it is, and for whom. */
    String caption(Evidence.Guardian guardian) {
        return words.say("paper.for-client", Map.of("guardian", isolate(guardian.name()), "relation",
            isolate(guardian.relation()), "client", isolate(input.client().name())));
    }

    String story(SignatureMark mark) {
        String checked = how.evidence().birthDate().result().name().toLowerCase(Locale.ROOT);
        List<String> keys = input.purpose() == ConsentInput.Purpose.SERVICE
            ? List.of(evidence().invited().way() == Evidence.Way.TABLET ? "handed" : "link", checked, "notice", "read",
                mark.kind().code(), "limits")
            : List.of("chair", "notice", "read-chair", mark.kind().code(), "limits");
        if (input.purpose() == ConsentInput.Purpose.SERVICE && evidence().typed().isPresent()) {
            keys = new ArrayList<>(keys);
            keys.add(keys.indexOf("notice"), "typed-in");
        }
        HashMap<String, String> all = new HashMap<>(places);
        evidence().typed().ifPresent(typed -> {
            all.put("typist", isolate(typed.by()));
            all.put("typedOn", dates.day(here(typed.at()).toLocalDate()));
            all.put("paperOn", dates.day(typed.signedOn()));
        });
        all.putAll(moments());
        return String.join(" ", keys.stream().map(key -> words.say("paper.how." + key, all)).toList());
    }

    private Evidence evidence() {
        return how.evidence();
    }

    /** What anyone can compare: label and value. */
    List<Map.Entry<String, String>> prints() {
        Evidence evidence = how.evidence();
        var prints = new ArrayList<Map.Entry<String, String>>();
        prints.add(Map.entry(say("how.document"), how.document().toString()));
        prints.add(Map.entry(say("how.text"), print(evidence.text().textSha256(), text.version())));
        if (!text.salt().isEmpty()) {
            prints.add(Map.entry(say("how.salt"), text.salt()));
        }
        prints.add(Map.entry(say("how.notice-print"), print(evidence.healthConsent().noticeSha256())));
        prints.add(Map.entry(say("how.rules"), print(evidence.text().ruleSet())));
        return prints;
    }

    private String print(String... hashAndVersion) {
        String hash = words.say("paper.how.print", Map.of("hash", hashAndVersion[0]));
        return hashAndVersion.length > 1 ? hashAndVersion[1] + " · " + hash : hash;
    }

    private Map<String, String> places() {
        Evidence evidence = how.evidence();
        Evidence.Invited invited = evidence.invited();
        var places = new HashMap<String, String>();
        places.put("client", isolate(PageFrame.shortened(input.client().name())));
        places.put("date", dates.day(input.visit().startsAt().toLocalDate()));
        places.put("version", String.valueOf(how.version()));
        places.put("at", dates.moment(here(evidence.signedAt())));
        places.put("day", dates.day(here(evidence.signedAt()).toLocalDate()));
        places.put("way", words.say("paper.ways." + Code.of(invited.way())));
        places.put("sentBy", isolate(invited.sentBy()));
        places.put("tries", String.valueOf(evidence.birthDate().tries()));
        places.put("noticeVersion", evidence.healthConsent().noticeVersion());
        places.put("language", locale.getDisplayLanguage(locale));
        places.put("count", String.valueOf(evidence.agreed().size()));
        places.put("zone", evidence.zone().getId());
        return places;
    }

    /** The moments of the story in the order it tells them; a day is named only when it is another than the one before. */
    private Map<String, String> moments() {
        Evidence evidence = how.evidence();
        var told = new LinkedHashMap<String, Instant>();
        told.put("sent", evidence.invited().sentAt());
        told.put("opened", evidence.invited().openedAt());
        told.put("noticeAt", evidence.healthConsent().givenAt());
        told.put("readBack", evidence.seen().readBackAt());
        told.put("shown", evidence.seen().textShownAt());
        told.put("signed", evidence.signedAt());
        var moments = new HashMap<String, String>();
        var before = new AtomicReference<LocalDate>();
        told.forEach((name, at) -> moments.put(name, moment(here(at), before)));
        return moments;
    }

    private String moment(ZonedDateTime at, AtomicReference<LocalDate> before) {
        boolean sameDay = at.toLocalDate().equals(before.getAndSet(at.toLocalDate()));
        return words.say(sameDay ? "paper.how.same-day" : "paper.how.moment",
            Map.of("day", dates.day(at.toLocalDate()), "time", dates.time(at)));
    }

    private ZonedDateTime here(Instant at) {
        return at.atZone(how.evidence().zone());
    }

    private String isolate(String value) {
        return direction().isolate(value);
    }
}
