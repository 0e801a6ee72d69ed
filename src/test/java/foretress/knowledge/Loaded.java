package foretress.knowledge;

/** The knowledge as all tests share it: nothing in it can change, and reading it takes seconds. That it can be read is KnowledgeTest's business. */
public final class Loaded {
    public static final Knowledge KNOWLEDGE = Knowledge.load();

    private Loaded() {}
}
