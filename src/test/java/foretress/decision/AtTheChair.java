package foretress.decision;

import com.microsoft.playwright.Page;
import java.time.LocalDate;
import java.util.Map;

/** What staff and client do with one tablet in a real browser on the day of the visit, on whatever page it shows. */
public final class AtTheChair {
    /** The answer that says no wherever nothing is chosen. */
    public static final String SAY_NO = """
        () => {
          const boxes = [...document.querySelectorAll('main [data-kind] input[type=radio], main [data-kind] input[type=checkbox]')];
          for (const name of new Set(boxes.map(b => b.name))) {
            const group = boxes.filter(b => b.name === name);
            if (group.some(b => b.checked)) continue;
            (['none', 'no', 'never', 'not-pregnant', 'nothing'].map(v => group.find(b => b.value === v)).find(b => b) ?? group[0]).click();
          }
        }""";

    private AtTheChair() {}

    /** The page's main button; waits for what it leads to, which may have the same address. */
    public static void press(Page page) {
        page.waitForNavigation(() -> page.locator("main .button.main").last().click());
    }

    public static void signIn(Page page, String login, String password) {
        page.fill("[name=login]", login);
        page.fill("[name=password]", password);
        press(page);
    }

    /** From the decision the tablet goes to the client, who says when she was born, reads what she said, and signs. */
    public static void handedOver(Page page, String name, LocalDate born) {
        page.waitForNavigation(() -> page.locator("form[action$='/hand-over'] button").click());
        page.fill("#day", "" + born.getDayOfMonth());
        page.selectOption("#month", "" + born.getMonthValue());
        page.fill("#year", "" + born.getYear());
        press(page);
        press(page);
        signs(page, name);
    }

    public static void signs(Page page, String name) {
        page.locator("input[name=agree]").all().forEach(box -> box.check());
        page.check("input[type=radio][name=mark][value=typed]");
        page.fill("[name=typed]", name);
        press(page);
    }

    /** The client gives the tablet back, and staff sign in on it. */
    public static void givenBack(Page page, String login, String password) {
        page.waitForNavigation(() -> page.locator("form[action$='/give-back'] button").click());
        signIn(page, login, password);
    }

    /** One line of what was used, on the closing page; {@code zone} is chosen, everything else typed. */
    public static void used(Page page, int line, String zone, Map<String, String> typed) {
        page.selectOption("[name=zone-" + line + "]", zone);
        typed.forEach((cell, words) -> page.fill("[name=" + cell + "-" + line + "]", words));
    }
}
