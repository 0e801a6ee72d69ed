package foretress.closing;

import foretress.closing.Closing.Planned;
import foretress.closing.Closing.Used;
import foretress.closing.Closing.Wrong;
import foretress.decision.DecisionText;
import foretress.salon.ProductLines;
import foretress.salon.Staff;
import foretress.told.Showed;
import foretress.visit.Booked;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.web.ChairTime;
import foretress.web.Mistakes;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.RequestScoped;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** The closing page with its questions, lines and what is marked in them. */
@RequestScoped
public class ClosingView {
    @CheckedTemplate(basePath = "closing", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ClosingPage(DecisionText.Head head, boolean closed, String over, List<Ask> courses,
        Products products, Outcome outcome, ClosingForm form, String into, List<Shown> photos,
        Mistakes mistakes) implements TemplateInstance {}

    /**
     * What was used.
     *
     * @param lines names of product lines to choose from
     */
    public record Products(List<ClosingForm.Row> rows, boolean mayAdd, List<String> lines) {}

    /** How the strand test came out, and what went wrong: whether, what and when. */
    public record Outcome(Ask strand, Ask wrong, List<Option> kinds, Ask when) {}

    /** One question with its choices beside it. */
    public record Ask(String name, String label, String aside, List<Option> options) {}

    public record Option(String code, String label, boolean chosen) {}

    public record Shown(String href, String label, String when) {}

    private final ProductLines lines;
    private final HairPhotos photos;
    private final DecisionText text;
    private final ClosingSaid said;
    private final ChairTime time;
    private final ClosingWords say;

    ClosingView(ProductLines lines, HairPhotos photos, DecisionText text, ClosingSaid said, ChairTime time,
        ClosingWords say) {
        this.lines = lines;
        this.photos = photos;
        this.text = text;
        this.said = said;
        this.time = time;
        this.say = say;
    }

    TemplateInstance page(Visit visit, List<Booked> ahead, ClosingForm form, String over, Mistakes mistakes) {
        boolean closed = visit.state == State.CLOSED;
        var strand = new Ask("strand", say.strand(), say.strand_aside(),
            options(StrandTrial.values(), StrandTrial::code, said::strandTest, chosen(form.strandTest())));
        var wrong = new Ask("wrong", say.wrong(), say.wrong_aside(),
            List.of(new Option("yes", say.wrong_yes(), form.wrong().happened()),
                new Option("no", say.wrong_no(), form.wrong().said() == Wrong.Said.NO)));
        var when =
            new Ask("wrong-when", say.wrong_when(), "",
                options(Showed.values(), Showed::code, said::when, chosen(form.wrong().when())));
        var products = new Products(rows(form), form.used().size() < ClosingForm.MOST_PRODUCTS,
            lines.inUse().stream().map(line -> line.name).toList());
        var outcome = new Outcome(strand, wrong,
            options(Mishap.values(), Mishap::code, said::kind, form.wrong().kinds()::contains), when);
        return new ClosingPage(text.head(visit), closed, over, courses(ahead, form), products, outcome, form,
            closed ? say.into_correction() : say.into(), shown(visit), mistakes);
    }

    private List<Ask> courses(List<Booked> ahead, ClosingForm form) {
        if (ahead.isEmpty()) {
            return List.of(new Ask("course-0", say.course(), say.course_none(),
                courses(form, 0, Course.NOT_DONE)));
        }
        return IntStream.range(0, ahead.size())
            .mapToObj(i -> new Ask("course-" + i, say.course(), text.service(ahead.get(i).serviceId()),
                courses(form, i, Course.values())))
            .toList();
    }

    private List<Option> courses(ClosingForm form, int place, Course... offered) {
        return options(offered, Course::code, said::course, chosen(form.courses().get(place)));
    }

    private static <T> Predicate<T> chosen(Optional<T> one) {
        return other -> one.filter(other::equals).isPresent();
    }

    private static <T> List<Option> options(T[] offered, Function<T, String> code, Function<T, String> words,
        Predicate<T> chosen) {
        return Arrays.stream(offered).map(one -> new Option(code.apply(one), words.apply(one), chosen.test(one)))
            .toList();
    }

    private List<ClosingForm.Row> rows(ClosingForm form) {
        List<ClosingForm.Row> rows = new ArrayList<>();
        for (int i = 0; i < form.used().size(); i++) {
            Used one = form.used().get(i);
            Planned plan = one.planned();
            rows.add(new ClosingForm.Row(i, one.zone().map(AppliedTo::code).orElse(""),
                options(AppliedTo.values(), AppliedTo::code, said::zone, chosen(one.zone())),
                say.zone(), cell("product", i, say.product(), one.product(), "", plan.product(), false),
                cell("batch", i, say.batch(), one.batch(), "", "", false),
                List.of(cell("shade", i, say.shade(), one.shade(), "", plan.shade(), false),
                    cell("ratio", i, say.ratio(), one.ratio(), "", "", false),
                    cell("grams", i, say.grams(), one.grams(), "g", "", true),
                    cell("strength", i, say.strength(), one.strength(), "", plan.strength(), false),
                    cell("minutes", i, say.minutes(), one.minutes(), "min", plan.minutes(), true))));
        }
        return rows;
    }

    private ClosingForm.Cell cell(String part, int place, String label, String value, String unit, String planned,
        boolean number) {
        return new ClosingForm.Cell(part + "-" + place, label, value, unit, part,
            planned.isEmpty() ? "" : say.planned(planned),
            ClosingSaid.differs(value, planned), number);
    }

    private List<Shown> shown(Visit visit) {
        return photos.of(visit.id).stream()
            .map(photo -> new Shown("/visits/" + visit.id + "/hair/photo/" + photo.id(), said.moment(photo.moment()),
                time.dayAndTime(photo.takenAt().atZone(visit.zone()))))
            .toList();
    }

    String by(KeptClosing kept) {
        return Staff.nameOf(kept.closedBy());
    }
}
