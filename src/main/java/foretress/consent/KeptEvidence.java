package foretress.consent;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.io.UncheckedIOException;

/** Everything kept about one signing, as JSON: the story, the mark itself, the hash of the document made of them. */
public record KeptEvidence(HowSigned how, SignatureMark mark, String pdfSha256) {
    private static final ObjectMapper JSON = JsonMapper.builder()
        .addModules(new JavaTimeModule(), new Jdk8Module())
        .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
        .addMixIn(SignatureMark.class, KindOfMark.class)
        .build();

    /** How JSON tells a drawing from a name. */
    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = SignatureMark.Drawn.class, name = "drawn"),
        @JsonSubTypes.Type(value = SignatureMark.Typed.class, name = "typed") })
    private interface KindOfMark {}

    byte[] bytes() {
        try {
            return JSON.writeValueAsBytes(this);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the evidence cannot be written", e);
        }
    }

    static KeptEvidence read(byte[] json) {
        try {
            return JSON.readValue(json, KeptEvidence.class);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
