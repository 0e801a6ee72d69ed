package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.net.URI;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** A client with a phone who taps through the real pages and says "no" to everything, except where the test says otherwise. */
class Tapping {
    private static final List<String> AS_GOOD_AS_NO = List.of("no", "none", "never", "not-pregnant", "nothing");

    private final Page page;
    private final Map<String, List<String>> told;
    private final Consumer<Tapping> beforeSending;

    /** @param beforeSending sees every page of questions once it is filled in */
    Tapping(Page page, Map<String, List<String>> told, Consumer<Tapping> beforeSending) {
        this.page = page;
        this.told = told;
        this.beforeSending = beforeSending;
    }

    String at() {
        return URI.create(page.url()).getPath();
    }

    Page page() {
        return page;
    }

    Tapping enter(String link, String day, String month, String year) {
        open(link);
        page.locator("#day").fill(day);
        page.locator("#month").selectOption(month);
        page.locator("#year").fill(year);
        return send();
    }

    Tapping agree() {
        assertThat(at()).isEqualTo("/answers/notice");
        page.locator("input[name=agree]").check();
        return send();
    }

    /** The main button of the page, by touch. */
    Tapping send() {
        tap(".button.main");
        return this;
    }

    void open(String address) {
        page.navigate(address);
    }

    /** Waits for the page that the tap leads to, which may have the same address. */
    void tap(String button) {
        page.waitForNavigation(() -> page.locator(button).tap());
    }

    Tapping all() {
        for (int i = 0; i < 60 && !at().equals("/answers/read-back"); i++) {
            if (at().equals("/answers/care")) {
                beforeSending.accept(this);
                send();
            } else {
                question();
            }
        }
        assertThat(at()).isEqualTo("/answers/read-back");
        return this;
    }

    private void question() {
        Locator questions = page.locator("[data-kind]");
        assertThat(questions.count()).as("questions on %s", at()).isPositive();
        boolean adds = questions.all().stream().map(this::answer).reduce(false, Boolean::logicalOr);
        beforeSending.accept(this);
        if (adds) {
            tap(".button.second");
        } else {
            send();
        }
    }

    /** @return whether an entry was filled in that has to be added to a list */
    private boolean answer(Locator question) {
        switch (question.getAttribute("data-kind")) {
            case "ONE_OF", "SEVERAL_OF" -> choose(question);
            case "TOGETHER" -> tick(question);
            case "SOME" -> some(question);
            case "TICKS" -> ticks(question);
            case "DETAIL" -> detail(question);
            case "SAID_DATE" -> question.locator("input[name$='.precision'][value=dont-know]").check();
            case "HAIR_LENGTH" -> length(question);
            case "TREATMENTS", "MEDICINES" -> {
                return list(question);
            }
            default -> {
                // what is written freely may stay empty
            }
        }
        return false;
    }

    private void choose(Locator question) {
        String id = question.locator("input").first().getAttribute("name");
        List<String> offered = question.locator("input").all().stream().map(i -> i.getAttribute("value")).toList();
        String no = offered.stream().filter(AS_GOOD_AS_NO::contains).findFirst().orElse(offered.get(0));
        told.getOrDefault(id, List.of(no)).forEach(code -> slip(question, id, code));
    }

    private void tick(Locator list) {
        List<String> ids = values(list, "input[name=together]").stream()
            .flatMap(together -> List.of(together.split(" ")).stream()).toList();
        boolean any = false;
        for (String id : ids) {
            for (String code : told.getOrDefault(id, List.of())) {
                boolean yes = list.locator("input[name='" + id + "'][value='" + code + "']").count() > 0;
                any |= yes;
                if (yes) {
                    slip(list, id, code);
                }
            }
        }
        if (!any) {
            slip(list, "whole-list", "none");
        }
    }

    private void ticks(Locator question) {
        String id = question.locator("input[name$='.ticks']").getAttribute("name").replace(".ticks", "");
        List<String> rows = Told.rows(told, id, values(question, "input[name$='.tick']"));
        rows.forEach(row -> slip(question, id + ".tick", row));
        if (rows.isEmpty()) {
            slip(question, id, told.getOrDefault(id, List.of("none")).get(0));
        }
    }

    private void detail(Locator question) {
        String id = question.locator("input[name$='.of']").getAttribute("name").replace(".of", "");
        Map<String, List<String>> all = new HashMap<>(Map.of(id + ".when.precision", List.of("dont-know"), id + ".zone",
            List.of("dont-know")));
        told.forEach((name, said) -> {
            if (name.startsWith(id + ".") && !name.endsWith(".what")) {
                all.put(name, said);
            }
        });
        List<String> kinds = values(question, "input[name$='.what']");
        if (!kinds.isEmpty()) {
            all.put(id + ".what", List.of(Told.kind(told, id, kinds)));
        }
        all.entrySet().stream().filter(e -> question.locator("[name='" + e.getKey() + "']").count() > 0)
            .sorted(Map.Entry.comparingByKey(BY_NEED)).forEach(e -> fill(question, e.getKey(), e.getValue().get(0)));
    }

    private static List<String> values(Locator question, String inputs) {
        return question.locator(inputs).all().stream().map(i -> i.getAttribute("value")).toList();
    }

    private void some(Locator question) {
        String id = question.locator("input").first().getAttribute("name");
        boolean some = told.keySet().stream().anyMatch(name -> name.startsWith(id + "."));
        slip(question, id, some ? "some" : told.getOrDefault(id, List.of("none")).get(0));
    }

    private static void slip(Locator question, String name, String code) {
        question.locator("input[name='" + name + "'][value='" + code + "']").check();
    }

    private void length(Locator question) {
        Locator number = question.locator("input[name$='.cm']");
        String id = number.getAttribute("name").replace(".cm", "");
        number.fill(told.getOrDefault(id, List.of("40")).get(0));
        slip(question, id + ".straight", "yes");
    }

    private boolean list(Locator question) {
        String id = question.locator("button[name$='.act']").first().getAttribute("name").replace(".act", "");
        boolean added = question.locator("button[name$='.drop']").count() > 0;
        List<Map.Entry<String, List<String>>> entry =
            told.entrySet().stream().filter(e -> e.getKey().startsWith(id + "."))
                .sorted(Map.Entry.comparingByKey(BY_NEED)).toList();
        if (added) {
            return false;
        }
        if (entry.isEmpty()) {
            slip(question, id, "none");
        }
        entry.forEach(e -> fill(question, e.getKey(), e.getValue().get(0)));
        return !entry.isEmpty();
    }

    /** Often comes first, then how precise a date is: they bring out the fields that need filling in. */
    private static final java.util.Comparator<String> BY_NEED =
        java.util.Comparator.<String, Boolean>comparing(name -> !name.endsWith(".often"))
            .thenComparing(name -> !name.endsWith(".precision"))
            .thenComparing(name -> name);

    private static void fill(Locator question, String name, String value) {
        Locator field = question.locator("[name='" + name + "']");
        if (question.locator("select[name='" + name + "']").count() > 0) {
            field.selectOption(value);
        } else if (question.locator("input[type=radio][name='" + name + "']").count() > 0) {
            slip(question, name, value);
        } else {
            field.fill(value);
        }
    }

    Tapping tickEveryStatement() {
        page.locator("input[name=agree]").all().forEach(Locator::check);
        return this;
    }
}
