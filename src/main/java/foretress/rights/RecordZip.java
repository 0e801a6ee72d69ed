package foretress.rights;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foretress.knowledge.Sha256;
import foretress.visit.Client;
import foretress.visit.Clients;
import foretress.web.Supported;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Everything about one person as one ZIP, written as it is read: signed pages and photos, the page to read, JSON with its schemas, CSV.
 * GDPR Art. 15(3) and 20(1).
 */
@Singleton
class RecordZip {
    static final String OVERVIEW = "overview.html", RECORD = "record.json", CONSENTS = "consent-records.json";
    private static final int SECONDS = 300;

    private final Clients clients;
    private final RecordRows rows;
    private final RecordJson json;
    private final RecordOverview overview;
    private final ConsentRecords consents;
    private final ObjectMapper mapper;
    private final Clock clock;
    private final RecordMap map = RecordMap.read();

    RecordZip(Clients clients, RecordRows rows, RecordJson json, RecordOverview overview, ConsentRecords consents,
        ObjectMapper mapper, Clock clock) {
        this.clients = clients;
        this.rows = rows;
        this.json = json;
        this.overview = overview;
        this.consents = consents;
        this.mapper = mapper;
        this.clock = clock;
    }

    /** Under no name of anybody. */
    String fileName() {
        return "record-" + clock.instant().toString().substring(0, 10) + ".zip";
    }

    /** @param client the record that holds */
    void write(UUID client, OutputStream out) {
        QuarkusTransaction.requiringNew().timeout(SECONDS).run(() -> {
            try {
                var zip = new ZipOutputStream(out, StandardCharsets.UTF_8); // closed only when whole: what failed half-way must not open
                write(clients.find(client).orElseThrow(), zip);
                zip.close();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    private void write(Client client, ZipOutputStream zip) throws IOException {
        List<UUID> who = clients.everyId(client.id);
        Instant now = clock.instant();
        String language = Supported.TAGS.contains(client.language) ? client.language : Supported.ORIGINAL;
        zip.putNextEntry(new ZipEntry(OVERVIEW));
        Writer page = new BufferedWriter(new OutputStreamWriter(zip, StandardCharsets.UTF_8));
        overview.write(map, who, new RecordOverview.Person(client.fullName(), language), now, page);
        page.flush();
        entry("overview.css", resource("overview.css"), zip);
        List<JsonNode> files = files(who, zip);
        zip.putNextEntry(new ZipEntry(RECORD));
        json.write(map, who, now, files, zip);
        entry(CONSENTS, mapper.writerWithDefaultPrettyPrinter()
            .writeValueAsBytes(consents.of(map, who, language, now)), zip);
        entry("schemas/record.schema.json", mapper.writerWithDefaultPrettyPrinter()
            .writeValueAsBytes(RecordSchema.of(map)), zip);
        entry("schemas/consent-record.schema.json", consentSchema(), zip);
        tables(who, zip);
    }

    private List<JsonNode> files(List<UUID> who, ZipOutputStream zip) throws IOException {
        List<JsonNode> written = new ArrayList<>();
        for (RecordMap.Kept table : map.kept()) {
            rows.files(table, who, file -> {
                ObjectNode said = JsonNodeFactory.instance.objectNode().put("file", file.at());
                if (file.bytes().isPresent()) {
                    byte[] bytes = file.bytes().get();
                    entry(file.at(), bytes, zip);
                    said.put("sha256", Sha256.of(bytes)).put("bytes", bytes.length);
                } else {
                    said.put("unreadable", true);
                }
                written.add(said);
            });
        }
        return written;
    }

    private void tables(List<UUID> who, ZipOutputStream zip) throws IOException {
        for (RecordMap.Kept table : map.kept()) {
            zip.putNextEntry(new ZipEntry("csv/" + table.table() + ".csv"));
            zip.write(RecordCsv.head(table).getBytes(StandardCharsets.UTF_8));
            rows.rows(table, who, row -> zip.write(RecordCsv.line(row).getBytes(StandardCharsets.UTF_8)));
        }
    }

    private static void entry(String name, byte[] bytes, ZipOutputStream zip) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(bytes);
    }

    static byte[] consentSchema() throws IOException {
        return resource("consent-record.schema.json");
    }

    private static byte[] resource(String name) throws IOException {
        try (InputStream in = RecordZip.class.getResourceAsStream("/foretress/rights/" + name)) {
            return in.readAllBytes();
        }
    }
}
