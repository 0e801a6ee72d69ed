package foretress.api;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads a body as JSON (RFC 8259), strictly: UTF-8, no name twice, nothing after it, not too large and not too deep. */
final class JsonBodies {
    static final int MOST_BYTES = 256 * 1024;
    private static final int DEEPEST = 32;
    private static final int LONGEST_TEXT = 20_000;
    private static final int LONGEST_NUMBER = 40;

    static final JsonMapper JSON = JsonMapper
        .builder(JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .streamReadConstraints(
                StreamReadConstraints.builder().maxNestingDepth(DEEPEST).maxStringLength(LONGEST_TEXT)
                    .maxNumberLength(LONGEST_NUMBER).build())
            .build())
        .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).build();

    private JsonBodies() {}

    /** @throws Refused 413 when it is too large, 400 when it is no JSON */
    static JsonNode read(byte[] body) {
        if (body.length > MOST_BYTES) {
            throw new Refused(413, "The body is larger than the %d bytes taken here.".formatted(MOST_BYTES), List.of());
        }
        try {
            JsonNode read = JSON.readTree(utf8(body));
            if (read == null || read.isMissingNode()) {
                throw malformed("the body is empty");
            }
            return read;
        } catch (JsonProcessingException e) {
            throw malformed("it breaks off or goes wrong" + place(e.getLocation()));
        }
    }

    private static String utf8(byte[] body) {
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(body)).toString();
        } catch (CharacterCodingException e) {
            throw malformed("its bytes are not UTF-8");
        }
    }

    /** The parser's own message quotes what was sent, and names its classes; the place is enough. */
    private static String place(JsonLocation at) {
        return at == null ? "" : " at line %d, column %d".formatted(at.getLineNr(), at.getColumnNr());
    }

    private static Refused malformed(String why) {
        return new Refused(400,
            "The body cannot be read as JSON: %s. A name may stand only once in an object.".formatted(why), List.of());
    }
}
