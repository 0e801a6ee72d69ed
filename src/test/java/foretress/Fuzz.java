package foretress;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Requests as nobody's browser makes them, byte by byte on a socket of their own; the same seed makes the same ones. */
public final class Fuzz {
    /** A browser's cookies and the token of its forms. */
    public record Sender(Map<String, String> cookies, String token) {}

    private static final int PATIENCE_MS = 15_000;
    private static final int CLOSED = 0;
    private static final Pattern NAME = Pattern.compile("\\bname=\"([a-z][a-z0-9.-]*)\"");
    private static final List<String> NASTY = List.of("", " ", "%", "%ZZ", "%00", "%ED%A0%80", "%FF%FE", "%F0%9F%92%87",
        "-1", "0", "1e309", "NaN", "9".repeat(40),
        "2026-02-30", "9999999999-01-01", "-999999999-01-01", "25:61", "../../etc", "';--", "{inject:who.name}",
        "%3Cscript%3E", "null", "true", "x".repeat(65),
        "y".repeat(5_000), "%E2%80%AE", "%0D%0A", "not base64 ~", "İı", "1,2", "½", "on");
    private static final List<String> TYPES =
        List.of("application/x-www-form-urlencoded", "application/x-www-form-urlencoded; charset=UTF-8",
            "application/x-www-form-urlencoded; charset=klingon", "application/x-www-form-urlencoded; charset=UTF-16",
            "application/x-www-form-urlencoded; charset=\"",
            "multipart/form-data", "multipart/form-data; boundary=x", "multipart/form-data; boundary=",
            "multipart/form-data; boundary=\"x", "multipart/mixed; boundary=x",
            "application/json", "application/json; charset=klingon", "text/plain", "text", "/", ";", "*/*", "a/b/c",
            "image/jpeg", "application/xml", "");
    private static final List<String> HEADERS = List.of("Accept: */*;q=x", "Accept: text", "Accept: application/json",
        "Accept-Language: x;q=9, ,", "Accept-Language: *",
        "Cookie: =; ;\"", "Cookie: staff=%ZZ; door=\u0001; form=\"a", "Range: bytes=9-1", "If-None-Match: \"",
        "X-Forwarded-For: unknown, a:b", "Forwarded: for=\"[::",
        "Sec-Fetch-Site: same-origin", "Origin: null", "Expect: 100-continue", "Expect: a miracle",
        "Authorization: Bearer", "Authorization: Basic =", "X-HTTP-Method-Override: DELETE",
        "Content-Encoding: gzip", "Content-Language: ??", "Upgrade: websocket", "Date: never");
    private static final List<String> METHODS =
        List.of("GET", "HEAD", "OPTIONS", "PUT", "DELETE", "PATCH", "POST", "FOO");

    private final int port;
    private final Random random;
    private final List<Sender> senders;
    private final List<String> known;
    private final List<String> names = names();

    /** @param known ids and the like that lead somewhere */
    public Fuzz(int port, Random random, List<Sender> senders, List<String> known) {
        this.port = port;
        this.random = random;
        this.senders = senders;
        this.known = known;
    }

    public List<Sender> senders() {
        return senders;
    }

