package foretress.salon;

import foretress.knowledge.Knowledge;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/** All that a client reads in one language, on screens, in mails and on paper, beside the English it was drafted from. */
final class ClientSentences {
    private static final List<String> BUNDLES = List.of("say", "aftercare", "instead", "picture");

    /** @param path under which both stand */
    record Sentence(String path, String english, String own) {}

    private final Map<String, Sentence> byPath = new TreeMap<>();

    ClientSentences(Knowledge knowledge, String tag) {
        Map<String, String> own = knowledge.words(tag).forClients();
        knowledge.words("en").forClients().forEach((path, english) -> put(path, english, own.get(path)));
        BUNDLES.forEach(bundle -> bundle(bundle, tag));
    }

    private void bundle(String bundle, String tag) {
        Properties own = properties(bundle + "_" + tag);
        properties(bundle).forEach((key, english) -> put("screens." + bundle + "." + key, (String) english,
            own.getProperty((String) key)));
    }

    private void put(String path, String english, String own) {
        byPath.put(path, new Sentence(path, english, own == null ? "" : own));
    }

    private static Properties properties(String name) {
        var read = new Properties();
        try (InputStream file = ClientSentences.class.getResourceAsStream("/messages/" + name + ".properties")) {
            if (file != null) {
                read.load(new InputStreamReader(file, StandardCharsets.UTF_8));
            }
            return read;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** By the first word of their paths: questions, findings, screens, ... */
    Map<String, List<Sentence>> chapters() {
        Map<String, List<Sentence>> chapters = new LinkedHashMap<>();
        byPath.values().forEach(one -> chapters
            .computeIfAbsent(one.path().substring(0, one.path().indexOf('.')), chapter -> new ArrayList<>()).add(one));
        return chapters;
    }

    /** Those a client would read in English, for want of words. */
    List<Sentence> missing() {
        return byPath.values().stream().filter(one -> one.own().isEmpty()).toList();
    }

    /** A short mark of each sentence, which changes with it or with its English. */
    Map<String, String> marks() {
        Map<String, String> marks = new TreeMap<>();
        byPath.values()
            .forEach(one -> marks.put(one.path(), Integer.toHexString((one.english() + "\n" + one.own()).hashCode())));
        return marks;
    }

    /** Paths whose sentence is not as it was when these marks were made. */
    List<String> changedSince(Map<String, String> marks) {
        return marks().entrySet().stream().filter(mark -> !mark.getValue().equals(marks.get(mark.getKey())))
            .map(Map.Entry::getKey).toList();
    }
}
