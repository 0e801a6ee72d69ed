package foretress.load;

import foretress.Walker;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Map.Entry;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;

/** A walker on a wire of its own, who goes one request at a time: where an answer leads is {@link #onwards}. */
final class Phone extends Walker {
    private final Wire wire;
    private Wire.Answer last;
    private Document page;
    private String at = "";

    Phone(int port) {
        try {
            wire = new Wire(port);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public Phone open(String path) {
        at = path;
        return arrive(() -> wire.get(path, cookieLine()));
    }

    /** Opens where the last answer led. */
    Phone onwards() {
        return open(leads());
    }

    /** Where the last answer led; nowhere when it was a page. */
    String leads() {
        return last.all("location").stream().findFirst().orElse("").replaceAll("^https?://[^/]+", "");
    }

    @Override
    public Phone post(String path, List<Entry<String, String>> fields) {
        return arrive(() -> wire.post(path, cookieLine(), fields.stream()
            .map(f -> encoded(f.getKey()) + "=" + encoded(f.getValue())).collect(Collectors.joining("&"))));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public Phone send(String form, Map<String, String> filled) {
        FormElement found = (FormElement) only(form);
        List<Entry<String, String>> fields = new ArrayList<>(found.formData().stream()
            .filter(f -> !filled.containsKey(f.key())).map(f -> Map.entry(f.key(), f.value())).toList());
        fields.addAll(filled.entrySet());
        return post(found.hasAttr("action") ? found.attr("action") : at, fields);
    }

    private interface Asking {
        Wire.Answer ask() throws IOException;
    }

    private Phone arrive(Asking asking) {
        try {
            last = asking.ask();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        page = null;
        last.all("set-cookie").forEach(this::keep);
        return this;
    }

    private void keep(String cookie) {
        String[] named = cookie.split(";")[0].split("=", 2);
        if (cookie.toLowerCase(java.util.Locale.ROOT).contains("max-age=0")) {
            cookies().remove(named[0]);
        } else {
            cookies().put(named[0], named[1]);
        }
    }

    String cookieLine() {
        return cookies().entrySet().stream().map(c -> c.getKey() + "=" + c.getValue())
            .collect(Collectors.joining("; "));
    }

    /** How long the last request took. */
    long nanos() {
        return last.nanos();
    }

    @Override
    public Phone expect(int status) {
        if (last.status() != status) {
            throw new IllegalStateException(last.status() + " at " + at + ":\n" + page().text());
        }
        return this;
    }

    /** Read when it is looked at, after what is measured. */
    @Override
    public Document page() {
        if (page == null) {
            page = Jsoup.parse(last.text());
        }
        return page;
    }

    @Override
    public List<Entry<String, String>> fields(String form) {
        return ((FormElement) only(form)).formData().stream().map(f -> Map.entry(f.key(), f.value())).toList();
    }

    @Override
    public String at() {
        return at;
    }

    @Override
    public Element only(String selector) {
        Element found = page().selectFirst(selector);
        if (found == null) {
            throw new IllegalStateException("no " + selector + " on " + at + ":\n" + page().text());
        }
        return found;
    }
}