    /** Every name a form of ours has, found in the templates. */
    public static List<String> names() {
        try (Stream<Path> files = Files.walk(Path.of("templates"))) {
            return files.filter(f -> f.toString().endsWith(".html"))
                .flatMap(f -> NAME.matcher(text(f)).results().map(m -> m.group(1))).distinct().sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private <T> T any(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private boolean oneIn(int times) {
        return random.nextInt(times) == 0;
    }

    /** @param route as the table of rights writes it: {@code POST /visits/{id}/closing} */
    public byte[] request(String route) {
        String verb = route.substring(0, route.indexOf(' '));
        String path =
            Pattern.compile("\\{[^}]+}").matcher(route.substring(route.indexOf(' ') + 1)).replaceAll(m -> piece());
        String query = oneIn(3) ? "?" + any(names) + "=" + any(NASTY) + "&" + any(NASTY).replace(" ", "+") : "";
        return message(oneIn(6) ? any(METHODS) : verb, ascii(path + query), any(senders));
    }

    private String piece() {
        return switch (random.nextInt(4)) {
            case 0 -> any(known);
            case 1 -> any(List.of("test-cutting", "elasticity-test", "letter", "word", "1", "hair", "notice"));
            case 2 -> new UUID(random.nextLong(), random.nextLong()).toString();
            default -> any(NASTY).replace(" ", "%20").replaceAll("[{}\"<>$\\\\]", "");
        };
    }

    private static String ascii(String path) {
        return path.chars()
            .mapToObj(c -> c > 32 && c < 127 ? Character.toString(c)
                : URLEncoder.encode(Character.toString(c), StandardCharsets.UTF_8))
            .collect(Collectors.joining()).replace("{", "%7B").replace("}", "%7D");
    }

    private byte[] message(String method, String path, Sender sender) {
        boolean bodiless = method.equals("GET") || method.equals("HEAD") || method.equals("OPTIONS");
        String type = oneIn(2) ? TYPES.get(random.nextInt(2)) : any(TYPES);
        byte[] body = bodiless && !oneIn(8) ? new byte[0] : body(type, sender);
        var extra = new ArrayList<String>();
        for (int i = random.nextInt(3); i > 0; i--) {
            extra.add(any(HEADERS));
        }
        return message(method, path, body.length == 0 ? "" : type, body, sender, extra);
    }

    /** A request that is in order but for what is given. */
    public byte[] plain(String method, String path, String type, String body, Sender sender) {
        return message(method, path, type, body.getBytes(StandardCharsets.ISO_8859_1), sender,
            List.of("Sec-Fetch-Site: same-origin"));
    }

    private byte[] message(String method, String path, String type, byte[] body, Sender sender, List<String> extra) {
        var head = new StringBuilder(
            method + " " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nConnection: close\r\n");
        if (extra.stream().noneMatch(line -> line.startsWith("Cookie"))) {
            head.append("Cookie: ").append(sender.cookies().entrySet().stream()
                .map(c -> c.getKey() + "=" + c.getValue()).collect(Collectors.joining("; "))).append("\r\n");
        }
        if (extra.stream().noneMatch(line -> line.startsWith("Accept:"))) {
            head.append("Accept: text/html\r\n");
        }
        extra.forEach(line -> head.append(line).append("\r\n"));
        if (!type.isEmpty()) {
            head.append("Content-Type: ").append(type).append("\r\n");
        }
        if (body.length > 0 || method.equals("POST")) {
            head.append("Content-Length: ").append(body.length).append("\r\n");
        }
        var whole = new ByteArrayOutputStream();
        whole.writeBytes(head.append("\r\n").toString().getBytes(StandardCharsets.ISO_8859_1));
        whole.writeBytes(body);
        return whole.toByteArray();
    }

    private byte[] body(String type, Sender sender) {
        String said = type.startsWith("multipart") ? parts(sender) : type.contains("json") ? json() : fields(sender);
        byte[] bytes = said.getBytes(oneIn(5) ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1);
        for (int i = oneIn(6) ? 5 : 0; i > 0 && bytes.length > 0; i--) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return bytes;
    }

    private String fields(Sender sender) {
        int many = oneIn(40) ? 1500 : random.nextInt(12);
        var said = new StringBuilder(oneIn(6) ? "csrf-token=" + any(NASTY) : "csrf-token=" + sender.token());
        for (int i = 0; i < many; i++) {
            said.append('&').append(any(names)).append('=').append(value());
        }
        return said.toString();
    }

    private String value() {
        return switch (random.nextInt(4)) {
            case 0 -> any(known);
            case 1 -> any(List.of("yes", "no", "dont-know", "none", "colour", "3", "2026-12-24", "12:00", "petra"));
            default -> any(NASTY);
        };
    }

    private String parts(Sender sender) {
        var said = new StringBuilder(
            "--x\r\nContent-Disposition: form-data; name=\"csrf-token\"\r\n\r\n" + sender.token() + "\r\n");
        for (int i = random.nextInt(5); i > 0; i--) {
            said.append("--x\r\n").append(any(List.of("Content-Disposition: form-data; name=\"" + any(names) + "\"",
                "Content-Disposition: form-data; name=\"photo\"; filename=\"" + any(NASTY).replace("%", "")
                    + "\"\r\nContent-Type: image/jpeg",
                "Content-Disposition: form-data", "no colon",
                "Content-Disposition: form-data; name=\"a\"\r\nContent-Type: text/plain; charset=klingon",
                "Content-Transfer-Encoding: base64\r\nContent-Disposition: form-data; name=\"words\"", "")))
                .append("\r\n\r\n").append(value()).append("\r\n");
        }
        said.append("--x--\r\n");
        return oneIn(4) ? said.substring(0, random.nextInt(said.length())) : said.toString();
    }

    private String json() {
        return any(List.of("{", "[]", "null", "\"", "{}", "[".repeat(3_000), "{\"a\":" + "9".repeat(400) + "}",
            "{\"today\":\"2026-13-41\",\"answers\":{}}", "{\"text\":\"\\ud800\"}",
            "{\"services\":[null],\"answers\":[1]}", "{\"volume\":1e999}"));
    }

    /** The status answered; 0 when the server only closed the connection. */
    public int send(byte[] request) throws IOException {
        try (var socket = new Socket("127.0.0.1", port)) {
            socket.setSoTimeout(PATIENCE_MS);
            socket.getOutputStream().write(request);
            socket.getOutputStream().flush();
            return status(new String(socket.getInputStream().readNBytes(12), StandardCharsets.ISO_8859_1), socket);
        } catch (SocketTimeoutException e) {
            throw new AssertionError("no answer to " + shown(request), e);
        } catch (SocketException e) {
            return CLOSED;
        }
    }

    private static int status(String line, Socket socket) throws IOException {
        if (!line.matches("HTTP/1\\.[01] \\d{3}")) {
            return CLOSED;
        }
        int status = Integer.parseInt(line.substring(9));
        if (status != 100) {
            return status;
        }
        var rest = new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
        Matcher next = Pattern.compile("HTTP/1\\.1 (\\d{3})").matcher(rest);
        return next.find() ? Integer.parseInt(next.group(1)) : CLOSED;
    }

    /** As much of a request as a person wants to read. */
    public static String shown(byte[] request) {
        String all = new String(request, StandardCharsets.ISO_8859_1).replaceAll("(?m)^Cookie: .*$", "Cookie: …");
        return all.length() <= 700 ? all : all.substring(0, 700) + "… (" + all.length() + ")";
    }
}
