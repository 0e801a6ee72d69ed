package foretress.ledger;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * The chain read where no server runs: from an opened store, or from an export. An export is JSON: {@code format}, {@code whole} (false for
 * part of a trail, which proves nothing), and {@code entries}, each with {@code number}, {@code at} (RFC 3339, UTC, milliseconds),
 * {@code actor}, {@code what}, {@code subject}, {@code previous} and {@code sha256}.
 */
public final class TrailProof {
    private static final String FORMAT = "foretress-trail-1";
    private static final JsonFactory JSON = new JsonFactory();

    /** Why a file cannot be judged. */
    public static final class NotATrail extends Exception {
        private static final long serialVersionUID = 1;

        NotATrail(String why) {
            super(why);
        }
    }

    private TrailProof() {}

    /** @param slips kept outside the store */
    public static TrailVerdict ofStore(Connection connection, List<Slip> slips) throws SQLException {
        return Chain.check(connection, slips);
    }

    /** The slips that lie in the store itself. */
    public static List<Slip> keptIn(Connection connection) throws SQLException {
        return Anchors.all(connection);
    }

    /** Whatever is read, it is never held whole. @throws NotATrail when it is no export, or one of a part */
    public static TrailVerdict ofFile(InputStream file, List<Slip> slips) throws IOException, NotATrail {
        var reading = new TrailReading(slips);
        boolean[] found = new boolean[2];
        try (JsonParser json = JSON.createParser(file)) {
            need(json.nextToken() == JsonToken.START_OBJECT, "it is not JSON of an exported trail");
            for (String name = json.nextFieldName(); name != null; name = json.nextFieldName()) {
                json.nextToken();
                switch (name) {
                    case "format" -> found[0] = FORMAT.equals(json.getValueAsString());
                    case "whole" -> found[1] = json.getBooleanValue();
                    case "entries" -> {
                        need(found[0], "it is not in the format " + FORMAT);
                        need(found[1], "it holds a part of the trail only, as a search found it; export all of it");
                        entries(json, reading);
                    }
                    default -> json.skipChildren();
                }
            }
        } catch (com.fasterxml.jackson.core.JacksonException e) {
            throw new NotATrail("its JSON cannot be read: " + e.getOriginalMessage());
        }
        need(found[0] && found[1], "it is not JSON of an exported trail");
        return reading.verdict();
    }

    private static void entries(JsonParser json, TrailReading reading) throws IOException, NotATrail {
        need(json.currentToken() == JsonToken.START_ARRAY, "its entries are not a list");
        boolean good = true;
        while (json.nextToken() == JsonToken.START_OBJECT) {
            Map<String, String> fields = new HashMap<>();
            for (String name = json.nextFieldName(); name != null; name = json.nextFieldName()) {
                json.nextToken();
                fields.put(name, String.valueOf(json.getValueAsString()));
                json.skipChildren();
            }
            good = good && reading.read(entry(fields));
        }
    }

    /** What an entry lacks or spoils makes it another one than was written, and no reason to stop. */
    private static KeptEntry entry(Map<String, String> fields) {
        return new KeptEntry(new AuditEntry(number(fields.get("number")), moment(fields.get("at")),
            fields.getOrDefault("actor", ""), fields.getOrDefault("what", ""), fields.getOrDefault("subject", ""),
            fields.getOrDefault("previous", "")), fields.getOrDefault("sha256", ""));
    }

    private static long number(String text) {
        return text != null && text.matches("[0-9]{1,18}") ? Long.parseLong(text) : -1;
    }

    private static Instant moment(String text) {
        try {
            return Instant.parse(String.valueOf(text));
        } catch (DateTimeException notOne) {
            return Instant.EPOCH;
        }
    }

    private static void need(boolean holds, String why) throws NotATrail {
        if (!holds) {
            throw new NotATrail(why);
        }
    }

    /** Hands every entry of an export to whoever writes it. */
    interface Source {
        void each(Consumer<KeptEntry> to);
    }

    /** @param whole whether the source gives the whole chain from its first entry on */
    static void write(OutputStream out, boolean whole, Source source) throws IOException {
        try (JsonGenerator json = JSON.createGenerator(out)) {
            json.writeStartObject();
            json.writeStringField("format", FORMAT);
            json.writeBooleanField("whole", whole);
            json.writeArrayFieldStart("entries");
            source.each(kept -> {
                try {
                    json.writeRaw('\n');
                    entry(json, kept);
                } catch (IOException e) {
                    throw new java.io.UncheckedIOException(e);
                }
            });
            json.writeEndArray();
            json.writeEndObject();
        }
    }

    private static void entry(JsonGenerator json, KeptEntry kept) throws IOException {
        AuditEntry entry = kept.entry();
        json.writeStartObject();
        json.writeNumberField("number", entry.number());
        json.writeStringField("at", entry.at().toString());
        json.writeStringField("actor", entry.actor());
        json.writeStringField("what", entry.what());
        json.writeStringField("subject", entry.subject());
        json.writeStringField("previous", entry.previous());
        json.writeStringField("sha256", kept.sha256());
        json.writeEndObject();
    }
}
