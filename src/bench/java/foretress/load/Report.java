package foretress.load;

import foretress.load.Crowd.Look;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** The figures of a run as docs/benchmarks.md has them: medians of the rounds, with the spread of what they hang on. */
final class Report {
    static final String BARE = "bare page";
    static final List<Look> BARE_LOOKS = List.of(new Look("/", ""));

    private final Map<String, List<Cost>> rounds = new LinkedHashMap<>();
    private final Map<String, Cost> half = new LinkedHashMap<>();
    private final Map<String, String> said = new LinkedHashMap<>();

    void add(String page, Cost round) {
        rounds.computeIfAbsent(page, any -> new ArrayList<>()).add(round);
    }

    void half(String page, Cost cost) {
        half.put(page, cost);
    }

    void say(String what, String figure) {
        said.put(what, figure);
    }

    /** Of the program, not of the bare page. */
    int requests() {
        return rounds.entrySet().stream().filter(e -> !e.getKey().equals(BARE) && !e.getKey().startsWith("walk"))
            .flatMap(e -> e.getValue().stream()).mapToInt(c -> c.nanos().size()).sum();
    }

    double perSecond(String page) {
        return median(page, Cost::perSecond);
    }

    private double median(String page, ToDoubleFunction<Cost> figure) {
        return at(page, figure, 0.5);
    }

    private double at(String page, ToDoubleFunction<Cost> figure, double part) {
        double[] sorted = rounds.get(page).stream().mapToDouble(figure).sorted().toArray();
        return sorted[(int) Math.round(part * (sorted.length - 1))];
    }

    String section() {
        StringBuilder text = new StringBuilder("""
            `mvn -Plong package -DskipTests exec:exec@load` makes these figures, with `-Dreference.rewrite=true` here: the packaged demo and a bare application of
            the same framework (one page of about 12 kB, one read by key, no session) on the same machine in the same run, with the settings for Java of
            [Run it](guide/run-it.md#start), four connections over loopback. Pages that are read are asked again and again in rounds that take turns with the bare page's; medians, and the
            least and most processor time of the rounds. Lines that begin with *walk* are one request a client of real clients from link to signature. *p99 at half* is asked for at
            half the rate, counted from when each was due. *Of bare* is the bare page's figure over this one's.

            """);
        text.append(machine());
        text.append(
            "\n| request | a second | p50 ms | p99 ms | p99 at half, ms | processor ms (spread) | of bare by processor | of bare by rate |\n");
        text.append("|---|---|---|---|---|---|---|---|\n");
        rounds.keySet().forEach(page -> text.append(row(page)));
        text.append("\n| what | figure |\n|---|---|\n");
        said.forEach((what, figure) -> text.append("| %s | %s |%n".formatted(what, figure)));
        return text.toString();
    }

    private static String machine() {
        return "Processors: %d; Java %s; load of the machine at the end: %.1f.%n".formatted(
            Runtime.getRuntime().availableProcessors(), Runtime.version(),
            java.lang.management.ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }

    private String row(String page) {
        double cpu = median(page, Cost::cpuMillis);
        boolean walk = page.startsWith("walk");
        return String.format(Locale.ROOT, "| %s | %s | %.1f | %.1f | %s | %.2f%s | %.0f %% | %s |%n", page,
            walk ? "" : String.format(Locale.ROOT, "%.0f", perSecond(page)), median(page, c -> c.millis(0.5)),
            median(page, c -> c.millis(0.99)), half.containsKey(page)
                ? String.format(Locale.ROOT, "%.1f", half.get(page).millis(0.99)) : "",
            cpu, spread(page),
            100 * median(BARE, Cost::cpuMillis) / cpu,
            walk ? "" : String.format(Locale.ROOT, "%.0f %%", 100 * perSecond(page) / perSecond(BARE)));
    }

    private String spread(String page) {
        return rounds.get(page).size() < 2 ? "" : String.format(Locale.ROOT, " (%.2f to %.2f)",
            at(page, Cost::cpuMillis, 0), at(page, Cost::cpuMillis, 1));
    }
}
