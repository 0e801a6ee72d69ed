package foretress.knowledge;

import foretress.assessment.Source;
import foretress.assessment.Source.Kind;
import foretress.assessment.Source.Status;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Reads where things come from: {@code key: { title, place, link, read, status, reasons, kind }}. */
final class SourcesReader {
    private static final Map<String, Status> STATUSES =
        Map.of("published", Status.PUBLISHED, "common practice", Status.COMMON_PRACTICE,
            "from memory", Status.FROM_MEMORY, "own decision", Status.OWN_DECISION);

    private static final Map<String, Kind> KINDS =
        Map.of("law", Kind.LAW, "maker", Kind.MAKER, "trade rule", Kind.TRADE_RULE, "house rule", Kind.HOUSE_RULE,
            "health advice", Kind.HEALTH_ADVICE, "research", Kind.RESEARCH, "teaching", Kind.TEACHING);

    private SourcesReader() {}

    static Map<String, Source> read(Yaml file) {
        Map<String, Source> sources = new LinkedHashMap<>();
        file.pairs().forEach(pair -> pair.getKey().trying(key -> {
            if (sources.putIfAbsent(IdSyntax.read(key), source(pair.getValue())) != null) {
                key.complain("two sources are called '%s'".formatted(key.text()));
            }
        }));
        return sources;
    }

    private static Source source(Yaml entry) {
        entry.only("title", "place", "link", "read", "status", "reasons", "kind");
        return new Source(entry.at("title").text(), text(entry, "place"), text(entry, "link"), text(entry, "read"),
            entry.at("status").oneOf(STATUSES, "status"), text(entry, "reasons"),
            entry.at("kind").oneOf(KINDS, "kind"));
    }

    private static Optional<String> text(Yaml entry, String field) {
        return entry.maybe(field).map(Yaml::text);
    }
}
