package foretress.load;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Consumer;

/** So many who ask at the same time, each the next thing as soon as the last is answered. */
final class Crowd implements AutoCloseable {
    private final int size;
    private final ExecutorService threads;

    Crowd(int size) {
        this.size = size;
        this.threads = Executors.newFixedThreadPool(size);
    }

    /** One page and whose it is. */
    record Look(String path, String cookies) {}

    private interface Turns {
        /** @return how long each request took */
        List<Long> take() throws IOException;
    }

    /** Each phone does the same one thing. */
    Cost each(Running server, List<Phone> phones, Consumer<Phone> act) throws Exception {
        var next = new AtomicInteger();
        return measured(server, () -> {
            List<Long> took = new ArrayList<>();
            for (int i = next.getAndIncrement(); i < phones.size(); i = next.getAndIncrement()) {
                act.accept(phones.get(i));
                took.add(phones.get(i).nanos());
            }
            return took;
        });
    }

    /** The same pages again and again, for so long. */
    Cost again(Running server, List<Look> looks, double seconds) throws Exception {
        long end = System.nanoTime() + (long) (seconds * 1e9);
        var next = new AtomicInteger();
        return measured(server, () -> {
            List<Long> took = new ArrayList<>();
            try (Wire wire = new Wire(server.port)) {
                while (System.nanoTime() < end) {
                    took.add(look(wire, looks.get(next.getAndIncrement() % looks.size())));
                }
            }
            return took;
        });
    }

    /** So many a second, whether or not those before are answered: each counted from when it was to be asked, so that none hides how long it waited. */
    Cost open(Running server, List<Look> looks, double perSecond, double seconds) throws Exception {
        long from = System.nanoTime();
        int all = (int) Math.max(1, perSecond * seconds);
        var next = new AtomicInteger();
        return measured(server, () -> {
            List<Long> took = new ArrayList<>();
            try (Wire wire = new Wire(server.port)) {
                for (int i = next.getAndIncrement(); i < all; i = next.getAndIncrement()) {
                    long due = from + (long) (i / perSecond * 1e9);
                    LockSupport.parkNanos(due - System.nanoTime());
                    look(wire, looks.get(i % looks.size()));
                    took.add(System.nanoTime() - due);
                }
            }
            return took;
        });
    }

    private static long look(Wire wire, Look look) throws IOException {
        Wire.Answer answer = wire.get(look.path(), look.cookies());
        if (answer.status() != 200) {
            throw new IllegalStateException(answer.status() + " at " + look.path() + ": " + answer.text());
        }
        return answer.nanos();
    }

    private Cost measured(Running server, Turns turns) throws Exception {
        double cpu = server.cpuSeconds();
        long from = System.nanoTime();
        List<Long> took = new ArrayList<>();
        for (var one : threads.invokeAll(Collections.nCopies(size, (Callable<List<Long>>) turns::take))) {
            took.addAll(done(one));
        }
        return new Cost(took, (System.nanoTime() - from) / 1e9, server.cpuSeconds() - cpu);
    }

    private static List<Long> done(java.util.concurrent.Future<List<Long>> one) throws Exception {
        try {
            return one.get();
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        }
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}
