package foretress.web;

import foretress.knowledge.Knowledge;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;

/** The questions, rules and words of this version, read and checked once. */
public class KnowledgeProducer {
    @Produces
    @Singleton
    public Knowledge knowledge() {
        return Knowledge.load();
    }
}
