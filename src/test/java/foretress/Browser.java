package foretress;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/**
 * A real Chromium for the tests. Without one they are skipped aloud; under CI=true a missing browser is a failure,
 * so that a green build always means that pages were really opened.
 */
public final class Browser implements AutoCloseable {
    private static final List<String> QUIET =
        List.of("--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
            "--disable-background-networking", "--disable-component-update", "--disable-sync");

    /** Started by the first class that looks at pages, and gone with the machine that runs the tests. */
    private static Browser one;

    private final com.microsoft.playwright.Browser chromium;

    private Browser(Path executable) {
        Map<String, String> env = new HashMap<>(System.getenv());
        env.put("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1");
        Playwright playwright = Playwright.create(new Playwright.CreateOptions().setEnv(env));
        chromium =
            playwright.chromium().launch(new BrowserType.LaunchOptions().setExecutablePath(executable).setArgs(QUIET));
    }

    /** The one Chromium of these tests, in which each opens contexts of its own; or skips the calling test with a sentence that says why. */
    public static synchronized Browser open() {
        Optional<Path> executable = Stream
            .of(System.getProperty("chromium"), System.getenv("CHROMIUM"), "/usr/bin/chromium",
                "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
            .filter(p -> p != null && Files.isExecutable(Path.of(p))).map(Path::of).findFirst();
        if (executable.isEmpty() && "true".equals(System.getenv("CI"))) {
            throw new AssertionError(
                "No Chromium: install Debian's package chromium, or name one with -Dchromium=/path");
        }
        Assumptions.assumeTrue(executable.isPresent(),
            "SKIPPED: no Chromium on this machine (install chromium, or -Dchromium=/path)");
        if (one == null || !one.chromium.isConnected()) {
            one = new Browser(executable.get());
        }
        return one;
    }

    /** A phone of 390×844 CSS px with touch. */
    public BrowserContext phone(String base, boolean scripts) {
        return chromium
            .newContext(new com.microsoft.playwright.Browser.NewContextOptions().setBaseURL(base).setIsMobile(true)
                .setHasTouch(true).setViewportSize(390, 844).setDeviceScaleFactor(2).setLocale("en-GB")
                .setJavaScriptEnabled(scripts));
    }

    /** A tablet of 1024×768 CSS px. */
    public BrowserContext tablet(String base) {
        return sized(base, 1024, 768);
    }

    public BrowserContext sized(String base, int width, int height) {
        return chromium.newContext(new com.microsoft.playwright.Browser.NewContextOptions().setBaseURL(base)
            .setViewportSize(width, height).setLocale("en-GB"));
    }

    public com.microsoft.playwright.Browser chromium() {
        return chromium;
    }

    /** Closes what the class has left open; Chromium itself stays for the next one. */
    @Override
    public void close() {
        List.copyOf(chromium.contexts()).forEach(BrowserContext::close);
    }
}
