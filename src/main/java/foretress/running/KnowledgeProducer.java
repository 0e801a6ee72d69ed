package foretress.running;

import foretress.knowledge.Knowledge;
import io.quarkus.runtime.Startup;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;

/** The questions, rules and words of this version, read and checked once. */
public class KnowledgeProducer {
    @Startup
    @Produces
    @Singleton
    public Knowledge knowledge() {
        return Knowledge.load();
    }
}
