package foretress.intake;

import foretress.Walker;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;

/** Counts what a client's finger does: each thing chosen or no longer chosen, each field typed into, each button and link pressed. */
final class TappingWalker extends Walker {
    private static final String UNTOUCHED = "button, input[type=hidden]";
    private int taps;

    @Override
    public Walker post(String path, List<Map.Entry<String, String>> fields) {
        taps += 1 + page().select("main form").stream().filter(form -> path.equals(address(form))).findFirst()
            .map(form -> changed((FormElement) form, fields)).orElse(0);
        return super.post(path, fields);
    }

    /** Presses a link. */
    Walker press(String selector) {
        taps++;
        return open(only(selector).attr("href"));
    }

    int taps() {
        return taps;
    }

    private String address(Element form) {
        return form.attr("action").isEmpty() ? at() : form.attr("action");
    }

    private static int changed(FormElement form, List<Map.Entry<String, String>> sent) {
        List<Map.Entry<String, String>> stood =
            form.formData().stream().map(d -> Map.entry(d.key(), d.value())).toList();
        List<Map.Entry<String, String>> touched = without(sent, stood);
        touched.removeIf(f -> f.getValue().isEmpty() || !form.select(named(f, UNTOUCHED)).isEmpty()
            && form.select(named(f, "input:not([type=hidden]), select, textarea")).isEmpty());
        List<Map.Entry<String, String>> unticked = without(stood, sent);
        unticked.removeIf(f -> form.select(named(f, "input[type=checkbox]")).isEmpty());
        return touched.size() + unticked.size();
    }

    private static String named(Map.Entry<String, String> field, String elements) {
        return String.join(", ", List.of(elements.split(", ")).stream()
            .map(e -> e + "[name=\"" + field.getKey() + "\"]").toList());
    }

    private static List<Map.Entry<String, String>> without(List<Map.Entry<String, String>> all,
        List<Map.Entry<String, String>> those) {
        List<Map.Entry<String, String>> left = new ArrayList<>(all);
        those.forEach(left::remove);
        return left;
    }
}
