package foretress.post;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** A mail server of a few lines on the loopback address (RFC 5321): takes every mail, or refuses when told to. */
public class SmtpStub implements AutoCloseable {
    private final ServerSocket socket;
    private final List<String> mails = new CopyOnWriteArrayList<>();
    private volatile boolean refusing;

    public SmtpStub() {
        try {
            socket = new ServerSocket(0, 10, InetAddress.getLoopbackAddress());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        var thread = new Thread(this::serve, "smtp");
        thread.setDaemon(true);
        thread.start();
    }

    public int port() {
        return socket.getLocalPort();
    }

    public void refuse(boolean refuse) {
        refusing = refuse;
    }

    /** Each as it came over the wire: headers, blank line, parts. */
    public List<String> mails() {
        return mails;
    }

    private void serve() {
        while (!socket.isClosed()) {
            try {
                Socket caller = socket.accept();
                new Thread(() -> talk(caller), "smtp-talk").start();
            } catch (IOException closed) {
                return;
            }
        }
    }

    private void talk(Socket caller) {
        try (caller;
            var in = new BufferedReader(new InputStreamReader(caller.getInputStream(), StandardCharsets.UTF_8))) {
            OutputStream out = caller.getOutputStream();
            say(out, "220 stub");
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                if (line.startsWith("EHLO")) {
                    say(out, "250-stub\r\n250 8BITMIME");
                } else if (line.startsWith("MAIL") && refusing) {
                    say(out, "451 not now");
                } else if (line.equals("DATA")) {
                    say(out, "354 go on");
                    mails.add(body(in));
                    say(out, "250 taken");
                } else if (line.equals("QUIT")) {
                    say(out, "221 bye");
                    return;
                } else {
                    say(out, "250 ok");
                }
            }
        } catch (IOException gone) {
            // the caller hung up; the next one gets a fresh talk
        }
    }

    private static String body(BufferedReader in) throws IOException {
        var mail = new StringBuilder();
        for (String line = in.readLine(); line != null && !line.equals("."); line = in.readLine()) {
            mail.append(line).append('\n');
        }
        return mail.toString();
    }

    private static void say(OutputStream out, String line) throws IOException {
        out.write((line + "\r\n").getBytes(StandardCharsets.US_ASCII));
        out.flush();
    }

    @Override
    public void close() {
        try {
            socket.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
