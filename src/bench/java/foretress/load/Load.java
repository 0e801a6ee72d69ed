package foretress.load;

import foretress.lexicon.Benchmarks;
import foretress.load.Crowd.Look;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * The packaged program and a bare application of the same framework, beside each other in one run, under traffic from the real walk.
 * Rounds take turns, so that both feel the same machine; what is compared are medians. {@code docs/benchmarks.md} says how to run it.
 */
public final class Load {
    private static final Path JAR = Path.of("target/quarkus-app/quarkus-run.jar");
    private static final Path FOLDER = Path.of("target/load");
    private static final String PASSWORD = "comb in the millrace";
    private static final int ROUNDS = 5;
    private static final int CLIENTS = Integer.getInteger("load.clients", 24);
    private static final double SECONDS = Double.parseDouble(System.getProperty("load.seconds", "1"));
    private static final int MIXED = 10_000;
    private static final int AT_ONCE = 4;
    /** A busy machine may not come to ten thousand within it; the table says how many there were. */
    private static final int LONGEST_MIX_SECONDS = 45;

    private final Running bare;
    private final Running server;
    private final Crowd crowd;
    private final Report report = new Report();

    private Load(Running bare, Running server, Crowd crowd) {
        this.bare = bare;
        this.server = server;
        this.crowd = crowd;
    }

    public static void main(String[] args) throws Exception {
        Path bareJar = Bare.built();
        Files.createDirectories(FOLDER);
        Path home = Files.createTempDirectory(FOLDER, "run");
        Map<String, String> demo =
            Map.of("FORETRESS_DEMO", "1", "FORETRESS_DATA", home.resolve("data").toAbsolutePath().toString());
        try (Running seeding = Running.start(JAR, home, port(0), demo)) {
            System.out.printf("seeded in %.1f s%n", seeding.startSeconds);
        }
        long closed = size(home.resolve("data"));
        Report report;
        int visits;
        try (Running server = Running.start(JAR, home, port(0), demo);
            Running bare = Running.start(bareJar, home.resolve("bare"), port(1), Map.of());
            Crowd crowd = new Crowd(AT_ONCE)) {
            var load = new Load(bare, server, crowd);
            visits = load.run(home.resolve("data"));
            report = load.report;
        }
        report.say("bytes a visit when closed, of %d".formatted(visits),
            "%d kB".formatted((size(home.resolve("data")) - closed) / visits / 1000));
        String section = report.section();
        Files.writeString(Path.of("target/load.md"), section);
        System.out.println(section);
        if (Boolean.getBoolean("reference.rewrite")) {
            Benchmarks.hold("Under load", section);
        }
    }

    private static int port(int more) {
        return Integer.getInteger("load.port", 18100) + more;
    }

    private static long size(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".db")).mapToLong(file -> file.toFile().length())
                .sum();
        }
    }

    private int run(Path data) throws Exception {
        report.say("start to the first answer, demo seeded earlier", "%.1f s, %.1f s of processor".formatted(
            server.startSeconds, server.cpuSeconds()));
        report.say("the same of the bare application", "%.1f s, %.1f s of processor".formatted(bare.startSeconds,
            bare.cpuSeconds()));
        report.say("resident after start", server.residentMb() + " MB; bare " + bare.residentMb() + " MB");
        Phone petra = signedIn();
        Walks warming = new Walks(server, crowd, petra, LocalDate.now().plusDays(28));
        warming.sign(warming.arrive(CLIENTS));
        long before = size(data);
        Walks walks = new Walks(server, crowd, petra, LocalDate.now().plusDays(35));
        List<Phone> held = walks.arrive(CLIENTS);
        Map<String, List<Look>> looks = looks(walks, held, petra);
        for (String page : List.of("consultation", "bench, asked again")) {
            crowd.again(server, looks.get(page), SECONDS); // warm before anybody is counted
        }
        rounds(looks, List.of("door", "question page"));
        walks.sign(held);
        report.say("bytes a visit while open", "%d kB".formatted((size(data) - before) / CLIENTS / 1000));
        rounds(looks, List.of("day sheet of " + CLIENTS, "consultation", "bench, asked again", "consent as PDF"));
        walks.costs.forEach((kind, cost) -> report.add("walk: " + kind, cost));
        halfLoad(looks);
        mixed(looks, walks.requests() + warming.requests());
        return warming.visits.size() + walks.visits.size();
    }

    private Phone signedIn() {
        Phone petra = new Phone(server.port);
        petra.open("/sign-in").expect(200);
        petra.send("main form", Map.of("login", "petra", "password", PASSWORD));
        if (petra.leads().isEmpty()) {
            throw new IllegalStateException("not signed in: " + petra.page().text());
        }
        return petra;
    }

    private static Map<String, List<Look>> looks(Walks walks, List<Phone> clients, Phone staff) {
        String cookies = staff.cookieLine();
        Map<String, List<Look>> looks = new LinkedHashMap<>();
        looks.put("door", walks.links.stream().map(link -> new Look(link, "")).toList());
        looks.put("question page", clients.stream().map(c -> new Look(c.at(), c.cookieLine())).toList());
        looks.put("day sheet of " + CLIENTS, List.of(new Look("/day?date=" + walks.day, cookies)));
        looks.put("consultation", of(walks, "", cookies));
        looks.put("bench, asked again", of(walks, "/bench/live", cookies));
        looks.put("consent as PDF", of(walks, "/consent/1", cookies));
        return looks;
    }

    private static List<Look> of(Walks walks, String page, String cookies) {
        return walks.visits.stream().map(visit -> new Look("/visits/" + visit + page, cookies)).toList();
    }

    private void rounds(Map<String, List<Look>> looks, List<String> pages) throws Exception {
        crowd.again(bare, Report.BARE_LOOKS, SECONDS);
        for (String page : pages) {
            crowd.again(server, looks.get(page), SECONDS);
        }
        for (int i = 0; i < ROUNDS; i++) {
            report.add(Report.BARE, crowd.again(bare, Report.BARE_LOOKS, SECONDS));
            for (String page : pages) {
                report.add(page, crowd.again(server, looks.get(page), SECONDS));
            }
        }
    }

    /** Half of what each could answer a second; more ask than can wait for one another. */
    private void halfLoad(Map<String, List<Look>> looks) throws Exception {
        try (Crowd many = new Crowd(AT_ONCE * AT_ONCE)) {
            report.half(Report.BARE,
                many.open(bare, Report.BARE_LOOKS, report.perSecond(Report.BARE) / 2, 2 * SECONDS));
            for (String page : looks.keySet()) {
                report.half(page, many.open(server, looks.get(page), report.perSecond(page) / 2, 2 * SECONDS));
            }
        }
    }

    /** Tops up towards ten thousand requests in all, one of each kind in turn. */
    private void mixed(Map<String, List<Look>> looks, int walked) throws Exception {
        List<Look> mix = new ArrayList<>();
        for (int i = 0; i < CLIENTS; i++) {
            for (List<Look> of : looks.values()) {
                mix.add(of.get(i % of.size()));
            }
        }
        int asked = walked + report.requests();
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(LONGEST_MIX_SECONDS);
        while (asked < MIXED && System.nanoTime() < end) {
            asked += crowd.again(server, mix, SECONDS).nanos().size();
        }
        report.say("resident after %d requests".formatted(asked),
            server.residentMb() + " MB; bare " + bare.residentMb() + " MB");
    }
}
