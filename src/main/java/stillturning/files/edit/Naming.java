package stillturning.files.edit;

import java.util.Optional;
import java.util.function.UnaryOperator;
import stillturning.files.entry.Names;

/** How parts are named where something speaks of them: {@code main-bus}, {@code main-bus.bar}. */
public final class Naming {

    private Naming() {}

    /** Refuses what no part, link or file can be called. */
    public static void refuseUnlessPlain(String name) throws ChangeRefused {
        if (!Names.isPlain(name)) {
            throw new ChangeRefused(
                    "\""
                            + name
                            + "\" cannot be a name; use lower case letters, digits and hyphens");
        }
    }

    /** The part of a name that may lead to a terminal or a channel. */
    public static String part(String name) {
        int point = name.indexOf('.');
        return point < 0 ? name : name.substring(0, point);
    }

    /** What stands behind the part. */
    public static Optional<String> behind(String name) {
        int point = name.indexOf('.');
        return point < 0 ? Optional.empty() : Optional.of(name.substring(point + 1));
    }

    /** The same terminal or channel of another part. */
    public static String renamed(String name, UnaryOperator<String> parts) {
        return parts.apply(part(name)) + behind(name).map(b -> "." + b).orElse("");
    }

    /** What the names of a run's own parts start with. */
    public static String prefix(String run) {
        return run.replace('.', '-');
    }
}
