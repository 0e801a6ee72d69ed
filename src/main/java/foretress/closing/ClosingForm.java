package foretress.closing;

import foretress.closing.Closing.Planned;
import foretress.closing.Closing.Used;
import foretress.closing.Closing.Wrong;
import foretress.told.Showed;
import foretress.visit.Booked;
import foretress.web.Form;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The closing form, word for word as it was filled in.
 *
 * @param version the closing it was filled in from; 0 where there was none
 * @param courses how each service went, in the order of the services; blank where nothing was chosen
 */
public record ClosingForm(String submission, int version, List<Optional<Course>> courses, List<Used> used,
    Optional<StrandTrial> strandTest,
    Wrong wrong, String condition,
    String notes, String why) {
    static final int MOST_PRODUCTS = 12;

    static ClosingForm blank(String submission, int services, List<Used> planned) {
        return new ClosingForm(submission, 0, Collections.nCopies(services, Optional.empty()), planned,
            Optional.empty(), Wrong.NOT_ASKED, "", "",
            "");
    }

    /** As it is kept, to be put right. */
    static ClosingForm of(Closing kept, int version, String submission, List<Booked> services) {
        List<Optional<Course>> courses =
            services.stream().map(one -> Optional.ofNullable(kept.courses().get(one.serviceId()))).toList();
        List<Used> used = kept.used().isEmpty() ? List.of(Used.blankLine()) : kept.used();
        return new ClosingForm(submission, version, courses, used, kept.strandTest(), kept.wrong(), kept.condition(),
            kept.notes(), "");
    }

    /** @param plan what each line was planned to be, in the order of the lines */
    static ClosingForm from(Form form, int services, List<Planned> plan) {
        int lines = Math.min(MOST_PRODUCTS, number(form.one("lines")) + (form.ticked("more") ? 1 : 0));
        List<Used> used = IntStream.range(0, lines)
            .mapToObj(i -> used(form, i, i < plan.size() ? plan.get(i) : Planned.NOTHING)).toList();
        var wrong = new Wrong(Wrong.Said.of(form.one("wrong")),
            form.all("wrong-kind").stream().flatMap(code -> Mishap.of(code).stream()).toList(),
            Showed.of(form.one("wrong-when")), form.one("wrong-words"), form.one("wrong-helped"));
        return new ClosingForm(form.one("submission"), number(form.one("version")),
            IntStream.range(0, Math.max(1, services)).mapToObj(i -> Course.of(form.one("course-" + i))).toList(),
            used, StrandTrial.of(form.one("strand")), wrong, form.one("condition"), form.one("notes"), form.one("why"));
    }

    private static int number(String typed) {
        return typed.matches("\\d{1,4}") ? Integer.parseInt(typed) : 0;
    }

    private static Used used(Form form, int i, Planned planned) {
        return new Used(AppliedTo.of(form.one("zone-" + i)), form.one("product-" + i), form.one("batch-" + i),
            form.one("shade-" + i),
            form.one("ratio-" + i),
            form.one("grams-" + i), form.one("strength-" + i), form.one("minutes-" + i), planned);
    }

    ClosingForm with(int version, String fresh) {
        return new ClosingForm(fresh, version, courses, used, strandTest, wrong, condition, notes, why);
    }

    boolean anythingDone() {
        return courses.stream().flatMap(Optional::stream).anyMatch(course -> course != Course.NOT_DONE);
    }

    List<Used> products() {
        return used.stream().filter(one -> !one.blank()).toList();
    }

    Closing closing(List<Booked> planned) {
        Map<String, Course> went = IntStream.range(0, planned.size()).boxed()
            .collect(Collectors.toMap(i -> planned.get(i).serviceId(), i -> courses.get(i).orElseThrow(), (a, b) -> a));
        List<Booked> done =
            planned.stream().filter(one -> went.get(one.serviceId()) != Course.NOT_DONE).toList();
        Wrong what = wrong.happened() ? wrong : Wrong.NOTHING;
        return new Closing(done, went, done.isEmpty() ? List.of() : products(),
            done.isEmpty() ? Optional.empty() : strandTest, what,
            condition, notes, why);
    }

    /** One line of the form: its cells in the order in which they are read. */
    public record Row(int place, String zone, List<ClosingView.Option> zones, String zoneLabel, Cell product,
        Cell batch,
        List<Cell> cells) {
        public String getZoneName() {
            return "zone-" + place;
        }
    }

    /**
     * One value of a line.
     *
     * @param planned what the plan had; empty where it said nothing
     * @param differs it is not what was planned
     */
    public record Cell(String name, String label, String value, String unit, String part, String planned,
        boolean differs, boolean number) {}
}
