package foretress.assessment;

import foretress.knowledge.Knowledge;
import io.quarkus.runtime.Startup;
import jakarta.inject.Singleton;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;

/** Finds facts for the application of the tests, and says how often and about whom. */
@Startup
@Singleton
public class CountingFinder extends FactFinder {
    private final List<Situation> found = new ArrayList<>();

    CountingFinder(Knowledge knowledge) throws ReflectiveOperationException {
        super(knowledge.ruleSet(), knowledge.lexicon(List.of()));
        Field finder = Knowledge.class.getDeclaredField("factFinder");
        finder.setAccessible(true);
        finder.set(knowledge, this);
    }

    @Override
    public synchronized Facts find(Situation situation) {
        found.add(situation);
        return super.find(situation);
    }

    public synchronized void forget() {
        found.clear();
    }

    public synchronized int found() {
        return found.size();
    }

    public synchronized int again() {
        return found.size() - new HashSet<>(found).size();
    }
}
