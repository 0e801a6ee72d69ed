package foretress.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.LinkedHashSet;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Bytes as they travel from the running server to a browser with an empty cache, headers included. */
public final class Wire {
    /** What is counted is HTTP/1.1, so it is asked for in that: the client's own try at an upgrade once found no answer for two minutes. */
    private static final HttpClient CLIENT = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

    private Wire() {}

    /** A page and all it names: style sheets, scripts, letters and drawings. */
    public static int bytes(URI base, String path, String html) throws IOException, InterruptedException {
        int sum = sent(base, path);
        for (String named : named(Jsoup.parse(html))) {
            sum += sent(base, named);
        }
        return sum;
    }

    private static Set<String> named(Document page) {
        var paths = new LinkedHashSet<String>();
        for (Element element : page.select("link[href], script[src], use[href], img[src]")) {
            paths.add((element.hasAttr("src") ? element.attr("src") : element.attr("href")).replaceAll("#.*", ""));
        }
        return paths;
    }

    private static int sent(URI base, String path) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(base.resolve(path)).header("Accept-Encoding", "gzip").build();
        HttpResponse<byte[]> answer = CLIENT.send(request, HttpResponse.BodyHandlers.ofByteArray());
        assertThat(answer.statusCode()).as(path).isEqualTo(200);
        int headers = answer.headers().map().entrySet().stream()
            .mapToInt(h -> h.getValue().stream()
                .mapToInt(value -> h.getKey().length() + value.length() + ": \r\n".length()).sum())
            .sum();
        return "HTTP/1.1 200 OK\r\n\r\n".length() + headers + answer.body().length;
    }
}
