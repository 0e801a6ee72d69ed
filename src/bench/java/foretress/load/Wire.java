package foretress.load;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One kept HTTP/1.1 connection to this machine. It does next to nothing itself, since whatever asks takes the processor from what is
 * asked.
 */
final class Wire implements AutoCloseable {
    private static final Pattern LENGTH = Pattern.compile("(?im)^content-length: *(\\d+)");
    private static final Pattern CHUNKED = Pattern.compile("(?im)^transfer-encoding: *chunked");
    private static final int PATIENCE_MILLIS = 60_000;
    private final Socket socket;
    private final InputStream in;
    private final int port;

    Wire(int port) throws IOException {
        this.port = port;
        socket = new Socket("127.0.0.1", port);
        socket.setTcpNoDelay(true);
        socket.setSoTimeout(PATIENCE_MILLIS);
        in = new BufferedInputStream(socket.getInputStream(), 1 << 16);
    }

    /** @param nanos from the first byte sent to the last received */
    record Answer(int status, String head, byte[] body, long nanos) {
        String text() {
            return new String(body, StandardCharsets.UTF_8);
        }

        /** Every value of a header. */
        List<String> all(String name) {
            return Pattern.compile("(?im)^" + name + ": *(.*?)\\r?$").matcher(head).results().map(m -> m.group(1))
                .toList();
        }
    }

    Answer get(String path, String cookies) throws IOException {
        return send("GET " + path + " HTTP/1.1\r\n" + common(cookies) + "\r\n");
    }

    Answer post(String path, String cookies, String form) throws IOException {
        return send("POST " + path + " HTTP/1.1\r\n" + common(cookies) + "Origin: http://127.0.0.1:" + port
            + "\r\nContent-Type: application/x-www-form-urlencoded; charset=UTF-8\r\nContent-Length: "
            + form.getBytes(StandardCharsets.UTF_8).length + "\r\n\r\n" + form);
    }

    private String common(String cookies) {
        return "Host: 127.0.0.1:" + port + "\r\nAccept: text/html\r\n"
            + (cookies.isEmpty() ? "" : "Cookie: " + cookies + "\r\n");
    }

    private Answer send(String request) throws IOException {
        long from = System.nanoTime();
        socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
        String head = head();
        byte[] body = body(head);
        return new Answer(Integer.parseInt(head.substring(9, 12)), head, body, System.nanoTime() - from);
    }

    private String head() throws IOException {
        StringBuilder head = new StringBuilder();
        for (String line = line(); !line.isEmpty(); line = line()) {
            head.append(line).append('\n');
        }
        return head.toString();
    }

    private String line() throws IOException {
        StringBuilder line = new StringBuilder();
        for (int next = in.read(); next != '\n'; next = in.read()) {
            if (next < 0) {
                throw new EOFException("the connection was ended");
            }
            line.append((char) next);
        }
        return line.toString().strip();
    }

    private byte[] body(String head) throws IOException {
        Matcher length = LENGTH.matcher(head);
        if (length.find()) {
            return in.readNBytes(Integer.parseInt(length.group(1)));
        }
        return CHUNKED.matcher(head).find() ? chunks() : new byte[0];
    }

    private byte[] chunks() throws IOException {
        var all = new ByteArrayOutputStream();
        for (int size = Integer.parseInt(line(), 16); size > 0; size = Integer.parseInt(line(), 16)) {
            all.write(in.readNBytes(size));
            line();
        }
        line();
        return all.toByteArray();
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
