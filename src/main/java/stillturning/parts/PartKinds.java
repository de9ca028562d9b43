package stillturning.parts;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;

/** All kinds of parts that the program knows, in the order of lists. */
public final class PartKinds {

    private static final List<PartKind> ALL =
            ServiceLoader.load(PartKind.Listed.class, PartKinds.class.getClassLoader()).stream()
                    .map(found -> found.get().kind())
                    .sorted(Comparator.comparingInt(PartKind::order))
                    .toList();

    private PartKinds() {}

    /** Every kind. */
    public static List<PartKind> all() {
        return ALL;
    }

    /** The kind of this word. */
    public static Optional<PartKind> called(String word) {
        return ALL.stream().filter(kind -> kind.word().equals(word)).findFirst();
    }
}
