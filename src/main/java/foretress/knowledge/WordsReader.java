package foretress.knowledge;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Reads the words of one language, {@code words/<language>/*.yaml}, flattened to paths. The sections that carry ids are
 * shared by all files; anything else in a file is found under the file's own name.
 */
final class WordsReader {
    private static final Set<String> SHARED =
        Set.of("answers", "topics", "questions", "findings", "services", "aims", "steps", "facts", "tests",
            "zones", "treatments", "weights-of");

    private static final String FOR = ".for";

    private final Map<String, String> sentences = new LinkedHashMap<>();

    /** @param stem the file's name without folder and ending */
    void read(String stem, Yaml file) {
        file.pairs().forEach(section -> section.getKey().trying(key -> {
            String name = key.text();
            put(SHARED.contains(name) ? name : stem + "." + name, key, section.getValue());
        }));
    }

    private void put(String path, Yaml key, Yaml value) {
        if (value.isText()) {
            sentence(path, key, value);
        } else if (value.isList()) {
            List<Yaml> list = value.list();
            for (int i = 0; i < list.size(); i++) {
                put(path + "." + i, list.get(i), list.get(i));
            }
        } else {
            value.pairs().forEach(
                p -> p.getKey().trying(k -> names(path, k).forEach(name -> put(path + "." + name, k, p.getValue()))));
        }
    }

    /** Words for one chemistry or step stand under its id; several that share them stand side by side. */
    private static List<String> names(String path, Yaml key) {
        return path.endsWith(FOR) ? List.of(key.text().split(" ")) : List.of(key.text());
    }

    private void sentence(String path, Yaml key, Yaml value) {
        value.trying(v -> {
            if (sentences.putIfAbsent(path, v.text()) != null) {
                key.complain("%s is said twice in this language".formatted(path));
            }
        });
    }

    Map<String, String> sentences() {
        return sentences;
    }
}
