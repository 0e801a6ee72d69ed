package foretress;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;

/**
 * A telephone line between browser and server that is slow and breaks: some requests never arrive, some arrive and their answer is
 * lost, some answers are cut in the middle. Which ones, the seed says, as far as a browser asks in the same order again. A connection
 * that broke stays dead, as on a phone. It stands on loopback.
 */
public final class BadLine implements AutoCloseable {
    /**
     * @param loss share of requests that break, 0 to 1
     * @param latencyMs milliseconds each way
     * @param down bytes a second from the server, all connections together; 0 for as fast as it goes
     * @param up bytes a second to the server
     */
    public record Quality(double loss, int latencyMs, int down, int up) {
        /** Losses alone, without waiting. */
        public static Quality losing(double loss) {
            return new Quality(loss, 0, 0, 0);
        }
    }

    /** How a request breaks. */
    public enum Break { NEVER_ARRIVED, ANSWER_LOST, CUT_IN_THE_MIDDLE }

    private static final int CUT_AFTER = 700; // bytes: within the headers of an answer, or just behind them

    private final ServerSocket door;
    private final int server;
    private final Quality quality;
    private final Random random;
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();
    private final Map<String, Integer> broken = new TreeMap<>();
    private final AtomicBoolean away = new AtomicBoolean();
    private long requests;
    private final AtomicLong downFree = new AtomicLong();
    private final AtomicLong upFree = new AtomicLong();

    public BadLine(int server, Quality quality, long seed) throws IOException {
        this.server = server;
        this.quality = quality;
        this.random = new Random(seed);
        this.door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        beside(this::accept);
    }

    public String address() {
        return "http://127.0.0.1:" + door.getLocalPort();
    }

    /** While it is away every connection ends at once. */
    public void away(boolean gone) {
        away.set(gone);
        if (gone) {
            open.forEach(BadLine::end);
        }
    }

    public synchronized long requests() {
        return requests;
    }

    /** How many requests broke, by method and how. */
    public synchronized Map<String, Integer> broken() {
        return new TreeMap<>(broken);
    }

    private void accept() throws IOException {
        while (!door.isClosed()) {
            Socket phone = door.accept();
            if (away.get()) {
                end(phone);
            } else {
                beside(() -> carry(phone));
            }
        }
    }

    private void carry(Socket phone) throws IOException {
        try (phone; var far = new Socket(InetAddress.getLoopbackAddress(), server)) {
            open.add(phone);
            var fate = new Fate();
            beside(() -> answers(far, phone, fate));
            requests(phone, far, fate);
        } finally {
            open.remove(phone);
        }
    }

    /** What comes of the request a connection carries just now. */
    private static final class Fate {
        private volatile Break breaks;
        private volatile int answered;
    }

    private void requests(Socket phone, Socket far, Fate fate) throws IOException {
        byte[] piece = new byte[8192];
        InputStream in = phone.getInputStream();
        for (int n = in.read(piece); n >= 0; n = in.read(piece)) {
            if (begins(piece)) {
                fate.answered = 0;
                fate.breaks = draw(piece[0] == 'P' ? "POST" : "GET");
            }
            waits(n, quality.up(), upFree, begins(piece));
            if (fate.breaks == Break.NEVER_ARRIVED) {
                return;
            }
            far.getOutputStream().write(piece, 0, n);
        }
    }

    private static boolean begins(byte[] piece) {
        return piece[0] == 'G' && piece[1] == 'E' && piece[2] == 'T'
            || piece[0] == 'P' && piece[1] == 'O' && piece[2] == 'S' && piece[3] == 'T';
    }

    private void answers(Socket far, Socket phone, Fate fate) throws IOException {
        byte[] piece = new byte[1400];
        try (far; phone) {
            InputStream in = far.getInputStream();
            OutputStream out = phone.getOutputStream();
            for (int n = in.read(piece); n >= 0; n = in.read(piece)) {
                waits(n, quality.down(), downFree, fate.answered == 0);
                if (fate.breaks == Break.ANSWER_LOST) {
                    return;
                }
                int left = fate.breaks == Break.CUT_IN_THE_MIDDLE ? Math.max(0, CUT_AFTER - fate.answered) : n;
                out.write(piece, 0, Math.min(n, left));
                out.flush();
                fate.answered += n;
                if (left < n) {
                    return;
                }
            }
        }
    }

    private synchronized Break draw(String method) {
        requests++;
        if (random.nextDouble() >= quality.loss()) {
            return null;
        }
        Break how = Break.values()[random.nextInt(Break.values().length)];
        broken.merge(method + " " + how, 1, Integer::sum);
        return how;
    }

    /** As long as these bytes take on a line that all connections share; the first of a request or an answer waits for the way too. */
    private void waits(int bytes, int speed, AtomicLong free, boolean first) {
        long took = speed == 0 ? 0 : bytes * 1_000_000_000L / speed;
        long until = free.updateAndGet(at -> Math.max(System.nanoTime(), at) + took)
            + (first ? quality.latencyMs() * 1_000_000L : 0);
        while (System.nanoTime() < until) {
            LockSupport.parkNanos(until - System.nanoTime());
        }
    }

    private static void end(Socket socket) {
        try {
            socket.close();
        } catch (IOException closed) {
            // it is gone already
        }
    }

    private interface Work {
        void run() throws IOException;
    }

    private static void beside(Work work) {
        var thread = new Thread(() -> {
            try {
                work.run();
            } catch (IOException broken) {
                // the other end is gone, as lines do
            }
        });
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void close() throws IOException {
        door.close();
        open.forEach(BadLine::end);
    }
}
