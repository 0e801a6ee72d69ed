package foretress.intake;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.util.stream.IntStream;

/** A finger that writes on the glass: touches as the browser gets them from a screen, through the DevTools protocol. */
final class Finger {
    private static final int STEPS = 48;

    /** Milliseconds until the thumb is at the button: on any page, Chromium drops the click of a tap sooner after a quick stroke. */
    private static final int LIFTED = 2000;

    private final Page page;
    private final CDPSession browser;
    private final double left;
    private final double top;
    private final double width;
    private final double height;

    Finger(Page page, String selector) {
        this.page = page;
        page.locator(selector).scrollIntoViewIfNeeded();
        BoundingBox box = page.locator(selector).boundingBox();
        browser = page.context().newCDPSession(page);
        left = box.x;
        top = box.y;
        width = box.width;
        height = box.height;
    }

    /** Two strokes: loops like a name, and a line under it. */
    void signs() {
        touch("touchStart", x(0), y(0));
        IntStream.rangeClosed(1, STEPS).mapToDouble(i -> i / (double) STEPS)
            .forEach(t -> touch("touchMove", x(t), y(t)));
        touch("touchEnd");
        touch("touchStart", 0.30, 0.80);
        IntStream.rangeClosed(1, STEPS / 4).mapToDouble(i -> i * 4 / (double) STEPS)
            .forEach(t -> touch("touchMove", 0.30 + 0.5 * t, 0.80 - 0.1 * t * t));
        touch("touchEnd");
        page.waitForTimeout(LIFTED);
    }

    private static double x(double t) {
        return 0.12 + 0.72 * t + 0.05 * Math.sin(12 * Math.PI * t);
    }

    private static double y(double t) {
        return 0.48 - (0.30 - 0.18 * t) * Math.cos(12 * Math.PI * t) * (t < 0.15 ? 1.1 : 0.7);
    }

    private void touch(String type, double... share) {
        var points = new JsonArray();
        if (share.length > 0) {
            var point = new JsonObject();
            point.addProperty("x", left + share[0] * width);
            point.addProperty("y", top + share[1] * height);
            points.add(point);
        }
        var touch = new JsonObject();
        touch.addProperty("type", type);
        touch.add("touchPoints", points);
        browser.send("Input.dispatchTouchEvent", touch);
    }
}
