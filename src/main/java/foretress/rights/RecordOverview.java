package foretress.rights;

import com.fasterxml.jackson.databind.JsonNode;
import foretress.intake.AnswerJson;
import foretress.knowledge.AnswerWords;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.questionnaire.Answer;
import foretress.salon.Salon;
import foretress.web.DateWords;
import foretress.web.Supported;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.qute.i18n.Localized;
import io.quarkus.qute.i18n.MessageBundles;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;

/** A record as a page to read and to print, in the client's language: no script, nothing fetched, one row written after the other. */
@Singleton
class RecordOverview {
    @CheckedTemplate(basePath = "rights", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record OverviewHead(String tag, String dir, RightsWords say, String client, String made)
        implements TemplateInstance {}

    @CheckedTemplate(basePath = "rights", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record OverviewRow(String when, String name, String file, boolean picture, String words, List<Pair> pairs,
        List<Pair> more, RightsWords say) implements TemplateInstance {}

    public record Pair(String name, String value) {}

    /** In whose words it is said. */
    private record Reader(RightsWords say, Words words, DateWords dates) {}

    private final RecordRows rows;
    private final Knowledge knowledge;

    RecordOverview(RecordRows rows, Knowledge knowledge) {
        this.rows = rows;
        this.knowledge = knowledge;
    }

    void write(RecordMap map, List<UUID> who, Person person, Instant now, Writer out) throws IOException {
        var reader = new Reader(MessageBundles.get(RightsWords.class, Localized.Literal.of(person.language())),
            knowledge.words(person.language()), Salon.the().dates(person.language()));
        out.write(new OverviewHead(person.language(), Supported.dir(person.language()), reader.say(), person.name(),
            reader.say().record_made(Salon.the().name, moment(now.toString(), reader))).render());
        for (Chapter chapter : Chapter.values()) {
            write(chapter, map, who, reader, out);
        }
        out.write("</main></body></html>\n");
    }

    /** Whose record it is. @param language a tag the words exist in */
    record Person(String name, String language) {}

    private void write(Chapter chapter, RecordMap map, List<UUID> who, Reader reader, Writer out) throws IOException {
        out.write("<section><h2>" + escaped(chapter.heading(reader.say())) + "</h2>\n");
        List<String> any = new ArrayList<>();
        for (RecordMap.Kept table : map.kept()) {
            if (table.chapter() == chapter) {
                rows.rows(table, who, row -> {
                    if (any.isEmpty()) {
                        any.add(table.table());
                    }
                    out.write(shown(row, reader).render());
                });
            }
        }
        out.write(any.isEmpty() ? "<p>" + escaped(reader.say().record_none()) + "</p></section>\n" : "</section>\n");
    }

    private OverviewRow shown(RecordRow row, Reader reader) {
        String file = row.table().file().map(column -> row.of(column.name()).asText("")).orElse("");
        List<Pair> first = new ArrayList<>(), more = new ArrayList<>();
        for (RecordMap.Column column : row.table().columns()) {
            JsonNode value = row.of(column.name());
            if (column.exported() && column.form() != RecordMap.Form.FILE && !value.isNull() && !isText(row, column)) {
                (isPlain(row.table(), column) ? first : more).addAll(pairs(row, column, value, reader));
            }
        }
        return new OverviewRow(row.moment().map(at -> moment(at, reader)).orElse(""), spaced(row.table().table()), file,
            file.endsWith(".jpg") || file.endsWith(".png"), text(row), first, more, reader.say());
    }

    /** Ids and what counts versions are for programs. */
    private static boolean isPlain(RecordMap.Kept table, RecordMap.Column column) {
        return column.form() != RecordMap.Form.ID && !column.name().endsWith("sha256")
            && !List.of("submission", "version", "version_no", "rule_set_sha256", "evidence").contains(column.name())
            && !(column.form() == RecordMap.Form.JSON
                && (column.name().equals("told") || table.chapter() == Chapter.FOUND));
    }

    /** What was signed is shown as it was read. */
    private static boolean isText(RecordRow row, RecordMap.Column column) {
        return row.table().table().equals("signed_consent") && column.name().equals("body");
    }

    private static String text(RecordRow row) {
        return row.table().table().equals("signed_consent") ? row.of("body").asText("") : "";
    }

    private List<Pair> pairs(RecordRow row, RecordMap.Column column, JsonNode value, Reader reader) {
        if (value.path("unreadable").asBoolean(false)) {
            return List.of(new Pair(spaced(column.name()), reader.say().record_unreadable()));
        }
        if (row.table().table().equals("topic_answers") && column.name().equals("body")) {
            return answers(value, reader);
        }
        List<Pair> all = new ArrayList<>();
        flat(spaced(column.name()), value, column, reader, all);
        return all;
    }

    /** As she read question and answer. A question that is no longer asked goes by its id. */
    private List<Pair> answers(JsonNode body, Reader reader) {
        List<Pair> all = new ArrayList<>();
        Map<String, Answer> said =
            new TreeMap<>(AnswerJson.read(body.toString().getBytes(StandardCharsets.UTF_8)).byQuestion());
        said.forEach((id, answer) -> all.add(knowledge.questionnaire().question(id)
            .map(question -> new Pair(reader.words().question(id).short_(),
                AnswerWords.say(question, answer, reader.words())))
            .orElseGet(() -> new Pair(id, body.get(id).toString()))));
        return all;
    }

    private static void flat(String name, JsonNode value, RecordMap.Column column, Reader reader, List<Pair> all) {
        if (value.isObject()) {
            value.properties().forEach(
                part -> flat(name.equals("body") ? part.getKey() : name + " · " + part.getKey(), part.getValue(),
                    column, reader, all));
        } else if (value.isArray()) {
            value.forEach(part -> flat(name, part, column, reader, all));
        } else if (!value.isNull() && !value.asText().isEmpty()) {
            all.add(new Pair(name, said(value.asText(), column, reader)));
        }
    }

    private static String said(String value, RecordMap.Column column, Reader reader) {
        return switch (column.form()) {
            case MOMENT -> moment(value, reader);
            case DATE -> reader.dates().full(LocalDate.parse(value));
            default -> column.name().equals("service_id") ? service(value, reader) : value;
        };
    }

    private static String service(String id, Reader reader) {
        return Optional.of(reader.words().service(id)).filter(name -> !name.isBlank()).orElse(id);
    }

    private static String moment(String at, Reader reader) {
        return reader.dates().fullAndHour(Instant.parse(at).atZone(Salon.the().zoneId()));
    }

    private static String spaced(String name) {
        return name.replace('_', ' ');
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;");
    }
}
