package foretress.consent;

import java.util.Map;

/** The sentences of one language, by key; the room asks for a sentence and never knows the file it came from. */
public interface ConsentSentences {

    /**
     * The sentence under the key with every {@code {name}} replaced.
     *
     * @throws IllegalArgumentException if the key is unknown or a place stays unfilled
     */
    String say(String key, Map<String, String> places);

    boolean has(String key);

    /** The language the sentences really are in, which may not be the one wanted. */
    String language();

    default String say(String key) {
        return say(key, Map.of());
    }
}
