package stillturning.assess.verdict;

import static java.util.Objects.requireNonNull;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A value that is worked out when somebody first asks, and then kept. Equal to another by its
 * value. May be asked by several threads at once.
 */
public final class Lazy<T> {

    private @Nullable Supplier<T> work;
    private @Nullable T value;

    private Lazy(@Nullable Supplier<T> work, @Nullable T value) {
        this.work = work;
        this.value = value;
    }

    /** One that has still to be worked out. */
    public static <T> Lazy<T> by(Supplier<T> work) {
        return new Lazy<>(work, null);
    }

    /** One that is known. */
    public static <T> Lazy<T> of(T value) {
        return new Lazy<>(null, value);
    }

    /** The value. */
    public synchronized T get() {
        if (work != null) {
            value = work.get();
            work = null;
        }
        return requireNonNull(value);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other == this || (other instanceof Lazy<?> lazy && get().equals(lazy.get()));
    }

    @Override
    public int hashCode() {
        return get().hashCode();
    }

    @Override
    public String toString() {
        return get().toString();
    }
}
