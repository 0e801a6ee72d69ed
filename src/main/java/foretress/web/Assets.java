package foretress.web;

import jakarta.inject.Named;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
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
        try (var in = Thread.currentThread().getContextClassLoader().getResourceAsStream("META-INF/resources" + path)) {
            if (in == null) throw new IllegalArgumentException("no such file: " + path);
            var hash = MessageDigest.getInstance("SHA-256").digest(in.readAllBytes());
            return path + "?v=" + HexFormat.of().formatHex(hash, 0, 6);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
