package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/**
 * A client without a pointer: Tab, arrows, Space, Enter and letters through the real pages, "no" to everything.
 * Each page is gone through from its first stop to its last before its main button is pressed; a stop that cannot be seen is a complaint.
 */
final class Keys {
    private static final int MOST_PAGES = 30, MOST_STOPS = 120;
    /** The stop as a client sees it: `end` where it was passed before on this page, `back` where the eye has to jump up to it. */
    private static final String STOP = """
        () => {
          const at = document.activeElement;
          if (at === document.body) return { end: true, words: '' };
          const seen = window.stops ??= [];
          const box = (at.closest('label') ?? at).getBoundingClientRect(), style = getComputedStyle(at);
          const x = Math.min(box.right, innerWidth) / 2 + Math.max(box.left, 0) / 2;
          const y = Math.min(box.bottom, innerHeight) / 2 + Math.max(box.top, 0) / 2;
          const on = document.elementFromPoint(x, y);
          const foot = scrollY + box.bottom, last = seen.at(-1);
          const stop = {
            end: seen.some(s => s.at === at),
            unringed: style.outlineStyle === 'none' || parseFloat(style.outlineWidth) < 2,
            covered: !on || !(at.closest('label') ?? at).contains(on),
            back: last !== undefined && foot <= last.top && !at.matches('.skip'),
            type: at.type ?? '', name: at.name ?? '', value: at.value ?? '', words: (at.textContent || at.name).trim().slice(0, 40),
            group: at.type === 'radio' ? [...document.getElementsByName(at.name)].filter(r => r.type === 'radio').map(r => r.value) : [],
          };
          seen.push({ at, top: scrollY + box.top });
          return stop;
        }""";
    private static final Set<String> NO =
        Set.of("no", "none", "never", "not-pregnant", "nothing", "typed", "dont-know");

    private final Page page;
    private final Map<String, String> words;
    private final Set<String> ticked;
    private final Consumer<Keys> onceFilledIn;
    private final List<String> pages = new ArrayList<>();
    private final List<String> complaints = new ArrayList<>();

    /**
     * @param words what is written into fields and chosen from lists, by the last part of their names
     * @param ticked values of boxes that are ticked, and of answers that are chosen before a "no"
     * @param onceFilledIn sees every page when all its stops were passed
     */
    Keys(Page page, Map<String, String> words, Set<String> ticked, Consumer<Keys> onceFilledIn) {
        this.page = page;
        this.words = words;
        this.ticked = ticked;
        this.onceFilledIn = onceFilledIn;
    }

    Page page() {
        return page;
    }

    String at() {
        return URI.create(page.url()).getPath();
    }

    void complain(String what) {
        complaints.add(at() + ": " + what);
    }

    List<String> complaints() {
        return complaints;
    }

    /** Every page that was gone through, by its address. */
    List<String> pages() {
        return pages;
    }

    Keys open(String link) {
        page.navigate(link);
        return this;
    }

    /**
     * Page after page, until the one of the given address.
     *
     * @param hasty addresses of pages that are first sent without an answer
     */
    Keys until(String address, Set<String> hasty) {
        for (int page = 0; page < MOST_PAGES && !at().equals(address); page++) {
            if (hasty.contains(at())) {
                goOn("Tab");
                assertThat(this.page.locator("[role=alert]:focus").count()).as("announced on %s", at()).isEqualTo(1);
                onceFilledIn.accept(this);
            }
            through();
            goOn("Shift+Tab");
        }
        assertThat(at()).isEqualTo(address);
        return this;
    }

    /** Through all stops of the page, answering at each. */
    Keys through() {
        Map<?, ?> stop = next();
        for (int stops = 0; stop.get("end").equals(false); stops++) {
            assertThat(stops).as("a trap on %s at %s", at(), stop).isLessThan(MOST_STOPS);
            look(stop);
            answer(stop);
            stop = next();
        }
        pages.add(at());
        onceFilledIn.accept(this);
        return this;
    }

    /** From stop to stop as far as the main button, and Enter. */
    private void goOn(String towards) {
        for (int stops = 0; !(Boolean) page.evaluate("() => document.activeElement.matches('.button.main')"); stops++) {
            assertThat(stops).as("no way to the main button of %s", at()).isLessThan(MOST_STOPS);
            page.keyboard().press(towards);
        }
        page.waitForNavigation(() -> page.keyboard().press("Enter"));
    }

    private Map<?, ?> next() {
        page.keyboard().press("Tab");
        return (Map<?, ?>) page.evaluate(STOP);
    }

    private void look(Map<?, ?> stop) {
        for (String fault : List.of("unringed", "covered", "back")) {
            if (stop.get(fault).equals(true)) {
                complain(fault + " " + stop);
            }
        }
    }

    private void answer(Map<?, ?> stop) {
        String value = (String) stop.get("value");
        switch ((String) stop.get("type")) {
            case "radio" -> choose((List<?>) stop.get("group"), value);
            case "checkbox" -> {
                if (ticked.contains(value) || stop.get("name").equals("agree")) {
                    page.keyboard().press("Space");
                }
            }
            case "text", "select-one" -> words.entrySet().stream()
                .filter(w -> ((String) stop.get("name")).endsWith(w.getKey()) && value.isEmpty())
                .forEach(w -> page.keyboard().type(w.getValue()));
            default -> {
                // a link, a fold or a button: passed by
            }
        }
    }

    /** With the arrows down to the answer; each arrow chooses the next, as everywhere. */
    private void choose(List<?> group, String at) {
        Object wanted = group.stream().map(Object.class::cast).filter(ticked::contains).findFirst()
            .or(() -> group.stream().map(Object.class::cast).filter(NO::contains).findFirst()).orElse(group.get(0));
        if (wanted.equals(at)) {
            page.keyboard().press("Space");
        }
        for (int down = group.indexOf(at); down < group.indexOf(wanted); down++) {
            page.keyboard().press("ArrowDown");
        }
    }
}
