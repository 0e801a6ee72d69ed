package foretress.closing;

import foretress.bench.BenchNumber;
import foretress.closing.Closing.Used;
import foretress.closing.Closing.Wrong;
import foretress.knowledge.Knowledge;
import foretress.visit.Booked;
import foretress.web.Mistakes;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Nothing closes before a person has said what was done, and how. */
@Singleton
class ClosingCheck {
    static final int LONGEST_FIELD = 100;
    static final int LONGEST_NOTE = 1000;
    private static final int LONGEST_MINUTES = 240;

    private final Knowledge knowledge;
    private final ClosingWords say;

    ClosingCheck(Knowledge knowledge, ClosingWords say) {
        this.knowledge = knowledge;
        this.say = say;
    }

    /** @param ahead the services decided to go ahead, in the order of the form */
    Mistakes of(ClosingForm form, List<Booked> ahead, boolean correction) {
        var mistakes = new Mistakes();
        courses(form, ahead, mistakes);
        for (int i = 0; i < form.used().size(); i++) {
            line(form.used().get(i), i, mistakes);
        }
        if (form.anythingDone()) {
            mistakes.expect(!form.products().isEmpty() || dry(form, ahead), "product-0", say.products_missing());
            mistakes.expect(form.strandTest().isPresent(), "strand", say.strand_missing());
        }
        wrong(form.wrong(), mistakes);
        mistakes.expect(!form.anythingDone() || !form.condition().isEmpty(), "condition", say.condition_missing());
        Stream.of("condition", "notes")
            .forEach(field -> mistakes.expect(
                (field.equals("notes") ? form.notes() : form.condition()).length() <= LONGEST_NOTE, field,
                say.too_long(LONGEST_NOTE)));
        mistakes.expect(!correction || !form.why().isEmpty(), "why", say.why_missing());
        mistakes.expect(form.why().length() <= LONGEST_NOTE, "why", say.too_long(LONGEST_NOTE));
        return mistakes;
    }

    private void courses(ClosingForm form, List<Booked> ahead, Mistakes mistakes) {
        if (ahead.isEmpty()) {
            mistakes.expect(form.courses().get(0).equals(Optional.of(Course.NOT_DONE)), "course-0",
                say.course_none_missing());
        }
        for (int i = 0; i < ahead.size(); i++) {
            mistakes.expect(form.courses().get(i).isPresent(), "course-" + i, say.course_missing());
        }
    }

    private boolean dry(ClosingForm form, List<Booked> ahead) {
        return form.closing(ahead).done().stream().flatMap(done -> done.stepIds().stream())
            .allMatch(step -> knowledge.ruleSet().step(step).filter(one -> knowledge.chemistries().dry(one.uses()))
                .isPresent());
    }

    private void line(Used one, int i, Mistakes mistakes) {
        if (one.blank()) {
            return;
        }
        mistakes.expect(!one.product().isEmpty(), "product-" + i, say.product_missing());
        mistakes.expect(one.zone().isPresent(), "zone-" + i, say.zone_missing());
        mistakes.expect(one.minutes().isEmpty() || minutes(one.minutes()), "minutes-" + i,
            say.minutes_wrong(one.minutes()));
        mistakes.expect(one.grams().isEmpty() || BenchNumber.read(one.grams()).isPresent(), "grams-" + i,
            say.grams_wrong(one.grams()));
        boolean fits = Stream.of(one.product(), one.shade(), one.batch(), one.ratio(), one.strength())
            .allMatch(typed -> typed.length() <= LONGEST_FIELD);
        mistakes.expect(fits, "product-" + i, say.too_long(LONGEST_FIELD));
    }

    private static boolean minutes(String typed) {
        return typed.matches("[1-9]\\d{0,2}") && Integer.parseInt(typed) <= LONGEST_MINUTES;
    }

    private void wrong(Wrong wrong, Mistakes mistakes) {
        if (!mistakes.expect(wrong.said() != Wrong.Said.NOT_ASKED, "wrong", say.wrong_missing())
            || !wrong.happened()) {
            return;
        }
        mistakes.expect(!wrong.kinds().isEmpty(), "wrong-kind",
            say.wrong_kind_missing());
        mistakes.expect(wrong.when().isPresent(), "wrong-when", say.wrong_when_missing());
        mistakes.expect(!wrong.helped().isEmpty(), "wrong-helped", say.wrong_helped_missing());
        mistakes.expect(wrong.words().length() <= LONGEST_NOTE && wrong.helped().length() <= LONGEST_NOTE,
            "wrong-helped", say.too_long(LONGEST_NOTE));
    }
}
