package foretress.lexicon;

import java.util.function.Supplier;

/** Made when it is first asked for, once: who asks meanwhile waits for it. */
final class Lazily<T> implements Supplier<T> {
    private Supplier<T> maker;
    private volatile T made;

    Lazily(Supplier<T> maker) {
        this.maker = maker;
    }

    @Override
    public T get() {
        T here = made;
        return here == null ? make() : here;
    }

    private synchronized T make() {
        if (made == null) {
            made = maker.get();
            maker = null;
        }
        return made;
    }
}
