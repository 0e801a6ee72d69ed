package foretress.consultation;

import foretress.card.Closing;
import foretress.card.Closing.Used;
import foretress.visit.Booked;
import foretress.web.Form;
import java.util.List;
import java.util.stream.IntStream;

/** The closing form, word for word as it was filled in. */
public record ClosingForm(String submission, List<String> done, List<Used> used, String strandTest, String condition, String notes) {
    static final int PRODUCTS = 4;
    static final int LONGEST_FIELD = 100;
    static final int LONGEST_NOTE = 1000;

    /** One product of the form and its place. */
    public record Row(int place, Used used, String typed) {
        public String name(String part) {
            return part + "-" + place;
        }
    }

    /** @param lines names that can be chosen; what is none of them stands as typed */
    List<Row> rows(List<String> lines) {
        return IntStream.range(0, used.size()).mapToObj(i -> new Row(i, used.get(i), lines.contains(used.get(i).product()) ? "" : used.get(i).product())).toList();
    }

    public boolean isDone(String service) {
        return done.contains(service);
    }

    static ClosingForm blank(String submission) {
        return new ClosingForm(submission, List.of(), IntStream.range(0, PRODUCTS).mapToObj(i -> new Used("", "", "", "", "")).toList(), "", "", "");
    }

    static ClosingForm from(Form form) {
        return new ClosingForm(form.one("submission"), form.all("done"), IntStream.range(0, PRODUCTS).mapToObj(i -> new Used(form.one("line-" + i).isEmpty() ? form.one("product-" + i) : form.one("line-" + i),
            form.one("shade-" + i), form.one("batch-" + i), form.one("strength-" + i), form.one("minutes-" + i))).toList(),
            form.one("strand"), form.one("condition"), form.one("notes"));
    }

    List<Used> products() {
        return used.stream().filter(one -> !one.blank()).toList();
    }

    Closing closing(List<Booked> planned) {
        return new Closing(planned.stream().filter(one -> done.contains(one.serviceId())).toList(), products(), strandTest, condition, notes);
    }
}
