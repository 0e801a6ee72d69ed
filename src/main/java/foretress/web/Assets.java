package foretress.web;

import foretress.knowledge.Sha256;
import jakarta.inject.Named;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/** Our own files, under addresses that change with their content: {@code {inject:asset.at('/css/base.css')}}. */
@Named("asset")
@Singleton
public class Assets {
    private static final Pattern ASSET = Pattern.compile("/(css|js|fonts|img)/.+");
    private final Map<String, String> known = new ConcurrentHashMap<>();

    /** @throws IllegalArgumentException when there is no such file */
    public String at(String path) {
        return known.computeIfAbsent(path, Assets::withHash);
    }

    static boolean isAsset(String path) {
        return ASSET.matcher(path).matches();
    }

    private static String withHash(String path) {
        try (InputStream in =
            Thread.currentThread().getContextClassLoader().getResourceAsStream("META-INF/resources" + path)) {
            if (in == null) {
                throw new IllegalArgumentException("no such file: " + path);
            }
            return path + "?v=" + Sha256.of(in.readAllBytes()).substring(0, 12);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
