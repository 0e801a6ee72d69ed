package foretress;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.jboss.logmanager.ExtLogRecord;
import org.jboss.logmanager.formatters.PatternFormatter;

/** Hears everything that is logged while it is open, messages and stack traces. */
public class Listening extends Handler implements AutoCloseable {
    private final List<String> heard = Collections.synchronizedList(new ArrayList<>());
    private final Logger root = Logger.getLogger("");

    public Listening() {
        setLevel(Level.ALL);
        root.addHandler(this);
    }

    @Override
    public void publish(LogRecord record) {
        var trace = new StringWriter();
        if (record.getThrown() != null) {
            record.getThrown().printStackTrace(new PrintWriter(trace));
        }
        heard.add(new PatternFormatter("%p %c %s").format(ExtLogRecord.wrap(record)) + " " + trace);
    }

    public String everything() {
        synchronized (heard) {
            return String.join("\n", heard);
        }
    }

    /** Waits until all of it was said, 20 s at most: a request is logged after its answer has left. */
    public String until(String... said) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
        while (!Stream.of(said).allMatch(everything()::contains) && System.nanoTime() < end) {
            Thread.onSpinWait();
        }
        return everything();
    }

    @Override
    public void flush() {}

    @Override
    public void close() {
        root.removeHandler(this);
    }
}
