package stillturning.parts;

import java.util.List;

/** A part in a line, with one way through it from {@code in} to {@code out}. */
public interface InLine extends Part {

    @Override
    default List<String> terminals() {
        return List.of("in", "out");
    }

    @Override
    default String entry() {
        return "in";
    }

    @Override
    default String exit() {
        return "out";
    }
}
